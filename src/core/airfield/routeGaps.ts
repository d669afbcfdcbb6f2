/** What a field's plan lacks for routes from its stands to its runways and back. */

import type { NodeId, TaxiEdge, TaxiNode } from '../taxi/graph';
import { type StretchId, stretchId } from '../taxi/rules';
import { crossedBy, draftStrips, isSameRunway, stripUnder } from './editStrips';
import type { Designator, Field } from './field';
import { unguarded } from './unguarded';

/** What is missing, and where. */
export type RouteGap =
  | { readonly code: 'no-stand' }
  /** No holding point gives on to an open end. */
  | { readonly code: 'end-without-hold'; readonly end: Designator }
  /** No taxiway meets the runway, so that nobody can leave it after landing. */
  | { readonly code: 'runway-without-exit'; readonly runway: string }
  /** Points not connected to the rest, one entry for each component but the largest. */
  | { readonly code: 'in-pieces'; readonly nodes: readonly NodeId[] }
  /** The stretch crosses a runway and doesn't say so. */
  | { readonly code: 'crosses-unsaid'; readonly stretch: StretchId; readonly runway: string }
  /** The stretch says that it crosses a runway, and doesn't. */
  | { readonly code: 'crosses-not'; readonly stretch: StretchId; readonly runway: string }
  /** One rolls along the stretch on to the runway, or across it, and passes no holding point before. */
  | { readonly code: 'runway-unguarded'; readonly stretch: StretchId; readonly runway: string }
  /** Connected, but one-way stretches keep the stand from every holding point of the end. */
  | { readonly code: 'no-way'; readonly stand: NodeId; readonly end: Designator };

/** Everything missing; empty if every stand reaches every open end. */
export function routeGaps(field: Field): readonly RouteGap[] {
  const pieces = piecesOf(field);
  return [
    ...standsMissing(field),
    ...holdsMissing(field),
    ...exitsMissing(field),
    ...pieces.slice(1).map((nodes): RouteGap => ({ code: 'in-pieces', nodes })),
    ...crossings(field),
    ...unguardedRunways(field),
    ...waysMissing(field, pieces),
  ];
}

const openEnds = ({ runways }: Field): readonly Designator[] =>
  runways.flatMap(({ ends }) =>
    ends.flatMap(({ designator, closed }) => (closed === undefined ? designator : [])),
  );

const standsOf = ({ taxi }: Field) => taxi.nodes.filter(({ kind }) => kind === 'stand');

const holdsOf = ({ taxi }: Field, end: Designator) =>
  taxi.nodes.filter(({ kind, ends }) => kind === 'hold' && ends?.includes(end));

const standsMissing = (field: Field): readonly RouteGap[] =>
  standsOf(field).length === 0 ? [{ code: 'no-stand' }] : [];

const holdsMissing = (field: Field): readonly RouteGap[] =>
  openEnds(field)
    .filter((end) => holdsOf(field, end).length === 0)
    .map((end) => ({ code: 'end-without-hold', end }));

function exitsMissing(field: Field): readonly RouteGap[] {
  const byId = new Map(field.taxi.nodes.map((node) => [node.id, node]));
  const left = new Set<string>();
  for (const { from, to, on, oneWay } of field.taxi.edges) {
    if (on === 'runway') continue;
    for (const id of oneWay ? [from] : [from, to]) {
      const node = byId.get(id);
      if (node?.kind === 'runway') left.add(stripUnder(field, node)?.name ?? '');
    }
  }
  const open = new Set(openEnds(field));
  return draftStrips(field)
    .filter(({ ends }) => ends.some(({ designator }) => open.has(designator)))
    .filter(({ name }) => !left.has(name))
    .map(({ name }) => ({ code: 'runway-without-exit', runway: name }));
}

/** The connected components, ignoring direction, largest first. */
function piecesOf({ taxi }: Field): readonly (readonly NodeId[])[] {
  const near = new Map<NodeId, NodeId[]>(taxi.nodes.map(({ id }) => [id, []]));
  for (const { from, to } of taxi.edges) {
    near.get(from)?.push(to);
    near.get(to)?.push(from);
  }
  const pieces: NodeId[][] = [];
  const seen = new Set<NodeId>();
  for (const { id } of taxi.nodes) {
    if (seen.has(id)) continue;
    const piece = reachedFrom([id], near);
    for (const one of piece) seen.add(one);
    pieces.push([...piece]);
  }
  return pieces.sort((a, b) => b.length - a.length);
}

/** All points that some lead to. */
function reachedFrom(
  from: readonly NodeId[],
  near: ReadonlyMap<NodeId, readonly NodeId[]>,
): ReadonlySet<NodeId> {
  const reached = new Set(from);
  // Points added during the iteration are visited too.
  for (const id of reached) for (const next of near.get(id) ?? []) reached.add(next);
  return reached;
}

function crossings(field: Field): readonly RouteGap[] {
  const byId = new Map(field.taxi.nodes.map((node) => [node.id, node]));
  return field.taxi.edges.flatMap((edge): readonly RouteGap[] => {
    const [from, to] = [byId.get(edge.from), byId.get(edge.to)];
    return from && to ? crossingGaps(field, edge, from, to) : [];
  });
}

function crossingGaps(
  field: Field,
  edge: TaxiEdge,
  from: TaxiNode,
  to: TaxiNode,
): readonly RouteGap[] {
  const stretch = stretchId(edge);
  const said = edge.crosses;
  const crossed = crossedBy(field, from, to, edge);
  const unsaid = crossed.filter((runway) => said === undefined || !isSameRunway(said, runway));
  const saidInVain = said !== undefined && !crossed.some((runway) => isSameRunway(said, runway));
  return [
    ...unsaid.map((runway): RouteGap => ({ code: 'crosses-unsaid', stretch, runway })),
    ...(saidInVain ? [{ code: 'crosses-not', stretch, runway: said } as const] : []),
  ];
}

const unguardedRunways = (field: Field): readonly RouteGap[] =>
  draftStrips(field).flatMap((strip) =>
    unguarded(field, strip).map(
      (stretch): RouteGap => ({ code: 'runway-unguarded', stretch, runway: strip.name }),
    ),
  );

/** Stands connected to holding points of an end, but unable to taxi to any of them. */
function waysMissing(field: Field, pieces: readonly (readonly NodeId[])[]): readonly RouteGap[] {
  const backward = new Map<NodeId, NodeId[]>(field.taxi.nodes.map(({ id }) => [id, []]));
  for (const { from, to, oneWay } of field.taxi.edges) {
    backward.get(to)?.push(from);
    if (!oneWay) backward.get(from)?.push(to);
  }
  const pieceOf = new Map(pieces.flatMap((piece) => piece.map((id) => [id, piece])));
  return openEnds(field).flatMap((end) => {
    const holds = holdsOf(field, end).map(({ id }) => id);
    const reached = reachedFrom(holds, backward);
    const joined = new Set(holds.map((id) => pieceOf.get(id)));
    return standsOf(field)
      .filter(({ id }) => !reached.has(id) && joined.has(pieceOf.get(id)))
      .map(({ id }): RouteGap => ({ code: 'no-way', stand: id, end }));
  });
}
