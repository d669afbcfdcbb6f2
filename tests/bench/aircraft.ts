/** How long the jet's take-off and landing take to work out, each at another mass and wind. */

import sleet from '../../airfields-demo/aircraft/sleet.json?raw';
import { landing, landingNeededM } from '../../src/core/aircraft/landing';
import { runNeededM, takeoff } from '../../src/core/aircraft/takeoff';
import { readDocument } from '../../src/core/readDocument.schema';
import { landingQuestion, takeoffQuestion } from '../core/aircraft/invented';
import { quantile, type Rows } from './row';

const ROUNDS = 1000;

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

export const rows: Rows = () => {
  const { document } = readDocument(sleet);
  if (document?.kind !== 'aircraft') throw new Error('the jet is not read');
  const aircraft = document.content;
  const runway = { toraM: 1400, todaM: 1550, asdaM: 1400 };
  const up = (round: number) =>
    takeoffQuestion(aircraft, {
      massKg: 8400 + (round % 97) * 10,
      headwindKt: (round % 23) - 5,
      runway,
      gatesKt: [100],
      checkMark: { atM: 500 },
    });
  const down = (round: number) =>
    landingQuestion(aircraft, { massKg: 6800 + (round % 97) * 10, headwindKt: (round % 23) - 5 });
  return [
    {
      what: 'a take-off, with stop, check mark and climb-out, median',
      measured: medianMs((round) => takeoff(up(round))),
      unit: 'ms',
      budget: { atMost: 1 },
    },
    {
      what: 'a landing, with and without the parachute, median',
      measured: medianMs((round) => landing(down(round))),
      unit: 'ms',
      budget: { atMost: 1 },
    },
    {
      what: 'the run alone, for a table by headwind, median',
      measured: medianMs((round) => runNeededM(up(round))),
      unit: 'ms',
      budget: { atMost: 0.2 },
    },
    {
      what: 'the length of a landing alone, for the same, median',
      measured: medianMs((round) => landingNeededM(down(round))),
      unit: 'ms',
      budget: { atMost: 0.2 },
    },
  ];
};
