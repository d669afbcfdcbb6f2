/** Where a runway is entered, and what run remains from there. */

import { expect, test } from 'vitest';
import { runwayEntriesOf } from '../../../src/core/taxi/entries';
import { taxiDistances } from '../../../src/core/taxi/routeOut';
import { isOn, stripsOf } from '../../../src/core/taxi/runwayStrip';
import { drawn, FREE, node, stretch } from './drawn';

/** Taxiway A on to runway 09/27, 1000 m of pavement, at `xM` from where the pavement of 09 begins. */
function enteredAt(xM: number, toraM = 1000) {
  const field = drawn(
    [
      node('S', xM, -300, 'stand', { name: 'Stand 1' }),
      node('h', xM, -60, 'hold', { name: 'A1', ends: ['09'] }),
      node('r', xM, 0, 'runway'),
    ],
    [stretch('A', 'S', 'h'), stretch('A', 'h', 'r')],
  );
  const runways = field.runways.map((runway) => ({
    ...runway,
    ends: runway.ends.map((end) => ({ ...end, toraM })) as [
      (typeof runway.ends)[0],
      (typeof runway.ends)[1],
    ],
  }));
  return { ...field, runways };
}

const runsFrom = (xM: number, toraM?: number) =>
  runwayEntriesOf(enteredAt(xM, toraM), '09').map(({ rollsFromM, runM, backtrackM }) =>
    [rollsFromM, runM, backtrackM].map(Math.round),
  );

test('an intersection takes from TORA what lies behind it, however long the pavement is', () => {
  // ICAO Annex 14, 2.8: TORA is the length declared available, and the pavement may go on beyond it.
  // 1000 m of pavement, 800 m declared, entered at 300 m: 800 − 300 = 500 m remain.
  expect(runsFrom(300, 800)).toEqual([
    [0, 800, 300],
    [300, 500, 0],
  ]);
});

test('a run of less than a quarter of TORA is not offered', () => {
  // Common practice, no published source. A quarter of 800 m is 200 m.
  expect(runsFrom(590, 800)).toEqual([
    [0, 800, 590],
    [590, 210, 0],
  ]);
  expect(runsFrom(610, 800)).toEqual([[0, 800, 610]]);
});

test('within the 60 m that lining up takes, the run is the whole one', () => {
  // Common practice, no published source.
  expect(runsFrom(55)).toEqual([[0, 1000, 0]]);
  expect(runsFrom(65)).toEqual([
    [0, 1000, 65],
    [65, 935, 0],
  ]);
});

test('a holding point that leads on to the runway twice meets it at the nearer point', () => {
  // Straight on, 60 m, and by a rapid exit from 200 m further on, √(200² + 60²) = 209 m.
  for (const order of [
    ['r', 'far'],
    ['far', 'r'],
  ] as const) {
    const field = drawn(
      [
        node('h', 300, -60, 'hold', { name: 'A1', ends: ['09'] }),
        node('r', 300, 0, 'runway'),
        node('far', 500, 0, 'runway'),
      ],
      order.map((to) => stretch('A', 'h', to)),
    );
    const [, meeting] = runwayEntriesOf(field, '09');
    expect(meeting?.accessM).toBeCloseTo(60, 9);
    expect(meeting?.rollsFromM).toBeCloseTo(300, 0);
  }
});

test('the distance to the whole run counts what is rolled back along the runway', () => {
  // 240 m from the stand to the holding point, 60 m to the runway, 400 m back along it.
  expect(taxiDistances(enteredAt(400), 'S', ['09'], FREE).get('09')).toBeCloseTo(700, 0);
});

test('a point counts as on a runway up to 10 m beside its edge', () => {
  // Half of 30 m and 10 m more: what is drawn by hand is not drawn to the metre, and a parallel
  // taxiway lies further off.
  const [strip] = stripsOf(enteredAt(500));
  if (strip === undefined) throw new Error('no runway');
  const isOnAt = (northM: number) => isOn(strip, { eastM: 500, northM });
  expect([-24, 0, 24].map(isOnAt)).toEqual([true, true, true]);
  expect([-26, 26].map(isOnAt)).toEqual([false, false]);
});
