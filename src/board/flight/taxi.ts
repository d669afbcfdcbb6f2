/** The way on the ground: from the stand to the runway in use, and from a landing back; and what the pilot says of it. */

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
import { day, documents, inputs, purpose, sortie } from '../board';
import { parts } from '../dayParts';
import { add } from '../record/adding';

/** What the place needs of core beside the signals here; null before the code is there. */
export const taxiParts = computed(() => present(parts.taxi.value));

const field = computed(() => documents.value.field);

/** The points of the field's plan, by name. */
export const nodes = computed(
  (): ReadonlyMap<NodeId, TaxiNode> =>
    new Map(field.value?.taxi.nodes.map((node) => [node.id, node])),
);

/** The stands of the field, in the order of its document. */
export const stands = computed(
  () => field.value?.taxi.nodes.filter(({ kind }) => kind === 'stand') ?? [],
);

/** Where the pilot put the aircraft on the plan, on this way; null where it was put nowhere. */
export const placed = computed(day.placed);

/** Where the way to the runway begins; null where only the pilot can know. */
export const from = computed(day.from);

/** The stand that is left, or the one that is gone back to after a landing. */
export const standing = computed(() => (purpose.value === 'landing' ? day.stand() : day.from()));

/** The way to the runway in use; null for a landing, and before the code or a field is there. */
export const out = computed(day.out);

/** The way from where a landing leaves the runway to the stand; null for a take-off. */
export const back = computed(day.back);

/** The way that is taken; null where there is none, and `fault` says why. */
export const route = computed(day.route);

export const fault = computed(day.fault);

/** The way as it is told; empty where there is none. */
export const told = computed(day.told);

/** The turns of the way, with the speed for each. */
export const turns = computed(day.turns);

/** Where the aircraft is on the way, by the points passed; null without a way. */
export const progress = computed(day.progress);

/** The turn that comes next; null where none does. */
export const nextTurn = computed(day.nextTurn);

/** Seconds gone by since the watch was started, and how many the whole way takes at taxi speed; null without a way. */
export const times = computed(day.pace);

/** All calls, in the order they come. */
export const calls = computed(day.calls);

/** The call that comes next: by what the aircraft is doing. */
export const dueCall = computed(day.dueCall);

const set = (chosen: Partial<Inputs>) => add({ kind: 'set', inputs: chosen });

/** The aircraft stands there: on a stand, which it then leaves from and comes back to, or on any point. */
export function placeAt(node: NodeId): void {
  const isStand = nodes.value.get(node)?.kind === 'stand';
  if (isStand) set({ stand: node, taxiVia: null });
  if (!isStand || isOffStand(sortie.value.stamps))
    add({ kind: 'taxied', point: node, placed: true });
}

/** The point to be passed next is passed now. */
export function passNext(): void {
  const next = progress.value?.next;
  if (next) add({ kind: 'taxied', point: next.node, placed: false });
}

/** The point passed last was not passed yet. */
export function takeBackPassing(): void {
  const last = sortie.value.taxied.findLast((one) => !one.placed);
  if (last !== undefined) add({ kind: 'undo', target: last.id });
}

/** Closes a stretch for today, or opens it again. */
export function closeStretch(id: StretchId, closed: boolean): void {
  const others = inputs.value.taxiClosed.filter((one) => one !== id);
  set({ taxiClosed: closed ? [...others, id] : others });
}

/** Enters the runway there; null: for its whole run the shortest way. Today's numbers count from where it rolls. */
export function enterAt(entry: ChosenEntry | null, rollsFromM: number): void {
  set({ taxiEntry: entry, rollsFromM: Math.round(rollsFromM), taxiVia: null });
}

/** Takes another of the ways offered; null: the shortest. */
export function takeVia(via: string | null): void {
  set({ taxiVia: via });
}

/** Keeps the pilot's own wording of a call; null goes back to the usual one. */
export function wordCall(kind: CallKind, text: string | null): void {
  const { [kind]: _before, ...others } = inputs.value.ownCalls;
  set({ ownCalls: text === null ? others : { ...others, [kind]: text } });
}

/** Where the departure turns to. */
export const departTowards = (departTo: Inputs['departTo']) => set({ departTo });
