/** What comes after the first answer: the whole report, the sun on each end, the winds so far. */

export { lowSunAhead } from '../earth/lowSun';
export { sunDay } from '../earth/sun';
export { compareEnds } from '../runway/compare';
export { preferenceApplies } from '../runway/preference';
export { issuedAt, newestFor } from '../weather/issued';
export { readReport } from '../weather/readReport';
export { readTokens } from '../weather/readWind';
export { outlookStage } from './outlook';
export { weatherStage } from './weather';

import type { EndsQuestion, Purpose } from '../runway/question';
import type { SettledFacts } from './facts';
import type { WindText } from './questions';
import { readWind, windQuestion } from './wind';

/** The question about the ends in a wind that was entered; null where it cannot be asked. */
export function questionAbout(
  settled: SettledFacts,
  entered: WindText | null,
  purpose: Purpose,
  at: Date,
): EndsQuestion | null {
  const { report, north } = readWind(entered);
  const question = windQuestion(settled, report?.wind ?? null, north, purpose, at);
  return typeof question === 'string' ? null : question;
}
