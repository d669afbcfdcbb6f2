/** The four times of a log: off chocks, airborne, landed, on chocks. */

import type { Id, Moment } from './entry';

/** The moments a log has a time for, in order. */
export const LOG_MOMENTS = [
  'off chocks',
  'airborne',
  'landed',
  'on chocks',
] as const satisfies readonly Moment[];

export type LogMoment = (typeof LOG_MOMENTS)[number];

/** A time and its origin: a key that stamped it, as "Leaving" on Taxi does, or the steps beside it. */
export interface RecordedTime {
  /** By the sortie's own clock, ms since 1970 UTC. */
  readonly sortieMs: number;
  /** `steps`: the first one done of the taxi, or the last one done after landing. */
  readonly from: 'stamp' | 'steps';
}

/** A time in the log. */
export interface LoggedTime {
  /** By the sortie's own clock, ms since 1970 UTC; null if there is none, or it was struck out. */
  readonly sortieMs: number | null;
  /** The original, whatever was written over it. */
  readonly recorded: RecordedTime | null;
  /** The correction in force, to be undone; null if none was made. */
  readonly correction: Id | null;
}

/** The four times of a sortie. */
export type LogTimes = Readonly<Record<LogMoment, LoggedTime>>;

const MINUTE_MS = 60_000;

/**
 * Whole minutes from one time of a log to another, each read to its minute, as on the page: 1850 to
 * 1912 is 22. Null if one is missing, or they are out of order.
 */
export function minutesBetween(from: LoggedTime, to: LoggedTime): number | null {
  if (from.sortieMs === null || to.sortieMs === null) return null;
  const minutes = Math.floor(to.sortieMs / MINUTE_MS) - Math.floor(from.sortieMs / MINUTE_MS);
  return minutes < 0 ? null : minutes;
}

/** Minutes from off chocks to on chocks: block time. */
export const blockMinutes = (times: LogTimes): number | null =>
  minutesBetween(times['off chocks'], times['on chocks']);

/** Minutes from airborne to landed. */
export const flightMinutes = (times: LogTimes): number | null =>
  minutesBetween(times.airborne, times.landed);

const DAY_MS = 24 * 60 * MINUTE_MS;

/**
 * The moment at a time of day, hours and minutes UTC, nearest to another moment; ms since 1970 UTC.
 */
export function nearestAtMinute(minuteOfDay: number, nearMs: number): number {
  const sameDay = Math.floor(nearMs / DAY_MS) * DAY_MS + minuteOfDay * MINUTE_MS;
  const days = [sameDay - DAY_MS, sameDay, sameDay + DAY_MS];
  return days.reduce((best, ms) => (Math.abs(ms - nearMs) < Math.abs(best - nearMs) ? ms : best));
}
