/** A route told point by point, in codes; the words are the view's. */

import type { Designator } from '../airfield/field';
import type { RunwayEntry } from './entries';
import type { Exit } from './exits';
import type { NodeId, TaxiEdge } from './graph';
import type { Turn } from './pace';
import type { Route } from './route';

/** One item of a route description. */
export type Told =
  | {
      readonly code: 'along';
      readonly name: string;
      readonly on: Exclude<TaxiEdge['on'], 'runway'>;
    }
  /**
   * Never a clearance: a runway is ahead, and one holds short of it, before crossing it or going
   * along it.
   */
  | {
      readonly code: 'runway-ahead';
      readonly runway: string;
      readonly hold: string | null;
      readonly along: boolean;
      /** The pilot was told to cross it. */
      readonly told: boolean;
    }
  /** Along a runway, whichever way it is used. */
  | { readonly code: 'along-runway'; readonly runway: string; readonly lengthM: number }
  /** A turn that the aircraft can't make. */
  | { readonly code: 'turn-too-tight'; readonly turnDeg: number; readonly onto: string }
  /** After landing beyond the last exit: back along the runway to it. */
  | {
      readonly code: 'back-to-exit';
      readonly end: Designator;
      readonly exit: string;
      readonly lengthM: number;
    }
  | { readonly code: 'hold-short'; readonly end: Designator; readonly hold: string | null }
  /** Along the runway to where the run begins. */
  | { readonly code: 'backtrack'; readonly end: Designator; readonly lengthM: number }
  /** The run begins where the taxiway meets the runway. */
  | { readonly code: 'intersection'; readonly end: Designator; readonly runM: number }
  | { readonly code: 'stand'; readonly name: string };

/** What a route is told with. */
export interface Telling {
  readonly route: Route | null;
  readonly turns: readonly Turn[];
  /** The name of a point of the plan; null if it has none. */
  readonly nameOf: (node: NodeId) => string | null;
}

/** The way out; without an entry it ends at what was told, before the runway. */
export function toldOut(telling: Telling, entry: RunwayEntry | null): readonly Told[] {
  if (entry === null) return toldAlong(telling);
  const { end, name, backtrackM, rollsFromM, runM } = entry;
  return [
    ...toldAlong(telling),
    { code: 'hold-short', end, hold: name },
    ...(backtrackM > 0 ? [{ code: 'backtrack', end, lengthM: backtrackM } as const] : []),
    ...(rollsFromM > 0 ? [{ code: 'intersection', end, runM } as const] : []),
  ];
}

/** The way in; `end` is the one landed on. */
export const toldIn = (
  telling: Telling,
  stand: string,
  exit: Exit | null,
  end: Designator | null,
): readonly Told[] => [
  ...(exit === null || end === null || exit.backtrackM === 0
    ? []
    : [{ code: 'back-to-exit', end, exit: exit.name, lengthM: exit.backtrackM } as const]),
  ...toldAlong(telling),
  { code: 'stand', name: stand },
];

function toldAlong({ route, turns, nameOf }: Telling): readonly Told[] {
  if (route === null) return [];
  const tooTight = turns.filter(({ canBeMade }) => !canBeMade);
  let legFromM = 0;
  return route.legs.flatMap((leg, index): Told[] => {
    const fromM = legFromM;
    legFromM += leg.lengthM;
    const tight = (isHere: (atM: number) => boolean) =>
      tooTight
        .filter(({ atM }) => isHere(atM))
        .map(({ turnDeg, onto }) => ({ code: 'turn-too-tight', turnDeg, onto }) as const);
    return [
      ...tight((atM) => Math.abs(atM - fromM) < SAME_POINT_M),
      leg.on === 'runway'
        ? { code: 'along-runway', runway: leg.name, lengthM: leg.lengthM }
        : { code: 'along', name: leg.name, on: leg.on },
      ...tight((atM) => atM >= fromM + SAME_POINT_M && atM <= legFromM - SAME_POINT_M),
      ...route.crossings
        .filter((crossing) => crossing.leg === index)
        .map(
          ({ runway, hold, alongM, told }) =>
            ({
              code: 'runway-ahead',
              runway,
              hold: hold === null ? null : nameOf(hold),
              along: alongM > 0,
              told,
            }) as const,
        ),
    ];
  });
}

/** Lengths added up in another order are equal but for rounding, metres. */
const SAME_POINT_M = 0.01;
