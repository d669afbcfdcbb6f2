/**
 * What a touch on a key as large as the screen means. Taps follow the rules of every key that ticks
 * (deliberate.ts); beyond them there are two swipes, a long hold, and two fingers.
 */

import { HOLD_MS, SETTLE_MS } from '../../device/presses';
import { type PointerAt, type Refusal, refusalOf } from './deliberate';

/** A swipe is quick, long, and along one axis. Common practice, no published source. */
const SWIPE_PX = 80;
const SWIPE_MS = 600;
const SWIPE_STRAIGHT = 2;

/** A contact that lasts longer than this, ms, or is wider than this, px, is a hand at rest. */
const RESTING_MS = 2500;
const PALM_PX = 80;

/** Two fingers that close in by the first, px, pinch; that move less than the second, px, tap. */
const PINCH_PX = 60;
const TOGETHER_PX = 24;
const TOGETHER_MS = 800;

/** What was meant. */
export type Gesture =
  /** Down for less than a hold. */
  | 'tap'
  /** Down for 0.7 s or longer. */
  | 'hold'
  /** To the left or to the right. */
  | 'across'
  | 'down'
  /** Two fingers, briefly. */
  | 'two'
  /** Two fingers closing in. */
  | 'pinch';

/** A finger's path over the glass. */
export interface Stroke {
  readonly down: PointerAt;
  readonly up: PointerAt;
  /** Its greatest contact width, px; 0 or 1 if the device doesn't say. */
  readonly widthPx: number;
}

/** Everything known of a touch when its last finger leaves. */
export interface Touched {
  /** The fingers on the key. */
  readonly strokes: readonly Stroke[];
  /** Most pointers on the screen at once while it lasted, wherever they were. */
  readonly pointers: number;
  /** When the step last changed, ms. */
  readonly changedMs: number;
  /** It is the first touch since the screen woke. */
  readonly waking: boolean;
}

/** What was meant, or why nothing was. */
export type Meant = { readonly gesture: Gesture } | { readonly refusal: Refusal };

/** What a touch means. */
export function meantBy({ strokes, pointers, changedMs, waking }: Touched): Meant {
  const [first, second] = strokes;
  if (first === undefined) return { refusal: 'several-pointers' };
  if (waking) return { refusal: 'waking' };
  if (pointers > 2 || strokes.some(({ widthPx }) => widthPx > PALM_PX)) {
    return { refusal: 'several-pointers' };
  }
  if (second !== undefined) return byTwo(first, second);
  if (pointers > 1) return { refusal: 'several-pointers' };
  const swiped = swipeOf(first);
  if (swiped !== null) {
    const isSettled = first.down.ms >= changedMs + SETTLE_MS;
    return isSettled ? { gesture: swiped } : { refusal: 'settling' };
  }
  const lastedMs = first.up.ms - first.down.ms;
  if (lastedMs > RESTING_MS) return { refusal: 'too-long' };
  const hold = lastedMs >= HOLD_MS;
  const refusal = refusalOf({
    down: first.down,
    up: first.up,
    pointers,
    changedMs,
    waking,
    hold,
    urgent: false,
  });
  return refusal === null ? { gesture: hold ? 'hold' : 'tap' } : { refusal };
}

function swipeOf({ down, up }: Stroke): 'across' | 'down' | null {
  const [x, y] = [Math.abs(up.x - down.x), up.y - down.y];
  if (up.ms - down.ms > SWIPE_MS) return null;
  if (x >= SWIPE_PX && x >= SWIPE_STRAIGHT * Math.abs(y)) return 'across';
  return y >= SWIPE_PX && y >= SWIPE_STRAIGHT * x ? 'down' : null;
}

function byTwo(one: Stroke, other: Stroke): Meant {
  const apart = (at: 'down' | 'up') => distance(one[at], other[at]);
  if (apart('down') - apart('up') >= PINCH_PX) return { gesture: 'pinch' };
  const isStill = [one, other].every(({ down, up }) => distance(down, up) < TOGETHER_PX);
  const isBrief = [one, other].every(({ down, up }) => up.ms - down.ms <= TOGETHER_MS);
  return isStill && isBrief ? { gesture: 'two' } : { refusal: 'several-pointers' };
}

const distance = (a: PointerAt, b: PointerAt) => Math.hypot(a.x - b.x, a.y - b.y);
