/**
 * A wind as written, in a report's group or in words, before it is judged.
 *
 * WMO-No. 306 Vol. I.1, FM 15, 15.5; ICAO Annex 3, App. 3, 4.1. Words and short forms are common
 * practice, no published source.
 */

import { KT_PER_KMH, KT_PER_MPS } from '../units';
import type { TextSpan } from './report';
import { phraseOf, type Token, textAt } from './tokens';

/** A speed as written. */
export interface WrittenSpeed {
  /** Knots; null for slashes. */
  readonly kt: number | null;
  /** `P`: above what the instrument, or the code, can express. */
  readonly above: boolean;
}

/** A wind as written, and how much of the text it took. */
export interface WrittenWind {
  /** As written, 0 to 999; null for `VRB` and slashes. */
  readonly fromDeg: number | null;
  readonly variable: boolean;
  readonly speed: WrittenSpeed;
  readonly gust: WrittenSpeed | null;
  /** The directions a local report says it varies between, degrees as written; null if none. */
  readonly between: readonly [number, number] | null;
  /** Knots per unit written. */
  readonly unitKt: number;
  /** Group: with its unit, as in reports; otherwise short or in words. */
  readonly coded: boolean;
  readonly at: TextSpan;
  /** Index after its last token, including anything unfinished after it. */
  readonly end: number;
  /** Where an unfinished gust or unit begins, in the text; null if nothing is left open. */
  readonly unfinishedFrom: number | null;
}

/** Above what can be expressed: `P`, in local reports `ABV`. ICAO Annex 3, App. 3, table A3-1. */
const ABOVE = '(P|ABV|)';

const UNIT = '(KTS?|KNOTS?|KN|MPS|M/S|KMH|KM/H|KPH)';
const GUSTING = ' ?(?:G|GUSTS?|GUSTING)(?: TO)? ?';

/** Between direction and speed: nothing, a space, `/`, `@`, `°`, "degrees at". */
const BETWEEN = '(?: ?(?:[°º˚]|DEG|DEGREES))?(?: ?[/@-] ?| AT | )?';

/** Two or three digits, or one if the text goes on; at its end another may follow. */
const NUMBER = '(\\d{2,3}|\\d(?!$))';

/** A gust or a unit the next keys may complete, at the very end of the text. */
const OPEN_END = ' ?G[A-Z]{0,6}(?: TO?)? ?P?\\d?| ?K(?:M/?|P|NO?)?| ?M[P/]?';

/** A group as in reports, its unit included; a stray letter before it is allowed. */
const CODED = new RegExp(
  `^[A-Z]?(\\d{3}|VRB|/{2,3})(P?)(\\d{2,3}|//)(?:G(P?)(\\d{1,3}|//))?${UNIT}$`,
);

/** A wind as typed or said; its unit may be missing. */
const SPOKEN = new RegExp(
  `^(\\d{3}|VRB|VARIABLE)(${BETWEEN})${ABOVE}${NUMBER}(?: ?${UNIT})?` +
    `(?:${GUSTING}(P?)${NUMBER}(?: ?${UNIT})?)?(?=(${OPEN_END})$| |$)`,
);

/** A third number after `240 12`: the gust. Three digits would be the start of a swing. */
const BARE_GUST = new RegExp(`^ (\\d{2})(?: ?${UNIT})?(?= |$)`);

/** What may still become a wind. Five digits are one already, six may be a time. */
const OPEN = new RegExp(
  '^(?:\\d{1,4}|\\d{6}|/{1,5}K?|///\\d{1,2}K?|\\d{3}//?K?|CA?L?|V[ARIBLE]{0,7}' +
    '|(?:\\d{3}|VRB|VARIABLE)(?: ?(?:[°º˚]|D[EGRS]{0,6}))?(?: ?[/@-] ?| AT? ?)? ?P?\\d?)$',
);

/** No wind in words is longer than nine tokens; two more show whether the text ends there. */
const LONGEST = 11;

/** The wind of a whole group with its unit, such as `24012G20KT`; null if the token is none. */
export function codedWind(tokens: readonly Token[], index: number): WrittenWind | null {
  const token = tokens[index];
  const parts = token && CODED.exec(token.text);
  if (!parts) return null;
  const [, from = '', above, speed = '', gustAbove, gust, unit] = parts;
  return {
    fromDeg: numberOf(from),
    variable: from.startsWith('V'),
    speed: speedOf(speed, above, unit),
    gust: gust === undefined ? null : speedOf(gust, gustAbove, unit),
    between: null,
    unitKt: knotsPer(unit),
    coded: true,
    at: [token.from, token.to],
    end: index + 1,
    unfinishedFrom: null,
  };
}

/** The wind in words or in short that starts at a token (`240/12`); null if none does. */
export function spokenWind(tokens: readonly Token[], index: number): WrittenWind | null {
  const first = textAt(tokens, index);
  if (!/^(?:\d{3}|V(?:RB|ARIABLE$)|CALM$)/.test(first)) return null;
  if (first === 'CALM') return { ...CALM, ...reachOf(tokens, index, first.length, false) };
  const phrase = phraseOf(tokens, index, Math.min(tokens.length, index + LONGEST));
  const parts = SPOKEN.exec(phrase);
  if (!parts) return variableBetween(tokens, index, phrase);
  const [whole, from = '', between, above, speed = '', unit, gustAbove, gust, gustUnit, open] =
    parts;
  // `2405` is a direction and half a speed, `240105` a time or a direction and a speed: only a unit
  // can tell, and a single digit never joins a direction.
  const glued = between === '' && from !== 'VRB';
  if (glued && speed.length !== 2 && !(speed.length === 3 && (unit ?? above))) return null;

  const bare =
    between === ' ' && !gust && !unit ? BARE_GUST.exec(phrase.slice(whole.length)) : null;
  const inUnit = unit ?? gustUnit ?? bare?.[2] ?? unitBegun(open);
  const gustText = gust ?? bare?.[1];
  const length = whole.length + (bare?.[0].length ?? 0);
  return {
    fromDeg: numberOf(from),
    variable: from.startsWith('V'),
    speed: speedOf(speed, above, inUnit),
    gust: gustText === undefined ? null : speedOf(gustText, gustAbove, gustUnit ?? inUnit),
    between: null,
    unitKt: knotsPer(inUnit),
    coded: false,
    ...reachOf(tokens, index, length, open !== undefined),
  };
}

/** Whether all from a token to the end may still become a wind, such as `240/1`. */
export function isUnfinishedWind(tokens: readonly Token[], index: number): boolean {
  return tokens.length - index <= LONGEST && OPEN.test(phraseOf(tokens, index, tokens.length));
}

const CALM = {
  fromDeg: 0,
  variable: false,
  speed: { kt: 0, above: false },
  gust: null,
  between: null,
  unitKt: 1,
  coded: false,
} as const;

/** `VRB BTN 350/ AND 050/2KT`. ICAO Annex 3, App. 3, table A3-1. */
const VARIABLE_BETWEEN = new RegExp(
  `^VRB BTN (\\d{3})/? AND (\\d{3})(?:/| )${ABOVE}(\\d{1,3}) ?${UNIT}(?= |$)`,
);

function variableBetween(
  tokens: readonly Token[],
  index: number,
  phrase: string,
): WrittenWind | null {
  const parts = VARIABLE_BETWEEN.exec(phrase);
  if (!parts) return null;
  const [whole, first, second, above, speed = '', unit] = parts;
  return {
    fromDeg: null,
    variable: true,
    speed: speedOf(speed, above, unit),
    gust: null,
    between: [Number(first), Number(second)],
    unitKt: knotsPer(unit),
    coded: false,
    ...reachOf(tokens, index, whole.length, false),
  };
}

/**
 * What may follow a wind separately: `MAX30 MNM5`, `VRB BTN 350/ AND 070/` (ICAO Annex 3, App. 3,
 * table A3-1), and by habit `G30`. The lull says nothing about a runway.
 */
const APART = new RegExp(
  `^(?:(?:G|MAX) ?${ABOVE}(\\d{2,3}|\\d(?! ?$)) ?${UNIT}?` +
    `|(MNM) ?\\d{1,3} ?${UNIT}?|VRB BTN (\\d{3})/? AND (\\d{3})/?)(?= |$)`,
);
const APART_BEGUN =
  /^(?:G(?:P|ABV)?\d?|M(?:AX?|AX\d|NM?)?|VRB(?: B(?:T(?:N(?: [\dAND/ ]*)?)?)?)?)$/;
const LONGEST_APART = 5;

/** The wind with what follows it separately; a gust within its group takes precedence. */
export function withWhatStandsApart(
  wind: WrittenWind,
  tokens: readonly Token[],
  last: number,
): WrittenWind {
  if (wind.unfinishedFrom !== null || wind.end >= last) return wind;
  const { end } = wind;
  const first = textAt(tokens, end).charCodeAt(0);
  // Nearly always another group follows, which begins with none of these.
  if (first !== CAPITAL_G && first !== CAPITAL_M && first !== CAPITAL_V) return wind;
  const phrase = phraseOf(tokens, end, Math.min(last, end + LONGEST_APART));
  const parts = APART.exec(phrase);
  if (!parts) {
    const from = tokens[end]?.from ?? null;
    const isOpen = last === tokens.length && APART_BEGUN.test(phraseOf(tokens, end, last));
    return isOpen ? { ...wind, end: last, unfinishedFrom: from } : wind;
  }
  const [whole, above, most, unit, , , from, to] = parts;
  const reach = reachOf(tokens, end, whole.length, false);
  const gust = most === undefined ? null : speedIn(most, above, unit, wind.unitKt);
  const longer: WrittenWind = {
    ...wind,
    gust: wind.gust ?? gust,
    between: from === undefined ? wind.between : [Number(from), Number(to)],
    at: [wind.at[0], reach.at[1]],
    end: reach.end,
  };
  return withWhatStandsApart(longer, tokens, last);
}

const CAPITAL_G = 0x47;
const CAPITAL_M = 0x4d;
const CAPITAL_V = 0x56;

/** A speed whose unit may be that of the wind before it. */
const speedIn = (
  digits: string,
  above: string | undefined,
  unit: string | undefined,
  unitKt: number,
): WrittenSpeed =>
  unit === undefined
    ? { kt: Number(digits) * unitKt, above: isAbove(above) }
    : speedOf(digits, above, unit);

/** The number digits form; null for slashes and words. */
const numberOf = (figures: string): number | null => {
  const number = Number(figures);
  return Number.isNaN(number) ? null : number;
};

function speedOf(digits: string, above = '', unit = 'KT'): WrittenSpeed {
  const number = numberOf(digits);
  return { kt: number === null ? null : number * knotsPer(unit), above: isAbove(above) };
}

const isAbove = (above: string | undefined): boolean => above === 'P' || above === 'ABV';

function knotsPer(unit = 'KT'): number {
  if (unit === 'KT') return 1;
  if (unit.startsWith('M')) return KT_PER_MPS;
  return /^K[MP]/.test(unit) ? KT_PER_KMH : 1;
}

/** `M` can only become `MPS`; `K` alone may become either, and knots are the usual. */
const unitBegun = (open = '') => (/^ ?[KM]/.test(open) ? open.trimStart() : undefined);

/** Where a phrase of `length` characters ends, and where anything left open after it begins. */
function reachOf(tokens: readonly Token[], start: number, length: number, isOpen: boolean) {
  const from = tokens[start]?.from ?? 0;
  let to = from;
  let end = start;
  // A token takes its own characters and the space after it; the last one leaves −1.
  let left = length;
  for (let token = tokens[end]; token && left >= token.text.length; token = tokens[end]) {
    left -= token.text.length + 1;
    to = token.to;
    end++;
  }
  const next = tokens[end];
  if (!isOpen || !next) return { at: [from, to] as const, end, unfinishedFrom: null };
  // What is open may share its token with the wind (`27012G`) or stand alone (`27012 G`).
  const unfinishedFrom = left > 0 ? next.textFrom + left : next.from;
  if (left > 0) to = unfinishedFrom;
  return { at: [from, to] as const, end: tokens.length, unfinishedFrom };
}
