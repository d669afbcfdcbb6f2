/** The height of a low sun ahead, with its inputs. */

import type { LowSun } from '../earth/lowSun';
import type { Place } from '../earth/place';
import { type Figure, known, unknown } from '../figure';

/** The height when it is low or begins to be; unknown if no low sun is ahead. */
export function sunFigure(sun: LowSun, { latDeg, lonDeg }: Place): Figure<'deg'> {
  if (sun.kind === 'none') return unknown('no-low-sun');
  return known(sun.altitudeDeg, 'deg', {
    formula: 'sun-height',
    inputs: { latDeg, lonDeg, time: sun.from.toISOString() },
    source: 'suncalc',
  });
}
