/** The runways of a field being drawn, on its plan, and which of them stretches cross. */

import { lineBetween } from '../earth/geodesic';
import type { TaxiEdge, TaxiNode } from '../taxi/graph';
import { crossedAt, isOn, type RunwayStrip, stripsOf } from '../taxi/runwayStrip';
import type { Field } from './field';

const strips = new WeakMap<Field['runways'], { field: Field; strips: readonly RunwayStrip[] }>();

/** The runways that have a direction; one whose ends coincide has none yet, and is left out. */
export function draftStrips(field: Field): readonly RunwayStrip[] {
  const before = strips.get(field.runways);
  if (before?.field.place === field.place) return before.strips;
  const runways = field.runways.filter(
    ({ ends: [one, other] }) => lineBetween(one.at, other.at)?.azimuth != null,
  );
  const found = stripsOf({ ...field, runways });
  strips.set(field.runways, { field, strips: found });
  return found;
}

/** A point of the plan in the form runway geometry wants. */
export const groundOf = ({ xM, yM }: Pick<TaxiNode, 'xM' | 'yM'>) => ({ eastM: xM, northM: yM });

/** The runway a point lies on; null if none. */
export const stripUnder = (field: Field, point: Pick<TaxiNode, 'xM' | 'yM'>): RunwayStrip | null =>
  draftStrips(field).find((strip) => isOn(strip, groundOf(point))) ?? null;

/**
 * The names of the runways a stretch crosses. A stretch that ends on a runway, or leads along it,
 * doesn't cross it.
 */
export function crossedBy(
  field: Field,
  from: TaxiNode,
  to: TaxiNode,
  edge: Pick<TaxiEdge, 'name' | 'on'>,
): readonly string[] {
  return draftStrips(field)
    .filter((strip) => {
      if (edge.on === 'runway' && edge.name === strip.name) return false;
      const endsThere = [from, to].some(
        (node) => node.kind === 'runway' && isOn(strip, groundOf(node)),
      );
      return !endsThere && crossedAt(strip, groundOf(from), groundOf(to)) !== null;
    })
    .map(({ name }) => name);
}

/** `19/01` and `01/19` are one runway. */
export function isSameRunway(one: string, other: string): boolean {
  return one === other || one.split('/').reverse().join('/') === other;
}
