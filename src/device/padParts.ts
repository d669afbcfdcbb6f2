/** A button or an axis of a pad as something that is down or up, in spite of noise. Pure. */

import { CHATTER_MS } from './presses';

/** An axis or a button counts as down from here, and as up again only from there: what lies between is noise. */
export const DOWN_FROM = 0.6;
export const UP_FROM = 0.4;

/** What is remembered of a part. */
export interface PadPart {
  readonly down: boolean;
  /** It was seen up: a lever that stands at its stop when it is plugged in was not pressed. */
  readonly armed: boolean;
  /** Since when it has been on the other side, ms; null while it is not. */
  readonly sinceMs: number | null;
}

/** A part that was not seen before. */
export const UNSEEN: PadPart = { down: false, armed: false, sinceMs: null };

/** Takes what a part reads, 0 to 1; a change counts once it has lasted {@link CHATTER_MS}. */
export function readPart(before: PadPart, value: number, ms: number): PadPart {
  const down = before.down ? value > UP_FROM : value >= DOWN_FROM;
  if (!before.armed) return { ...before, armed: value <= UP_FROM };
  if (down === before.down) return before.sinceMs === null ? before : { ...before, sinceMs: null };
  const { sinceMs } = before;
  if (sinceMs === null) return { ...before, sinceMs: ms };
  return ms - sinceMs >= CHATTER_MS ? { ...before, down, sinceMs: null } : before;
}

/** An axis beyond this is a hat that rests there: it says nothing, and is as good as in the middle. */
const NO_AXIS = 1.05;

/** How far an axis is out one way, 0 to 1. */
export function outBy(value: number, way: '+' | '-'): number {
  if (!Number.isFinite(value) || Math.abs(value) > NO_AXIS) return 0;
  return Math.max(0, way === '+' ? value : -value);
}
