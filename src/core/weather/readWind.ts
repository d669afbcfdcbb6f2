/**
 * Reads the wind in what a pilot pastes or types: a report, a bulletin of them, or a wind in short.
 *
 * The first answer waits for this, so the other groups of a report are only recognised here;
 * readReport.ts reads them too.
 */

import type { Explainer, Read } from './explainer';
import { isKnownGroup } from './groups';
import { type ReportDraft, readStatement } from './readStatement';
import type { Problem, TextSpan, WindReport } from './report';
import { addSpan } from './spans';
import { endsOfStatement } from './statements';
import { MOST_CHARACTERS, type Token, textAt, tokensOf } from './tokens';
import type { ReadSpan } from './whole/report';

/** Recognises groups without explaining them. */
const UNEXPLAINED: Explainer = {
  word: () => null,
  observed: toldApart,
  expected: null,
  remarks: null,
};

/** A group that is known, and not read. */
export function toldApart(tokens: readonly Token[], at: number): Read | null {
  const isKnown = isKnownGroup(textAt(tokens, at), textAt(tokens, at + 1));
  return isKnown ? { meaning: null, end: at + 1 } : null;
}

/**
 * Reads a text and answers from its first observation.
 *
 * A whole report takes precedence over a wind in short, and both over a forecast, whose wind isn't
 * the wind now. The spans cover the whole text; the problems are those of the one answered from.
 * Never throws, whatever the text; takes time proportional to its length, and reads no more than
 * {@link MOST_CHARACTERS} of it.
 */
export function readWind(text: string): WindReport {
  const { reports } = readTokens(text);
  if (reports.length < 2) return reports[0] ?? NOTHING;
  const spans: ReadSpan[] = [];
  const chosen = chosenOf(reports) ?? NOTHING;
  for (const report of reports) {
    const isAnother = isAnotherThan(chosen, report);
    for (const { kind, at } of report.spans) addSpan(spans, isAnother ? 'another' : kind, ...at);
  }
  return { ...chosen, spans };
}

/** What the reports of a text say. */
export interface ReadTokens {
  /** Every report, forecast or short wind, in order; the spans of each are its own. */
  readonly reports: readonly ReportDraft[];
}

/** Reads every report in a text, none in a blank one. Bounded and never throwing as `readWind`. */
export function readTokens(text: string, explainer: Explainer = UNEXPLAINED): ReadTokens {
  const { tokens, beyond } = boundedTokensOf(text);
  const reports: ReportDraft[] = [];
  let observations = 0;
  let start = 0;
  for (const end of endsOfStatement(tokens)) {
    const report = readStatement(tokens, start, end, explainer);
    start = end;
    if (isObservation(report)) observations++;
    reports.push(report);
  }
  for (const report of reports) {
    report.others = observations - (isObservation(report) ? 1 : 0);
    if (beyond) report.problems.push(tooLong(beyond));
  }
  if (beyond) addSpan(reports.at(-1)?.spans ?? [], 'unread', ...beyond);
  return { reports };
}

/** The report a text is answered from; undefined if there is none. */
export function chosenOf<R extends WindReport>(reports: readonly R[]): R | undefined {
  const ofKind = (kind: WindReport['kind']) => reports.find((report) => report.kind === kind);
  return ofKind('report') ?? ofKind('shorthand') ?? ofKind('forecast') ?? reports[0];
}

/** Whether a report is an observation, but not the one answered from. */
export const isAnotherThan = (chosen: WindReport, report: WindReport): boolean =>
  report !== chosen && isObservation(report);

const tooLong = (at: TextSpan): Problem => ({
  code: 'too-long',
  at,
  values: { mostCharacters: MOST_CHARACTERS },
});

const isObservation = ({ kind }: WindReport): boolean => kind === 'report' || kind === 'shorthand';

/** A blank text: nothing to read, nothing to complain of. */
export const NOTHING: WindReport = {
  kind: 'nothing',
  station: null,
  issued: null,
  wind: null,
  north: 'unstated',
  others: 0,
  spans: [],
  problems: [],
};

/** The tokens within the bound, and the stretch beyond it, if there is one. */
function boundedTokensOf(text: string): { tokens: Token[]; beyond: TextSpan | null } {
  if (text.length <= MOST_CHARACTERS) return { tokens: tokensOf(text), beyond: null };
  const tokens = tokensOf(text.slice(0, MOST_CHARACTERS));
  // The cut may have halved the last one; half a group must not be read as a whole one.
  const halved = tokens.at(-1)?.to === MOST_CHARACTERS ? tokens.pop() : undefined;
  const from = halved?.from ?? MOST_CHARACTERS;
  // Also ends the text: without it the last piece read would seem unfinished.
  tokens.push({ text: '', textFrom: from, from, to: from });
  return { tokens, beyond: [from, text.length] };
}
