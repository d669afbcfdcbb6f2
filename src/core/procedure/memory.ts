/**
 * What past sorties say about a pilot's habits: what is held back, taken out of order or done late.
 */

import { entriesThatCount } from '../sortie/counting';
import type { Entry, Hash, Id } from '../sortie/entry';
import { tickKey } from '../sortie/fold';
import type { Phase, Procedure, StepId } from './procedure';
import { order } from './stepState';

/** How a step can depart from the procedure. */
export type HabitKind =
  /** Held back at least once. */
  | 'held'
  /** Done after a step that follows it in its phase. */
  | 'out-of-order'
  /** Done when a later phase had begun. */
  | 'late';

/**
 * What one sortie says: which steps were handled, and which of them departed from the procedure.
 */
export interface SortieHabits {
  readonly handled: ReadonlySet<StepId>;
  readonly otherwise: ReadonlyMap<StepId, HabitKind>;
}

/** A step that departs from the procedure again and again. */
export interface Habit {
  readonly step: StepId;
  readonly kind: HabitKind;
  /** How many sorties, of how many in which the step was handled. */
  readonly times: number;
  readonly of: number;
}

/**
 * Combines sorties from several places, such as memory and the store: each once, with everything
 * known of it, duplicate entries included. Latest first, by the device's clock: the numbers of two
 * devices don't say which came earlier.
 */
export function sortiesTogether(
  ...places: readonly ReadonlyMap<Id, readonly Entry[]>[]
): ReadonlyMap<Id, readonly Entry[]> {
  const entries = new Map<Id, readonly Entry[]>();
  for (const [id, some] of places.flatMap((place) => [...place])) {
    entries.set(id, [...(entries.get(id) ?? []), ...some]);
  }
  const began = ([, some]: readonly [Id, readonly Entry[]]) =>
    some.reduce((first, { at }) => Math.min(first, at.wallMs), Number.POSITIVE_INFINITY);
  const byBeginning = [...entries].map((one) => ({ one, beganMs: began(one) }));
  byBeginning.sort((a, b) => b.beganMs - a.beganMs || (a.one[0] < b.one[0] ? 1 : -1));
  return new Map(byBeginning.map(({ one }) => one));
}

/**
 * Which procedure a sortie was flown by, its entries in any order; null if no step of one was done.
 */
export function procedureFlown(entries: readonly Entry[]): Hash | null {
  let first: (Entry & { readonly kind: 'open' }) | null = null;
  for (const entry of entries) {
    if (entry.kind !== 'open' || entry.list !== null) continue;
    if (first === null || entry.seq < first.seq) first = entry;
  }
  return first?.procedure ?? null;
}

/** What the entries of one sortie say about the steps of a procedure. */
export function habitsOf(entries: readonly Entry[], procedure: Procedure): SortieHabits {
  const places = placesIn(procedure);
  const handled = new Set<StepId>();
  const otherwise = new Map<StepId, HabitKind>();
  /** What was done already in a pass, by {@link tickKey}. */
  const done = new Set<string>();
  /** How far each phase had got in each pass, and the furthest phase since any was flown again. */
  const furthest = new Map<string, number>();
  let reached = 0;
  for (const entry of entriesThatCount(entries)) {
    if (entry.kind === 'reopen' || entry.kind === 'close') reached = 0;
    if (entry.kind !== 'done' && entry.kind !== 'held' && entry.kind !== 'cannot') continue;
    const at = places.get(entry.step);
    if (at === undefined) continue;
    handled.add(entry.step);
    const key = tickKey(entry.pass, entry.step);
    const pass = `${entry.pass}/${at.phase}`;
    const isNew = !done.has(key);
    if (entry.kind === 'held') otherwise.set(entry.step, 'held');
    else if (isNew && entry.kind === 'done' && !otherwise.has(entry.step)) {
      if (order(at.phase) < reached) otherwise.set(entry.step, 'late');
      else if (at.place < (furthest.get(pass) ?? -1)) otherwise.set(entry.step, 'out-of-order');
    }
    if (entry.kind === 'held') continue;
    done.add(key);
    furthest.set(pass, Math.max(furthest.get(pass) ?? -1, at.place));
    reached = Math.max(reached, order(at.phase));
  }
  return { handled, otherwise };
}

/** Where each step of the phases stands. */
function placesIn({ phases }: Procedure) {
  return new Map(
    phases.flatMap(({ phase, steps }) =>
      steps.map(({ id }, place): [StepId, { readonly phase: Phase; readonly place: number }] => [
        id,
        { phase, place },
      ]),
    ),
  );
}

/** Once may be chance, and what goes well more than two times in three isn't mentioned. */
const LEAST_TIMES = 2;
const LEAST_SHARE = 1 / 3;

/** The steps that depart again and again, most frequent first, each with its most frequent kind. */
export function habitsIn(sorties: readonly SortieHabits[]): readonly Habit[] {
  const steps = new Set(sorties.flatMap(({ otherwise }) => [...otherwise.keys()]));
  return [...steps]
    .flatMap((step): Habit[] => {
      const of = sorties.filter(({ handled }) => handled.has(step)).length;
      const kinds = sorties.flatMap(({ otherwise }) => otherwise.get(step) ?? []);
      if (kinds.length < LEAST_TIMES || kinds.length < of * LEAST_SHARE) return [];
      const count = (kind: HabitKind) => kinds.filter((one) => one === kind).length;
      const [kind = 'held'] = KINDS.toSorted((a, b) => count(b) - count(a));
      return [{ step, kind, times: count(kind), of }];
    })
    .filter(({ times }) => times >= LEAST_TIMES)
    .sort((a, b) => b.times / b.of - a.times / a.of || b.times - a.times);
}

const KINDS: readonly HabitKind[] = ['held', 'out-of-order', 'late'];
