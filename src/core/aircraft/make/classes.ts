/**
 * The classes an aircraft can be started from. Their figures are generic: round values as of many
 * of their kind, no type's, and only to begin with.
 */

import type { Aircraft } from '../aircraft';
import type { AircraftClass } from '../classNames';
import type { Performance } from '../performance';
import type { FigureName } from './figures';

/** What a class is, and what it takes for granted until the handbook says otherwise. */
export interface ClassSpec {
  readonly engine: Aircraft['engine'];
  readonly engines: 1 | 2;
  /** Starting values; masses but the greatest follow from that, as shares of it. */
  readonly maxTakeoffKg: number;
  readonly emptyShare: number;
  readonly maxLandingShare: number;
  readonly usualLandingShare: number;
  readonly crosswindKt: Aircraft['limits']['crosswindKt'];
  readonly tailwindKt: Aircraft['limits']['tailwindKt'];
  readonly flapsKt: number;
  /** Undefined for gear that stays down. */
  readonly gearKt: number | undefined;
  readonly rotateKt: number;
  readonly climbKt: readonly [number, number];
  readonly approachKt: number;
  readonly reheatOffKt: number | undefined;
  readonly taxiKt: readonly [straight: number, turn: number];
  /** Mass a square metre of wing carries at most, kg. */
  readonly wingLoadingKgM2: number;
  /** Engine power in W a kilogram, or thrust in N a kilogram, at the greatest mass. */
  readonly perKg: number;
  readonly physics: Omit<Performance, 'thrust' | 'oneEngineOut' | 'gear' | 'wing'> & {
    readonly wing: Omit<Performance['wing'], 'areaM2' | 'clMax' | 'gearCd'>;
  };
}

const LIGHT_BRAKES = { friction: { dry: 0.3, wet: 0.2, contaminated: 0.1 }, delayS: 1 };
const JET_BRAKES = { friction: { dry: 0.33, wet: 0.22, contaminated: 0.09 }, delayS: 2 };
const ROLLING = { dry: 0.025, wet: 0.03, contaminated: 0.06 };

const LIGHT: ClassSpec['physics'] = {
  wing: {
    ground: { alphaDeg: 1, cl: 0.4, cd: 0.05 },
    rotated: { alphaDeg: 9, cd: 0.095 },
    rollout: { cl: 0.4, cd: 0.09 },
    cleanCd: 0.034,
    flapsCd: 0.01,
    flapsCl: 0.08,
    induced: 0.058,
  },
  rolling: ROLLING,
  brakes: LIGHT_BRAKES,
  climbShare: 0.6,
  landing: {
    reference: 1.3,
    additive: 'half-gust',
    pathDeg: 5.5,
    touchdownShare: 0.85,
    ldaFactor: 1.43,
  },
};

const JET: ClassSpec['physics'] = {
  wing: {
    ground: { alphaDeg: 1, cl: 0.32, cd: 0.058 },
    rotated: { alphaDeg: 9, cd: 0.12 },
    rollout: { cl: 0.2, cd: 0.11 },
    cleanCd: 0.02,
    flapsCd: 0.014,
    flapsCl: 0.25,
    induced: 0.075,
  },
  rolling: ROLLING,
  brakes: JET_BRAKES,
  climbShare: 0.32,
  landing: {
    reference: 1.3,
    additive: 'half-wind-and-gust',
    pathDeg: 3,
    touchdownShare: 0.95,
    ldaFactor: 1.67,
  },
};

export const CLASSES: Readonly<Record<AircraftClass, ClassSpec>> = {
  'piston-single': {
    engine: 'piston',
    engines: 1,
    maxTakeoffKg: 1100,
    emptyShare: 0.62,
    maxLandingShare: 1,
    usualLandingShare: 1,
    crosswindKt: { dry: 12, wet: 10, contaminated: 6 },
    tailwindKt: { dry: 5, wet: 5, contaminated: 3 },
    flapsKt: 90,
    gearKt: undefined,
    rotateKt: 55,
    climbKt: [75, 80],
    approachKt: 65,
    reheatOffKt: undefined,
    taxiKt: [12, 6],
    wingLoadingKgM2: 66,
    perKg: 108,
    physics: LIGHT,
  },
  'piston-twin': {
    engine: 'piston',
    engines: 2,
    maxTakeoffKg: 2000,
    emptyShare: 0.68,
    maxLandingShare: 1,
    usualLandingShare: 1,
    crosswindKt: { dry: 15, wet: 12, contaminated: 8 },
    tailwindKt: { dry: 10, wet: 8, contaminated: 5 },
    flapsKt: 110,
    gearKt: 140,
    rotateKt: 76,
    climbKt: [95, 105],
    approachKt: 88,
    reheatOffKt: undefined,
    taxiKt: [15, 8],
    wingLoadingKgM2: 110,
    perKg: 150,
    physics: LIGHT,
  },
  turboprop: {
    engine: 'turboprop',
    engines: 1,
    maxTakeoffKg: 4000,
    emptyShare: 0.6,
    maxLandingShare: 0.95,
    usualLandingShare: 0.9,
    crosswindKt: { dry: 18, wet: 15, contaminated: 8 },
    tailwindKt: { dry: 10, wet: 8, contaminated: 5 },
    flapsKt: 140,
    gearKt: undefined,
    rotateKt: 75,
    climbKt: [105, 115],
    approachKt: 84,
    reheatOffKt: undefined,
    taxiKt: [15, 8],
    wingLoadingKgM2: 150,
    perKg: 150,
    physics: LIGHT,
  },
  jet: {
    engine: 'jet',
    engines: 1,
    maxTakeoffKg: 5000,
    emptyShare: 0.62,
    maxLandingShare: 0.9,
    usualLandingShare: 0.8,
    crosswindKt: { dry: 20, wet: 16, contaminated: 8 },
    tailwindKt: { dry: 10, wet: 8, contaminated: 5 },
    flapsKt: 180,
    gearKt: 180,
    rotateKt: 105,
    climbKt: [220, 250],
    approachKt: 115,
    reheatOffKt: undefined,
    taxiKt: [20, 10],
    wingLoadingKgM2: 260,
    perKg: 3.6,
    physics: JET,
  },
  'jet-with-reheat': {
    engine: 'jet with reheat',
    engines: 1,
    maxTakeoffKg: 10_000,
    emptyShare: 0.62,
    maxLandingShare: 0.8,
    usualLandingShare: 0.72,
    crosswindKt: { dry: 20, wet: 15, contaminated: 8 },
    tailwindKt: { dry: 10, wet: 8, contaminated: 5 },
    flapsKt: 250,
    gearKt: 250,
    rotateKt: 140,
    climbKt: [340, 360],
    approachKt: 150,
    reheatOffKt: 300,
    taxiKt: [18, 10],
    wingLoadingKgM2: 400,
    perKg: 2.7,
    physics: JET,
  },
  'twin-jet': {
    engine: 'jet',
    engines: 2,
    maxTakeoffKg: 8000,
    emptyShare: 0.6,
    maxLandingShare: 0.9,
    usualLandingShare: 0.78,
    crosswindKt: { dry: 20, wet: 16, contaminated: 8 },
    tailwindKt: { dry: 10, wet: 8, contaminated: 5 },
    flapsKt: 180,
    gearKt: 180,
    rotateKt: 110,
    climbKt: [220, 250],
    approachKt: 112,
    reheatOffKt: undefined,
    taxiKt: [20, 10],
    wingLoadingKgM2: 250,
    perKg: 3.6,
    physics: JET,
  },
};

/** A speed kept clear below a limit, kt. */
const clear = (kt: number) => Math.floor(0.92 * kt);

/** A limit on a worse surface: of the class, and never above the better one. */
const worse = (
  of: 'crosswindKt' | 'tailwindKt',
  surface: 'wet' | 'contaminated',
): ((spec: ClassSpec, aircraft: Aircraft) => number) => {
  const better = surface === 'wet' ? 'dry' : 'wet';
  return (spec, { limits }) =>
    Math.floor((limits[of][better] * spec[of][surface]) / Math.max(spec[of][better], 1));
};

const kg = (value: number) => Math.max(Math.round(value), 1);

/** What a class takes for a figure, by what is known of the others; absent where it says nothing. */
export const ASSUMED: Readonly<
  Partial<Record<FigureName, (spec: ClassSpec, aircraft: Aircraft) => number | undefined>>
> = {
  'masses.maxTakeoffKg': ({ maxTakeoffKg }) => maxTakeoffKg,
  'masses.emptyKg': ({ emptyShare }, { masses }) => kg(emptyShare * masses.maxTakeoffKg),
  'masses.usualTakeoffKg': (_, { masses }) => masses.maxTakeoffKg,
  'masses.maxLandingKg': ({ maxLandingShare }, { masses }) =>
    kg(Math.max(maxLandingShare * masses.maxTakeoffKg, masses.emptyKg)),
  'masses.usualLandingKg': ({ usualLandingShare }, { masses }) =>
    kg(
      Math.max(
        Math.min(usualLandingShare * masses.maxTakeoffKg, masses.maxLandingKg),
        masses.emptyKg,
      ),
    ),
  'limits.crosswindKt.dry': ({ crosswindKt }) => crosswindKt.dry,
  'limits.crosswindKt.wet': worse('crosswindKt', 'wet'),
  'limits.crosswindKt.contaminated': worse('crosswindKt', 'contaminated'),
  'limits.tailwindKt.dry': ({ tailwindKt }) => tailwindKt.dry,
  'limits.tailwindKt.wet': worse('tailwindKt', 'wet'),
  'limits.tailwindKt.contaminated': worse('tailwindKt', 'contaminated'),
  'limits.flapsKt': ({ flapsKt }) => flapsKt,
  'limits.gearKt': ({ gearKt }) => gearKt,
  'takeoff.rotateKt': ({ rotateKt }) => rotateKt,
  'takeoff.liftOffKt': (_, { takeoff }) => Math.round(1.07 * takeoff.rotateKt),
  'climb.flapsUpByKt': (_, { limits }) => clear(limits.flapsKt),
  'climb.gearUpByKt': (_, { limits }) =>
    limits.gearKt === undefined ? undefined : clear(limits.gearKt),
  'climb.speedKt.0': ({ climbKt }, { takeoff }) => Math.max(climbKt[0], takeoff.liftOffKt),
  'climb.speedKt.1': ({ climbKt }, { climb }) => Math.max(climbKt[1], climb.speedKt[0]),
  'climb.reheatOffKt': ({ reheatOffKt }) => reheatOffKt,
  'landing.approachKt': ({ approachKt }) => approachKt,
  'taxi.maxKt': ({ taxiKt }) => taxiKt[0],
  'taxi.turnKt': ({ taxiKt }, { taxi }) => Math.min(taxiKt[1], taxi.maxKt),
};
