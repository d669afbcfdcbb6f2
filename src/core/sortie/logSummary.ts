/** A sortie's line in the log, small enough to hold thousands. */

import type { Hash, Id } from './entry';
import type { LoggedSortie } from './log';
import { blockMinutes, flightMinutes } from './logTimes';

/** One line of the log. Computed from the entries, and recomputed when some are added. */
export interface LogSummary {
  readonly sortie: Id;
  /** The format of this line; one in another format is recomputed. */
  readonly make: number;
  readonly field: Hash | null;
  readonly aircraft: Hash | null;
  /** The procedure it was last flown with. */
  readonly procedure: Hash | null;
  readonly callsign: string;
  /** When something was first done in it, by both clocks. */
  readonly wallMs: number;
  readonly sortieMs: number;
  /** Off chocks, airborne, landed and on chocks, by the sortie's clock; null if unknown. */
  readonly times: readonly (number | null)[];
  readonly blockMinutes: number | null;
  readonly flightMinutes: number | null;
  readonly landings: number;
  readonly heldBack: number;
  readonly cannot: number;
  readonly notes: number;
  /** Take-offs that were rejected. */
  readonly rejected: number;
  /** It was gone on with outside limits. */
  readonly outside: boolean;
  /** Something was done in it: a step or a moment. A merely planned sortie isn't listed. */
  readonly flown: boolean;
}

/** Incremented when a line comes to say more, or something else. */
export const SUMMARY_MAKE = 4;

/** The line of a sortie. */
export function summaryOf(sortie: LoggedSortie): LogSummary {
  const { times } = sortie;
  return {
    sortie: sortie.id,
    make: SUMMARY_MAKE,
    field: sortie.field,
    aircraft: sortie.aircraft,
    procedure: sortie.procedure,
    callsign: sortie.callsign,
    wallMs: sortie.beganAt.wallMs,
    sortieMs: sortie.beganAt.sortieMs,
    times: [times['off chocks'], times.airborne, times.landed, times['on chocks']].map(
      ({ sortieMs }) => sortieMs,
    ),
    blockMinutes: blockMinutes(times),
    flightMinutes: flightMinutes(times),
    landings: sortie.landings,
    heldBack: sortie.heldBack.length,
    cannot: sortie.cannot.length,
    notes: sortie.notes.length,
    rejected: sortie.stamps.filter(({ what }) => what === 'stopping').length,
    outside: sortie.accepted.length > 0,
    flown:
      sortie.done + sortie.heldBack.length + sortie.cannot.length > 0 || sortie.stamps.length > 0,
  };
}

/** Several sorties together. Unknown times count as none. */
export interface LogTotals {
  readonly sorties: number;
  readonly blockMinutes: number;
  readonly flightMinutes: number;
  readonly landings: number;
}

/** The totals of what was flown. */
export function totalsOf(lines: readonly LogSummary[]): LogTotals {
  const flown = lines.filter((line) => line.flown);
  const sum = (of: (line: LogSummary) => number | null) =>
    flown.reduce((total, line) => total + (of(line) ?? 0), 0);
  return {
    sorties: flown.length,
    blockMinutes: sum((line) => line.blockMinutes),
    flightMinutes: sum((line) => line.flightMinutes),
    landings: sum((line) => line.landings),
  };
}

/** The order of the log: latest first. */
export function compareLines(a: LogSummary, b: LogSummary): number {
  return b.wallMs - a.wallMs || (a.sortie < b.sortie ? 1 : -1);
}
