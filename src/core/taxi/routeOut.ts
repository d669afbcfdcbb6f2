/** From where the aircraft is to the holding point of an end. */

import type { Designator, Field } from '../airfield/field';
import { alternativesTo, routeKey } from './alternatives';
import { type AsTold, layAsTold, type ToldQuestion } from './asTold';
import { type RunwayEntry, runwayEntriesOf, stripWith } from './entries';
import { type TaxiFault, whyNoRoute } from './fault';
import { type NodeId, taxiGraph } from './graph';
import { type Route, routeAlong } from './route';
import { RUNWAY_WEIGHT, type TaxiRules, weightsOf } from './rules';
import { edgesTo, type Search, searchFrom } from './search';

/** What is asked about the route to a runway. */
export interface RouteOutQuestion {
  readonly field: Field;
  /** Where the aircraft is; null if the pilot hasn't said. */
  readonly from: NodeId | null;
  /** The end in use; null if there is none yet. */
  readonly end: Designator | null;
  readonly rules: TaxiRules;
  /** The entry the pilot chose; null for the whole run by the shortest route. */
  readonly entry?: ChosenEntry | null;
  /** The route the pilot chose among those offered, by its key; null for the shortest. */
  readonly via?: string | null;
  /** The route as told, which comes before all others; null if nobody told one. */
  readonly told?: string | null;
}

/** Names an entry: a holding point, and where the roll begins from it. */
export interface ChosenEntry {
  readonly end: Designator;
  readonly hold: NodeId;
  /** The run begins where the taxiway meets the runway: no backtrack. */
  readonly intersection: boolean;
}

/** An entry with the distance to its holding point. */
export interface OfferedEntry extends RunwayEntry {
  readonly taxiM: number;
}

/** The route to a runway. */
export interface RouteOut {
  /** The route in use; null if `fault` says why there is none. */
  readonly route: Route | null;
  /** Null where a route as told ends before the runway. */
  readonly entry: OfferedEntry | null;
  /** The route as told, with what keeps it from being followed; null if nobody told one. */
  readonly asTold: AsTold | null;
  /** Others that are hardly longer; includes the shortest, if another is in use. */
  readonly alternatives: readonly Route[];
  /** All reachable ways of entering the end, whole runs first, then by taxi distance. */
  readonly entries: readonly OfferedEntry[];
  readonly fault: TaxiFault | null;
}

const without = (fault: TaxiFault): RouteOut => ({
  route: null,
  entry: null,
  asTold: null,
  alternatives: [],
  entries: [],
  fault,
});

/** Whether an entry is the one named. */
export const isEntry = (entry: RunwayEntry, chosen: ChosenEntry | null | undefined): boolean =>
  chosen?.end === entry.end &&
  chosen.hold === entry.hold &&
  chosen.intersection === entry.rollsFromM > 0;

/** The route to a runway: the shortest one allowed, or the one chosen. */
export function findRouteOut(question: RouteOutQuestion): RouteOut {
  const { field, from, end, rules } = question;
  const begun = startOf(field, from);
  if (typeof begun !== 'number') return without(begun);
  if (end === null) return without({ code: 'no-end' });
  const all = runwayEntriesOf(field, end);
  if (all.length === 0) return without({ code: 'end-without-hold', end });
  const graph = taxiGraph(field);
  const weights = weightsOf(graph, rules);
  const forward = searchFrom(graph, begun, weights);
  const reached = reachable(field, end, forward);
  const first = reached[0];
  if (first === undefined) {
    const holds = all.map(({ hold }) => graph.indexOf.get(hold) ?? 0);
    return without(whyNoRoute(field, begun, holds, rules));
  }
  const chosen = reached.find(({ entry }) => isEntry(entry, question.entry)) ?? first;
  const routes = [
    ...(chosen.route === null ? [] : [chosen.route]),
    ...alternativesTo(field, forward, chosen.hold, weights),
  ];
  const own = routes.find((one) => routeKey(one) === question.via) ?? routes[0] ?? null;
  const planned: RouteOut = {
    route: own,
    entry: chosen.entry,
    asTold: null,
    alternatives: routes.filter((one) => one !== own),
    entries: reached.map(({ entry }) => entry),
    fault: null,
  };
  return question.told ? asToldInstead(planned, question, question.told) : planned;
}

/** What is asked of a route to a runway as told. */
export const toldOutQuestion = ({ field, from, end, rules }: RouteOutQuestion): ToldQuestion => ({
  ...{ field, from, end, rules },
  ...{ to: null, purpose: 'take-off', likelyExit: null },
});

/** The route as told in place of the plan's own, if it can be followed. */
function asToldInstead(planned: RouteOut, question: RouteOutQuestion, told: string): RouteOut {
  const asTold = layAsTold(told, toldOutQuestion(question));
  if (asTold.route === null) return { ...planned, asTold };
  const { route, entry } = asTold;
  const same = planned.entries.filter(({ hold }) => hold === entry?.hold);
  const used =
    entry === null
      ? null
      : (same.find((one) => isEntry(one, question.entry)) ??
        same.find(({ rollsFromM }) => rollsFromM === entry.rollsFromM) ?? {
          ...entry,
          taxiM: route.lengthM,
        });
  const own = planned.route === null ? [] : [planned.route];
  return {
    ...planned,
    route,
    entry: used,
    asTold,
    alternatives: [...own, ...planned.alternatives],
  };
}

/** The index of the aircraft's node, or why it is unknown. */
export function startOf(field: Field, from: NodeId | null): number | TaxiFault {
  const { nodes } = field.taxi;
  if (nodes.length === 0) return { code: 'no-plan' };
  if (from === null) {
    return { code: nodes.some(({ kind }) => kind === 'stand') ? 'no-start' : 'no-stand' };
  }
  return taxiGraph(field).indexOf.get(from) ?? { code: 'start-unknown', node: from };
}

/**
 * The reachable entries: whole runs first, by how much runway serves as taxiway, backtracking
 * included, and then by distance. Nobody goes along the runway in use to leave it and hold short of
 * it again: where no holding point of the end can be reached otherwise, the runway is entered at
 * another, and backtracked to the end.
 */
function reachable(field: Field, end: Designator, forward: Search) {
  const named = ranked(field, runwayEntriesOf(field, end), forward);
  const runway = stripWith(field, end)?.[0].name;
  const isAside = ({ route }: (typeof named)[number]) =>
    route?.crossings.some((one) => one.runway === runway && one.alongM > 0) !== true;
  const aside = named.filter(isAside);
  if (aside.length > 0) return aside;
  const beside = ranked(field, runwayEntriesOf(field, end, true), forward).filter(isAside);
  return beside.length > 0 ? beside : named;
}

function ranked(field: Field, entries: readonly RunwayEntry[], forward: Search) {
  const graph = taxiGraph(field);
  return entries
    .flatMap((entry) => {
      const hold = graph.indexOf.get(entry.hold) ?? 0;
      const path = edgesTo(forward, hold);
      if (path === null) return [];
      const route = routeAlong(field, path);
      const cost = (forward.cost[hold] ?? 0) + entry.accessM + entry.backtrackM * RUNWAY_WEIGHT;
      return [{ entry: { ...entry, taxiM: route?.lengthM ?? 0 }, hold, route, cost }];
    })
    .sort(
      (a, b) => Number(a.entry.rollsFromM > 0) - Number(b.entry.rollsFromM > 0) || a.cost - b.cost,
    );
}

/**
 * How far it is from a point to the start of the run on each reachable end, metres; unreachable
 * ends are left out. For choosing between ends.
 */
export function taxiDistances(
  field: Field,
  from: NodeId,
  ends: readonly Designator[],
  rules: TaxiRules,
): ReadonlyMap<Designator, number> {
  const graph = taxiGraph(field);
  const start = graph.indexOf.get(from);
  if (start === undefined) return new Map();
  const forward = searchFrom(graph, start, weightsOf(graph, rules));
  return new Map(
    ends.flatMap((end) => {
      const nearest = reachable(field, end, forward)[0]?.entry;
      return nearest === undefined
        ? []
        : [[end, nearest.taxiM + nearest.accessM + nearest.backtrackM] as const];
    }),
  );
}
