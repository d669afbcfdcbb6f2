/**
 * The taxi route: from the stand to the runway in use, and back from a landing; and what the pilot
 * says about it.
 */

import { computed } from '@preact/signals';
import {
  type CallKind,
  type ChosenEntry,
  type Inputs,
  isOffStand,
  LONGEST_TOLD,
  type NodeId,
  present,
  type StretchId,
  type TaxiNode,
} from '../../core';
import { kept } from '../../device/kept';
import { day, documents, sortie } from '../board';
import { parts } from '../dayParts';
import { add, undoable } from '../record/adding';

/** What Taxi needs of core beside the signals here; null before the code is loaded. */
export const taxiParts = computed(() => present(parts.taxi.value));

const field = computed(() => documents.value.field);

/** The points of the field's plan, by id. */
export const nodes = computed(
  (): ReadonlyMap<NodeId, TaxiNode> =>
    new Map(field.value?.taxi.nodes.map((node) => [node.id, node])),
);

/** The field's stands, in document order. */
export const stands = computed(
  () => field.value?.taxi.nodes.filter(({ kind }) => kind === 'stand') ?? [],
);

/** The stand to leave from, or to return to after a landing. */
export const standNow = computed(() => (isComingIn() ? day.stand() : day.from()));

const set = (chosen: Partial<Inputs>) => add({ kind: 'set', inputs: chosen });

/** The aircraft stands there: on a stand, to leave from and return to, or at any point. */
export function placeAt(node: NodeId): void {
  const isStand = nodes.value.get(node)?.kind === 'stand';
  if (isStand) set({ stand: node, taxiVia: null });
  if (!isStand || isOffStand(sortie.value.stamps))
    add({ kind: 'taxied', point: node, placed: true });
}

/** Whether a stand is where to go, not where to leave from. */
export const isComingIn = (): boolean => day.purpose() === 'landing';

/** Whether the last thing it did was to land. */
export const hasLanded = (): boolean => sortie.value.stamps.at(-1)?.what === 'landed';

/** Taxis to a stand; the aircraft stays where it is. */
export function taxiTo(stand: NodeId): void {
  const at = day.placed();
  set({ stand, taxiVia: null });
  // Before a landing is stamped, a stand named is one the aircraft stands on.
  if (at !== null && day.placed() !== at) add({ kind: 'taxied', point: at, placed: true });
}

/** Passes the next point. */
export function passNext(): void {
  const next = day.progress()?.next;
  if (next) add({ kind: 'taxied', point: next.node, placed: false });
}

/** Takes back passing the last point. */
export function takeBackPassing(): void {
  const last = sortie.value.taxied.findLast((one) => !one.placed);
  if (last !== undefined) add({ kind: 'undo', target: last.id });
}

/** Closes a stretch for today, or opens it again. */
export function closeStretch(id: StretchId, closed: boolean): void {
  const others = day.inputs().taxiClosed.filter((one) => one !== id);
  set({ taxiClosed: closed ? [...others, id] : others });
}

/**
 * Enters the runway there; null means for its whole run, by the shortest route. Today's numbers
 * count from where the roll starts.
 */
export function enterAt(entry: ChosenEntry | null, rollsFromM: number): void {
  // A route as told that leads to another holding point no longer is where the aircraft goes.
  const keepsTold = entry !== null && day.asTold()?.entry?.hold === entry.hold;
  set({
    taxiEntry: entry,
    rollsFromM: Math.round(rollsFromM),
    taxiVia: null,
    ...(keepsTold ? {} : { taxiTold: null }),
  });
}

/** Takes another of the routes offered; null means the shortest. */
export function takeVia(via: string | null): void {
  set({ taxiVia: via, taxiTold: null });
}

/** A route as told that is being entered, and for which sortie and field. */
interface ToldDraft {
  readonly of: string;
  readonly text: string;
}

const isToldDraft = (stored: unknown): stored is ToldDraft =>
  typeof stored === 'object' &&
  stored !== null &&
  'of' in stored &&
  typeof stored.of === 'string' &&
  'text' in stored &&
  typeof stored.text === 'string' &&
  stored.text.length <= LONGEST_TOLD;

const toldTyped = kept('taxiTold', (stored) => (isToldDraft(stored) ? stored : null));

const draftOf = (): string => `${sortie.value.id} ${day.inputs().field}`;

/** The route as told, as far as it is typed; the one in use where nothing is. */
export function toldDraft(): string {
  const draft = toldTyped.value;
  return draft?.of === draftOf() ? draft.text : (day.inputs().taxiTold ?? '');
}

/** Keeps what is typed of a route as told. */
export function typeTold(text: string): void {
  toldTyped.value = { of: draftOf(), text: text.slice(0, LONGEST_TOLD) };
}

/** Uses the route as told, or the plan's own again if that is null. */
export function takeTold(text: string | null): void {
  toldTyped.value = null;
  const { taxiEntry } = day.inputs();
  const entry = text === null ? null : (day.layTold()?.(text).entry ?? null);
  // An intersection chosen elsewhere is not where this route leads.
  const leaves = taxiEntry !== null && entry !== null && entry.hold !== taxiEntry.hold;
  const entries = set({
    taxiTold: text,
    taxiVia: null,
    ...(leaves ? { taxiEntry: null, rollsFromM: 0 } : {}),
  });
  undoable.value = { what: 'route', entries };
}

/** Stores the pilot's own wording of a call; null restores the usual one. */
export function wordCall(kind: CallKind, text: string | null): void {
  const { [kind]: _before, ...others } = day.inputs().ownCalls;
  set({ ownCalls: text === null ? others : { ...others, [kind]: text } });
}

/** Sets where the departure turns. */
export const departTowards = (departTo: Inputs['departTo']) => set({ departTo });
