/** What may be taxied on today: open stretches, the right way round, wide enough for the wheels. */

import type { Aircraft } from '../aircraft/aircraft';
import { isReversed, type TaxiEdge, type TaxiGraph } from './graph';

/** Names a stretch regardless of direction: `A1~a`. */
export type StretchId = string;

/** What keeps a stretch from being used. */
export interface TaxiRules {
  /** Stretches closed today. */
  readonly closed: readonly StretchId[];
  /** The least taxiway width, metres; null if the gear is unknown: any width will do. */
  readonly neededWidthM: number | null;
}

/** The name of a stretch. */
export const stretchId = ({ from, to }: Pick<TaxiEdge, 'from' | 'to'>): StretchId =>
  from < to ? `${from}~${to}` : `${to}~${from}`;

/**
 * Least clearance from the outer main wheel to the taxiway's edge, metres, by wheel span. ICAO
 * Annex 14, vol. I, 3.9.3 (value from memory).
 */
export function wheelClearanceM(wheelSpanM: number): number {
  if (wheelSpanM < 4.5) return 1.5;
  if (wheelSpanM < 6) return 2.25;
  return 4;
}

/**
 * The taxiway width an aircraft needs: its wheels plus clearance on both sides; null if its gear is
 * unknown.
 */
export function neededWidthM(aircraft: Aircraft | null): number | null {
  const trackM = aircraft?.performance?.gear.trackM;
  return trackM === undefined ? null : trackM + 2 * wheelClearanceM(trackM);
}

/**
 * A metre of runway costs as much as this many of taxiway: more than any field is long, so that a
 * runway serves as a taxiway only where there is no other route.
 */
export const RUNWAY_WEIGHT = 1e6;

/** The cost of each edge; infinite if it may not be used. One-way is checked per arc. */
export function weightsOf(graph: TaxiGraph, rules: TaxiRules): Float64Array {
  const closed = new Set(rules.closed);
  const weights = new Float64Array(graph.edges.length);
  graph.edges.forEach((edge, index) => {
    const lengthM = graph.lengthM[index] ?? 0;
    if (closed.size > 0 && closed.has(stretchId(edge))) weights[index] = Number.POSITIVE_INFINITY;
    else if (isTooNarrow(edge, rules)) weights[index] = Number.POSITIVE_INFINITY;
    else weights[index] = edge.on === 'runway' ? lengthM * RUNWAY_WEIGHT : lengthM;
  });
  return weights;
}

const isTooNarrow = ({ on, widthM }: TaxiEdge, { neededWidthM }: TaxiRules): boolean =>
  on !== 'runway' && widthM !== undefined && neededWidthM !== null && widthM < neededWidthM;

/** Whether an edge may be taxied in that direction. */
export const isTaxiable = ({ edges }: TaxiGraph, arc: number): boolean =>
  !isReversed(arc) || edges[arc >> 1]?.oneWay !== true;
