/** Ranking a field's ends and computing its runway ring: three runways, a new wind each time. */

import { rankRunwayEnds } from '../../src/core/runway/rank';
import { runwayRing } from '../../src/core/runway/ring';
import { inventedField, question, wind } from '../core/runway/invented';
import { quantile, type Rows } from './row';

const FIELD = inventedField([
  { designator: '10', headingDeg: 86, lengthM: 1400 },
  { designator: '01', headingDeg: 356, lengthM: 1800 },
  { designator: '04', headingDeg: 26, lengthM: 900 },
]);
const ROUNDS = 1000;

/** Never the same wind twice in a row: direction, speed, gust and swing all move. */
function questionAt(round: number) {
  const fromDeg = ((round * 37) % 360) + 1;
  const speedKt = 8 + (round % 9);
  const swing =
    round % 2 ? null : ([((fromDeg + 330) % 360) + 1, ((fromDeg + 29) % 360) + 1] as const);
  return question({
    field: FIELD,
    wind: wind(fromDeg, speedKt, { gustKt: speedKt + 8, sectorDeg: swing }),
  });
}

/** Median time of `work` once warm, ms. */
function medianMs(work: (round: number) => unknown): number | null {
  const samples: number[] = [];
  for (let round = 0; round < 2 * ROUNDS; round++) {
    const start = performance.now();
    work(round);
    const spent = performance.now() - start;
    if (round >= ROUNDS) samples.push(spent);
  }
  return quantile(samples, 0.5);
}

export const rows: Rows = () => [
  {
    what: 'ranking 6 ends, with how long the best holds, median',
    measured: medianMs((round) => rankRunwayEnds(questionAt(round))),
    unit: 'ms',
    budget: { atMost: 0.1 },
  },
  {
    what: 'runway ring of 6 ends, median',
    measured: medianMs((round) => runwayRing(questionAt(round))),
    unit: 'ms',
    budget: { atMost: 0.5 },
  },
];
