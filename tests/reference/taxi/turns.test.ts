/** Speeds round the turns of a way, against ICAO Doc 9157, Part 2, table of speeds and radii. */

import { expect, test } from 'vitest';
import sleet from '../../../airfields-demo/aircraft/sleet.json?raw';
import { readDocument } from '../../../src/core/readDocument.schema';
import { turnsOf } from '../../../src/core/taxi/pace';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { drawn, FREE, node, stretch } from '../../core/taxi/drawn';

const { document } = readDocument(sleet);
if (document?.kind !== 'aircraft') throw new Error('the jet is not read');
/** An aircraft that nothing holds back but comfort: no limit of its own, and no known gear to tip over. */
const { performance: _, ...others } = document.content;
const FREE_OF_LIMITS = { ...others, taxi: { ...others.taxi, maxKt: 500, turnKt: 500 } };

/** Corners of so many degrees each. */
const STEP_DEG = 24;

/** A wide taxiway laid round a circle: a polygon about it, with straight ends. */
function laidRound(radiusM: number) {
  const side = 2 * radiusM * Math.tan((STEP_DEG / 2) * (Math.PI / 180));
  const points: [number, number][] = [[0, -2000]];
  for (let i = 0; i < 5; i++) {
    const [x = 0, y = 0] = points.at(-1) ?? [];
    const heading = (i * STEP_DEG * Math.PI) / 180;
    points.push([x + side * Math.sin(heading), y + side * Math.cos(heading)]);
  }
  const last = points.length - 1;
  return drawn(
    points.map(([x, y], i) =>
      i === last
        ? node(`n${i}`, x, y, 'hold', { ends: ['09'] })
        : node(`n${i}`, x, y, i === 0 ? 'stand' : 'junction'),
    ),
    points.slice(1).map((_point, i) => stretch('A', `n${i}`, `n${i + 1}`, { widthM: 200 })),
  );
}

test.each([
  [16, 15],
  [32, 60],
  [48, 135],
  [64, 240],
  [80, 375],
  [96, 540],
])('%s km/h round %s m', (kmh, radiusM) => {
  const { route } = findRouteOut({ field: laidRound(radiusM), from: 'n0', end: '09', rules: FREE });
  if (route === null) throw new Error('no way');
  const turns = turnsOf(route, FREE_OF_LIMITS);
  expect(turns).toHaveLength(4);
  for (const turn of turns) {
    expect(turn.boundBy).toBe('comfort');
    expect(turn.radiusM).toBeCloseTo(radiusM, 6);
    // The table is of whole km/h: half of one either way.
    expect(Math.abs(turn.maxKt * 1.852 - kmh)).toBeLessThan(0.5);
  }
});
