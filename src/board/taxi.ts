/** The way on the ground: from the stand to the runway in use, and from a landing back. Comes with the code that finds it. */

import { computed, effect, signal } from '@preact/signals';
import {
  type CallFacts,
  type CallKind,
  type ChosenEntry,
  endsOf,
  type Inputs,
  loadTaxi,
  type NodeId,
  type StretchId,
  type TaxiNode,
  type Told,
} from '../core';
import { add } from './adding';
import { documents, inputs, purpose, sortie, steady, taxiDistanceM, wind } from './board';
import { wallMs } from './time';
import { today } from './today';

type Parts = Awaited<ReturnType<typeof loadTaxi>>;

const parts = signal<Parts | null>(null);

/** What the place needs of core beside the signals here; null before the code is there. */
export const taxiParts = computed(() => parts.value);

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

/** The stand: the one the pilot named, or the only one there is. */
export const stand = computed((): NodeId | null => {
  const named = inputs.value.stand;
  if (named !== null && nodes.value.has(named)) return named;
  return stands.value.length === 1 ? (stands.value[0]?.id ?? null) : null;
});

/** Where the pilot put the aircraft on the plan, on this way; null where it was put nowhere. */
export const placed = computed(() => {
  const point = sortie.value.taxied.find((one) => one.placed)?.point ?? null;
  return point !== null && nodes.value.has(point) ? point : null;
});

/** What stopped on the runway, or has landed, stands on no stand until the pilot says so. */
const isOffStand = computed(() => {
  const last = sortie.value.stamps.at(-1)?.what;
  return last === 'stopping' || last === 'landed';
});

/** Where the way to the runway begins; null where only the pilot can know. */
export const from = computed(() => placed.value ?? (isOffStand.value ? null : stand.value));

/** The stand that is left, or the one that is gone back to after a landing. */
export const standing = computed(() => (purpose.value === 'landing' ? stand.value : from.value));

const rules = steady(() => ({
  closed: inputs.value.taxiClosed,
  neededWidthM: parts.value?.neededWidthM(documents.value.aircraft) ?? null,
}));

/** Ends beside the wind's answer: it is worked out again at every key, and they are the same. */
const using = computed(() => wind.value.using);

const asked = steady(() => ({ entry: inputs.value.taxiEntry, via: inputs.value.taxiVia }));

/** The way to the runway in use; null for a landing, and before the code or a field is there. */
export const out = computed(() => {
  if (parts.value === null || field.value === null || purpose.value === 'landing') return null;
  return parts.value.wayOut({
    field: field.value,
    from: from.value,
    end: using.value,
    rules: rules.value,
    ...asked.value,
  });
});

/** From the threshold to where today's landing is at rest, m: expected, else the run of the aircraft's document. */
const landingM = steady(() => {
  const expected = today.value?.landing.expected;
  const neededM = expected?.because === null ? expected.figures.neededM.value : null;
  return neededM ?? documents.value.aircraft?.landing.runM ?? null;
});

/** The way from where a landing leaves the runway to the stand; null for a take-off. */
export const back = computed(() => {
  if (parts.value === null || field.value === null || purpose.value !== 'landing') return null;
  return parts.value.wayIn({
    field: field.value,
    end: using.value,
    landingM: landingM.value,
    to: stand.value,
    from: placed.value,
    rules: rules.value,
  });
});

/** The way that is taken; null where there is none, and `fault` says why. */
export const route = computed(() => out.value?.route ?? back.value?.route ?? null);

export const fault = computed(() => out.value?.fault ?? back.value?.fault ?? null);

/** The way as it is told; empty where there is none. */
export const told = computed((): readonly Told[] => {
  if (parts.value === null) return [];
  if (out.value?.entry) return parts.value.toldOut(route.value, out.value.entry);
  const name = stand.value === null ? undefined : nodes.value.get(stand.value)?.name;
  if (back.value?.fault === null) return parts.value.toldIn(route.value, name ?? '');
  return [];
});

/** The turns of the way, with the speed for each. */
export const turns = computed(() => {
  const { aircraft } = documents.value;
  return parts.value === null || route.value === null || aircraft === null
    ? []
    : parts.value.turnsOf(route.value, aircraft);
});

/** Where the aircraft is on the way, by the points passed; null without a way. */
export const progress = computed(() => {
  if (parts.value === null || route.value === null) return null;
  const passed = sortie.value.taxied.filter((one) => !one.placed);
  return parts.value.progressOn(
    route.value,
    passed.map(({ point, at }) => ({ node: point, ms: at.wallMs })),
  );
});

/** The turn that comes next; null where none does. */
export const nextTurn = computed(
  () => turns.value.find(({ atM }) => atM >= (progress.value?.goneM ?? 0)) ?? null,
);

/** The crossing that comes next; null where none does. */
export const nextCrossing = computed(
  () => route.value?.crossings.find(({ atM }) => atM > (progress.value?.goneM ?? 0)) ?? null,
);

/** Seconds gone by since the watch was started, and how many the whole way takes at taxi speed; null without a way. */
export const times = computed(() => {
  const { aircraft } = documents.value;
  if (parts.value === null || progress.value === null || route.value === null) return null;
  const { sinceMs, leftM, next } = progress.value;
  const speedKt = aircraft?.taxi.maxKt ?? null;
  const arrivedMs = next === null ? sortie.value.taxied.at(-1)?.at.wallMs : undefined;
  const takes = (metres: number) =>
    speedKt === null ? null : (parts.value?.secondsAt(metres, speedKt) ?? null);
  return {
    elapsedS: sinceMs === null ? null : ((arrivedMs ?? wallMs.value) - sinceMs) / 1000,
    expectedS: takes(route.value.lengthM),
    leftS: takes(leftM),
  };
});

const nameOf = (node: NodeId | null | undefined): string | null =>
  (node ? nodes.value.get(node)?.name : null) ?? null;

/** What the calls are made of. */
export const callFacts = computed((): CallFacts | null => {
  if (field.value === null) return null;
  const crossing = nextCrossing.value;
  const entry = out.value?.entry ?? null;
  const legs = route.value?.legs ?? [];
  return {
    callsign: inputs.value.callsign.trim() || null,
    field: field.value.name,
    stand: nameOf(standing.value),
    hold: entry?.name ?? null,
    end: using.value,
    via: legs.filter(({ on }) => on !== 'apron').map(({ name }) => name),
    crossing:
      crossing === null
        ? null
        : {
            runway: crossing.runway,
            on: legs[crossing.leg]?.name ?? null,
            hold: nameOf(crossing.hold),
          },
    crossed: (route.value?.crossings ?? []).map(({ runway }) => runway),
    backtrack: (entry?.backtrackM ?? 0) > 0,
    intersection: (entry?.rollsFromM ?? 0) > 0,
    departTo: inputs.value.departTo,
  };
});

/** All calls, in the order they come. */
export const calls = computed(() => {
  const facts = callFacts.value;
  const { value: core } = parts;
  if (core === null || facts === null || field.value === null) return [];
  const { radio } = field.value;
  return core.CALLS.filter((kind) => kind !== 'crossing' || facts.crossing !== null).map((kind) =>
    core.callFor(kind, radio, facts),
  );
});

/** The call that comes next: by what the aircraft is doing. */
export const dueCall = computed(() => {
  const kind = dueKind();
  return calls.value.find((call) => call.kind === kind) ?? null;
});

function dueKind(): CallKind {
  const at = progress.value;
  if (purpose.value === 'landing') {
    return sortie.value.stamps.at(-1)?.what === 'landed' ? 'vacated' : 'inbound';
  }
  if (at === null || at.last === null || at.goneM === 0) return 'taxi';
  if (at.next === null || at.leftM === 0) return 'line-up';
  const crossing = nextCrossing.value;
  return crossing === null ? 'line-up' : 'crossing';
}

const set = (chosen: Partial<Inputs>) => add({ kind: 'set', inputs: chosen });

/** The aircraft stands there: on a stand, which it then leaves from and comes back to, or on any point. */
export function placeAt(node: NodeId): void {
  const isStand = nodes.value.get(node)?.kind === 'stand';
  if (isStand) set({ stand: node, taxiVia: null });
  if (!isStand || isOffStand.value) add({ kind: 'taxied', point: node, placed: true });
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

/** Loads the code, and lets the choice of an end in light wind go by how far each is from the stand. */
export async function startTaxi(): Promise<void> {
  const loaded = await loadTaxi();
  parts.value = loaded;
  effect(() => {
    const begins = from.value;
    const { field: of } = documents.value;
    if (of === null || begins === null) {
      taxiDistanceM.value = undefined;
      return;
    }
    const ends = endsOf(of).map(({ designator }) => designator);
    const distances = loaded.taxiDistances(of, begins, ends, rules.value);
    taxiDistanceM.value = (end) => distances.get(end) ?? null;
  });
}
