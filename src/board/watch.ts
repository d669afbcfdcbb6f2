/** Opening the page that watches, in a window that may come up in front of this one. */

import { elapsedNowMs, wallNowMs } from './flight/time';

/** So soon after it was asked for a browser shows the new window, ms. */
const OPENS_MS = 3000;

/** A pilot who stays longer with what was opened has left the steps for it, ms. */
const LOOK_MS = 60_000;

let asked: { readonly elapsedMs: number; readonly wallMs: number } | null = null;
let isBehind = false;

/** The page that watches is asked for. */
export function askToWatch(): void {
  asked = { elapsedMs: elapsedNowMs(), wallMs: wallNowMs() };
}

/** This window is hidden: whether that is because the page that watches opens in front of it. */
export function goesBehindWatch(): boolean {
  isBehind = asked !== null && elapsedNowMs() - asked.elapsedMs < OPENS_MS;
  return isBehind;
}

/** This window is shown again: since when the pilot was with the page that watches, ms of the device's clock; null for a look. */
export function backFromWatch(): number | null {
  const sinceMs = asked?.wallMs ?? null;
  const wasLong = isBehind && asked !== null && elapsedNowMs() - asked.elapsedMs > LOOK_MS;
  asked = null;
  isBehind = false;
  return wasLong ? sinceMs : null;
}
