/** An aircraft made for tests: what a test does not name is nothing, or does not matter. */

import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { Flying } from '../../../src/core/aircraft/fit/fitToBook';
import type { Landing, LandingAnswer } from '../../../src/core/aircraft/landingAnswer';
import type {
  LandingQuestion,
  Performance,
  TakeoffQuestion,
} from '../../../src/core/aircraft/performance';
import type { Takeoff, TakeoffAnswer } from '../../../src/core/aircraft/takeoffAnswer';

/** Standard day at sea level. */
export const STANDARD = { pressureAltitudeFt: 0, temperatureC: 15 };

/** As good as no drag: the least that a schema accepts. */
const NONE = 0.001;

/** A jet of 10 t with 40 kN at any speed, no friction, and next to no drag. */
export const BARE: Performance = {
  thrust: {
    kind: 'jet',
    dryN: [
      [0, 40_000],
      [600, 40_000],
    ],
    idleN: 0,
  },
  wing: {
    areaM2: 25,
    clMax: { takeoff: 1.5, landing: 1.6 },
    ground: { alphaDeg: 0, cl: 0, cd: 0 },
    rotated: { alphaDeg: 10, cd: 0 },
    rollout: { cl: 0, cd: 0 },
    cleanCd: NONE,
    flapsCd: 0,
    flapsCl: 0,
    induced: 0.005,
  },
  rolling: { dry: 0, wet: 0, contaminated: 0 },
  brakes: { friction: { dry: 0.3, wet: 0.2, contaminated: 0.1 }, delayS: 0 },
  climbShare: 0.3,
  landing: {
    reference: 1.3,
    additive: 'half-gust',
    pathDeg: 3,
    touchdownShare: 0.9,
    ldaFactor: 1.67,
  },
  gear: { trackM: 3, wheelbaseM: 5, cgHeightM: 1.5, cgToMainM: 0.5, tailWheel: false },
};

/** The aircraft around a performance. */
export function inventedAircraft(
  performance: Performance | undefined = BARE,
  other: Partial<Omit<Aircraft, 'performance'>> = {},
): Aircraft {
  return {
    lapstrip: 'aircraft',
    version: 1,
    code: 'invented',
    name: 'Invented',
    about: 'Made for a test.',
    engine: 'jet',
    masses: {
      emptyKg: 6000,
      usualTakeoffKg: 10_000,
      maxTakeoffKg: 12_000,
      usualLandingKg: 8000,
      maxLandingKg: 10_000,
    },
    limits: {
      crosswindKt: { dry: 25, wet: 20, contaminated: 10 },
      tailwindKt: { dry: 10, wet: 10, contaminated: 5 },
      flapsKt: 250,
    },
    taxi: {
      maxKt: 20,
      turnKt: 10,
      power: { unit: '%', breakaway: 60, keepRolling: [40, 50] },
      afterBreakaway: 'back',
      steering: 'pedals',
    },
    takeoff: { rotateKt: 120, rotateTo: '10°', liftOffKt: 140, runM: 650 },
    climb: { flapsUpByKt: 200, speedKt: [250, 300], pitchDeg: [5, 15] },
    landing: { approachKt: 130, runM: 600 },
    stop: ['throttle idle'],
    ...(performance === undefined ? {} : { performance }),
    ...other,
  };
}

/** An aircraft that has physics. */
export function flying(aircraft: Aircraft): Flying {
  const { performance } = aircraft;
  if (performance === undefined) throw new Error('no performance');
  return { ...aircraft, performance };
}

/** A long dry level runway on a standard day without wind. */
export function takeoffQuestion(
  aircraft: Aircraft = inventedAircraft(),
  other: Partial<TakeoffQuestion> = {},
): TakeoffQuestion {
  return {
    aircraft,
    massKg: aircraft.masses.usualTakeoffKg,
    air: STANDARD,
    headwindKt: 0,
    slopePercent: 0,
    surface: 'dry',
    ground: 'asphalt',
    runway: { toraM: 3000, todaM: 3000, asdaM: 3000 },
    rollsFromM: 0,
    ...other,
  };
}

/** The same for a landing. */
export function landingQuestion(
  aircraft: Aircraft = inventedAircraft(),
  other: Partial<LandingQuestion> = {},
): LandingQuestion {
  return {
    aircraft,
    massKg: aircraft.masses.usualLandingKg,
    air: STANDARD,
    headwindKt: 0,
    slopePercent: 0,
    surface: 'dry',
    ground: 'asphalt',
    gustSpreadKt: 0,
    ...other,
  };
}

/** The take-off, where there is one. */
export function flown(answer: TakeoffAnswer): Takeoff {
  if (answer.kind === 'cannot') throw new Error(answer.because);
  return answer;
}

/** The landing, where there is one. */
export function landed(answer: LandingAnswer): Landing {
  if (answer.kind === 'cannot') throw new Error(answer.because);
  return answer;
}
