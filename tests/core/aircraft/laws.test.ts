/** What holds for any aircraft on any day. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { conditionsOf, isCannot } from '../../../src/core/aircraft/conditions';
import { landing } from '../../../src/core/aircraft/landing';
import type { LandingQuestion, TakeoffQuestion } from '../../../src/core/aircraft/performance';
import { endOf, STEP_MPS } from '../../../src/core/aircraft/roll';
import { takeoffSpeeds } from '../../../src/core/aircraft/speeds';
import { runNeededM, takeoff } from '../../../src/core/aircraft/takeoff';
import { takeoffRoll } from '../../../src/core/aircraft/takeoffRoll';
import { demoAircraft } from '../documents/demo';
import { flown, landingQuestion, takeoffQuestion } from './invented';

const numbers = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A day and a runway; mass as a share of the way from empty to the greatest. */
const days = fc.record({
  aircraft: fc.constantFrom(...demoAircraft.filter(({ performance }) => performance)),
  load: numbers(0.3, 1),
  pressureAltitudeFt: numbers(-500, 7000),
  temperatureC: numbers(-30, 40),
  headwindKt: numbers(-10, 30),
  slopePercent: numbers(-2, 2),
  surface: fc.constantFrom('dry' as const, 'wet' as const, 'contaminated' as const),
  ground: fc.constantFrom('asphalt' as const, 'grass' as const),
  lengthM: numbers(300, 3500),
});

type Day = typeof days extends fc.Arbitrary<infer D> ? D : never;

const conditionsFrom = ({ pressureAltitudeFt, temperatureC, ...day }: Day) => ({
  air: { pressureAltitudeFt, temperatureC },
  headwindKt: day.headwindKt,
  slopePercent: day.slopePercent,
  surface: day.surface,
  ground: day.ground,
});

const { sqrt } = Math;

function takeoffOn(day: Day, other: Partial<TakeoffQuestion> = {}): TakeoffQuestion {
  const { emptyKg, maxTakeoffKg } = day.aircraft.masses;
  const { lengthM } = day;
  return takeoffQuestion(day.aircraft, {
    ...conditionsFrom(day),
    massKg: emptyKg + day.load * (maxTakeoffKg - emptyKg),
    runway: { toraM: lengthM, todaM: lengthM, asdaM: lengthM },
    ...other,
  });
}

function landingOn(day: Day, other: Partial<LandingQuestion> = {}): LandingQuestion {
  const { emptyKg, maxLandingKg } = day.aircraft.masses;
  return landingQuestion(day.aircraft, {
    ...conditionsFrom(day),
    massKg: emptyKg + day.load * (maxLandingKg - emptyKg),
    ...other,
  });
}

/** The run, where what never lifts off has the longest. */
const runM = (question: TakeoffQuestion) => runNeededM(question) ?? Number.POSITIVE_INFINITY;

/** What rounding in sums of a few hundred metres may do. */
const ROUNDING_M = 1e-6;

describe('the run is never shortened', () => {
  const worse: Record<string, (day: Day, by: number) => Day> = {
    'by mass': (day, by) => ({ ...day, load: Math.min(1, day.load + by) }),
    'by heat': (day, by) => ({ ...day, temperatureC: day.temperatureC + 20 * by }),
    'by height': (day, by) => ({ ...day, pressureAltitudeFt: day.pressureAltitudeFt + 5000 * by }),
    'by a slope': (day, by) => ({ ...day, slopePercent: day.slopePercent + 2 * by }),
    'by wind from behind': (day, by) => ({ ...day, headwindKt: day.headwindKt - 15 * by }),
    'by grass': (day) => ({ ...day, ground: 'grass' }),
  };
  test.each(Object.entries(worse))('%s', (_, change) => {
    fc.assert(
      fc.property(days, numbers(0, 1), (day, by) => {
        expect(runM(takeoffOn(change(day, by)))).toBeGreaterThanOrEqual(
          runM(takeoffOn(day)) - ROUNDING_M,
        );
      }),
    );
  });
});

describe('what is needed of an LDA is never lessened', () => {
  const worse: Record<string, (day: Day, by: number) => Day> = {
    'by mass': (day, by) => ({ ...day, load: Math.min(1, day.load + by) }),
    'by heat': (day, by) => ({ ...day, temperatureC: day.temperatureC + 20 * by }),
    'by a slope downhill': (day, by) => ({ ...day, slopePercent: day.slopePercent - 2 * by }),
    'by water': (day) => (day.surface === 'dry' ? { ...day, surface: 'wet' } : day),
  };
  test.each(Object.entries(worse))('%s', (_, change) => {
    const neededM = (day: Day) => {
      const answer = landing(landingOn(day));
      return answer.kind === 'cannot' ? Number.POSITIVE_INFINITY : answer.neededM;
    };
    fc.assert(
      fc.property(days, numbers(0, 1), (day, by) => {
        expect(neededM(change(day, by))).toBeGreaterThanOrEqual(neededM(day) - ROUNDING_M);
      }),
    );
  });
});

test('the last speed to stop from falls, or stays, as the runway gets shorter', () => {
  fc.assert(
    fc.property(days, numbers(0.5, 1), (day, share) => {
      const [long, short] = [day, { ...day, lengthM: day.lengthM * share }].map((one) =>
        takeoff(takeoffOn(one)),
      );
      if (long?.kind !== 'takeoff' || short?.kind !== 'takeoff') return;
      // The speed is looked for to 0.005 m/s.
      expect(short.stop.lastKt).toBeLessThanOrEqual(long.stop.lastKt + 0.02);
    }),
  );
});

test('a stop from the last speed fits, where any does', () => {
  fc.assert(
    fc.property(days, (day) => {
      const answer = takeoff(takeoffOn(day));
      if (answer.kind !== 'takeoff' || answer.stop.lastKt < 1) return;
      expect(answer.left.asdaM).toBeGreaterThan(-0.5);
      for (const kt of Object.values(answer.stop.allowsKt)) {
        expect(answer.stop.lastKt).toBeLessThanOrEqual((kt ?? Number.POSITIVE_INFINITY) + 1e-9);
      }
    }),
  );
});

test('distances and times add up, and come in the order of the speeds', () => {
  fc.assert(
    fc.property(days, (day) => {
      const answer = takeoff(takeoffOn(day, { gatesKt: [20, 40, 60, 80, 100] }));
      if (answer.kind !== 'takeoff') return;
      let before = { speedKt: 0, s: 0, distanceM: 0 };
      for (const gate of [...answer.gates, ...answer.climbOut]) {
        expect(gate.speedKt).toBeGreaterThanOrEqual(before.speedKt);
        expect(gate.s).toBeGreaterThanOrEqual(before.s);
        expect(gate.distanceM).toBeGreaterThanOrEqual(before.distanceM);
        before = gate;
      }
      expect(answer.left.toraM + answer.run.runM).toBeCloseTo(day.lengthM, 6);
      if (answer.to50ftM.value !== null) {
        expect(answer.to50ftM.value).toBeGreaterThan(answer.run.runM);
      }
    }),
  );
});

test('at the mark no more is asked than is expected', () => {
  fc.assert(
    fc.property(days, numbers(0.1, 0.9), (day, share) => {
      const run = runM(takeoffOn(day));
      if (run === Number.POSITIVE_INFINITY) return;
      const answer = flown(takeoff(takeoffOn(day, { checkMark: { atM: share * run } })));
      const { check } = answer.check;
      if (check === null) return;
      expect(check.leastKt).toBeLessThanOrEqual(check.expectedKt + 0.05);
      expect(check.leastInWindKt).toBeCloseTo(check.expectedKt - 5, 9);
      expect(answer.stop.lastKt).toBeGreaterThan(check.expectedKt);
      expect(check.leastKt).toBe(
        Math.max(check.leastForRunKt, check.leastForStopKt, check.leastInWindKt),
      );
    }),
    { numRuns: 50 },
  );
});

test('speeds go with the root of the mass', () => {
  fc.assert(
    fc.property(days, numbers(0.3, 1), (day, load) => {
      const [one, two] = [takeoffOn(day), takeoffOn({ ...day, load })];
      const { performance } = day.aircraft;
      if (performance === undefined) return;
      const [a, b] = [one, two].map(({ massKg }) =>
        takeoffSpeeds(day.aircraft, performance, massKg),
      );
      for (const name of ['stallKt', 'rotateKt', 'liftOffKt'] as const) {
        expect((a?.[name] ?? 0) / (b?.[name] ?? 1)).toBeCloseTo(sqrt(one.massKg / two.massKg), 9);
      }
    }),
  );
});

test('half the step gives the same run to 0.2 %', () => {
  // Worst at the edge of never lifting off, where a run takes any length: up to 4 km are asked for.
  fc.assert(
    fc.property(days, (day) => {
      const question = takeoffOn(day);
      const { aircraft, massKg } = question;
      const run = runNeededM(question);
      const conditions = conditionsOf(question, aircraft.masses.maxTakeoffKg);
      if (run === null || run > 4000 || isCannot(conditions)) return;
      const speeds = takeoffSpeeds(aircraft, conditions.performance, massKg);
      const plan = { speeds, reheat: true, thrustShare: 1 };
      const [whole, half] = [STEP_MPS, STEP_MPS / 2].map((stepMps) =>
        endOf(takeoffRoll(conditions, { ...plan, stepMps })),
      );
      expect(Math.abs((whole?.m ?? 0) / (half?.m ?? 1) - 1)).toBeLessThan(2e-3);
      expect(Math.abs((whole?.s ?? 0) / (half?.s ?? 1) - 1)).toBeLessThan(2e-3);
    }),
  );
});

test('the work of all forces over the run is the energy at its end', () => {
  // Trapezoids over the moments of a roll; the integrator itself takes no trapezoids.
  fc.assert(
    fc.property(days, (day) => {
      const question = takeoffOn(day);
      const conditions = conditionsOf(question, day.aircraft.masses.maxTakeoffKg);
      const run = runNeededM(question);
      if (run === null || run > 4000 || isCannot(conditions)) return;
      const speeds = takeoffSpeeds(day.aircraft, conditions.performance, question.massKg);
      const roll = takeoffRoll(conditions, { speeds, reheat: true, thrustShare: 1, stepMps: 0.5 });
      let work = 0;
      for (const [index, moment] of roll.moments.entries()) {
        const before = roll.moments[index - 1];
        if (before === undefined || moment.s === before.s) continue;
        // Force is mass times what the speed gains in the time, over the way of that time.
        const force = (question.massKg * (moment.airMps - before.airMps)) / (moment.s - before.s);
        work += force * (moment.m - before.m);
      }
      const endMps = endOf(roll).airMps - roll.headwindMps;
      const energy = 0.5 * question.massKg * endMps ** 2;
      if (energy > 0) expect(Math.abs(work / energy - 1)).toBeLessThan(1e-3);
    }),
  );
});

test('from 50 ft to touch-down drag takes the speed off, or the arc down takes longer', () => {
  // Its own sums of V dV = −(D − T) / m ds, forces written out here; and Anderson, 6.8.2, for the arc.
  fc.assert(
    fc.property(days, (day) => {
      const question = landingOn({ ...day, headwindKt: 0 });
      const answer = landing(question);
      const { performance } = day.aircraft;
      if (answer.kind === 'cannot' || performance === undefined) return;
      const { wing, thrust, landing: rule } = performance;
      const { approachKt, touchdownKt } = answer.speeds;
      const { densityRatio, massKg } = answer.given;
      const mps = (kt: number) => (kt * 1852) / 3600 / sqrt(densityRatio);
      const holdsBackMps2 = (v: number) => {
        const qS = 0.5 * 1.225 * densityRatio * v * v * wing.areaM2;
        const cl = (massKg * 9.80665) / qS;
        const cd = wing.cleanCd + (wing.gearCd ?? 0) + wing.flapsCd + wing.induced * cl * cl;
        return (qS * cd - thrust.idleN * densityRatio) / massKg;
      };
      const [from, to, pieces] = [mps(approachKt), mps(touchdownKt), 200];
      const step = (from - to) / pieces;
      let slowedM = 0;
      for (let i = 0; i < pieces; i++) {
        const v = to + (i + 0.5) * step;
        slowedM += (v * step) / holdsBackMps2(v);
      }
      const path = (rule.pathDeg * Math.PI) / 180;
      const radiusM = ((from + to) / 2) ** 2 / (9.80665 * 0.2);
      const lowM = Math.min(radiusM * (1 - Math.cos(path)), 15.24);
      const arcM = radiusM * Math.sin(path);
      const airM = (15.24 - lowM) / Math.tan(path) + Math.max(slowedM, arcM);
      expect(Math.abs(answer.airM / airM - 1)).toBeLessThan(0.01);
    }),
  );
});

test('any question whatever is answered, without throwing', () => {
  const anything = fc.oneof(
    fc.double(),
    fc.constantFrom(0, -0, 1, 1e9, -1e9, Number.NaN, Number.POSITIVE_INFINITY),
  );
  fc.assert(
    fc.property(
      days,
      fc.array(anything, { minLength: 10, maxLength: 10 }),
      fc.nat(9),
      (day, values, which) => {
        const sane = takeoffOn(day);
        // One to three numbers at a time are replaced, or nothing but the first check would be met.
        const put = (index: number, value: number) =>
          index >= which && index < which + 3 ? (values[index] ?? 0) : value;
        const question: TakeoffQuestion = {
          ...sane,
          massKg: put(0, sane.massKg),
          air: {
            pressureAltitudeFt: put(1, sane.air.pressureAltitudeFt),
            temperatureC: put(2, sane.air.temperatureC),
          },
          headwindKt: put(3, sane.headwindKt),
          slopePercent: put(4, sane.slopePercent),
          runway: {
            toraM: put(5, sane.runway.toraM),
            todaM: put(6, sane.runway.todaM),
            asdaM: put(7, sane.runway.asdaM),
          },
          rollsFromM: put(8, 0),
          checkMark: { atM: put(9, 200) },
        };
        const answer = takeoff(question);
        if (answer.kind === 'takeoff') expect(Number.isFinite(answer.run.runM)).toBe(true);
        else expect(answer.because).not.toBe('');
      },
    ),
    { numRuns: 500 },
  );
});

describe('a worse surface never stops better', () => {
  const grounds = ['asphalt', 'concrete', 'gravel', 'grass'] as const;
  const surfaces = ['dry', 'wet', 'contaminated'] as const;
  const braked = fc.record({
    day: days,
    ground: fc.constantFrom(...grounds),
    // Any document that the schema takes: braking that falls from dry to contaminated.
    friction: fc.tuple(numbers(0, 0.6), numbers(0, 1), numbers(0, 1)),
    rolling: fc.tuple(numbers(0, 0.1), numbers(0, 0.2), numbers(0, 0.4)),
  });

  type Braked = typeof braked extends fc.Arbitrary<infer B> ? B : never;

  function madeOf({ day, friction, rolling }: Braked) {
    const { performance } = day.aircraft;
    if (performance === undefined) throw new Error('no performance');
    const [dry, wet, contaminated] = friction;
    const rolls = { dry: rolling[0], wet: rolling[1], contaminated: rolling[2] };
    return {
      ...day.aircraft,
      performance: {
        ...performance,
        rolling: rolls,
        brakes: {
          ...performance.brakes,
          friction: { dry, wet: dry * wet, contaminated: dry * wet * contaminated },
        },
      },
    };
  }

  const rollM = (one: Braked, surface: (typeof surfaces)[number], aircraft = madeOf(one)) => {
    const answer = landing(landingOn({ ...one.day, aircraft, surface }, { ground: one.ground }));
    return answer.kind === 'cannot' ? Number.POSITIVE_INFINITY : answer.runM;
  };

  test('from dry to wet to contaminated, on any ground', () => {
    fc.assert(
      fc.property(braked, (one) => {
        const [dry = 0, wet = 0, contaminated = 0] = surfaces.map((on) => rollM(one, on));
        expect(wet).toBeGreaterThanOrEqual(dry - ROUNDING_M);
        expect(contaminated).toBeGreaterThanOrEqual(wet - ROUNDING_M);
      }),
    );
  });

  test('by the drag of what lies on it', () => {
    fc.assert(
      fc.property(braked, numbers(0, 0.5), (one, more) => {
        const aircraft = madeOf(one);
        const { rolling } = aircraft.performance;
        const deeper = {
          ...aircraft,
          performance: {
            ...aircraft.performance,
            rolling: { ...rolling, contaminated: rolling.contaminated + more },
          },
        };
        expect(rollM(one, 'contaminated', deeper)).toBeGreaterThanOrEqual(
          rollM(one, 'contaminated') - ROUNDING_M,
        );
      }),
    );
  });
});
