/** How old the wind and the report in use are, and which of them have grown old. */

import { type Aged, aged } from '../../core';
import { day, sortieMinute } from '../board';
import { wallMs } from './time';

/** How long ago the report was issued, by the sortie's clock, ms; null without one. */
const reportMs = (): number | null => {
  const issuedMs = day.issuedMs();
  return issuedMs === null ? null : sortieMinute.value - issuedMs;
};

/**
 * The age of the wind in use, ms: a report's counts by the sortie's clock from its time of issue,
 * any other wind's from its entry; null before the first.
 */
export function windMs(): number | null {
  const entered = day.enteredWind();
  // What is forecast counts by its own time.
  if (entered === null || day.windIsForecast()) return null;
  const issued = day.windIsNewer() ? null : reportMs();
  return issued ?? wallMs.value - entered.at.wallMs;
}

/** What has grown old, for someone who comes back. */
export const grownOld = (): readonly Aged[] =>
  aged(windMs(), reportMs(), reportMs() !== null && !day.windIsNewer());
