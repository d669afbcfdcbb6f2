/** One statement read: what it is, its wind, and what each of its pieces was read as. */

import type { Explainer } from './explainer';
import { type Observation, observationOf } from './observation';
import type { Problem, TextSpan, WindReport } from './report';
import { addGroups, addSpan } from './spans';
import { type AddWord, type Heading, headingOf, isEnd } from './statements';
import { type Token, textAt } from './tokens';
import type { ReadSpan } from './whole/report';

/** Starts remarks, or a trend, after which all is expected, not observed. FM 15, 15.14. */
const REMARKS = /^(?:RMKS?|REMARKS?)$/;
const TREND_OR_REMARKS =
  /^(?:NOSIG|TEMPO|BECMG|INTER|PROB\d\d|FM(?:\d{4}|\d{6})?|(?:TL|AT)\d{4}|RMKS?|REMARKS?)$/;

/** The period a forecast is for, `ddhh/ddhh`; six digits before November 2008. FM 51, 51.1. */
const VALIDITY = /^\d{4}\/\d{4}$/;
const OLD_VALIDITY = /^\d{6}$/;

/** A report that still lacks what only the whole text can tell. */
export interface ReportDraft extends WindReport {
  others: number;
  readonly spans: ReadSpan[];
  readonly problems: Problem[];
}

/** Reads the statement of the tokens from `start` to `end`, as if it stood alone in the text. */
export function readStatement(
  tokens: readonly Token[],
  start: number,
  end: number,
  explainer: Explainer,
): ReportDraft {
  const spans: ReadSpan[] = [];
  const addWord: AddWord = (kind, at, issued) => {
    const token = tokens[at];
    if (!token) return;
    addSpan(spans, kind, token.from, token.to, explainer.word(kind, token.text, issued, null));
  };
  const heading = headingOf(tokens, start, end, addWord);
  const { station, issued } = heading;
  const parts = partsOf(tokens, heading.end, end);
  const { body, trend, remarks, close } = parts;
  const addEnd = () => {
    for (let at = close; at < end; at++) addWord('end', at, issued);
  };

  const whole: TextSpan = [tokens[start]?.from ?? 0, tokens[end - 1]?.to ?? 0];
  if (isForecast(tokens, heading, parts)) {
    addGroups(spans, 'forecast', tokens, body, close, explainer.expected);
    addEnd();
    const problems: Problem[] = [{ code: 'forecast', at: whole }];
    // FM 51, 51.2, as FM 15: degrees true.
    const north = 'true';
    return { kind: 'forecast', station, issued, wind: null, north, others: 0, spans, problems };
  }

  const observation = observationOf(tokens, body, trend, heading, explainer, spans);
  addGroups(spans, 'trend', tokens, trend, remarks, explainer.expected);
  addGroups(spans, 'remarks', tokens, remarks, close, explainer.remarks);
  addEnd();

  const { written, wind, problems, unfinished } = observation;
  if (!written) {
    const isMissing = tokens.slice(start, trend).some(({ text }) => text === 'NIL');
    const mayGrow = mayGoOn(observation, parts, tokens.length);
    const code = isMissing ? 'wind-not-reported' : mayGrow ? 'incomplete' : 'no-wind';
    problems.push({ code, at: unfinished ?? whole });
  } else if (unfinished) {
    problems.push({ code: 'incomplete', at: unfinished });
  }
  const kind = kindOf(heading, observation, parts);
  const isSpoken = !hasType(heading) && tokens.slice(start, trend).some(isOfAtis);
  const north = isSpoken ? 'magnetic' : kind === 'report' ? 'true' : 'unstated';
  return { kind, station, issued, wind, north, others: 0, spans, problems };
}

/** A report in full, rather than its groups inside something else. */
const hasType = ({ type, timed, station }: Heading): boolean =>
  type === 'report' || (timed && station !== null);

/** Spoken texts: their wind is magnetic, however it is written. FAA AIM 4-3-6. */
const isOfAtis = ({ text }: Token): boolean => /^(?:D-?)?ATIS$|^INFO(?:RMATION)?$/.test(text);

/** Where the parts of a statement start, as token indexes. */
interface Parts {
  readonly body: number;
  readonly trend: number;
  readonly remarks: number;
  /** Where the last part ends: before the `=`. */
  readonly close: number;
}

function partsOf(tokens: readonly Token[], body: number, end: number): Parts {
  let close = end;
  while (close > body && isEnd(tokens, close - 1)) close--;
  let trend = body;
  while (trend < close && !TREND_OR_REMARKS.test(textAt(tokens, trend))) trend++;
  let remarks = trend;
  while (remarks < close && !REMARKS.test(textAt(tokens, remarks))) remarks++;
  return { body, trend, remarks, close };
}

/**
 * Whether a statement is a forecast: by its type, by a validity period where an observation has its
 * groups or, as a fragment, by containing nothing but expectations.
 */
function isForecast(tokens: readonly Token[], heading: Heading, parts: Parts): boolean {
  const isValidFor = (start: number, end: number): boolean =>
    tokens.slice(start, end).some(({ text }) => VALIDITY.test(text));
  if (heading.type === 'forecast' || isValidFor(parts.body, parts.trend)) return true;
  if (heading.type === 'report') return false;
  if (heading.timed) return OLD_VALIDITY.test(textAt(tokens, parts.body));
  const isAllTrend = parts.body === parts.trend && parts.trend < parts.remarks;
  return isAllTrend || isValidFor(parts.trend, parts.remarks);
}

function kindOf(heading: Heading, observation: Observation, parts: Parts): WindReport['kind'] {
  if (heading.type === 'report' || heading.timed) return 'report';
  if (!observation.written) return 'nothing';
  const hasMore = observation.hasOtherGroups || parts.trend < parts.close || heading.modified;
  return observation.written.coded && hasMore ? 'report' : 'shorthand';
}

/** Whether a statement without a wind ends the text before a wind was due. */
const mayGoOn = (observation: Observation, parts: Parts, tokenCount: number): boolean =>
  parts.trend === tokenCount && !observation.hasOtherGroups && !observation.hasUnread;
