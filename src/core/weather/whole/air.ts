/** Temperature, FM 15, 15.11, pressure, 15.12, and the sea, 15.13.5. */

import { HPA_PER_INHG } from '../../units';
import { GROUPS } from '../groups';
import type { Pressure, Sea, Temperature } from './groupTypes';
import { numberOf, whole } from './written';

const TEMPERATURE = whole(GROUPS.temperature.shape);
const PRESSURE = whole(GROUPS.pressure.shape);
const SEA = whole(GROUPS.sea.shape);

export function temperatureOf(text: string): Temperature | null {
  const parts = TEMPERATURE.exec(text);
  return parts
    ? { code: 'temperature', airC: numberOf(parts[1]), dewPointC: numberOf(parts[2]) }
    : null;
}

/**
 * Beyond these, hPa, a number is a slip and is not read: the lowest pressure known at sea level is
 * 870, the highest 1 084 (WMO World Weather and Climate Extremes Archive; values from memory).
 */
const LEAST_HPA = 850;
const MOST_HPA = 1100;

export function pressureOf(text: string): Pressure | null {
  const parts = PRESSURE.exec(text);
  if (!parts) return null;
  const [, afterQ, unit, afterA] = parts;
  const isInches = afterA !== undefined || unit === 'INS';
  const given = isInches ? 'inHg' : 'hPa';
  const number = numberOf(afterQ ?? afterA);
  if (number === null) return { code: 'pressure', qnhHpa: null, qnhInHg: null, given };
  const qnhHpa = isInches ? (number / 100) * HPA_PER_INHG : number;
  const qnhInHg = isInches ? number / 100 : number / HPA_PER_INHG;
  if (qnhHpa < LEAST_HPA || qnhHpa > MOST_HPA) return null;
  return { code: 'pressure', qnhHpa, qnhInHg, given };
}

/** Waves are given in decimetres. */
export function seaOf(text: string): Sea | null {
  const parts = SEA.exec(text);
  if (!parts) return null;
  const decimetres = numberOf(parts[3]);
  return {
    code: 'sea',
    waterC: numberOf(parts[1]),
    state: numberOf(parts[2]),
    wavesM: decimetres === null ? null : decimetres / 10,
  };
}
