/** Reading reports: no text may upset the reader; and how fast it is. */

import { parseMetar } from 'metar-taf-parser';
import { readReport } from '../../src/core/weather/readReport';
import { readWind } from '../../src/core/weather/readWind';
import type { WindReport } from '../../src/core/weather/report';
import { PUBLISHED } from '../reference/reports/published';
import { PUBLISHED_WHOLE } from '../reference/reports/publishedWhole';
import { REAL_SHAPED } from '../reference/reports/realShaped';
import { WHOLE_REPORTS } from '../reference/reports/wholeReports';
import { type Row, ratio, timesASecond } from './row';

const REPORTS: readonly string[] = [
  ...PUBLISHED.map(({ text }) => text),
  ...PUBLISHED_WHOLE.map(({ text }) => text),
  ...REAL_SHAPED,
  ...WHOLE_REPORTS,
];

/** Short winds and borderline pieces, to mix into any text. */
const PIECES: readonly string[] = [
  ...'240/12 24012g20 240@12 vrb03 calm 240°/12 370/12 240260KT 24012G10KT 300V330 280V010 000V400'.split(
    ' ',
  ),
  ...'TAF TEMPO NOSIG FM0000 RMK = 0112/0212 011250Z XHAR METAR SAXX31 011250 NIL AUTO $ /////KT'.split(
    ' ',
  ),
  ...[
    '240 at 12 gusting 20',
    '240 12 20',
    '240//KT',
    '///12KT',
    '\n',
    '\u200b',
    '２４０１２ＫＴ',
    '🛫',
  ],
];

const ALPHABETS: readonly string[] = [
  '0123456789',
  '0123456789VGKTPMSRB/ ',
  'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789/ =',
  '240/12 @°.,G\n\t',
  ' \u00a0\u200b\u200f\u202e\ufeff\u0000\u007fé٢４Ｋß🛫\ud83d\udead=',
];

/** Pseudo-random numbers from 0 to below 1, repeatable by seed (mulberry32). */
function randomFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** Endless texts: random characters, shuffled pieces, and reports with a few slips. */
export function* textsFrom(seed: number): Generator<string, never> {
  const random = randomFrom(seed);
  const below = (limit: number) => Math.floor(random() * limit);
  const pick = (from: readonly string[] | string) => from[below(from.length)] ?? '';
  const many = (most: number, one: () => string) => Array.from({ length: below(most) }, one);
  const slip = (text: string): string => {
    const at = below(text.length + 1);
    const to = at + below(6);
    const rest = text.slice(to);
    const others = [
      rest,
      pick(pick(ALPHABETS)) + text.slice(at),
      pick(PIECES) + text.slice(at),
      ` ${pick(PIECES)} ${rest}`,
      text.slice(at, to).repeat(2) + rest,
      '',
    ];
    return text.slice(0, at) + pick(others);
  };
  for (;;) {
    const alphabet = pick(ALPHABETS);
    yield many(40, () => pick(alphabet)).join('');
    yield many(12, () => pick(PIECES)).join(pick(' /=') || ' ');
    yield many(6, () => '').reduce(slip, pick(REPORTS));
    yield many(6, () => '').reduce(slip, `${pick(REPORTS)}${pick(' =\n')}${pick(REPORTS)}`);
  }
}

/**
 * Reads `count` random and mutated texts, repeatable by seed; throws with the text on any fault.
 */
export function fuzzReports(count: number, seed: number): void {
  let done = 0;
  for (const text of textsFrom(seed)) {
    if (done++ >= count) return;
    let fault: string | null;
    try {
      fault = faultOf(readReport(text), text);
    } catch (thrown) {
      fault = `threw ${thrown}`;
    }
    if (fault) throw new Error(`${fault}: ${JSON.stringify(text)}`);
  }
}

const UNSEEN = /[\s\p{Cc}\p{Cf}]/u;

/** What contradicts itself in an answer; null if nothing does. */
export function faultOf({ kind, wind, spans, problems }: WindReport, text: string): string | null {
  let reached = 0;
  const isSeen = (from: number, to: number) => {
    for (let i = from; i < to; i++) if (!UNSEEN.test(text.charAt(i))) return true;
    return false;
  };
  for (const { at } of spans) {
    if (at[0] < reached || at[1] <= at[0] || at[1] > text.length) return `span ${at} out of order`;
    if (isSeen(reached, at[0])) return `nothing covers ${reached} to ${at[0]}`;
    reached = at[1];
  }
  if (isSeen(reached, text.length)) return `nothing covers the end from ${reached}`;
  for (const { at, code } of problems) {
    if (at[0] < 0 || at[1] <= at[0] || at[1] > text.length) return `${code} at ${at}, nowhere`;
  }
  if (wind === null)
    return spans.length > 0 && problems.length === 0 ? 'no wind, no word why' : null;

  if (kind === 'forecast' || kind === 'nothing') return `a wind out of ${kind}`;
  const { fromDeg, speedKt, gustKt, sectorDeg, variable } = wind;
  const isDirection = (deg: number, least: number) =>
    Number.isInteger(deg) && deg >= least && deg <= 360;
  const isSpeed = (kt: number) => kt >= 0 && kt < 250;
  if (fromDeg !== null && !isDirection(fromDeg, speedKt === 0 ? 0 : 1)) return `from ${fromDeg}`;
  if (variable && fromDeg !== null) return 'variable, with a direction';
  if (speedKt !== null && !isSpeed(speedKt)) return `speed ${speedKt}`;
  if (gustKt !== null && !isSpeed(gustKt)) return `gust ${gustKt}`;
  if (gustKt !== null && !wind.gustIsMinimum && gustKt < (speedKt ?? 0)) return 'gust below mean';
  if (sectorDeg?.some((deg) => !isDirection(deg, 1))) return `swing ${sectorDeg}`;
  return null;
}

/** Reports read per second by our reader and by metar-taf-parser, on the same list. */
export function measureReports(read: (text: string) => unknown): {
  ours: number;
  theirs: number;
  ratio: number | null;
} {
  const readAll = () => REPORTS.forEach(read);
  const parseAll = () => REPORTS.forEach(parsed);
  const times = ratio(readAll, parseAll);
  return {
    ours: timesASecond(readAll) * REPORTS.length,
    theirs: timesASecond(parseAll) * REPORTS.length,
    ratio: times,
  };
}

/** It throws on some reports; that counts as its answer. */
function parsed(text: string): unknown {
  try {
    return parseMetar(text);
  } catch (thrown) {
    return thrown;
  }
}

const FUZZED = 1_000_000;

function speedRow(what: string, read: (text: string) => unknown): Row {
  const { ours, theirs, ratio: measured } = measureReports(read);
  return {
    what: `${what}, against metar-taf-parser in the same run`,
    measured,
    unit: 'times as many a second',
    budget: { atLeast: 10 },
    note: `${Math.round(ours)} against ${Math.round(theirs)} reports a second`,
  };
}

export function rows(): readonly Row[] {
  const speeds = [
    speedRow('reading reports, every group', readReport),
    speedRow('reading reports, their wind', readWind),
  ];
  fuzzReports(FUZZED, 1);
  return [
    ...speeds,
    {
      what: 'random and mutated texts read without a fault',
      measured: FUZZED,
      unit: 'texts',
      budget: { atLeast: FUZZED },
    },
  ];
}
