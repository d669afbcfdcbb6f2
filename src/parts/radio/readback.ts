/** What is said when an answer is read back. English on every page. ICAO Doc 9432, 2.8.3. */

import type { Readback } from '../../core';
import { saidEach, saidPoint, saidRunway } from './spelling';

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
      return back.hPa === null ? 'QNH as given' : `QNH ${saidEach(String(Math.round(back.hPa)))}`;
    case 'runway':
    case 'take-off':
    case 'land':
      return `runway ${saidRunway(back.end)}`;
  }
}
