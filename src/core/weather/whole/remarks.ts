/**
 * Remarks: the few that are read, and those that are only recognised.
 *
 * Federal Meteorological Handbook No. 1, 12.7, except those of other nations, marked habit. Plain
 * language is left as it stands.
 */

import type { Read } from '../explainer';
import { phraseOf, type Token, textAt } from '../tokens';
import { pressureOf } from './air';
import type { Meaning, RemarkKind } from './meaning';
import { wholeGroup } from './written';

const PEAK_WIND = /^PK WND (\d{3})(\d{2,3})\/(\d\d)?(\d\d)(?= |$)/;
const SHIFT = /^WSHFT(?: \d{2,4})?(?: FROPA)?(?= |$)/;

/** The words of `PK WND 28045/1955` and of `WSHFT 1715 FROPA`. */
const LONGEST = 3;

type Kind =
  | RemarkKind
  | ('remarks' | 'maintenance' | 'peak-wind' | 'sea-level-pressure' | 'temperature-tenths');

/**
 * A pair of weather letters (FMH-1, 12.6.8; WMO table 4678) and the minute it began or ended, after
 * the hour if that differs. FMH-1, 12.7.1.
 */
const WEATHER =
  '(?:BC|BL|BR|DR|DS|DU|DZ|FC|FG|FU|FZ|GR|GS|HZ|IC|MI|PL|PO|PR|PY|RA|SA|SG|SH|SN|SQ|SS|TS|UP|VA)';
const TIME = '[BE](?:[01]\\d|2[0-3])?[0-5]\\d';

/** Shapes of words, no text fitting two; for longer remarks, of the first word. */
const SHAPES: readonly (readonly [Kind, shape: string])[] = [
  ['remarks', 'RMKS?|REMARKS?'],
  ['maintenance', '\\$'],
  ['peak-wind', 'PK'],
  ['sea-level-pressure', 'SLP(?:\\d{3}|NO)'],
  ['temperature-tenths', 'T[01]\\d{3}(?:[01]\\d{3})?'],
  ['station-kind', 'AO[12]A?'],
  ['sensor-out', '(?:TS|PWI|FZRA|RVR|P|VIS|CHI)NO'],
  ['pressure-rising-rapidly', 'PRESRR'],
  ['pressure-falling-rapidly', 'PRESFR'],
  ['pressure-tendency', '5(?:[0-8]\\d{3}|/{4})'],
  ['precipitation', 'P\\d{4}|[67](?:\\d{4}|/{4})'],
  ['snow-depth', '4/\\d{3}'],
  ['temperature-extremes', '[12][01]\\d{3}|4[01]\\d{3}[01]\\d{3}'],
  ['weather-times', `${WEATHER}{1,3}${TIME}(?:${WEATHER}{0,3}${TIME}){0,8}`],
  ['wind-shift', 'WSHFT'],
  ['lightning', 'LTG(?:IC|CC|CG|CA|CW){0,5}'],
  // Habit, former Soviet Union: millimetres of mercury, and hectopascals.
  ['field-pressure', 'QFE\\d{3}(?:[./]\\d{1,4})?'],
  // Habit, Canada.
  ['cloud-kinds', '(?:(?:CI|CC|CS|AC|ACC|AS|NS|SC|ST|SF|CU|CF|TCU|CB)\\d){1,8}'],
];

/** One test for all, each shape a capture group. */
const WORD = wholeGroup(SHAPES.map(([, shape]) => `(${shape})`).join('|'));

function kindOf(text: string): Kind | undefined {
  const [, ...parts] = WORD.exec(text) ?? [];
  return SHAPES[parts.findIndex((part) => part !== undefined)]?.[0];
}

/** Reads the remark that starts at a token; null if no known one does. */
export function readRemark(tokens: readonly Token[], at: number, end: number): Read | null {
  const text = textAt(tokens, at);
  const kind = kindOf(text);
  const one = (meaning: Meaning): Read => ({ meaning, end: at + 1 });
  switch (kind) {
    case undefined: {
      // Habit: the pressure in the other unit.
      const pressure = pressureOf(text);
      return pressure && one(pressure);
    }
    case 'remarks':
    case 'maintenance':
      return one({ code: kind });
    case 'sea-level-pressure':
      return one({ code: kind, seaLevelHpa: seaLevelHpaOf(text.slice(3)) });
    case 'temperature-tenths':
      return one({ code: kind, airC: tenthsOf(text, 1) ?? 0, dewPointC: tenthsOf(text, 5) });
    case 'peak-wind':
    case 'wind-shift':
      return readWords(tokens, at, end);
    default:
      return one({ code: 'remark', remark: kind });
  }
}

function readWords(tokens: readonly Token[], at: number, end: number): Read | null {
  const phrase = phraseOf(tokens, at, Math.min(end, at + LONGEST));
  const endOf = (words: string): number => at + words.split(' ').length;
  const shift = SHIFT.exec(phrase);
  if (shift) return { meaning: { code: 'remark', remark: 'wind-shift' }, end: endOf(shift[0]) };
  const peak = PEAK_WIND.exec(phrase);
  if (!peak) return null;
  const [words, from, speed, hour, minute] = peak;
  return {
    meaning: {
      code: 'peak-wind',
      fromDeg: Number(from),
      speedKt: Number(speed),
      hour: hour === undefined ? null : Number(hour),
      minute: Number(minute),
    },
    end: endOf(words),
  };
}

/**
 * Tens, units and tenths of hPa, after 9 or 10, whichever comes nearer to 1 000. FMH-1, 12.7.1
 * gives the digits; the prefix is common practice. Null for `NO`.
 */
function seaLevelHpaOf(digits: string): number | null {
  return digits === 'NO' ? null : (Number(digits) < 500 ? 1000 : 900) + Number(digits) / 10;
}

/** Tenths of a degree, three digits after a sign; 1 is minus. */
function tenthsOf(text: string, at: number): number | null {
  const tenths = Number(text.slice(at + 1, at + 4)) / 10;
  if (text.length <= at) return null;
  return text.charAt(at) === '1' ? 0 - tenths : tenths;
}
