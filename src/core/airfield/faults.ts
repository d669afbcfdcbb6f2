/** What keeps an airfield document of the right shape from being used. */

import type { Fault } from '../fault';
import { repeats } from '../fault';
import { oppositeOf } from './designator';
import type { FieldShape } from './field.schema';

/** What can be wrong with an airfield. */
export type FieldFault =
  /** Two ends have one designator. */
  | 'designator-twice'
  /** The numbers of a runway's ends aren't 18 apart, or their letters don't mirror each other. */
  | 'ends-not-opposite'
  /** Both ends of a runway lie at one point, so it has no direction. */
  | 'ends-at-one-point'
  | 'toda-below-tora'
  | 'asda-below-tora'
  /** The landing threshold lies beyond the far end. */
  | 'threshold-beyond-runway'
  /** An end is named that the field doesn't have. */
  | 'end-unknown'
  /** A runway is named that the field doesn't have. */
  | 'runway-unknown'
  | 'node-twice'
  /** Something is left out as not known, doubted or assumed, which version 1 had no words for. */
  | 'needs-version-2'
  /** A taxiway leads to a point that isn't on the plan. */
  | 'node-unknown'
  | 'edge-to-itself';

function* faultsOfRunways({ runways }: FieldShape): Generator<Fault<FieldFault>> {
  const known = runways.flatMap(({ ends }) => ends.map(({ designator }) => designator));
  for (const index of repeats(known)) {
    const path = ['runways', Math.floor(index / 2), 'ends', index % 2, 'designator'] as const;
    yield { path, code: 'designator-twice' };
  }
  for (const [index, { ends }] of runways.entries()) {
    const path = ['runways', index, 'ends'] as const;
    const [one, other] = ends;
    if (oppositeOf(one.designator) !== other.designator) yield { path, code: 'ends-not-opposite' };
    if (one.at.latDeg === other.at.latDeg && one.at.lonDeg === other.at.lonDeg)
      yield { path, code: 'ends-at-one-point' };
    for (const [side, end] of ends.entries()) {
      if (end.todaM < end.toraM) {
        const values = [end.todaM, end.toraM];
        yield { path: [...path, side, 'todaM'], code: 'toda-below-tora', values };
      }
      if (end.asdaM < end.toraM) {
        const values = [end.asdaM, end.toraM];
        yield { path: [...path, side, 'asdaM'], code: 'asda-below-tora', values };
      }
      if (end.displacedM > end.asdaM) {
        const values = [end.displacedM, end.asdaM];
        yield { path: [...path, side, 'displacedM'], code: 'threshold-beyond-runway', values };
      }
    }
  }
}

function* faultsOfTaxiways({ runways, taxi }: FieldShape): Generator<Fault<FieldFault>> {
  const names = new Set(
    runways.flatMap(({ ends: [one, other] }) => [
      `${one.designator}/${other.designator}`,
      `${other.designator}/${one.designator}`,
    ]),
  );
  const ids = taxi.nodes.map(({ id }) => id);
  for (const index of repeats(ids))
    yield { path: ['taxi', 'nodes', index, 'id'], code: 'node-twice' };
  const known = new Set(ids);
  for (const [index, edge] of taxi.edges.entries()) {
    const path = ['taxi', 'edges', index] as const;
    if (!known.has(edge.from)) yield { path: [...path, 'from'], code: 'node-unknown' };
    if (!known.has(edge.to)) yield { path: [...path, 'to'], code: 'node-unknown' };
    if (edge.from === edge.to) yield { path: [...path, 'to'], code: 'edge-to-itself' };
    if (edge.crosses !== undefined && !names.has(edge.crosses))
      yield { path: [...path, 'crosses'], code: 'runway-unknown' };
  }
}

function* faultsOfEndsNamed(field: FieldShape): Generator<Fault<FieldFault>> {
  const known = new Set(field.runways.flatMap(({ ends }) => ends.map((end) => end.designator)));
  if (field.calmWindEnd !== undefined && !known.has(field.calmWindEnd))
    yield { path: ['calmWindEnd'], code: 'end-unknown' };
  for (const [index, end] of (field.preferredEnds ?? []).entries())
    if (!known.has(end)) yield { path: ['preferredEnds', index], code: 'end-unknown' };
  for (const [index, { ends }] of field.taxi.nodes.entries())
    for (const [place, end] of (ends ?? []).entries())
      if (!known.has(end))
        yield { path: ['taxi', 'nodes', index, 'ends', place], code: 'end-unknown' };
}

/** Whether something in it asks for version 2, with which an older app must not guess. */
export const needsVersion2 = ({ runways, taxi }: Pick<FieldShape, 'runways' | 'taxi'>): boolean =>
  runways.some(
    ({ widthM, surface, edgeLights, declared, doubts, ends }) =>
      widthM === undefined ||
      surface === 'unknown' ||
      edgeLights === undefined ||
      declared === false ||
      doubts !== undefined ||
      ends.some(({ elevationFt }) => elevationFt === undefined),
  ) || taxi.nodes.some(({ assumed }) => assumed === true);

function* faultsOfVersion(field: FieldShape): Generator<Fault<FieldFault>> {
  if (field.version === 1 && needsVersion2(field))
    yield { path: ['version'], code: 'needs-version-2' };
}

/** Everything that keeps the airfield from being used; empty if it holds together. */
export function fieldFaults(field: FieldShape): Fault<FieldFault>[] {
  return [
    ...faultsOfVersion(field),
    ...faultsOfRunways(field),
    ...faultsOfTaxiways(field),
    ...faultsOfEndsNamed(field),
  ];
}
