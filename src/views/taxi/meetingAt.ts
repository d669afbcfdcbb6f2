/** What meets at a point of the taxi plan. */

import type { TaxiEdge, TaxiNode } from '../../core';

/** The names of what meets there, each once, in the order of the plan. */
export const meetingAt = ({ id }: TaxiNode, edges: readonly TaxiEdge[]): readonly string[] => [
  ...new Set(edges.filter(({ from, to }) => from === id || to === id).map(({ name }) => name)),
];
