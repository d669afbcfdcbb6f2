/** A place as it is written out. */

import type { Place } from './place';

/** Hundredths of a second in a degree, and in a minute. */
const DEGREE = 360_000;
const MINUTE = 6_000;

const two = (value: number, digits = 2) => String(value).padStart(digits, '0');

function coordinate(deg: number, digits: number, [above, below]: readonly [string, string]) {
  // Rounded once, so that no 60 seconds are written.
  const all = Math.round(Math.abs(deg) * DEGREE);
  const [whole, minutes] = [Math.floor(all / DEGREE), Math.floor((all % DEGREE) / MINUTE)];
  const seconds = ((all % MINUTE) / 100).toFixed(2).padStart(5, '0');
  return `${two(whole, digits)}°${two(minutes)}′${seconds}″${deg < 0 && all > 0 ? below : above}`;
}

/**
 * A place as `52°35′41.27″N 004°36′06.10″E`: to 1/100″, some 0.3 m, as an AIP gives thresholds
 * (ICAO Doc 10066, PANS-AIM, appendix 1). `readPlaces` reads it.
 */
export const degreesWritten = ({ latDeg, lonDeg }: Place): string =>
  `${coordinate(latDeg, 2, ['N', 'S'])} ${coordinate(lonDeg, 3, ['E', 'W'])}`;
