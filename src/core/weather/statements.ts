/**
 * A text split into statements: one report, one forecast, or one wind in short.
 *
 * A bulletin carries many reports, with line breaks inside them, so lines mean nothing; a statement
 * starts with its heading, and ends at `=` or the next heading.
 */

import type { SpanKind } from './report';
import { type Token, textAt } from './tokens';

/** Day of month and UTC time, as a heading gives them. */
export interface Issued {
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** What precedes the first group of a statement. */
export interface Heading {
  readonly type: 'report' | 'forecast' | null;
  readonly station: string | null;
  readonly issued: Issued | null;
  /** The text names a time, though perhaps without a day (`1250Z`). */
  readonly timed: boolean;
  /** It carries a modifier. */
  readonly modified: boolean;
  /** Index after its last token. */
  readonly end: number;
}

/** Receives what each token of a heading is, and the time of issue once it is read. */
export type AddWord = (kind: SpanKind, at: number, issued: Issued | null) => void;

const isReportType = (text: string): boolean => text === 'METAR' || text === 'SPECI';
const isType = (text: string): boolean => isReportType(text) || text === 'TAF';

/**
 * Modifiers of a report: corrected, amended, late, automatic, missing. FM 15, 15.4; WMO-No. 386,
 * Part II, 2.3.2.
 */
const MODIFIER = /^(?:AUTO|CORR?|AMD|NIL|RTD|(?:CC|RR|AA)[A-Z])$/;

/** Whether a word says what a report is besides. */
export const isModifier = (text: string): boolean => MODIFIER.test(text);

/** Four-letter words that stand where a station might, and are none. Common practice. */
const STATION = /^(?!WIND|CALM|FROM|NEXT|LAST|VRB\d|GUST|RMKS|WITH)[A-Z][A-Z0-9]{3}$/;

/** A station must be followed by a time, a wind, a modifier, or the start of one. */
const AFTER_STATION = /^(?:[\d/]|VRB|VR?$|AUTO$|CORR?$|NIL$)/;

/** `TTAAii CCCC YYGGgg`, the line above a bulletin. WMO-No. 386, Part II, 2.3.2. */
const isBulletinHeading = (tokens: readonly Token[], at: number): boolean =>
  /^[A-Z]{4}\d\d$/.test(textAt(tokens, at)) &&
  STATION.test(textAt(tokens, at + 1)) &&
  /^\d{6}$/.test(textAt(tokens, at + 2));

const BULLETIN_HEADING_TOKENS = 3;

const isStationAndTime = (tokens: readonly Token[], at: number): boolean =>
  /^\d{6}Z$/.test(textAt(tokens, at + 1)) && STATION.test(textAt(tokens, at));

/** Whether a token is the `=` that ends a report. */
export const isEnd = (tokens: readonly Token[], at: number): boolean => textAt(tokens, at) === '=';

/** Where each statement ends, `=` included, and the next begins: token indexes, plus one. */
export function endsOfStatement(tokens: readonly Token[]): number[] {
  const ends: number[] = [];
  let start = 0;
  // Types and modifiers alone don't make a statement: `METAR COR XHAR` is one.
  let begun = false;
  const close = (end: number) => {
    if (end > start) ends.push(end);
    start = end;
    begun = false;
  };
  for (let i = 0; i < tokens.length; i++) {
    const text = textAt(tokens, i);
    if (isEnd(tokens, i)) {
      while (isEnd(tokens, i + 1)) i++;
      close(i + 1);
    } else if (isBulletinHeading(tokens, i)) {
      if (begun) close(i);
      i += BULLETIN_HEADING_TOKENS - 1;
    } else {
      if (begun && (isType(text) || isStationAndTime(tokens, i))) close(i);
      begun ||= !isType(text) && !isModifier(text);
    }
  }
  if (start === 0 && tokens.length > 0) return [tokens.length];
  close(tokens.length);
  return ends;
}

/** Reads what precedes the first group from `start` to `end`; calls `addWord` for each token. */
export function headingOf(
  tokens: readonly Token[],
  start: number,
  end: number,
  addWord: AddWord,
): Heading {
  let type: Heading['type'] = null;
  let station: string | null = null;
  let issued: Issued | null = null;
  let timed = false;
  let modified = false;
  let at = start;

  while (at < end) {
    const text = textAt(tokens, at);
    const next = at + 1 < end ? textAt(tokens, at + 1) : '';
    let kind: SpanKind;
    if (isBulletinHeading(tokens, at)) {
      addWord('heading', at++, null);
      addWord('heading', at++, null);
      kind = 'heading';
    } else if (isType(text)) {
      type = isReportType(text) ? (type ?? 'report') : 'forecast';
      kind = 'type';
    } else if (isModifier(text)) {
      modified = true;
      kind = 'modifier';
    } else if (!station && !timed && STATION.test(text) && (type || AFTER_STATION.test(next))) {
      station = text;
      kind = 'station';
    } else {
      const isExpected = station !== null || type !== null;
      const time = timed ? null : timeOf(text, isExpected && next !== '');
      if (!time) break;
      timed = true;
      issued = time.issued;
      kind = 'time';
    }
    addWord(kind, at++, issued);
  }
  return { type, station, issued, timed, modified, end: at };
}

/**
 * A time of issue, null if the text is none. Six digits without their `Z` are one only after a
 * station or a type, and not at the end of the text, where a wind may still be being typed.
 */
function timeOf(text: string, mayLackZ: boolean): { issued: Issued | null } | null {
  if (/^\d{4}Z$/.test(text)) return { issued: null };
  const parts = /^(\d\d)(\d\d)(\d\d)(Z?)$/.exec(text);
  if (parts === null || !(parts[4] === 'Z' || mayLackZ)) return null;
  const [day, hour, minute] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  const isTime = day >= 1 && day <= 31 && hour <= 23 && minute <= 59;
  return isTime ? { issued: { day, hour, minute } } : null;
}
