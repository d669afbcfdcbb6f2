/** The runway ring: the best end for every direction the wind might come from. */

import { band, type Point, strokes, towards, wrap } from './plane';

/** For each whole degree true, 0 to 359, the end that would be best; null if none would be. */
export type Ring = readonly (string | null)[];

/** A run of neighbouring directions for which the same end, or none, would be best. */
export interface RingArc {
  readonly end: string | null;
  /** Where it begins, degrees true, half a degree before its first whole degree. */
  readonly fromDeg: number;
  /** How far it reaches clockwise, degrees, 1 to 360. */
  readonly lengthDeg: number;
}

/** Radii of the ring, in units of the dial. */
export const RING = { inner: 136, middle: 143, outer: 150 } as const;

/** The direction halfway along an arc, degrees true. */
export const middleDeg = (arc: RingArc): number => wrap(arc.fromDeg + arc.lengthDeg / 2);

/**
 * The arcs of a ring, clockwise; an arc that crosses north is one arc. Their lengths sum to 360.
 */
export function arcsOf(ring: Ring): readonly RingArc[] {
  const starts = [...ring.keys()].filter((deg) => ring[deg] !== ring.at(deg - 1));
  const first = starts[0];
  if (first === undefined) return [{ end: ring[0] ?? null, fromDeg: 359.5, lengthDeg: 360 }];
  return starts.map((deg, i) => ({
    end: ring[deg] ?? null,
    fromDeg: wrap(deg - 0.5),
    lengthDeg: (starts[i + 1] ?? first + 360) - deg,
  }));
}

/** SVG path data of an arc, trimmed a little at each end so that neighbours stand apart. */
export function arcPath(arc: RingArc, heavy: boolean): string {
  const trim = arc.lengthDeg >= 360 ? 0 : Math.min(0.7, arc.lengthDeg * 0.2);
  const [inner, outer] = heavy ? [RING.inner, RING.outer] : [RING.middle - 4, RING.middle + 4];
  return band(arc.fromDeg + trim, arc.lengthDeg - 2 * trim, inner, outer);
}

/** SVG path data of the slanting strokes that fill an arc where no end would be best. */
export function hatchPath(arc: RingArc): string {
  const lines: (readonly [Point, Point])[] = [];
  for (let deg = 0.5; deg < arc.lengthDeg; deg += 2.5) {
    const far = Math.min(deg + 2.5, arc.lengthDeg - 0.3);
    lines.push([
      towards(arc.fromDeg + deg, RING.middle - 4),
      towards(arc.fromDeg + far, RING.middle + 4),
    ]);
  }
  return strokes(lines);
}
