import { describe, expect, test } from 'vitest';
import type { Ladder } from '../../../src/core/day/ladder';
import { takeoffUnderWay } from '../../../src/core/day/ladderTimes';
import { known } from '../../../src/core/figure';
import type { Moment } from '../../../src/core/sortie/entry';
import type { Stamp } from '../../../src/core/sortie/fold';

const WHY = { formula: 'invented', inputs: {}, source: 'invented' } as const;

/** Rotates 10 s and lifts off 12 s after brake release; the gear is to be up 5 s later. */
const LADDER: Ladder = {
  rungs: [
    { what: 'rotate', speed: known(138, 'kt', WHY), s: 10, distanceM: 500 },
    { what: 'lift-off', speed: known(150, 'kt', WHY), s: 12, distanceM: 650 },
  ],
  climb: [
    {
      what: 'gear-up',
      speedKt: 240,
      figure: known(240, 'kt', WHY),
      limit: known(260, 'kt', WHY),
      fromLiftOffS: 5,
      limitKt: 260,
      limitS: 7,
    },
    {
      what: 'climb',
      speedKt: 350,
      figure: known(350, 'kt', WHY),
      limit: null,
      fromLiftOffS: 20,
      limitKt: null,
      limitS: null,
    },
  ],
  lightUpS: null,
};

/** A moment, and when it was stamped, s. */
type Happened = readonly [what: Moment, s: number];

const stamps = (...moments: readonly Happened[]): Stamp[] =>
  moments.map(([what, s]) => ({
    id: `${what}-${s}`,
    what,
    pass: 1,
    at: { wallMs: 1000 * s, sortieMs: 0 },
  }));

/** The gates and when they are expected, s. */
const gates = (...moments: readonly Happened[]) =>
  takeoffUnderWay(LADDER, stamps(...moments))?.gates.map(({ gate, atMs }) => [
    gate.what,
    atMs / 1000,
  ]);

describe('the gates of a take-off', () => {
  test('count from brake release, through the climb too', () => {
    expect(gates(['off chocks', 0], ['brakes released', 100])).toEqual([
      ['rotate', 110],
      ['lift-off', 112],
      ['gear-up', 117],
      ['climb', 132],
    ]);
  });

  test('of the climb come sooner where the aircraft is airborne sooner, and no later where that is told late', () => {
    expect(gates(['brakes released', 100], ['airborne', 109])).toEqual([
      ['gear-up', 114],
      ['climb', 129],
    ]);
    expect(gates(['brakes released', 100], ['airborne', 116])).toEqual([
      ['gear-up', 117],
      ['climb', 132],
    ]);
  });

  test('of a touch-and-go count from where it is airborne again', () => {
    const again = ['brakes released', 0] as const;
    expect(gates(again, ['airborne', 12], ['landed', 500], ['airborne', 520])).toEqual([
      ['gear-up', 525],
      ['climb', 540],
    ]);
  });

  test('are those of one take-off from brake release until it is airborne', () => {
    const released = ['brakes released', 100] as const;
    const rolling = takeoffUnderWay(LADDER, stamps(released));
    const climbing = takeoffUnderWay(LADDER, stamps(released, ['airborne', 112]));
    expect(rolling?.id).toBe('brakes released-100');
    expect(climbing?.id).toBe(rolling?.id);
  });

  test.each<[string, readonly Happened[]]>([
    ['before brake release', [['off chocks', 0]]],
    [
      'once it was stopped',
      [
        ['brakes released', 0],
        ['stopping', 5],
      ],
    ],
    [
      'after landing',
      [
        ['brakes released', 0],
        ['airborne', 12],
        ['landed', 500],
      ],
    ],
    ['before anything', []],
  ])('are none %s', (_when, moments) => {
    expect(gates(...moments)).toBeUndefined();
  });
});
