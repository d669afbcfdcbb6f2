/**
 * When a report was issued, and which of several is newest. Time is an argument; there is no clock.
 */

import type { WindReport } from './report';
import type { Issued } from './statements';

const MINUTE_MS = 60_000;

/**
 * Of the moments with a report's day, hour and minute, the one nearest to `near`. A report names no
 * month: seen on the 1st, `312350Z` is of the month before. In a tie, the earlier.
 */
export function issuedAt({ day, hour, minute }: Issued, near: Date): Date {
  let best = Number.NaN;
  // The 31st nearest to the 1st of March is in January: February has none.
  for (let months = -2; months <= 2; months++) {
    const month = near.getUTCMonth() + months;
    const at = Date.UTC(near.getUTCFullYear(), month, day, hour, minute);
    // A day that the month does not have runs over into the next.
    if (new Date(at).getUTCDate() !== day) continue;
    const [away, least] = [Math.abs(at - near.getTime()), Math.abs(best - near.getTime())];
    if (!(away >= least)) best = at;
  }
  return new Date(best);
}

/** How old a report is at a time, minutes, negative if it is later; null if it names no time. */
export function ageMinutes(issued: Issued | null, at: Date): number | null {
  return issued && (at.getTime() - issuedAt(issued, at).getTime()) / MINUTE_MS;
}

/** Whether a report says anything about now: a forecast doesn't, nor does one that is `NIL`. */
const isObservation = ({ kind, wind, spans }: WindReport): boolean =>
  kind !== 'forecast' &&
  kind !== 'nothing' &&
  (wind !== null || spans.some(({ kind }) => kind === 'other'));

/**
 * The index of a station's newest observation among several reports, each placed in the month
 * nearest to `near`; null if there is none. A report without a station counts if none names the
 * station asked for; if none is asked for, all count. Of two with the same time the later in the
 * text wins, because it corrects the other; one without a time counts only if none has any.
 */
export function newestFor(
  reports: readonly WindReport[],
  station: string | null,
  near: Date,
): number | null {
  const newestOf = (counts: (report: WindReport) => boolean): number | null => {
    let newest: number | null = null;
    let newestMs = -Infinity;
    for (const [i, report] of reports.entries()) {
      if (!isObservation(report) || !counts(report)) continue;
      const ms = report.issued ? issuedAt(report.issued, near).getTime() : -Infinity;
      if (newest === null || ms > newestMs || (ms === newestMs && report.issued)) {
        newest = i;
        newestMs = ms;
      }
    }
    return newest;
  };
  if (station === null) return newestOf(() => true);
  return (
    newestOf((report) => report.station === station) ??
    newestOf((report) => report.station === null)
  );
}
