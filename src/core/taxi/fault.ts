/** Why a route can't be found. */

import type { Designator, Field } from '../airfield/field';
import { type NodeId, type TaxiGraph, taxiGraph } from './graph';
import { type StretchId, type TaxiRules, weightsOf } from './rules';
import { searchFrom } from './search';

/** Why there is no route. */
export type TaxiFault =
  /** The field's document has no taxiways. */
  | { readonly code: 'no-plan' }
  | { readonly code: 'no-end' }
  /** The field has stands, and the pilot hasn't said which one the aircraft is on. */
  | { readonly code: 'no-start' }
  /** The plan has no stand; the pilot can start from any point. */
  | { readonly code: 'no-stand' }
  /** Where the aircraft is may be known, but not which stand it goes to. */
  | { readonly code: 'no-destination' }
  /** The plan has no stand to go to. */
  | { readonly code: 'no-stand-to-go-to' }
  | { readonly code: 'start-unknown'; readonly node: NodeId }
  /** No holding point gives on to the end. */
  | { readonly code: 'end-without-hold'; readonly end: Designator }
  /** No route leaves the landing runway. */
  | { readonly code: 'no-exit'; readonly end: Designator }
  /** There would be a route, but for what is closed today. */
  | { readonly code: 'closed'; readonly stretches: readonly StretchId[] }
  /** There would be a route, but for a taxiway that is too narrow. */
  | { readonly code: 'too-narrow'; readonly neededWidthM: number }
  /** There would be a route, but for the direction of a one-way taxiway. */
  | { readonly code: 'one-way' }
  /** Nothing connects the two points: the plan is in pieces. */
  | { readonly code: 'in-pieces' };

/**
 * Why there is no route from a node to any of several others: the restriction without which there
 * would be one.
 */
export function whyNoRoute(
  field: Field,
  from: number,
  to: readonly number[],
  rules: TaxiRules,
): TaxiFault {
  const graph = taxiGraph(field);
  const leads = (asked: TaxiGraph, leaving: Partial<TaxiRules>) => {
    const { cost } = searchFrom(asked, from, weightsOf(asked, { ...rules, ...leaving }));
    return to.some((node) => cost[node] !== Number.POSITIVE_INFINITY);
  };
  if (rules.closed.length > 0 && leads(graph, { closed: [] })) {
    return { code: 'closed', stretches: rules.closed };
  }
  if (rules.neededWidthM !== null && leads(graph, { closed: [], neededWidthM: null })) {
    return { code: 'too-narrow', neededWidthM: rules.neededWidthM };
  }
  const bothWays = { ...graph, edges: graph.edges.map((edge) => ({ ...edge, oneWay: false })) };
  if (leads(bothWays, { closed: [], neededWidthM: null })) return { code: 'one-way' };
  return { code: 'in-pieces' };
}
