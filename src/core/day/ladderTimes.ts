/** When the gates of a roll and its climb are expected. */

import type { Id } from '../sortie/entry';
import type { Stamp } from '../sortie/fold';
import type { ClimbRung, Ladder, Rung } from './ladder';

export interface ExpectedGate {
  readonly gate: Rung | ClimbRung;
  /** By the clock that stamps moments, ms. */
  readonly atMs: number;
}

/** A take-off under way. */
export interface TakeoffUnderWay {
  /** The moment that began it. */
  readonly id: Id;
  /** All gates in ladder order, past ones too. */
  readonly gates: readonly ExpectedGate[];
}

/**
 * The gates of the take-off that the last moments began; null before one, once it is stopped, and
 * after landing.
 *
 * Gates of the roll count from brake release. Gates of the climb count from the expected lift-off,
 * or from the moment Airborne if that came sooner: a limit called early does no harm, one called
 * late does. Without a brake release, as in a touch-and-go, there are only those of the climb.
 */
export function takeoffUnderWay(
  { rungs, climb }: Ladder,
  stamps: readonly Stamp[],
): TakeoffUnderWay | null {
  const last = stamps.at(-1);
  const airborne = last?.what === 'airborne' ? last : undefined;
  const begun = airborne === undefined ? last : stamps.at(-2);
  const released = begun?.what === 'brakes released' ? begun : undefined;
  const id = released?.id ?? airborne?.id;
  if (id === undefined) return null;

  const releasedMs = released?.at.wallMs ?? Number.POSITIVE_INFINITY;
  const runS = rungs.find(({ what }) => what === 'lift-off')?.s ?? Number.POSITIVE_INFINITY;
  const liftOffMs = Math.min(
    releasedMs + 1000 * runS,
    airborne?.at.wallMs ?? Number.POSITIVE_INFINITY,
  );
  const onTheRoll = airborne === undefined ? rungs : [];
  return {
    id,
    gates: [
      ...onTheRoll.map((gate) => ({ gate, atMs: releasedMs + 1000 * gate.s })),
      ...climb.map((gate) => ({ gate, atMs: liftOffMs + 1000 * gate.fromLiftOffS })),
    ].filter(({ atMs }) => Number.isFinite(atMs)),
  };
}
