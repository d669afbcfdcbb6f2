/**
 * The state of the hand while a plan is drawn: the tool, the selection, the pen. None of it is
 * stored.
 */

import { signal } from '@preact/signals';
import { changeField, drawnField } from '../../board/writing/field';
import {
  asDrawn,
  type ChangedPlaces,
  type Field,
  type NodeId,
  type StretchId,
  snap,
  stretchId,
} from '../../core';
import { words } from './words';

/** What a tap does. */
export type Tool = keyof typeof words.tools;

/** What is chosen on the plan. */
export type Selection =
  | { readonly kind: 'node'; readonly id: NodeId }
  | { readonly kind: 'stretch'; readonly id: StretchId }
  | { readonly kind: 'hot-spot'; readonly index: number };

/** The parts of a field, one shown at a time. */
export type PartName = keyof typeof words.parts;

export const partShown = signal<PartName>('field');
export const tool = signal<Tool>('choose');
export const chosen = signal<Selection | null>(null);

/** The point the next tap draws from; null while the pen is up. */
export const pen = signal<NodeId | null>(null);

/** The letter new taxiways get. */
export const letter = signal('A');

/**
 * Picks up a tool. The pen starts afresh: drawn from what happened to be selected, its first tap
 * would lay a stretch that nobody meant.
 */
export function takeTool(next: Tool): void {
  if (next !== 'choose') chosen.value = null;
  pen.value = null;
  tool.value = next;
}

/** Selects something, without a tool. */
export function choose(what: Selection | null): void {
  chosen.value = what;
  tool.value = 'choose';
  pen.value = null;
  marks.value = null;
}

/**
 * Incremented whenever something is selected by name, so that it is scrolled into view and read
 * out.
 */
export const looks = signal(0);

/** Shows and marks places of the plan that nothing can be selected at. */
export function lookAtPlaces(places: ChangedPlaces): void {
  choose(null);
  marks.value = places;
  looks.value += 1;
}

/** Selects something by name, from a list. */
export function lookAtPlan(what: Selection): void {
  choose(what);
  looks.value += 1;
}

/**
 * Places that the plan shows and marks: of what undo took back, of what is missing. They stay until
 * the hand does something else.
 */
export const marks = signal<ChangedPlaces | null>(null);

/** A spot of the plan, metres east and north of the reference point. */
export interface Spot {
  readonly xM: number;
  readonly yM: number;
}

const lastNode = (): NodeId | null => drawnField.value?.taxi.nodes.at(-1)?.id ?? null;

/** Applies the tool there. `reachM` is how far a finger reaches, metres. */
export function tapAt(spot: Spot, reachM: number): void {
  const field = drawnField.value;
  if (field === null) return;
  marks.value = null;
  switch (tool.value) {
    case 'choose':
      chosen.value = nearestTo(field, spot, reachM);
      return;
    case 'taxiway':
    case 'apron': {
      const at = snap(field, spot, { from: pen.value, reachM: Math.max(15, reachM / 2) });
      if (at.on === 'node' && at.id === pen.value) {
        pen.value = null;
        return;
      }
      const on = tool.value;
      const name = on === 'taxiway' ? letter.value : 'apron';
      changeField({ kind: 'laid', from: pen.value, at, on, name });
      pen.value = at.on === 'node' ? at.id : lastNode();
      chosen.value = pen.value === null ? null : { kind: 'node', id: pen.value };
      return;
    }
    case 'stand':
    case 'hold': {
      const isStand = tool.value === 'stand';
      const near = snap(field, spot, { reachM: Math.max(15, reachM / 2) });
      // A stand lies apart from what it is placed beside: only an existing point becomes one.
      const at = isStand && near.on !== 'node' ? { ...asDrawn(spot), on: 'ground' as const } : near;
      changeField({ kind: 'placed', what: isStand ? 'stand' : 'hold', at });
      const id = at.on === 'node' ? at.id : lastNode();
      if (id !== null) chosen.value = { kind: 'node', id };
      return;
    }
    case 'hot-spot': {
      const index = field.taxi.hotSpots?.length ?? 0;
      const to = { ...asDrawn(spot), name: `HS ${index + 1}`, about: words.hotSpotDefault };
      changeField({ kind: 'hot-spot', index, to });
      chosen.value = { kind: 'hot-spot', index };
    }
  }
}

/**
 * What is nearest to a spot: points and hot spots before stretches; null if nothing is within
 * reach.
 */
function nearestTo(field: Field, spot: Spot, reachM: number): Selection | null {
  const far = (one: Spot) => Math.hypot(one.xM - spot.xM, one.yM - spot.yM);
  const things: readonly (readonly [number, Selection])[] = [
    ...field.taxi.nodes.map((node) => [far(node), { kind: 'node', id: node.id }] as const),
    ...(field.taxi.hotSpots ?? []).map(
      (hot, index) => [far(hot), { kind: 'hot-spot', index }] as const,
    ),
  ];
  const [near] = things.filter(([metres]) => metres <= reachM).sort(([a], [b]) => a - b);
  if (near !== undefined) return near[1];
  const on = snap({ ...field, runways: [], taxi: { ...field.taxi } }, spot, {
    reachM,
  });
  return on.on === 'stretch' ? { kind: 'stretch', id: on.id } : null;
}

/** Removes the selection. */
export function removeChosen(): void {
  const what = chosen.value;
  if (what === null) return;
  if (what.kind === 'node') changeField({ kind: 'node-removed', id: what.id });
  if (what.kind === 'stretch') changeField({ kind: 'stretch-removed', id: what.id });
  if (what.kind === 'hot-spot') changeField({ kind: 'hot-spot', index: what.index, to: null });
  chosen.value = null;
  pen.value = null;
}

/** Moves the selection to a spot: a point of a runway along its centreline. */
export function moveChosen(spot: Spot): void {
  const field = drawnField.value;
  const what = chosen.value;
  if (field === null || what === null) return;
  if (what.kind === 'hot-spot') {
    const hot = field.taxi.hotSpots?.[what.index];
    if (hot) changeField({ kind: 'hot-spot', index: what.index, to: { ...hot, ...asDrawn(spot) } });
  }
  if (what.kind !== 'node') return;
  const node = field.taxi.nodes.find(({ id }) => id === what.id);
  const on = snap(field, spot, { except: what.id });
  const at = node?.kind === 'runway' && on.on === 'centreline' ? on : spot;
  changeField({ kind: 'node', id: what.id, set: { at: asDrawn(at) } });
}

/** Where the selection lies; null for a stretch, and without a selection. */
export function spotOfChosen(field: Field): Spot | null {
  const what = chosen.value;
  if (what?.kind === 'node') return field.taxi.nodes.find(({ id }) => id === what.id) ?? null;
  if (what?.kind === 'hot-spot') return field.taxi.hotSpots?.[what.index] ?? null;
  return null;
}

/** The selection, or the point drawn from, may have been undone. */
export function dropWhatIsGone(field: Field): void {
  const { nodes, edges, hotSpots = [] } = field.taxi;
  const has = (id: NodeId) => nodes.some((node) => node.id === id);
  const what = chosen.value;
  const isThere =
    what === null ||
    (what.kind === 'node' && has(what.id)) ||
    (what.kind === 'hot-spot' && what.index < hotSpots.length) ||
    (what.kind === 'stretch' && edges.some((edge) => stretchId(edge) === what.id));
  if (!isThere) chosen.value = null;
  if (pen.value !== null && !has(pen.value)) pen.value = null;
}
