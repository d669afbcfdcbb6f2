/** What is said when an answer is read back. English on every page. ICAO Doc 9432, 2.8.3. */

import type { Readback } from '../../core';
import { pressureDigits, unitFor } from '../units';
import { saidEach, saidPoint, saidRunway } from './spelling';

/**
 * The pressure setting, digit by digit: QNH in hectopascals, `altimeter` in inches, said without its
 * point (FAA JO 7110.65, 2-7-1, value from memory).
 */
function saidPressure(hPa: number | null): string {
  const name = unitFor('hPa') === 'inHg' ? 'altimeter' : 'QNH';
  return `${name} ${hPa === null ? 'as given' : saidEach(pressureDigits(hPa).replace(/\D/g, ''))}`;
}

/** One item that is read back, as said. */
export function sayReadback(back: Readback): string {
  switch (back.code) {
    case 'holding-point':
      return `holding point ${saidPoint(back.hold)}`;
    case 'hold-short':
      return `hold short runway ${saidRunway(back.runway)}`;
    case 'cross':
      return `cross runway ${saidRunway(back.runway)}`;
    case 'backtrack':
      return `backtrack runway ${saidRunway(back.end)}`;
    case 'line-up':
      return `line up or hold, runway ${saidRunway(back.end)}`;
    case 'via':
      return `via ${back.via.map((name) => (/\d\d/.test(name) ? `backtrack runway ${saidRunway(name)}` : saidPoint(name))).join(', ')}`;
    case 'qnh':
      return saidPressure(back.hPa);
    case 'runway':
    case 'take-off':
    case 'land':
      return `runway ${saidRunway(back.end)}`;
  }
}
