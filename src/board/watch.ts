/** Opening the page that watches, in a window that may come up in front of this one. */

import { elapsedNowMs, wallNowMs } from './flight/time';

/** A browser shows the new window within this time of the request, ms. */
const OPENS_MS = 3000;

/** A pilot who stays with the new window longer than this has left the steps for it, ms. */
const LOOK_MS = 60_000;

let asked: { readonly elapsedMs: number; readonly wallMs: number } | null = null;
let isBehind = false;

/** Call when the page that watches is requested. */
export function askToWatch(): void {
  asked = { elapsedMs: elapsedNowMs(), wallMs: wallNowMs() };
}

/** Call when this window is hidden. Returns whether the page that watches opened in front of it. */
export function goesBehindWatch(): boolean {
  isBehind = asked !== null && elapsedNowMs() - asked.elapsedMs < OPENS_MS;
  return isBehind;
}

/**
 * Call when this window is shown again. Returns since when the pilot was away at the page that
 * watches, ms of the device's clock; null after a mere look.
 */
export function backFromWatch(): number | null {
  const sinceMs = asked?.wallMs ?? null;
  const wasLong = isBehind && asked !== null && elapsedNowMs() - asked.elapsedMs > LOOK_MS;
  asked = null;
  isBehind = false;
  return wasLong ? sinceMs : null;
}
