/** The fields of the world around a place. */

import { cosDeg, turnDeg } from '../angle';
import { lineBetween } from '../earth/geodesic';
import type { Place } from '../earth/place';
import type { World } from './readWorld';
import { PER_DEGREE, WORLD_KINDS, type WorldKind } from './worldField';

/** A field by its index, and how far away it is. */
export interface NearField {
  readonly index: number;
  readonly awayM: number;
}

/** How many more are measured exactly than are asked for: the plane is not quite the earth. */
const SPARE = 8;

/** The fields nearest to a place, nearest first, at most so many. */
export function nearestFields(
  world: World,
  to: Place,
  { kinds, most }: { readonly kinds: ReadonlySet<WorldKind>; readonly most: number },
): readonly NearField[] {
  // As on a plane, which sorts out all but the near ones quickly.
  const east = cosDeg(to.latDeg);
  const near: { readonly index: number; readonly about: number }[] = [];
  world.codes.forEach((_, index) => {
    const kind = WORLD_KINDS[(world.sorts[index] ?? 0) % 4];
    if (kind === undefined || !kinds.has(kind)) return;
    const north = (world.lats[index] ?? 0) / PER_DEGREE - to.latDeg;
    const across = turnDeg((world.lons[index] ?? 0) / PER_DEGREE - to.lonDeg) * east;
    near.push({ index, about: north ** 2 + across ** 2 });
  });
  return near
    .sort((a, b) => a.about - b.about)
    .slice(0, most + SPARE)
    .map(({ index }) => {
      const there = {
        latDeg: (world.lats[index] ?? 0) / PER_DEGREE,
        lonDeg: (world.lons[index] ?? 0) / PER_DEGREE,
      };
      return { index, awayM: lineBetween(to, there)?.distanceM ?? Number.POSITIVE_INFINITY };
    })
    .sort((a, b) => a.awayM - b.awayM)
    .slice(0, most);
}
