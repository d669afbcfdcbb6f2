/**
 * What a trend and a forecast are made of besides groups of an observation.
 *
 * WMO-No. 306 Vol. I.1, FM 15, 15.14, and FM 51; section numbers from memory.
 */

import { judgeWind } from '../judgeWind';
import { phraseOf, type Token, textAt } from '../tokens';
import { codedWind } from '../writtenWind';
import type { HourOfDay, Meaning, TrendKind } from './meaning';
import { type Read, readGroup } from './readGroup';
import { numberOf } from './written';

const CHANGE = /^(?:(NOSIG|BECMG|TEMPO|INTER)|(PROB)(\d\d))$/;
const TIME = /^(FM|TL|AT)(\d\d)?(\d\d)(\d\d)$/;
const VALIDITY = /^(\d\d)(\d\d)\/(\d\d)(\d\d)$/;
const VALIDITY_LENGTH = 9;
const EXTREME = /^(TX|TN)(M?\d\d)\/(\d\d)?(\d\d)Z$/;
const SWING = /^(\d{3})V(\d{3})$/;
const SWING_LENGTH = 7;

/** Reads what begins at a token of a trend or a forecast; null where nothing known does. */
export function readExpected(tokens: readonly Token[], at: number): Read | null {
  const text = textAt(tokens, at);
  // No group of an observation is one of a trend's own, and most are of an observation.
  const group = readGroup(tokens, at);
  if (group) return group;
  const meaning = expectationOf(text);
  if (meaning) return { meaning, end: at + 1 };
  // A blank after `FM` is a habit.
  const time = text === 'FM' ? periodOf(phraseOf(tokens, at, at + 2).replace(' ', '')) : null;
  if (time) return { meaning: time, end: at + 2 };
  const written = codedWind(tokens, at);
  const wind = written && judgeWind(written, null).wind;
  return wind && { meaning: { code: 'wind', wind }, end: at + 1 };
}

/** What one word says that no observation has, tried for what its first character may begin. */
function expectationOf(text: string): Meaning | null {
  switch (text.charAt(0)) {
    case 'N':
    case 'B':
    case 'I':
    case 'P':
      return changeOf(text);
    case 'T':
      return changeOf(text) ?? periodOf(text) ?? airOf(text);
    default:
      return periodOf(text) ?? airOf(text);
  }
}

/** What opens an expectation. */
function changeOf(text: string): Meaning | null {
  const parts = CHANGE.exec(text);
  if (!parts) return null;
  const trend = (parts[1] ?? parts[2]) as TrendKind;
  return { code: 'trend', trend, percent: numberOf(parts[3]) };
}

const hourOf = (day: string | undefined, hour = '', minute = ''): HourOfDay => ({
  day: numberOf(day),
  hour: Number(hour),
  minute: Number(minute),
});

/** When it is expected. */
function periodOf(text: string): Meaning | null {
  const time = TIME.exec(text);
  if (time) {
    return {
      code: 'time',
      is: time[1] as 'FM' | 'TL' | 'AT',
      ...hourOf(time[2], time[3], time[4]),
    };
  }
  const validity = text.length === VALIDITY_LENGTH ? VALIDITY.exec(text) : null;
  if (!validity) return null;
  const [, day, hour, lastDay, lastHour] = validity;
  return { code: 'validity', from: hourOf(day, hour), to: hourOf(lastDay, lastHour) };
}

/** What only air that is expected has: extremes, a swing apart from its wind. */
function airOf(text: string): Meaning | null {
  const extreme = EXTREME.exec(text);
  if (extreme) {
    const [, is, air, day, hour] = extreme;
    return {
      code: 'extreme',
      is: is as 'TX' | 'TN',
      airC: numberOf(air) ?? 0,
      ...hourOf(day, hour),
    };
  }
  const swing = text.length === SWING_LENGTH ? SWING.exec(text) : null;
  return swing && { code: 'swing', sectorDeg: [Number(swing[1]), Number(swing[2])] };
}
