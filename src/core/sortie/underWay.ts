/** What the pilot is in the middle of, and where a pilot who comes back is led. */

import type { Entry, ListId } from './entry';
import type { Sortie } from './fold';

/** What is going on in the steps. */
export type UnderWay =
  /** A list for when something is wrong. */
  | { readonly what: 'list'; readonly list: ListId; readonly since: Entry['at'] }
  /** From brake release until airborne. */
  | { readonly what: 'roll'; readonly since: Entry['at'] }
  /** The pilot was interrupted. */
  | { readonly what: 'interrupted'; readonly since: Entry['at'] };

/** What the pilot is in the middle of; null if it is nothing that must be gone back to. */
export function underWay({
  run,
  list,
  stamps,
  endedAt,
}: Pick<Sortie, 'run' | 'list' | 'stamps' | 'endedAt'>): UnderWay | null {
  if (endedAt !== null || run === null) return null;
  if (list !== null) return { what: 'list', list: list.list ?? '', since: list.openedAt };
  const last = stamps.findLast(({ pass }) => pass === run.passes.roll);
  if (last?.what === 'brakes released') return { what: 'roll', since: last.at };
  const { interruptedAt } = run;
  return interruptedAt === null ? null : { what: 'interrupted', since: interruptedAt };
}

/** Away for longer than this, the pilot has lost the thread, ms. Common practice, no published source. */
const LONG_MS = 10 * 60_000;

/**
 * Whether a pilot who comes back is led to the steps first: after a long time away, and when the app
 * is started at no particular place, if something is under way there.
 */
export const leadsToSteps = (
  sortie: Parameters<typeof underWay>[0],
  awayMs: number,
  isPlaceAsked: boolean,
): boolean => underWay(sortie) !== null && (!isPlaceAsked || awayMs >= LONG_MS);

/** What grows old: the wind in use, and the report. */
export interface Aged {
  readonly what: 'wind' | 'report';
  readonly ageMs: number;
}

/** A wind is old after a quarter of an hour, ms. Common practice, no published source. */
const OLD_WIND_MS = 15 * 60_000;

/** Routine reports are made every hour or half-hour (ICAO Annex 3, 4.3.1, from memory), ms. */
const OLD_REPORT_MS = 60 * 60_000;

/**
 * What is old by now, for someone who comes back. Ages in ms; null where there is none. `isReported`:
 * the wind in use is the report's own.
 */
export function aged(
  windMs: number | null,
  reportMs: number | null,
  isReported: boolean,
): readonly Aged[] {
  const old: Aged[] = [];
  if (windMs !== null && windMs > OLD_WIND_MS && !isReported)
    old.push({ what: 'wind', ageMs: windMs });
  const reportOldMs = isReported ? OLD_WIND_MS : OLD_REPORT_MS;
  if (reportMs !== null && reportMs > reportOldMs) old.push({ what: 'report', ageMs: reportMs });
  return old;
}
