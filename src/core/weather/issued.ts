/** When a report was issued, and which of several is the newest. Time comes in; nothing here has a clock. */

import type { WindReport } from './report';
import type { Issued } from './statements';

const MINUTE_MS = 60_000;

/**
 * The moment with the day, hour and minute that a report gives which is nearest to `near`. A report
 * names no month: seen on the 1st, `312350Z` is of the month before. Of two as near, the earlier.
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

/** How old a report is at a time, minutes, negative when it is of later; null where it names no time. */
export function ageMinutes(issued: Issued | null, at: Date): number | null {
  return issued && (at.getTime() - issuedAt(issued, at).getTime()) / MINUTE_MS;
}

/** Whether a report says anything of now: a forecast does not, nor does one that is `NIL`. */
const isObservation = ({ kind, wind, spans }: WindReport): boolean =>
  kind !== 'forecast' &&
  kind !== 'nothing' &&
  (wind !== null || spans.some(({ kind }) => kind === 'other'));

/**
 * Which of several reports is the newest observation of a station, each placed in the month nearest
 * to `near`; its index, null where there is none. One without a station counts where none names the
 * station asked for; without a station to ask for, all count. Of two of the same time the later in
 * the text, which corrects the other; one without a time only where none has any.
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
