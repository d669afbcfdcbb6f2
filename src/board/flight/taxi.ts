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
  type NodeId,
  present,
  type StretchId,
  type TaxiNode,
} from '../../core';
import { day, documents, sortie } from '../board';
import { parts } from '../dayParts';
import { add } from '../record/adding';

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

/** Taxis to a stand; the aircraft stays where it is. */
export function taxiTo(stand: NodeId): void {
  set({ stand, taxiVia: null });
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
  set({ taxiEntry: entry, rollsFromM: Math.round(rollsFromM), taxiVia: null });
}

/** Takes another of the routes offered; null means the shortest. */
export function takeVia(via: string | null): void {
  set({ taxiVia: via });
}

/** Stores the pilot's own wording of a call; null restores the usual one. */
export function wordCall(kind: CallKind, text: string | null): void {
  const { [kind]: _before, ...others } = day.inputs().ownCalls;
  set({ ownCalls: text === null ? others : { ...others, [kind]: text } });
}

/** Sets where the departure turns. */
export const departTowards = (departTo: Inputs['departTo']) => set({ departTo });
