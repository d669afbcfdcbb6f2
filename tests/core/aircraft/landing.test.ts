/** A landing, piece by piece. */

import { describe, expect, test } from 'vitest';
import { landing, landingNeededM } from '../../../src/core/aircraft/landing';
import type { LandingQuestion, Performance } from '../../../src/core/aircraft/performance';
import { BARE, inventedAircraft, landed, landingQuestion } from './invented';

const MPS = 1852 / 3600;
const G = 9.80665;

const withLanding = (rule: Partial<Performance['landing']>) =>
  inventedAircraft({ ...BARE, landing: { ...BARE.landing, ...rule } });

describe('the speeds', () => {
  test('stall where lift at its greatest carries the weight', () => {
    const { speeds } = landed(landing(landingQuestion()));
    const liftN = 0.5 * 1.225 * (speeds.stallKt * MPS) ** 2 * 25 * 1.6;
    expect(liftN).toBeCloseTo(8000 * G, 3);
  });

  test.each([1.3, 1.23] as const)('refer to %f of the stall', (reference) => {
    const { speeds } = landed(landing(landingQuestion(withLanding({ reference }))));
    expect(speeds.referenceKt).toBeCloseTo(reference * speeds.stallKt, 9);
    expect(speeds.approachKt).toBe(speeds.referenceKt);
  });

  test('add half the gust by the rule for light aircraft', () => {
    // FAA-H-8083-3, ch. 8.
    const { speeds } = landed(
      landing(landingQuestion(undefined, { headwindKt: 20, gustSpreadKt: 12 })),
    );
    expect(speeds.additiveKt).toBe(6);
  });

  test.each([
    [20, 8, 18],
    [20, 15, 20],
    [-6, 8, 8],
  ])(
    'add, with %i kt ahead and %i more in gusts, %i kt as transport does',
    (headwindKt, gustSpreadKt, added) => {
      // Common practice, no published source.
      const aircraft = withLanding({ additive: 'half-wind-and-gust' });
      const { speeds } = landed(landing(landingQuestion(aircraft, { headwindKt, gustSpreadKt })));
      expect(speeds.additiveKt).toBe(added);
      expect(speeds.approachKt).toBeCloseTo(speeds.referenceKt + added, 9);
    },
  );
});

describe('the way through the air', () => {
  test('has no end where idle pulls as hard as the air holds back', () => {
    const { thrust } = BARE;
    const pulling = inventedAircraft({ ...BARE, thrust: { ...thrust, idleN: 20_000 } });
    expect(landing(landingQuestion(pulling))).toEqual({ kind: 'cannot', because: 'never-stops' });
    expect(landingNeededM(landingQuestion(pulling))).toBeNull();
  });

  test('is what Anderson’s arc and path take where no speed is lost on it', () => {
    // Aircraft Performance and Design, 6.8.1 and 6.8.2: R = V² / 0.2 g.
    const { airM, speeds } = landed(landing(landingQuestion(withLanding({ touchdownShare: 1 }))));
    const radiusM = (speeds.approachKt * MPS) ** 2 / (0.2 * G);
    const path = (3 * Math.PI) / 180;
    const approachM = (15.24 - radiusM * (1 - Math.cos(path))) / Math.tan(path);
    expect(airM).toBeCloseTo(approachM + radiusM * Math.sin(path), 6);
  });
});

describe('the run', () => {
  test('is V² / 2 μ g with brakes alone, and all of ½ m V² goes into them', () => {
    const answer = landed(landing(landingQuestion()));
    const v = answer.speeds.touchdownKt * MPS;
    expect(answer.runM).toBeCloseTo((v * v) / (2 * 0.3 * G), 2);
    expect(answer.brakes.energyMJ).toBeCloseTo((0.5 * 8000 * v * v) / 1e6, 4);
  });

  test('is longer by what is rolled until the brakes bite', () => {
    const late = inventedAircraft({ ...BARE, brakes: { ...BARE.brakes, delayS: 3 } });
    const answer = landed(landing(landingQuestion(late)));
    expect(answer.runM - landed(landing(landingQuestion())).runM).toBeCloseTo(
      3 * answer.speeds.touchdownKt * MPS,
      6,
    );
  });

  test('with a parachute is shorter, and both are told', () => {
    const aircraft = inventedAircraft({ ...BARE, parachute: { dragAreaM2: 10, maxKt: 200 } });
    const answer = landed(landing(landingQuestion(aircraft)));
    const bare = landed(landing(landingQuestion())).runM;
    expect(answer.bare?.runM).toBeCloseTo(bare, 6);
    expect(answer.runM).toBeLessThan(bare);
    // m / 2 k × ln(1 + k V² / F), k = ½ ρ C_D S, F = μ m g.
    const [k, f] = [0.5 * 1.225 * 10, 0.3 * 8000 * G];
    const v = answer.speeds.touchdownKt * MPS;
    expect(answer.runM / ((8000 / (2 * k)) * Math.log(1 + (k * v * v) / f))).toBeCloseTo(1, 4);
  });

  test('waits for the speed at which the parachute may be opened', () => {
    const opened = (maxKt: number) => {
      const aircraft = inventedAircraft({ ...BARE, parachute: { dragAreaM2: 10, maxKt } });
      return landed(landing(landingQuestion(aircraft)));
    };
    expect(opened(90).parachute?.within).toBe(false);
    expect(opened(200).parachute?.within).toBe(true);
    expect(opened(90).runM).toBeGreaterThan(opened(200).runM);
    expect(opened(90).runM).toBeLessThan(landed(landing(landingQuestion())).runM);
  });

  test('left in, the parachute is not spoken of', () => {
    const aircraft = inventedAircraft({ ...BARE, parachute: { dragAreaM2: 10, maxKt: 200 } });
    const answer = landed(landing(landingQuestion(aircraft, { parachute: false })));
    expect(answer).toMatchObject({ parachute: null, bare: null });
  });
});

describe('what is needed', () => {
  test('is the way through the air and the run, and planned with the factor', () => {
    const answer = landed(landing(landingQuestion()));
    expect(answer.neededM).toBeCloseTo(answer.airM + answer.runM, 9);
    expect(answer.plannedM / answer.neededM).toBeCloseTo(1.67, 9);
  });

  test('is planned 1.15 longer where it is wet', () => {
    const { given } = landed(landing(landingQuestion(undefined, { surface: 'wet' })));
    expect(given.ldaFactor).toBeCloseTo(1.67 * 1.15, 9);
  });

  test('is the same asked alone', () => {
    const question = landingQuestion(undefined, { headwindKt: 8, slopePercent: 1 });
    expect(landingNeededM(question)).toBe(landed(landing(question)).neededM);
    expect(landingNeededM({ ...question, massKg: 11_000 })).toBeNull();
  });

  test('comes down 5.3 ft/min for each knot on 3°', () => {
    const { sinkFtMin, speeds } = landed(landing(landingQuestion(undefined, { headwindKt: 12 })));
    expect(sinkFtMin / (speeds.approachKt - 12)).toBeCloseTo(5.3, 1);
  });
});

test('energy in the brakes is held against their limit, and the tyres against theirs', () => {
  const limits = { ...inventedAircraft().limits, tyreKt: 100 };
  const brakes = { ...BARE.brakes, maxMJ: 10 };
  const answer = landed(
    landing(landingQuestion(inventedAircraft({ ...BARE, brakes }, { limits }))),
  );
  expect(answer.brakes).toMatchObject({ within: false });
  expect(answer.tyre?.leftKt).toBeCloseTo(100 - answer.speeds.touchdownKt, 6);
});

test('a limit that is only reached is kept: the parachute’s speed and the energy of the brakes', () => {
  const asked = (maxKt: number, maxMJ?: number) =>
    landed(
      landing(
        landingQuestion(
          inventedAircraft({
            ...BARE,
            brakes: maxMJ === undefined ? BARE.brakes : { ...BARE.brakes, maxMJ },
            parachute: { dragAreaM2: 10, maxKt },
          }),
        ),
      ),
    );
  const { touchdownKt } = asked(200).speeds;
  expect(asked(touchdownKt).parachute?.within).toBe(true);
  expect(asked(touchdownKt - 0.01).parachute?.within).toBe(false);
  const { energyMJ } = asked(200).brakes;
  expect(asked(200, energyMJ).brakes.within).toBe(true);
  expect(asked(200, energyMJ - 0.001).brakes.within).toBe(false);
});

describe('the wind adds to the speed', () => {
  const jet = inventedAircraft({
    ...BARE,
    landing: { ...BARE.landing, additive: 'half-wind-and-gust', pathDeg: 3 },
  });
  const additive = (other: Partial<LandingQuestion>) =>
    landed(landing(landingQuestion(jet, other))).speeds.additiveKt;

  // Common practice in transport, no published source: half the headwind and the gust, at most 20 kt.
  test.each<readonly [number, number, number]>([
    [20, 0, 10],
    [20, 8, 18],
    [30, 10, 20],
    [-10, 5, 5],
    [0, 0, 0],
  ])('by half of %i kt and the gust of %i kt: %i kt', (reportedHeadwindKt, gustSpreadKt, kt) => {
    // Whatever part of the headwind is counted on for the distance.
    for (const headwindKt of [reportedHeadwindKt, reportedHeadwindKt / 2, -5]) {
      expect(additive({ headwindKt, reportedHeadwindKt, gustSpreadKt })).toBe(kt);
    }
  });

  test('so that the planned distance is flown at the speed that is flown', () => {
    const at = (headwindKt: number) =>
      landed(landing(landingQuestion(jet, { headwindKt, reportedHeadwindKt: 30 })));
    expect(at(15).speeds.approachKt).toBe(at(30).speeds.approachKt);
    expect(at(15).neededM).toBeGreaterThan(at(30).neededM);
  });
});

test('sinks down its own path: at 5° and 100 kt over ground, 886 ft/min', () => {
  // tan 5° × 100 × 101.27; FAA Instrument Procedures Handbook: 5° and 100 kt, 886 ft/min (from memory).
  const steep = inventedAircraft({ ...BARE, landing: { ...BARE.landing, pathDeg: 5 } });
  const { speeds, sinkFtMin } = landed(landing(landingQuestion(steep, { headwindKt: 12 })));
  expect(speeds.approachGroundKt).toBeCloseTo(speeds.approachKt - 12, 6);
  expect((sinkFtMin / speeds.approachGroundKt) * 100).toBeCloseTo(886, 0);
});
