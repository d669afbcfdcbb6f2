/** What a change to a field did, and where: for telling what undo took back. */

import type { PlanPoint } from '../earth/planPoint';
import { sameDocument } from '../same';
import type { TaxiEdge, TaxiNode } from '../taxi/graph';
import { stretchId } from '../taxi/rules';
import type { FieldEdit } from './edit';
import { draftStrips, groundOf } from './editStrips';
import type { Designator, Field, HotSpot, Radio, Runway } from './field';

/** The thing that was changed. */
export type ChangedThing =
  | {
      readonly kind: 'entry';
      readonly entry:
        | keyof Extract<FieldEdit, { readonly kind: 'head' }>['set']
        | 'elevation'
        | 'place'
        | 'calmWind';
    }
  | { readonly kind: 'radio'; readonly radio: Radio }
  | { readonly kind: 'hot-spot'; readonly hot: HotSpot }
  | { readonly kind: 'runway'; readonly runway: Runway }
  | { readonly kind: 'end'; readonly end: Designator }
  | { readonly kind: 'node'; readonly node: TaxiNode }
  | {
      readonly kind: 'stretch';
      readonly edge: TaxiEdge;
      readonly from: TaxiNode | undefined;
      readonly to: TaxiNode | undefined;
    }
  | { readonly kind: 'all' };

/** What happened to it. */
export type ChangeVerb = 'added' | 'removed' | 'moved' | 'changed';

/** The points and lines of the plan that differ, as they lie before or after. */
export interface ChangedPlaces {
  readonly spots: readonly PlanPoint[];
  readonly lines: readonly (readonly [PlanPoint, PlanPoint])[];
}

export interface FieldChange extends ChangedPlaces {
  readonly what: ChangedThing;
  readonly verb: ChangeVerb;
}

/** What a change did to a field. */
export function fieldChange(edit: FieldEdit, before: Field, after: Field): FieldChange {
  const done = deed(edit, before, after);
  return { ...done, ...placesOf(done.what, before, after) };
}

type Deed = Pick<FieldChange, 'what' | 'verb'>;

function deed(edit: FieldEdit, before: Field, after: Field): Deed {
  switch (edit.kind) {
    case 'head': {
      const [entry] = Object.keys(edit.set);
      const isEntry = entry === 'code' || entry === 'name' || entry === 'language';
      return changedEntry(isEntry ? entry : 'about');
    }
    case 'elevation':
    case 'place':
      return changedEntry(edit.kind);
    case 'calm-wind':
      return changedEntry('calmWind');
    case 'radio':
      return ofList(before.radio, after.radio, edit.index, (radio) => ({ kind: 'radio', radio }));
    case 'hot-spot': {
      const [was, is] = [before.taxi.hotSpots ?? [], after.taxi.hotSpots ?? []];
      return ofList(was, is, edit.index, (hot) => ({ kind: 'hot-spot', hot }));
    }
    case 'runway-added':
    case 'runway-removed':
    case 'runway':
    case 'line': {
      const at = edit.kind === 'runway-added' ? before.runways.length : edit.index;
      const found = ofList(before.runways, after.runways, at, (runway) => ({
        kind: 'runway',
        runway,
      }));
      return edit.kind === 'line' ? { ...found, verb: 'moved' } : found;
    }
    case 'number':
    case 'end':
    case 'closed': {
      const end = before.runways[edit.index]?.ends[edit.side].designator ?? '';
      return { what: { kind: 'end', end }, verb: 'changed' };
    }
    case 'node':
      return ofPlan(edit, before, after, edit.set.at === undefined ? 'changed' : 'moved');
    case 'placed':
    case 'laid':
    case 'node-removed':
    case 'stretch':
    case 'stretch-removed':
      return ofPlan(edit, before, after, 'changed');
    case 'anew':
      return { what: { kind: 'all' }, verb: 'changed' };
  }
}

const changedEntry = (entry: Extract<ChangedThing, { kind: 'entry' }>['entry']): Deed => ({
  what: { kind: 'entry', entry },
  verb: 'changed',
});

function ofList<T>(
  before: readonly T[],
  after: readonly T[],
  index: number,
  thing: (one: T) => ChangedThing,
): Deed {
  const grown = after.length - before.length;
  const one = (grown < 0 ? before : after)[index];
  if (one === undefined) return { what: { kind: 'all' }, verb: 'changed' };
  return { what: thing(one), verb: grown > 0 ? 'added' : grown < 0 ? 'removed' : 'changed' };
}

/**
 * What a change to the plan was about: of a line drawn the stretch, of anything else the point that
 * was named or came, and the stretch only where no point is concerned.
 */
function ofPlan(edit: FieldEdit, before: Field, after: Field, verb: ChangeVerb): Deed {
  const nodes = nodesApart(before, after);
  const edges = edgesApart(before, after);
  const came = <T>({ was }: Apart<T>) => was === undefined;
  const isNamed = ({ was, is }: Apart<TaxiNode>) => 'id' in edit && (is ?? was)?.id === edit.id;
  const node =
    nodes.find(isNamed) ?? nodes.find(came) ?? (edges.length === 0 ? nodes[0] : undefined);
  const edge = edges.find(came) ?? edges[0];
  const point = node?.is ?? node?.was;
  const line = edge?.is ?? edge?.was;
  const done = (pair: Apart<unknown> | undefined): ChangeVerb =>
    pair?.was === undefined ? 'added' : pair.is === undefined ? 'removed' : verb;
  if (point && !(edit.kind === 'laid' && line))
    return { what: { kind: 'node', node: point }, verb: done(node) };
  if (!line) return { what: { kind: 'all' }, verb };
  const named = (id: string) =>
    [...after.taxi.nodes, ...before.taxi.nodes].find((one) => one.id === id);
  const [from, to] = [named(line.from), named(line.to)];
  return { what: { kind: 'stretch', edge: line, from, to }, verb: done(edge) };
}

/** Something before and after, where the two differ. */
interface Apart<T> {
  readonly was: T | undefined;
  readonly is: T | undefined;
}

function apart<T>(
  before: readonly T[],
  after: readonly T[],
  key: (one: T) => string,
): readonly Apart<T>[] {
  const was = new Map(before.map((one) => [key(one), one]));
  const is = new Map(after.map((one) => [key(one), one]));
  return [...new Set([...is.keys(), ...was.keys()])]
    .map((name) => ({ was: was.get(name), is: is.get(name) }))
    .filter((pair) => !sameDocument(pair.was, pair.is));
}

const nodesApart = (before: Field, after: Field) =>
  apart(before.taxi.nodes, after.taxi.nodes, ({ id }) => id);

const edgesApart = (before: Field, after: Field) =>
  apart(before.taxi.edges, after.taxi.edges, stretchId);

function placesOf({ kind }: ChangedThing, before: Field, after: Field): ChangedPlaces {
  switch (kind) {
    case 'runway':
      // What goes and comes with a runway is no change that anyone made.
      return { spots: [], lines: stripsApart(before, after) };
    case 'node':
    case 'stretch':
      return planApart(before, after);
    case 'hot-spot': {
      const [was, is] = [before.taxi.hotSpots ?? [], after.taxi.hotSpots ?? []];
      return { spots: placesIn(apart(was, is, ({ name }) => name)), lines: [] };
    }
    default:
      // When the reference point moves, the plan stays where it is.
      return { spots: [], lines: [] };
  }
}

const placesIn = (pairs: readonly Apart<TaxiNode | HotSpot>[]): readonly PlanPoint[] =>
  pairs.flatMap(({ was, is }) => [was, is].filter((one) => one !== undefined)).map(groundOf);

function planApart(before: Field, after: Field): ChangedPlaces {
  const nodes = new Map([...before.taxi.nodes, ...after.taxi.nodes].map((node) => [node.id, node]));
  const lines = edgesApart(before, after).flatMap(({ was, is }) => {
    const edge = is ?? was;
    const [from, to] = [nodes.get(edge?.from ?? ''), nodes.get(edge?.to ?? '')];
    return from && to ? [[groundOf(from), groundOf(to)] as const] : [];
  });
  return { spots: placesIn(nodesApart(before, after)), lines };
}

function stripsApart(before: Field, after: Field) {
  const lines = (field: Field) =>
    draftStrips(field).map(({ ends: [one, other] }) => [one.at, other.at] as const);
  if (before.runways === after.runways) return [];
  const [was, is] = [lines(before), lines(after)];
  const isIn = (all: typeof was, line: (typeof was)[number]) =>
    all.some((one) => sameDocument(one, line));
  return [...was.filter((line) => !isIn(is, line)), ...is.filter((line) => !isIn(was, line))];
}
