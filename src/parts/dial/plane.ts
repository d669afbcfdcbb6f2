/**
 * The plane the dial is drawn on: a square of 400 units centred on 0, 0, x to the right and y down,
 * as in SVG. Directions are degrees clockwise from true north, which is up.
 */

import { RADIANS_PER_DEGREE } from '../../core';

/** A point on the dial. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** The upright bounding box of a text: its centre, and half its width and height. */
export interface TextBox extends Point {
  readonly halfWidth: number;
  readonly halfHeight: number;
}

/** Normalises degrees to 0 inclusive to 360 exclusive. */
export const wrap = (deg: number): number => ((deg % 360) + 360) % 360;

/** The smaller angle between two directions, 0 to 180 degrees. */
export const apartDeg = (a: number, b: number): number => 180 - Math.abs(wrap(a - b) - 180);

/** The point `radius` away from the centre, or from `origin`, in a direction. */
export function towards(deg: number, radius: number, origin: Point = { x: 0, y: 0 }): Point {
  const angle = deg * RADIANS_PER_DEGREE;
  return { x: origin.x + radius * Math.sin(angle), y: origin.y - radius * Math.cos(angle) };
}

/** Distance from a point to a line segment from `a` to `b`. */
export function distanceToLine(place: Point, a: Point, b: Point): number {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const along = ((place.x - a.x) * dx + (place.y - a.y) * dy) / (dx * dx + dy * dy || 1);
  const held = Math.min(1, Math.max(0, along));
  return Math.hypot(place.x - a.x - held * dx, place.y - a.y - held * dy);
}

/** Whether two boxes overlap. */
export function overlap(a: TextBox, b: TextBox): boolean {
  return (
    Math.abs(a.x - b.x) < a.halfWidth + b.halfWidth &&
    Math.abs(a.y - b.y) < a.halfHeight + b.halfHeight
  );
}

/** A point as SVG path data, to a tenth of a unit. */
const at = ({ x, y }: Point): string => `${Math.round(x * 10) / 10} ${Math.round(y * 10) / 10}`;

/** SVG path data of a polygon through the given points. */
export const outline = (places: readonly Point[]): string => `M${places.map(at).join('L')}Z`;

/** SVG path data of straight strokes, each from one point to another. */
export const strokes = (lines: readonly (readonly [Point, Point])[]): string =>
  lines.map(([a, b]) => `M${at(a)}L${at(b)}`).join('');

/**
 * SVG path data of a band between two radii, clockwise from `fromDeg` over `lengthDeg`; 360 or more
 * is the whole circle.
 */
export function band(fromDeg: number, lengthDeg: number, inner: number, outer: number): string {
  // An SVG arc can't end where it begins, so every band is drawn in two halves.
  const stops = [0, Math.min(lengthDeg, 360) / 2, Math.min(lengthDeg, 360)];
  const arc = (radius: number, order: readonly number[], sweep: 0 | 1): string =>
    order
      .map((stop, i) => {
        const place = at(towards(fromDeg + stop, radius));
        return i === 0 ? place : `A${radius} ${radius} 0 0 ${sweep} ${place}`;
      })
      .join('');
  const back = stops.toReversed();
  return lengthDeg >= 360
    ? `M${arc(outer, stops, 1)}ZM${arc(inner, back, 0)}Z`
    : `M${arc(outer, stops, 1)}L${arc(inner, back, 0)}Z`;
}
