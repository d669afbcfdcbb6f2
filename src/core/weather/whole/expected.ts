/**
 * What trends and forecasts contain besides groups of an observation.
 *
 * WMO-No. 306 Vol. I.1, FM 15, 15.14, and FM 51; section numbers from memory.
 */

import type { Read } from '../explainer';
import { judgeWind } from '../judgeWind';
import { type Token, textAt } from '../tokens';
import { codedWind } from '../writtenWind';
import type { HourOfDay, Meaning } from './meaning';
import { readGroup } from './readGroup';
import { numberWritten } from './written';

const PROBABILITY = /^PROB(\d\d)$/;
const TIME = /^(FM|TL|AT)(\d\d)?(\d\d)(\d\d)$/;
const VALIDITY = /^(\d\d)(\d\d)\/(\d\d)(\d\d)$/;
const EXTREME = /^(TX|TN)(M?\d\d)\/(\d\d)?(\d\d)Z$/;
const SWING = /^(\d{3})V(\d{3})$/;

/** Reads what starts at a token of a trend or a forecast; null if nothing known does. */
export function readExpected(tokens: readonly Token[], at: number, end: number): Read | null {
  const text = textAt(tokens, at);
  // No group of an observation doubles as a trend's own.
  const opening = changeOf(text) ?? timeOf(text);
  if (opening) return { meaning: opening, end: at + 1 };
  const group = readGroup(tokens, at, end);
  if (group) return group;
  const meaning = validityOf(text) ?? airOf(text);
  if (meaning) return { meaning, end: at + 1 };
  // A space after `FM` is a habit.
  const time = text === 'FM' && at + 1 < end ? timeOf(text + textAt(tokens, at + 1)) : null;
  if (time) return { meaning: time, end: at + 2 };
  const written = codedWind(tokens, at);
  const wind = written && judgeWind(written, null).wind;
  return wind && { meaning: { code: 'wind', wind }, end: at + 1 };
}

/** What opens an expectation. */
function changeOf(text: string): Meaning | null {
  const probability = PROBABILITY.exec(text);
  if (probability) return { code: 'trend', trend: 'PROB', percent: Number(probability[1]) };
  switch (text) {
    case 'NOSIG':
    case 'BECMG':
    case 'TEMPO':
    case 'INTER':
      return { code: 'trend', trend: text, percent: null };
    default:
      return null;
  }
}

/** When it is expected: `FM1400`, or with the day, `FM011400`. */
function timeOf(text: string): Meaning | null {
  const parts = TIME.exec(text);
  if (!parts) return null;
  const [, is, day, hour, minute] = parts;
  return { code: 'time', is: is as 'FM' | 'TL' | 'AT', ...hourOf(day, hour, minute) };
}

const hourOf = (day: string | undefined, hour = '', minute = ''): HourOfDay => ({
  day: numberWritten(day),
  hour: Number(hour),
  minute: Number(minute),
});

/** The period of a forecast, or of a change in it. */
function validityOf(text: string): Meaning | null {
  const validity = VALIDITY.exec(text);
  if (!validity) return null;
  const [, day, hour, lastDay, lastHour] = validity;
  return { code: 'validity', from: hourOf(day, hour), to: hourOf(lastDay, lastHour) };
}

/** What only expected air has: extremes, and a swing apart from its wind. */
function airOf(text: string): Meaning | null {
  const extreme = EXTREME.exec(text);
  if (extreme) {
    const [, is, air, day, hour] = extreme;
    return {
      code: 'extreme',
      is: is as 'TX' | 'TN',
      airC: numberWritten(air) ?? 0,
      ...hourOf(day, hour),
    };
  }
  const swing = SWING.exec(text);
  return swing && { code: 'swing', sectorDeg: [Number(swing[1]), Number(swing[2])] };
}
