/** From a landing to the stand. */

import type { Designator, Field } from '../airfield/field';
import { type AsTold, layAsTold, type ToldQuestion } from './asTold';
import { type Exit, exitsOf } from './exits';
import { type TaxiFault, whyNoRoute } from './fault';
import { type NodeId, taxiGraph } from './graph';
import { type Route, routeAlong } from './route';
import { type TaxiRules, weightsOf } from './rules';
import { edgesTo, searchFrom } from './search';

/** What is asked about the route in. */
export interface RouteInQuestion {
  readonly field: Field;
  /** The end landed on; null if there is none yet. */
  readonly end: Designator | null;
  /**
   * From the landing threshold to where the aircraft is down to taxi speed, metres; null if
   * unknown.
   */
  readonly landingM: number | null;
  /** The stand; null if the pilot hasn't said. */
  readonly to: NodeId | null;
  /** Where the aircraft is, once the pilot has said so: the runway is behind it. */
  readonly from: NodeId | null;
  readonly rules: TaxiRules;
  /** The route as told, which comes before the plan's own; null if nobody told one. */
  readonly told?: string | null;
}

export interface RouteIn {
  readonly route: Route | null;
  /** Where to leave the runway; null if the aircraft has left it, or if unknown. */
  readonly exit: Exit | null;
  /** The route as told, with what keeps it from being followed; null if nobody told one. */
  readonly asTold: AsTold | null;
  readonly fault: TaxiFault | null;
}

const without = (fault: TaxiFault): RouteIn => ({
  route: null,
  exit: null,
  asTold: null,
  fault,
});

/** What is asked of a route in as told. */
export function toldInQuestion(question: RouteInQuestion): ToldQuestion {
  const { field, end, to, from, rules, landingM } = question;
  const likely =
    from === null && end !== null ? likelyExit(exitsOf(field, end, rules), landingM) : null;
  const likelyNode = likely?.node ?? null;
  return { field, end, to, from, rules, purpose: 'landing', likelyExit: likelyNode };
}

/** The route in: as told, if it can be followed, or the plan's own. */
export function findRouteIn(question: RouteInQuestion): RouteIn {
  const planned = ownRouteIn(question);
  if (!question.told) return planned;
  const { field, end, rules, landingM } = question;
  const asTold = layAsTold(question.told, toldInQuestion(question));
  if (asTold.route === null) return { ...planned, asTold };
  const exits = end === null ? [] : exitsOf(field, end, rules);
  const left = exits.find(({ node }) => node === asTold.exit);
  const backtrackM = Math.max(0, (landingM ?? 0) - (left?.fromThresholdM ?? 0));
  const exit = left === undefined ? null : { ...left, backtrackM };
  return { route: asTold.route, exit, asTold, fault: null };
}

/** The shortest, from where today's landing leaves the runway, or from where the aircraft is. */
function ownRouteIn({ field, end, landingM, to, from, rules }: RouteInQuestion): RouteIn {
  const stand = destinationOf(field, to);
  if (typeof stand !== 'number') return without(stand);
  const graph = taxiGraph(field);
  let exit: Exit | null = null;
  let begun = from === null ? undefined : graph.indexOf.get(from);
  if (begun === undefined) {
    if (end === null) return without({ code: 'no-end' });
    exit = likelyExit(exitsOf(field, end, rules), landingM);
    if (exit === null) return without({ code: 'no-exit', end });
    begun = graph.indexOf.get(exit.node) ?? 0;
  }
  const path = edgesTo(searchFrom(graph, begun, weightsOf(graph, rules)), stand);
  if (path === null) return { ...without(whyNoRoute(field, begun, [stand], rules)), exit };
  return { route: routeAlong(field, path), exit, asTold: null, fault: null };
}

/** The index of the stand, or why there is none to go to: the aircraft may be anywhere. */
function destinationOf(field: Field, to: NodeId | null): number | TaxiFault {
  const { nodes } = field.taxi;
  if (nodes.length === 0) return { code: 'no-plan' };
  if (to !== null) return taxiGraph(field).indexOf.get(to) ?? { code: 'no-destination' };
  const isStand = nodes.some(({ kind }) => kind === 'stand');
  return { code: isStand ? 'no-destination' : 'no-stand-to-go-to' };
}

/** The first exit a landing can make; if it rolls past them all, the last, by backtracking. */
function likelyExit(
  exits: readonly Omit<Exit, 'backtrackM'>[],
  landingM: number | null,
): Exit | null {
  if (landingM === null) return null;
  const ahead = exits.find(({ fromThresholdM }) => fromThresholdM >= landingM);
  if (ahead !== undefined) return { ...ahead, backtrackM: 0 };
  const last = exits.at(-1);
  return last === undefined ? null : { ...last, backtrackM: landingM - last.fromThresholdM };
}
