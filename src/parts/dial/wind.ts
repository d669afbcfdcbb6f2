/** The wind on the dial: where it comes from, and how far it swings. */

import { apartDeg, band, outline, towards, wrap } from './plane';

/**
 * Radii of the circle of ticks, which the swing covers and the sun stands on, in units of the dial.
 */
export const SCALE = { inner: 118, middle: 124, outer: 130, text: 103 } as const;

/** How far the sun's rays reach. */
export const SUN_REACH = 11;

/** Nearer to the arrow than this, the sun would lie on its tail, and a letter under its head. */
const BESIDE_DEG = 11.5;

/** Directions of the small arrowheads for a variable wind, between the figures. */
const ANYWHERE_DEG = [45, 135, 225, 315] as const;

/** Whether something in one direction would touch an arrow from another. */
export const isBeside = (deg: number | null, fromDeg: number | null): boolean =>
  deg !== null && fromDeg !== null && apartDeg(deg, fromDeg) < BESIDE_DEG;

/**
 * SVG path data of a shape that points to the centre, its corners given as distance from there and
 * offset to a side.
 */
const pointing = (fromDeg: number, shape: readonly (readonly [radius: number, side: number])[]) =>
  outline(shape.map(([radius, side]) => towards(fromDeg + 90, side, towards(fromDeg, radius))));

/**
 * SVG path data of the wind's arrow: its tail where the wind comes from, its tip towards the
 * centre. It starts inside a sun that stands in the same direction.
 */
export function arrowPath(fromDeg: number, sunDeg: number | null): string {
  const tail = isBeside(sunDeg, fromDeg) ? SCALE.middle - SUN_REACH - 1 : SCALE.outer - 1;
  return pointing(fromDeg, [
    [tail, 4],
    [107, 4],
    [107, 12],
    [86, 0],
    [107, -12],
    [107, -4],
    [tail, -4],
  ]);
}

/** SVG path data of the arrowheads of a variable wind, leaving out any where the sun stands. */
export const anywherePath = (sunDeg: number | null): string =>
  ANYWHERE_DEG.filter((deg) => !isBeside(sunDeg, deg))
    .map((deg) => pointing(deg, [[116, 8], [102, 0], [116, -8]])) // biome-ignore format: one line shows the shape
    .join('');

/** SVG path data of a swing, clockwise from its first direction to its second. */
export const swingPath = ([from, to]: readonly [number, number]): string =>
  band(from, wrap(to - from), SCALE.inner, SCALE.outer);
