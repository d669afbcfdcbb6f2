/** What may be rolled on today: closed stretches, one-way, wide enough for the wheels. */

import type { Aircraft } from '../aircraft/aircraft';
import { isReversed, type TaxiEdge, type TaxiGraph } from './graph';

/** Names a stretch whichever way it is written: `A1~a`. */
export type StretchId = string;

/** What keeps a stretch from being used. */
export interface TaxiRules {
  /** Stretches that are closed today. */
  readonly closed: readonly StretchId[];
  /** The width that a taxiway must have, metres; null where the gear is not known: any will do. */
  readonly neededWidthM: number | null;
}

/** The name of a stretch. */
export const stretchId = ({ from, to }: Pick<TaxiEdge, 'from' | 'to'>): StretchId =>
  from < to ? `${from}~${to}` : `${to}~${from}`;

/**
 * Least clearance from the outer main wheel to the taxiway's edge, metres, by the span of the wheels.
 * ICAO Annex 14, vol. I, 3.9.3 (value from memory).
 */
export function wheelClearanceM(wheelSpanM: number): number {
  if (wheelSpanM < 4.5) return 1.5;
  if (wheelSpanM < 6) return 2.25;
  return 4;
}

/** The width of taxiway an aircraft needs: its wheels, and their clearance on both sides; null where its gear is not known. */
export function neededWidthM(aircraft: Aircraft | null): number | null {
  const trackM = aircraft?.performance?.gear.trackM;
  return trackM === undefined ? null : trackM + 2 * wheelClearanceM(trackM);
}

/**
 * A metre on a runway weighs as much as so many on a taxiway: more than any field is long, so that a
 * runway serves as a taxiway only where there is no other way.
 */
export const RUNWAY_WEIGHT = 1e6;

/** What each edge weighs; infinite where it may not be used. One-way is asked of each arc. */
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

/** Whether an edge may be rolled in that direction. */
export const isWithWay = ({ edges }: TaxiGraph, arc: number): boolean =>
  !isReversed(arc) || edges[arc >> 1]?.oneWay !== true;
