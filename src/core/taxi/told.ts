/** A route told point by point, in codes; the words are the view's. */

import type { Designator } from '../airfield/field';
import type { RunwayEntry } from './entries';
import type { TaxiEdge } from './graph';
import type { Route } from './route';

/** One item of a route description. */
export type Told =
  | { readonly code: 'along'; readonly name: string; readonly on: TaxiEdge['on'] }
  /** Never a clearance: a runway is ahead, and one holds short of it. */
  | { readonly code: 'runway-ahead'; readonly runway: string }
  | { readonly code: 'hold-short'; readonly end: Designator; readonly hold: string | null }
  /** Along the runway to where the run begins. */
  | { readonly code: 'backtrack'; readonly end: Designator; readonly lengthM: number }
  /** The run begins where the taxiway meets the runway. */
  | { readonly code: 'intersection'; readonly end: Designator; readonly runM: number }
  | { readonly code: 'stand'; readonly name: string };

export function toldOut(route: Route | null, entry: RunwayEntry): readonly Told[] {
  const { end, name, backtrackM, rollsFromM, runM } = entry;
  return [
    ...toldAlong(route),
    { code: 'hold-short', end, hold: name },
    ...(backtrackM > 0 ? [{ code: 'backtrack', end, lengthM: backtrackM } as const] : []),
    ...(rollsFromM > 0 ? [{ code: 'intersection', end, runM } as const] : []),
  ];
}

export const toldIn = (route: Route | null, stand: string): readonly Told[] => [
  ...toldAlong(route),
  { code: 'stand', name: stand },
];

function toldAlong(route: Route | null): readonly Told[] {
  if (route === null) return [];
  return route.legs.flatMap((leg, index): Told[] => [
    { code: 'along', name: leg.name, on: leg.on },
    ...route.crossings
      .filter((crossing) => crossing.leg === index)
      .map(({ runway }) => ({ code: 'runway-ahead', runway }) as const),
  ]);
}
