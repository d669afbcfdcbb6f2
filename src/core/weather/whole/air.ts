/** Temperature, FM 15, 15.11, pressure, 15.12, and the sea, 15.13.5. */

import { HPA_PER_INHG } from '../../units';
import { GROUPS } from '../groups';
import type { Pressure, Sea, Temperature } from './groupTypes';
import { numberWritten, wholeGroup } from './written';

const TEMPERATURE = wholeGroup(GROUPS.temperature);
const PRESSURE = wholeGroup(GROUPS.pressure);
const SEA = wholeGroup(GROUPS.sea);

/**
 * Outside these, °C, a number is a slip and is not read: the coldest surface air known was −89.2,
 * the warmest 56.7 (WMO World Weather and Climate Extremes Archive; values from memory).
 */
const COLDEST_C = -90;
const WARMEST_C = 60;

const isAir = (celsius: number | null): boolean =>
  celsius === null || (celsius >= COLDEST_C && celsius <= WARMEST_C);

export function temperatureOf(text: string): Temperature | null {
  const parts = TEMPERATURE.exec(text);
  if (!parts) return null;
  const [airC, dewPointC] = [numberWritten(parts[1]), numberWritten(parts[2])];
  return isAir(airC) && isAir(dewPointC) ? { code: 'temperature', airC, dewPointC } : null;
}

/**
 * Outside these, hPa, a number is a slip and is not read: the lowest pressure known at sea level is
 * 870, the highest 1 084 (WMO World Weather and Climate Extremes Archive; values from memory).
 */
const LEAST_HPA = 850;
const MOST_HPA = 1100;

export function pressureOf(text: string): Pressure | null {
  const parts = PRESSURE.exec(text);
  if (!parts) return null;
  const [, afterQ, unit, afterA] = parts;
  const given = afterA !== undefined || unit === 'INS' ? 'inHg' : 'hPa';
  const number = numberWritten(afterQ ?? afterA);
  if (number === null) return { code: 'pressure', qnhHpa: null, qnhInHg: null, given };
  return pressureFrom(number, given);
}

/** A pressure as spoken, after its word: `1013`, `2992`, with or without a unit. */
export const spokenPressureOf = (figures: string): Pressure | null => {
  const number = Number(/^\d+/.exec(figures)?.[0] ?? Number.NaN);
  // No pressure in hectopascals is so high, and none in hundredths of an inch so low.
  return pressureFrom(number, number > MOST_HPA ? 'inHg' : 'hPa');
};

/** Hectopascals, or hundredths of an inch; null for a slip. */
function pressureFrom(number: number, given: 'hPa' | 'inHg'): Pressure | null {
  const isInches = given === 'inHg';
  const qnhHpa = isInches ? (number / 100) * HPA_PER_INHG : number;
  const qnhInHg = isInches ? number / 100 : number / HPA_PER_INHG;
  if (qnhHpa < LEAST_HPA || qnhHpa > MOST_HPA) return null;
  return { code: 'pressure', qnhHpa, qnhInHg, given };
}

/** Waves are given in decimetres. */
export function seaOf(text: string): Sea | null {
  const parts = SEA.exec(text);
  if (!parts) return null;
  const decimetres = numberWritten(parts[3]);
  return {
    code: 'sea',
    waterC: numberWritten(parts[1]),
    state: numberWritten(parts[2]),
    wavesM: decimetres === null ? null : decimetres / 10,
  };
}
