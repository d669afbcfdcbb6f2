/** Changes to a field's runways. Everything in the field that names a runway or an end follows. */

import { lineBetween } from '../earth/geodesic';
import { isOn } from '../taxi/runwayStrip';
import { oppositeOf } from './designator';
import { draftStrips } from './editStrips';
import { isPlaced } from './emptyField';
import type { Designator, Doubt, Field, Runway, RunwayEnd } from './field';
import { centimetre, centreOf, endPlaces, type RunwayLine } from './runwayLine';

/** A runway to add. Its second end gets the opposite number; what is left out is not known. */
export interface NewRunway {
  readonly line: RunwayLine;
  readonly designator: Designator;
  readonly widthM?: number;
  readonly surface?: Runway['surface'];
  readonly edgeLights?: boolean;
}

/** What is set of a runway; null where it is not known. */
export interface RunwaySetting {
  readonly widthM?: number | null;
  readonly surface?: Runway['surface'];
  readonly edgeLights?: boolean | null;
}

/** What is set of an end; null where its elevation is not known. */
export type EndSetting = Partial<
  Pick<RunwayEnd, 'displacedM' | 'toraM' | 'todaM' | 'asdaM' | 'ldaM'>
> & { readonly elevationFt?: number | null };

/**
 * Adds a runway. Its distances equal its length until they are declared, and how high its ends lie
 * isn't known. The middle of the first becomes the reference point of a field that has none.
 */
export function runwayAdded(field: Field, { line, designator, ...given }: NewRunway): Field {
  const [from, to] = endPlaces(line);
  const lengthM = Math.round(lineBetween(from, to)?.distanceM ?? 0);
  const end = (name: Designator, at: RunwayEnd['at']): RunwayEnd => ({
    designator: name,
    at,
    displacedM: 0,
    toraM: lengthM,
    todaM: lengthM,
    asdaM: lengthM,
    ldaM: lengthM,
  });
  const runway: Runway = {
    surface: 'unknown',
    declared: false,
    ...given,
    ends: [end(designator, from), end(oppositeOf(designator), to)],
  };
  const middle = isPlaced(field) || field.runways.length > 0 ? null : centreOf(runway)?.centre;
  const place = middle ? { ...field.place, ...centimetre(middle) } : field.place;
  return { ...field, place, runways: [...field.runways, runway] };
}

/** Sets a property of the whole runway. */
export const runwaySet = (field: Field, index: number, set: RunwaySetting): Field =>
  withRunway(field, index, ({ widthM: wasWidthM, edgeLights: wasLit, ...runway }) => {
    const { widthM = wasWidthM ?? null, edgeLights = wasLit ?? null, surface } = set;
    return {
      ...runway,
      ...(surface !== undefined && { surface }),
      ...(widthM !== null && { widthM }),
      ...(edgeLights !== null && { edgeLights }),
    };
  });

function withRunway(field: Field, index: number, change: (runway: Runway) => Runway): Field {
  const runway = field.runways[index];
  if (runway === undefined) return field;
  return { ...field, runways: field.runways.with(index, change(runway)) };
}

function withEnd(
  field: Field,
  index: number,
  side: 0 | 1,
  change: (end: RunwayEnd) => RunwayEnd,
): Field {
  return withRunway(field, index, (runway) => {
    const [one, other] = runway.ends;
    return { ...runway, ends: side === 0 ? [change(one), other] : [one, change(other)] };
  });
}

/**
 * Moves or resizes a runway. Declared distances change with the pavement, so that clearways,
 * stopways and displaced thresholds keep their length.
 */
export const lineSet = (field: Field, index: number, line: RunwayLine): Field =>
  withRunway(field, index, (runway) => {
    const [one, other] = runway.ends;
    const [from, to] = endPlaces(line);
    const beforeM = lineBetween(one.at, other.at)?.distanceM ?? 0;
    const afterM = lineBetween(from, to)?.distanceM ?? 0;
    const grown = (metres: number) => Math.max(0, Math.round(metres + afterM - beforeM));
    const end = (was: RunwayEnd, at: RunwayEnd['at']): RunwayEnd => ({
      ...was,
      at,
      toraM: grown(was.toraM),
      todaM: grown(was.todaM),
      asdaM: grown(was.asdaM),
      ldaM: grown(was.ldaM),
    });
    return { ...runway, ends: [end(one, from), end(other, to)] };
  });

/** Sets figures of an end. Displacing the threshold further shortens the LDA by as much. */
export const endSet = (field: Field, index: number, side: 0 | 1, set: EndSetting): Field =>
  withEnd(field, index, side, ({ elevationFt: wasFt, ...end }) => {
    const { elevationFt = wasFt ?? null, ...lengths } = set;
    const movedM = (set.displacedM ?? end.displacedM) - end.displacedM;
    return {
      ...end,
      ldaM: Math.max(0, end.ldaM - movedM),
      ...lengths,
      ...(elevationFt !== null && { elevationFt }),
    };
  });

const LENGTHS = ['toraM', 'todaM', 'asdaM', 'ldaM'] as const;

/**
 * The runway as the pilot says it is: what was doubted of it no longer is where it was set, and lengths
 * that were set are declared.
 */
export function undoubted(field: Field, index: number, mends: readonly Doubt[]): Field {
  return withRunway(field, index, ({ doubts = [], ...runway }) => {
    const left = doubts.filter((doubt) => !mends.includes(doubt));
    return { ...runway, ...(left.length > 0 && { doubts: left }) };
  });
}

/** What a setting of an end settles. */
export const mendsOfEnd = (set: EndSetting): readonly Doubt[] => [
  ...(LENGTHS.some((name) => set[name] !== undefined) ? (['length'] as const) : []),
  ...(set.elevationFt != null ? (['elevation'] as const) : []),
  ...(set.displacedM !== undefined ? (['displaced'] as const) : []),
];

/** The runway once a length of it was declared. */
export function declaredIf(field: Field, index: number, set: EndSetting): Field {
  if (!LENGTHS.some((name) => set[name] !== undefined)) return field;
  return withRunway(field, index, ({ declared: _, ...runway }) => runway);
}

/** Closes an end, with the reason, or opens it. */
export const endClosed = (field: Field, index: number, side: 0 | 1, why: string | null): Field =>
  withEnd(field, index, side, ({ closed: _, ...end }) =>
    why === null ? end : { ...end, closed: why },
  );

/** Renumbers an end, and its opposite; everything that names them follows. */
export function numberSet(field: Field, index: number, side: 0 | 1, to: Designator): Field {
  const runway = field.runways[index];
  if (runway === undefined) return field;
  const [one, other] = runway.ends;
  const [first, second] = side === 0 ? [to, oppositeOf(to)] : [oppositeOf(to), to];
  const names = new Map([
    [one.designator, first],
    [other.designator, second],
  ]);
  const renumbered = withRunway(field, index, (was) => ({
    ...was,
    ends: [
      { ...one, designator: first },
      { ...other, designator: second },
    ],
  }));
  return renamed(renumbered, (end) => names.get(end) ?? end);
}

/**
 * Everything that names ends elsewhere in the field, with the names changed, or dropped if null.
 */
function renamed(field: Field, to: (end: Designator) => Designator | null): Field {
  const { calmWindEnd, preferredEnds, ...rest } = field;
  const kept = (ends: readonly Designator[]) => ends.map(to).filter((end) => end !== null);
  const calm = calmWindEnd === undefined ? null : to(calmWindEnd);
  const runwayName = (name: string): string | null => {
    const ends = name.split('/').map(to);
    return ends.includes(null) ? null : ends.sort().join('/');
  };
  return {
    ...rest,
    ...(calm === null ? {} : { calmWindEnd: calm }),
    ...(preferredEnds === undefined ? {} : { preferredEnds: kept(preferredEnds) }),
    taxi: {
      ...rest.taxi,
      nodes: rest.taxi.nodes.map(({ ends, ...node }) => {
        const left = kept(ends ?? []);
        return left.length === 0 ? node : { ...node, ends: left };
      }),
      edges: rest.taxi.edges.flatMap(({ crosses, ...edge }) => {
        const name = edge.on === 'runway' ? runwayName(edge.name) : edge.name;
        const crossed = crosses === undefined ? null : runwayName(crosses);
        if (name === null) return [];
        return [{ ...edge, name, ...(crossed === null ? {} : { crosses: crossed }) }];
      }),
    },
  };
}

/** Removes a runway: stretches along it go, and points on it become junctions. */
export function runwayRemoved(field: Field, index: number): Field {
  const runway = field.runways[index];
  if (runway === undefined) return field;
  const gone = runway.ends.map(({ designator }) => designator);
  const strip = draftStrips(field).find(({ ends }) =>
    ends.every(({ designator }) => gone.includes(designator)),
  );
  const without = renamed(
    { ...field, runways: field.runways.filter((_, i) => i !== index) },
    (end) => (gone.includes(end) ? null : end),
  );
  const nodes = without.taxi.nodes.map((node) => {
    if (node.kind !== 'runway' || !strip) return node;
    if (!isOn(strip, { eastM: node.xM, northM: node.yM })) return node;
    const { ends: _, ...rest } = node;
    return { ...rest, kind: 'junction' as const };
  });
  return { ...without, taxi: { ...without.taxi, nodes } };
}
