/** How fast, and how long it takes. */

import type { Aircraft } from '../aircraft/aircraft';
import { taxiTurn } from '../aircraft/taxiTurn';
import { KT_PER_MPS } from '../units';
import type { Corner, Mark, Route } from './route';
import { wheelClearanceM } from './rules';

/** A way that bends by less, degrees, goes straight on. */
const BEND_DEG = 20;

/** From this on a turn is a sharp one, which the aircraft's document has a speed for. Common practice, no published source. */
const SHARP_DEG = 60;

/** A turn of the way, with the speed for it. */
export interface Turn {
  readonly atM: number;
  /** How far it turns, degrees, to the right positive. */
  readonly turnDeg: number;
  readonly onto: string;
  /** The widest arc that keeps the wheels on the pavement; null where a width is not known. */
  readonly radiusM: number | null;
  readonly maxKt: number;
  /** What the speed is the least of. */
  readonly boundBy: 'comfort' | 'tipping' | 'sharp' | 'limit';
}

/**
 * The radius of the widest arc round a corner that keeps clear of the inner edge, and takes no more
 * than half of the shorter stretch, metres. An arc tangent to both centrelines passes
 * r (1 − cos ½θ) / cos ½θ inside the corner, where the pavement ends ½w / cos ½θ from it.
 */
export function turnRadiusM(corner: Corner, wheelSpanM: number): number | null {
  if (corner.widthM === null) return null;
  const half = (Math.abs(corner.turnDeg) * Math.PI) / 360;
  const insideM = corner.widthM / 2 - wheelSpanM / 2 - wheelClearanceM(wheelSpanM);
  const byWidth = Math.max(0, insideM) / (1 - Math.cos(half));
  const byStretch = corner.stretchM / 2 / Math.tan(half);
  // Where the wheels have no room to cut in, the nose is led past the corner: as sharp as it goes.
  const radius = Math.min(byWidth, byStretch);
  return radius > 0 ? radius : null;
}

/** The turns of a way in order, each with its speed. */
export function turnsOf(route: Route, aircraft: Aircraft): readonly Turn[] {
  const { maxKt, turnKt } = aircraft.taxi;
  const wheelSpanM = aircraft.performance?.gear.trackM ?? 0;
  return route.corners
    .filter(({ turnDeg }) => Math.abs(turnDeg) >= BEND_DEG)
    .map((corner) => {
      const radiusM = turnRadiusM(corner, wheelSpanM);
      const turn = radiusM === null ? null : taxiTurn(aircraft, radiusM);
      const sharp = Math.abs(corner.turnDeg) >= SHARP_DEG || turn === null;
      const { atM, turnDeg, onto } = corner;
      const bounds: [Turn['boundBy'], number][] = [
        ['limit', maxKt],
        ...(sharp ? [['sharp', turnKt] as [Turn['boundBy'], number]] : []),
        ...(turn === null ? [] : [[turn.boundBy, turn.maxKt] as [Turn['boundBy'], number]]),
      ];
      const [boundBy, least] = bounds.reduce((a, b) => (b[1] < a[1] ? b : a));
      return { atM, turnDeg, onto, radiusM, maxKt: least, boundBy };
    });
}

/** How long a distance takes at a speed, seconds. */
export const secondsAt = (distanceM: number, speedKt: number): number =>
  (distanceM / speedKt) * KT_PER_MPS;

/** A point that was passed, and when by one clock, ms. */
export interface Passed {
  readonly node: string;
  readonly ms: number;
}

/** A thumb is early or late by so much, seconds. Common practice, no published source. */
const THUMB_S = 0.5;

/** What a stopwatch gives between two points. */
export interface Stretch {
  readonly from: Mark;
  readonly to: Mark;
  readonly distanceM: number;
  readonly seconds: number;
  readonly groundKt: number;
  /** With the thumb late at the first point and early at the second, and the other way round; the most is null where no time is left. */
  readonly leastKt: number;
  readonly mostKt: number | null;
}

/** Where the aircraft is on its way, by the points that were passed. */
export interface Progress {
  /** Every stretch between two points passed one after the other, in order. */
  readonly stretches: readonly Stretch[];
  /** The point passed last; null before the first. */
  readonly last: Mark | null;
  /** The point to be passed next; null at the end of the way. */
  readonly next: Mark | null;
  readonly goneM: number;
  readonly leftM: number;
  /** When the first was passed, ms; null before. */
  readonly sinceMs: number | null;
}

/** Where the aircraft is on a way. Points that are not on it, or behind one passed before, are passed over. */
export function progressOn(route: Route, passed: readonly Passed[]): Progress {
  const stretches: Stretch[] = [];
  let last: Mark | null = null;
  let lastMs = 0;
  let sinceMs: number | null = null;
  for (const { node, ms } of passed) {
    const mark = route.marks.find((one) => one.node === node && one.atM >= (last?.atM ?? 0));
    if (mark === undefined || mark === last) continue;
    if (last !== null) {
      const stretch = stretchBetween(last, mark, (ms - lastMs) / 1000);
      if (stretch !== null) stretches.push(stretch);
    }
    sinceMs ??= ms;
    last = mark;
    lastMs = ms;
  }
  const goneM = last?.atM ?? 0;
  // Where the aircraft stands nobody passes it, but it is where the watch is started.
  const next = route.marks.find(({ atM }) => (last === null ? atM >= 0 : atM > goneM)) ?? null;
  return { stretches, last, next, goneM, leftM: route.lengthM - goneM, sinceMs };
}

/** Ground speed is distance over time; null where no time went by. 1 kt = 1852 m / 3600 s. */
export function stretchBetween(from: Mark, to: Mark, seconds: number): Stretch | null {
  const distanceM = to.atM - from.atM;
  if (!(seconds > 0) || !(distanceM > 0)) return null;
  const kt = (time: number) => (distanceM / time) * KT_PER_MPS;
  const leastSeconds = seconds - 2 * THUMB_S;
  return {
    from,
    to,
    distanceM,
    seconds,
    groundKt: kt(seconds),
    leastKt: kt(seconds + 2 * THUMB_S),
    mostKt: leastSeconds > 0 ? kt(leastSeconds) : null,
  };
}
