/** How fast, and how long it takes. */

import type { Aircraft } from '../aircraft/aircraft';
import { taxiTurn } from '../aircraft/taxiTurn';
import { KT_PER_MPS } from '../units';
import type { Route, RouteCorner, RouteMark } from './route';
import { wheelClearanceM } from './rules';

/** A route that bends by less than this, degrees, goes straight on. */
const BEND_DEG = 20;

/**
 * From this on a turn is sharp, and has its own speed in the aircraft's document. Common practice,
 * no published source.
 */
const SHARP_DEG = 60;

/** A turn of the route, with its speed. */
export interface Turn {
  readonly atM: number;
  /** How far it turns, degrees, right positive. */
  readonly turnDeg: number;
  readonly onto: string;
  /** The widest arc that keeps the wheels on the pavement; null if a width is unknown. */
  readonly radiusM: number | null;
  readonly maxKt: number;
  /** False where the route doubles back more tightly than the wheels can follow. */
  readonly canBeMade: boolean;
  /** What the speed is the minimum of. */
  readonly boundBy: 'comfort' | 'tipping' | 'sharp' | 'limit';
}

/**
 * The radius of the widest arc round a corner that clears the inner edge and takes no more than
 * half of the shorter stretch, metres. An arc tangent to both centrelines passes r (1 − cos ½θ) /
 * cos ½θ inside the corner, where the pavement ends ½w / cos ½θ from it.
 */
export function turnRadiusM(corner: RouteCorner, wheelSpanM: number): number | null {
  if (corner.widthM === null) return null;
  const half = (Math.abs(corner.turnDeg) * Math.PI) / 360;
  const insideM = corner.widthM / 2 - wheelSpanM / 2 - wheelClearanceM(wheelSpanM);
  const byWidth = Math.max(0, insideM) / (1 - Math.cos(half));
  const byStretch = corner.stretchM / 2 / Math.tan(half);
  // If the wheels have no room to cut in, the nose is led past the corner, as sharply as it goes.
  const radius = Math.min(byWidth, byStretch);
  return radius > 0 ? radius : null;
}

/** From here on a route doubles back, and only an arc of its own leads round. */
const DOUBLES_BACK_DEG = 120;

/** A nose wheel steered by 45° turns on a radius as long as the wheelbase; if that is unknown, m. */
const USUAL_WHEELBASE_M = 5;

/**
 * Whether the wheels can follow a corner. Where the route doubles back, the arc between the middles
 * of its stretches must not be tighter than a nose wheel steers. Common practice, no published
 * source.
 */
function canBeMade({ turnDeg, stretchM }: RouteCorner, { performance }: Aircraft): boolean {
  if (Math.abs(turnDeg) < DOUBLES_BACK_DEG) return true;
  const half = (Math.abs(turnDeg) * Math.PI) / 360;
  const wheelbaseM = performance?.gear.wheelbaseM ?? USUAL_WHEELBASE_M;
  return stretchM / 2 / Math.tan(half) >= wheelbaseM;
}

/** The turns of a route in order, each with its speed. */
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
      const made = canBeMade(corner, aircraft);
      return { atM, turnDeg, onto, radiusM, maxKt: least, canBeMade: made, boundBy };
    });
}

/** The time a distance takes at a speed, seconds. */
export const secondsAt = (distanceM: number, speedKt: number): number =>
  (distanceM / speedKt) * KT_PER_MPS;

/** A point passed, and when by one clock, ms. */
export interface Passed {
  readonly node: string;
  readonly ms: number;
}

/** A thumb is early or late by up to this, seconds. Common practice, no published source. */
const THUMB_S = 0.5;

/** What a stopwatch gives between two points. */
export interface Stretch {
  readonly from: RouteMark;
  readonly to: RouteMark;
  readonly distanceM: number;
  readonly seconds: number;
  readonly groundKt: number;
  /**
   * With the thumb late at the first point and early at the second, and the reverse; the greatest
   * is null if no time remains.
   */
  readonly leastKt: number;
  readonly mostKt: number | null;
}

/** Where the aircraft is on its route, by the points passed. */
export interface Progress {
  /** Every stretch between two points passed in succession, in order. */
  readonly stretches: readonly Stretch[];
  /** The last point passed; null before the first. */
  readonly last: RouteMark | null;
  /** The next point; null at the end of the route. */
  readonly next: RouteMark | null;
  readonly goneM: number;
  readonly leftM: number;
  /** When the first was passed, ms; null before. */
  readonly sinceMs: number | null;
}

/**
 * Where the aircraft is on a route. Points off the route, or behind one already passed, are
 * ignored.
 */
export function progressOn(route: Route, passed: readonly Passed[]): Progress {
  const stretches: Stretch[] = [];
  let last: RouteMark | null = null;
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
  // Nobody passes the point the aircraft stands on, but the watch starts there.
  const next = route.marks.find(({ atM }) => (last === null ? atM >= 0 : atM > goneM)) ?? null;
  return { stretches, last, next, goneM, leftM: route.lengthM - goneM, sinceMs };
}

/** Ground speed is distance over time; null if no time elapsed. 1 kt = 1852 m / 3600 s. */
export function stretchBetween(from: RouteMark, to: RouteMark, seconds: number): Stretch | null {
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
