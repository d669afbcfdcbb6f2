/** Reads what a pilot pastes or types: a report, a bulletin of them, or a wind in short. */

import { readStatement } from './readStatement';
import type { Place, Problem, Report, Span } from './report';
import { addSpan } from './spans';
import { statementsOf } from './statements';
import { MOST_CHARACTERS, type Token, tokensOf } from './tokens';

/**
 * Reads a text and answers from its first observation.
 *
 * A whole report is taken before a wind in short, and both before a forecast, whose wind is not the
 * wind now. The spans are those of the whole text; the problems are those of the one answered from.
 * Never throws, whatever the text; takes time in proportion to its length, and reads no more than
 * {@link MOST_CHARACTERS} of it.
 */
export function readReport(text: string): Report {
  const reports = readReports(text);
  const [first = NOTHING] = reports;
  if (reports.length < 2) return first;
  const ofKind = (kind: Report['kind']) => reports.find((report) => report.kind === kind);
  const chosen = ofKind('report') ?? ofKind('shorthand') ?? ofKind('forecast') ?? first;
  const spans: Span[] = [];
  for (const report of reports) {
    const isAnother = report !== chosen && isObservation(report);
    for (const { kind, at } of report.spans) addSpan(spans, isAnother ? 'another' : kind, ...at);
  }
  return { ...chosen, spans };
}

/**
 * Reads every report, forecast or short wind in a text, in order; none in a blank text. The spans
 * of each are its own, as places in the whole text. Bounded and never throwing as `readReport`.
 */
export function readReports(text: string): readonly Report[] {
  const { tokens, beyond } = boundedTokensOf(text);
  const reports = statementsOf(tokens).map(([start, end]) => readStatement(tokens, start, end));
  const observations = reports.filter(isObservation).length;
  for (const report of reports) {
    report.others = observations - (isObservation(report) ? 1 : 0);
    if (beyond) report.problems.push(tooLong(beyond));
  }
  if (beyond) addSpan(reports.at(-1)?.spans ?? [], 'unread', ...beyond);
  return reports;
}

const tooLong = (at: Place): Problem => ({
  code: 'too-long',
  at,
  values: { mostCharacters: MOST_CHARACTERS },
});

const isObservation = ({ kind }: Report): boolean => kind === 'report' || kind === 'shorthand';

/** A blank text: nothing to read, nothing to complain of. */
const NOTHING: Report = {
  kind: 'nothing',
  station: null,
  issued: null,
  wind: null,
  north: 'unstated',
  others: 0,
  spans: [],
  problems: [],
};

/** The tokens within the bound, and the stretch beyond it, where there is one. */
function boundedTokensOf(text: string): { tokens: Token[]; beyond: Place | null } {
  if (text.length <= MOST_CHARACTERS) return { tokens: tokensOf(text), beyond: null };
  const tokens = tokensOf(text.slice(0, MOST_CHARACTERS));
  // The cut may have halved the last one; half a group must not be read as a whole one.
  const halved = tokens.at(-1)?.to === MOST_CHARACTERS ? tokens.pop() : undefined;
  const from = halved?.from ?? MOST_CHARACTERS;
  // Also ends the text: without it the last piece read would seem unfinished.
  tokens.push({ text: '', textFrom: from, from, to: from });
  return { tokens, beyond: [from, text.length] };
}
