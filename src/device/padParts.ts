/** A pad's button or axis as something that is down or up, in spite of noise. Pure. */

import { CHATTER_MS } from './presses';

/**
 * An axis or button goes down at the first value and up only at the second: between them is noise.
 */
export const DOWN_FROM = 0.6;
export const UP_FROM = 0.4;

/** What is remembered of a part. */
export interface PadPart {
  readonly down: boolean;
  /** It was seen up: a lever plugged in at its stop wasn't pressed. */
  readonly armed: boolean;
  /** Since when it has read the other way, ms; null while it doesn't. */
  readonly sinceMs: number | null;
}

/** A part seen for the first time. */
export const UNSEEN: PadPart = { down: false, armed: false, sinceMs: null };

/** Takes a part's reading, 0 to 1; a change counts once it has lasted {@link CHATTER_MS}. */
export function readPart(before: PadPart, value: number, ms: number): PadPart {
  const down = before.down ? value > UP_FROM : value >= DOWN_FROM;
  if (!before.armed) return { ...before, armed: value <= UP_FROM };
  if (down === before.down) return before.sinceMs === null ? before : { ...before, sinceMs: null };
  const { sinceMs } = before;
  if (sinceMs === null) return { ...before, sinceMs: ms };
  return ms - sinceMs >= CHATTER_MS ? { ...before, down, sinceMs: null } : before;
}

/** A hat at rest reads beyond this: treat it as centred. */
const NO_AXIS = 1.05;

/** How far an axis is deflected one way, 0 to 1. */
export function outBy(value: number, way: '+' | '-'): number {
  if (!Number.isFinite(value) || Math.abs(value) > NO_AXIS) return 0;
  return Math.max(0, way === '+' ? value : -value);
}
