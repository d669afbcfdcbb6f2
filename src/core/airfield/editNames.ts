/**
 * Default names of new points of a plan, and the ends they give on to, until the pilot says
 * otherwise.
 */

import type { NodeId, TaxiNode } from '../taxi/graph';
import { stretchId } from '../taxi/rules';
import { seenFrom } from '../taxi/runwayStrip';
import type { PlanSpot, Snapped } from './editSnap';
import { draftStrips, groundOf, stripUnder } from './editStrips';
import type { Designator, Field } from './field';

const LETTER: Readonly<Record<TaxiNode['kind'], string>> = {
  stand: 's',
  junction: 'j',
  hold: 'h',
  runway: 'r',
};

/** The first number from 1 whose name is free. */
function firstFree(name: (number: number) => string, taken: ReadonlySet<string | undefined>) {
  for (let number = 1; ; number++) if (!taken.has(name(number))) return name(number);
}

/** An id no point has. */
export const freeId = (field: Field, kind: TaxiNode['kind']): NodeId =>
  firstFree((number) => `${LETTER[kind]}${number}`, new Set(field.taxi.nodes.map(({ id }) => id)));

const names = (field: Field) => new Set(field.taxi.nodes.map(({ name }) => name));

/**
 * The next stand's name: "Stand 7". It is part of the document, and English like its other names.
 */
export const standName = (field: Field): string =>
  firstFree((number) => `Stand ${number}`, names(field));

/** A holding point is named by its taxiway's letter and a number: "K2". */
export function holdName(field: Field, at: Snapped): string {
  const edge = field.taxi.edges.find((one) =>
    at.on === 'stretch'
      ? stretchId(one) === at.id
      : at.on === 'node' && [one.from, one.to].includes(at.id),
  );
  const letter = edge?.on === 'taxiway' ? edge.name : 'H';
  return firstFree((number) => `${letter}${number}`, names(field));
}

/** Further from the centreline than this, metres, a holding point guards no runway. */
export const GUARDS_M = 250;

/** Within this share of the runway from its end, one enters at that end. */
const NEAR_END = 0.25;

/**
 * The ends a holding point gives on to: the one it lies beside; in the middle of a runway, by
 * backtracking, those that no other holding point gives on to. None on a stretch that crosses the
 * runway.
 */
export function holdEnds(field: Field, at: Snapped): readonly Designator[] {
  const divides = field.taxi.edges.find((edge) => at.on === 'stretch' && stretchId(edge) === at.id);
  if (divides?.crosses !== undefined) return [];
  const beside = draftStrips(field)
    .map((strip) => {
      const { alongM, rightM } = seenFrom(strip, strip.ends[0].designator, groundOf(at));
      return { strip, share: alongM / strip.lengthM, offM: Math.abs(rightM) };
    })
    .filter(({ share, offM }) => share > -0.1 && share < 1.1 && offM <= GUARDS_M)
    .sort((a, b) => a.offM - b.offM)[0];
  if (beside === undefined) return [];
  const [one, other] = beside.strip.ends.map(({ designator }) => designator);
  if (one === undefined || other === undefined) return [];
  if (beside.share <= NEAR_END) return [one];
  if (beside.share >= 1 - NEAR_END) return [other];
  const given = new Set(
    field.taxi.nodes.flatMap(({ kind, ends }) => (kind === 'hold' ? (ends ?? []) : [])),
  );
  return [one, other].filter((end) => !given.has(end));
}

/** Within this distance of an end's start, metres, one lines up for that end. */
const LINE_UP_M = 60;

/** The end whose run begins at a point of a runway; none in the middle of it. */
export function runwayPointEnds(field: Field, at: PlanSpot): readonly Designator[] {
  const strip = stripUnder(field, at);
  if (strip === null) return [];
  return strip.ends
    .filter(({ designator }) => seenFrom(strip, designator, groundOf(at)).alongM <= LINE_UP_M)
    .map(({ designator }) => designator);
}
