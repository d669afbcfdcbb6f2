/**
 * What counts as a deliberate tap. A false tick is the worst failure, so a palm, a brush, the
 * second tap of a bounce, and the touch that woke the screen don't count.
 */

import { HOLD_MS, SETTLE_MS } from '../../device/presses';

/** A tap is one pointer, down for 80 to 800 ms, moving less than 12 px. */
const LEAST_MS = 80;
const MOST_MS = 800;
const MOST_PX = 12;

/** Where and when a pointer was. */
export interface PointerAt {
  readonly id: number;
  readonly x: number;
  readonly y: number;
  readonly ms: number;
}

/** Why a tap doesn't count. */
export type Refusal =
  | 'too-short'
  | 'too-long'
  | 'moved'
  | 'several-pointers'
  | 'settling'
  | 'waking';

/** What is known of a tap when the pointer leaves. */
export interface Tap {
  readonly down: PointerAt;
  readonly up: PointerAt;
  /** Most pointers on the screen at once while it lasted. */
  readonly pointers: number;
  /** When the step last changed, ms. */
  readonly changedMs: number;
  /** It is the first touch since the screen woke. */
  readonly waking: boolean;
  /** It must be held rather than tapped. */
  readonly hold: boolean;
  /**
   * It stops the take-off: a tap taken for a palm would cost more than a palm taken for a tap, which
   * can be taken back. Only the second tap of the one that released the brakes doesn't count.
   */
  readonly urgent: boolean;
}

/** Why a tap doesn't count; null if it does. */
export function refusalOf(tap: Tap): Refusal | null {
  const { down, up, pointers, changedMs, waking, hold, urgent } = tap;
  if (urgent) return down.ms < changedMs + SETTLE_MS ? 'settling' : null;
  if (waking) return 'waking';
  if (pointers > 1) return 'several-pointers';
  if (down.ms < changedMs + SETTLE_MS) return 'settling';
  if (Math.hypot(up.x - down.x, up.y - down.y) >= MOST_PX) return 'moved';
  const lasted = up.ms - down.ms;
  if (lasted < (hold ? HOLD_MS : LEAST_MS)) return 'too-short';
  return !hold && lasted > MOST_MS ? 'too-long' : null;
}
