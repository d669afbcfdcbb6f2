/**
 * Reads all of what a pilot pastes: every group, not the wind alone.
 *
 * Its wind, problems and kinds of stretches are those of readWind.ts, on which it is built; the
 * first answer needs only those, so this is loaded separately, later.
 */

import { chosenOf, isAnotherThan, NOTHING, readTokens } from './readWind';
import { EXPLAINED } from './whole/explain';
import { gather } from './whole/gather';
import type { ReadSpan, Report } from './whole/report';

/**
 * Reads a text and answers from its first observation, as `readWind` does. The spans, with their
 * meanings, cover the whole text; wind, weather and problems come from the one answered from. Never
 * throws, whatever the text; time and length are bounded as for `readWind`.
 */
export function readReport(text: string): Report {
  const reports = readReports(text);
  const first = reports[0];
  if (!first) return { ...NOTHING, spans: [], weather: gather(text, []) };
  if (reports.length === 1) return first;
  const chosen = chosenOf(reports) ?? first;
  const spans: ReadSpan[] = [];
  for (const report of reports) {
    const isAnother = isAnotherThan(chosen, report);
    for (const span of report.spans) spans.push(isAnother ? { ...span, kind: 'another' } : span);
  }
  return { ...chosen, spans };
}

/**
 * Reads every report, forecast or short wind in a text, in order; none in a blank text. Each has
 * its own spans, as places in the whole text. `newestFor` says which is the newest.
 */
export function readReports(text: string): readonly Report[] {
  return readTokens(text, EXPLAINED).reports.map(
    ({ kind, station, issued, wind, north, others, spans, problems }) => {
      const weather = gather(text, spans);
      // Named one by one: this runs for every key press, and spreading takes several times as long.
      return { kind, station, issued, wind, north, others, spans, problems, weather };
    },
  );
}
