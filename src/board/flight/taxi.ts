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
import { day, documents, inputs, purpose, sortie } from '../board';
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

/** Where the pilot placed the aircraft on the plan for this route; null if nowhere. */
export const placedAt = computed(day.placed);

/** Where the route to the runway starts; null if only the pilot can know. */
export const from = computed(day.from);

/** The stand to leave from, or to return to after a landing. */
export const standNow = computed(() => (purpose.value === 'landing' ? day.stand() : day.from()));

/** The route to the runway in use; null for a landing, and before the code or a field is loaded. */
export const routeOut = computed(day.out);

/** The route from where a landing leaves the runway to the stand; null for a take-off. */
export const routeIn = computed(day.back);

/** The route in use; null if there is none, and `fault` says why. */
export const route = computed(day.route);

export const fault = computed(day.fault);

/** The route in words; empty if there is none. */
export const toldRoute = computed(day.told);

/** The turns of the route, with the speed for each. */
export const turns = computed(day.turns);

/** Where the aircraft is on the route, by the points passed; null without a route. */
export const progress = computed(day.progress);

/** The next turn; null if there is none. */
export const nextTurn = computed(day.nextTurn);

/**
 * Seconds since the watch was started, and for the whole route at taxi speed; null without a route.
 */
export const routePace = computed(day.pace);

/** All calls, in order. */
export const calls = computed(day.calls);

/** The next call, by what the aircraft is doing. */
export const dueCall = computed(day.dueCall);

const set = (chosen: Partial<Inputs>) => add({ kind: 'set', inputs: chosen });

/** The aircraft stands there: on a stand, to leave from and return to, or at any point. */
export function placeAt(node: NodeId): void {
  const isStand = nodes.value.get(node)?.kind === 'stand';
  if (isStand) set({ stand: node, taxiVia: null });
  if (!isStand || isOffStand(sortie.value.stamps))
    add({ kind: 'taxied', point: node, placed: true });
}

/** Passes the next point. */
export function passNext(): void {
  const next = progress.value?.next;
  if (next) add({ kind: 'taxied', point: next.node, placed: false });
}

/** Takes back passing the last point. */
export function takeBackPassing(): void {
  const last = sortie.value.taxied.findLast((one) => !one.placed);
  if (last !== undefined) add({ kind: 'undo', target: last.id });
}

/** Closes a stretch for today, or opens it again. */
export function closeStretch(id: StretchId, closed: boolean): void {
  const others = inputs.value.taxiClosed.filter((one) => one !== id);
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
  const { [kind]: _before, ...others } = inputs.value.ownCalls;
  set({ ownCalls: text === null ? others : { ...others, [kind]: text } });
}

/** Sets where the departure turns. */
export const departTowards = (departTo: Inputs['departTo']) => set({ departTo });
