/** A take-off, piece by piece. */

import { describe, expect, test } from 'vitest';
import type { Performance } from '../../../src/core/aircraft/performance';
import { plannedHeadwindKt } from '../../../src/core/aircraft/speeds';
import { runNeededM, takeoff } from '../../../src/core/aircraft/takeoff';
import { BARE, flown, inventedAircraft, takeoffQuestion } from './invented';

const MPS = 1852 / 3600;

describe('without drag and friction', () => {
  test('the run is V² / 2 a', () => {
    const { run } = flown(takeoff(takeoffQuestion()));
    expect(run.runM).toBeCloseTo((140 * MPS) ** 2 / (2 * 4), 3);
    expect(run.runS).toBeCloseTo((140 * MPS) / 4, 3);
  });

  test('a gate is passed at its own V² / 2 a, and one above lift-off is not told', () => {
    const answer = flown(takeoff(takeoffQuestion(undefined, { gatesKt: [80, 100, 160] })));
    expect(answer.gates.map(({ speedKt }) => Math.round(speedKt))).toEqual([80, 100, 120, 140]);
    expect(answer.gates[1]?.distanceM).toBeCloseTo((100 * MPS) ** 2 / 8, 3);
    expect(answer.gates[1]?.groundKt).toBeCloseTo(100, 6);
  });

  test('20 kt of headwind leaves 120 kt to be gained over the ground', () => {
    const { run, liftOff } = flown(takeoff(takeoffQuestion(undefined, { headwindKt: 20 })));
    expect(run.runM).toBeCloseTo((120 * MPS) ** 2 / 8, 3);
    expect(liftOff.groundKt).toBeCloseTo(120, 6);
  });

  test('2 % uphill takes g sin θ from the acceleration', () => {
    const { run } = flown(takeoff(takeoffQuestion(undefined, { slopePercent: 2 })));
    const a = 4 - 9.80665 * Math.sin(Math.atan(0.02));
    expect(run.runM).toBeCloseTo((140 * MPS) ** 2 / (2 * a), 3);
  });

  test('a quarter more mass needs the root of it in speed', () => {
    const { speeds } = flown(takeoff(takeoffQuestion(undefined, { massKg: 12_000 })));
    expect(speeds.rotateKt).toBeCloseTo(120 * Math.sqrt(1.2), 9);
    expect(speeds.liftOffKt).toBeCloseTo(140 * Math.sqrt(1.2), 9);
  });

  test('thinner air raises the speed over the ground, not the indicated one', () => {
    const { liftOff, given } = flown(
      takeoff(takeoffQuestion(undefined, { air: { pressureAltitudeFt: 6000, temperatureC: 30 } })),
    );
    expect(liftOff.speedKt).toBeCloseTo(140, 6);
    expect(liftOff.groundKt).toBeCloseTo(140 / Math.sqrt(given.densityRatio), 6);
  });
});

describe('what is left', () => {
  test('counts from where the roll begins', () => {
    const whole = flown(takeoff(takeoffQuestion()));
    const from = flown(takeoff(takeoffQuestion(undefined, { rollsFromM: 300 })));
    expect(from.left.toraM).toBeCloseTo(whole.left.toraM - 300, 6);
    expect(from.run).toEqual(whole.run);
  });

  test('adds up with the run, the way to 50 ft and the stop', () => {
    const runway = { toraM: 1500, todaM: 1800, asdaM: 1600 };
    const { left, run, to50ftM, stop } = flown(takeoff(takeoffQuestion(undefined, { runway })));
    expect(left.toraM + run.runM).toBeCloseTo(1500, 6);
    expect((left.todaM.value ?? 0) + (to50ftM.value ?? 0)).toBeCloseTo(1800, 6);
    expect(left.asdaM + stop.distanceM).toBeCloseTo(1600, 6);
  });

  test('is below nothing where the run does not fit', () => {
    const runway = { toraM: 400, todaM: 400, asdaM: 400 };
    expect(flown(takeoff(takeoffQuestion(undefined, { runway }))).left.toraM).toBeLessThan(0);
  });
});

describe('reheat', () => {
  const withReheat: Performance = {
    ...BARE,
    thrust: {
      kind: 'jet',
      dryN: [
        [0, 40_000],
        [600, 40_000],
      ],
      reheatN: [
        [0, 60_000],
        [600, 60_000],
      ],
      idleN: 0,
    },
  };
  const lit = (lightUpS: number): Performance => ({
    ...withReheat,
    thrust: { ...withReheat.thrust, lightUpS } as Performance['thrust'],
  });
  const runWith = (performance: Performance, reheat = true) =>
    flown(takeoff(takeoffQuestion(inventedAircraft(performance), { reheat }))).run;

  test('lit on the brakes gives its thrust from the start', () => {
    expect(runWith(lit(0)).runM).toBeCloseTo((140 * MPS) ** 2 / (2 * 6), 3);
  });

  test('lit at brake release, it is waited for with what the engine gives without it', () => {
    // 4 m/s² for 5 s, then 6 m/s²: V = 20 + 6 t.
    const v = 140 * MPS;
    const { runM, runS } = runWith(lit(5));
    expect(runS).toBeCloseTo(5 + (v - 20) / 6, 3);
    expect(runM).toBeCloseTo(50 + (v * v - 400) / 12, 3);
  });

  test('left out, it might not be there', () => {
    expect(runWith(lit(5), false)).toEqual(runWith(BARE));
  });
});

describe('the climb', () => {
  test('meets its gates in the order of their speeds, each later and higher', () => {
    const aircraft = inventedAircraft(
      { ...BARE, wing: { ...BARE.wing, gearCd: 0.02 } },
      {
        climb: { flapsUpByKt: 200, gearUpByKt: 180, speedKt: [250, 300], pitchDeg: [5, 15] },
        limits: { ...inventedAircraft().limits, gearKt: 210 },
      },
    );
    const { climbOut, limits, run } = flown(takeoff(takeoffQuestion(aircraft)));
    expect(climbOut.map(({ what }) => what)).toEqual(['gear-up', 'flaps-up', 'climb']);
    for (const [index, gate] of climbOut.entries()) {
      const before = climbOut[index - 1] ?? { s: run.runS, heightFt: 0, distanceM: run.runM };
      expect(gate.s).toBeGreaterThan(before.s);
      expect(gate.heightFt).toBeGreaterThan(before.heightFt);
      expect(gate.distanceM).toBeGreaterThan(before.distanceM);
    }
    const gearS = limits.gear?.fromLiftOffS ?? 0;
    expect(gearS).toBeGreaterThan(climbOut[1]?.fromLiftOffS ?? 0);
    expect(gearS).toBeLessThan(climbOut[2]?.fromLiftOffS ?? 0);
  });

  test('drags its gear until that is up, its flaps until they are, and has its reheat until it is out', () => {
    const legsS = (gearCd: number, flapsCd: number, reheatN: number) => {
      const performance: Performance = {
        ...BARE,
        wing: { ...BARE.wing, gearCd, flapsCd },
        thrust: {
          kind: 'jet',
          dryN: [[0, 40_000]],
          reheatN: [[0, reheatN]],
          idleN: 0,
        },
      };
      const aircraft = inventedAircraft(performance, {
        climb: {
          gearUpByKt: 180,
          flapsUpByKt: 200,
          reheatOffKt: 225,
          speedKt: [250, 250],
          pitchDeg: [5, 15],
        },
      });
      const { climbOut } = flown(takeoff(takeoffQuestion(aircraft)));
      const at = climbOut.map(({ fromLiftOffS }) => fromLiftOffS);
      return at.map((s, index) => s - (at[index - 1] ?? 0));
    };
    // Speeds do not change, so that each leg takes longer by what slows it, and no other leg does.
    const slower = (legs: readonly number[], than: readonly number[]) =>
      legs.map((s, index) => s > (than[index] ?? 0) + 0.05);
    const as = legsS(0.02, 0.02, 60_000);
    expect(slower(legsS(0.04, 0.02, 60_000), as)).toEqual([true, false, false, false]);
    expect(slower(legsS(0.02, 0.04, 60_000), as)).toEqual([true, true, false, false]);
    expect(slower(legsS(0.02, 0.02, 50_000), as)).toEqual([true, true, true, false]);
  });

  test('rises as the spare thrust over the weight, less what its true airspeed takes', () => {
    const { climb } = flown(takeoff(takeoffQuestion()));
    const still = (100 * (40_000 - climb.dragN)) / 98_066.5;
    expect(climb.gradientPercent).toBeCloseTo(still / climb.accelerationFactor, 6);
    expect(climb.rateFtMin).toBeCloseTo(
      ((climb.speedKt * MPS * climb.gradientPercent) / 100 / 0.3048) * 60,
      6,
    );
  });

  test('keeps to the book between its two speeds', () => {
    const at = (massKg: number) => flown(takeoff(takeoffQuestion(undefined, { massKg }))).climb;
    expect(at(10_000).speedKt).toBe(275);
    expect(at(12_000).speedKt).toBe(300);
    expect(at(6500).speedKt).toBe(250);
  });
});

describe('only the run', () => {
  test('is the run of the whole answer', () => {
    const question = takeoffQuestion(undefined, { headwindKt: 7, slopePercent: -0.8 });
    expect(runNeededM(question)).toBe(flown(takeoff(question)).run.runM);
  });

  test('is none where there is no take-off', () => {
    expect(runNeededM(takeoffQuestion(undefined, { massKg: 13_000 }))).toBeNull();
  });
});

test('planned wind is half of a headwind and one and a half times a tailwind', () => {
  // 14 CFR 25.105(d)(1).
  expect([plannedHeadwindKt(12), plannedHeadwindKt(-8), plannedHeadwindKt(0)]).toEqual([6, -12, 0]);
});
