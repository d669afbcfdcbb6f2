/** Every figure in a brief, and each formula once more, written here from what it is called. */

import { getPosition } from 'suncalc';
import { type FieldModel, fieldModelFor } from '../../../src/core/earth/fieldModel';
import { variationDeg } from '../../../src/core/earth/variation';
import type { AnyFigure, Why } from '../../../src/core/figure';

/** Whether a value is a figure: known with its why, or unknown with its cause. */
export function isFigure(value: unknown): value is AnyFigure {
  if (typeof value !== 'object' || value === null || !('value' in value)) return false;
  // Physics says null where there is no cause against a number.
  return 'why' in value || ('because' in value && value.because !== null);
}

/** Every figure in something, with the way to it; also those that others were worked out from. */
export function figuresIn(something: unknown, path = ''): [string, AnyFigure][] {
  if (typeof something !== 'object' || something === null) return [];
  const parts = something instanceof Map ? [...something] : Object.entries(something);
  const inside = parts.flatMap(([name, part]) => figuresIn(part, `${path}/${name}`));
  return isFigure(something) ? [[path, something], ...inside] : inside;
}

const YEARS = [1950, 1987, 2016, 2019, 2022, 2026];

/** The models of the earth's field by name, loaded as a date asks for them. */
export const MODELS: ReadonlyMap<string, FieldModel> = new Map(
  await Promise.all(
    YEARS.map(async (year) => {
      const model = await fieldModelFor(new Date(Date.UTC(year, 5, 1)));
      return [model.name, model] as const;
    }),
  ),
);

const inRad = (deg: number) => (deg * Math.PI) / 180;

/** The inputs of a figure, as numbers; those that are figures themselves by their value. */
class Given {
  constructor(readonly why: Why) {}

  number(name: string): number {
    const input = this.why.inputs[name];
    const value = typeof input === 'object' ? input.value : input;
    if (typeof value !== 'number') throw new Error(`${this.why.formula} has no number ${name}`);
    return value;
  }

  text(name: string): string {
    return String(this.why.inputs[name]);
  }

  numbers(): number[] {
    return Object.keys(this.why.inputs).map((name) => this.number(name));
  }
}

const MPS_PER_KT = 1852 / 3600;

const rootOfMass = (given: Given) =>
  Math.sqrt(given.number('massKg') / given.number('usualMassKg'));

/** ICAO Doc 7488: 9.80665 / (287.05287 × 0.0065). */
const ISA_POWER = 9.80665 / (287.05287 * 0.0065);

/** The height in the standard atmosphere with this share of sea level's pressure, m. ICAO Doc 7488. */
const isaHeightM = (share: number) => (288.15 / 0.0065) * (1 - share ** (1 / ISA_POWER));

const inFeet = (metres: number) => metres / 0.3048;

const offDeg = (given: Given) => given.number('windTrueDeg') - given.number('runwayTrueDeg');

/** The force that a run speeds up by: its mean along the way. */
const runN = (given: Given) =>
  given.number('thrustN') -
  given.number('dragN') -
  given.number('frictionN') -
  given.number('slopeN');

/** Work is force times way: what brings the mass to a ground speed, or back to rest. None at no speed. */
const wayM = (given: Given, groundKt: number, forceN: number) =>
  groundKt === 0 ? 0 : (given.number('massKg') * (groundKt * MPS_PER_KT) ** 2) / (2 * forceN);

/** The indicated speed after a way along the run. */
function reachedKt(given: Given, wayM: number): number {
  const ground = Math.sqrt((2 * wayM * runN(given)) / given.number('massKg'));
  const air = ground / MPS_PER_KT + given.number('headwindKt');
  return air * Math.sqrt(given.number('densityRatio'));
}

/** What each formula says, put into a function of the inputs that are shown beside it. */
export const FORMULAS: Readonly<Record<string, (given: Given) => number>> = {
  'as-given': (given) => given.number('given'),
  'as-set': (given) => given.number('set'),
  'smaller-limit': (given) => Math.min(...given.numbers()),
  variation: (given) => {
    const model = MODELS.get(given.why.source);
    if (model === undefined) throw new Error(`there is no model ${given.why.source}`);
    const place = {
      latDeg: given.number('latDeg'),
      lonDeg: given.number('lonDeg'),
      elevationM: given.number('elevationM'),
    };
    return variationDeg(place, new Date(given.text('date')), model);
  },
  headwind: (given) => given.number('speedKt') * Math.cos(inRad(offDeg(given))),
  'headwind-least': (given) => given.number('speedKt') * Math.cos(inRad(given.number('angleDeg'))),
  crosswind: (given) => given.number('speedKt') * Math.sin(inRad(offDeg(given))),
  'crosswind-worst': (given) =>
    given.number('strongestKt') * Math.sin(inRad(given.number('angleDeg'))),
  'tailwind-worst': (given) =>
    Math.max(0, -given.number('strongestKt') * Math.cos(inRad(given.number('angleDeg')))),
  magnetic: (given) => {
    const turned = given.number('runwayTrueDeg') - given.number('variation');
    return ((turned % 360) + 360) % 360;
  },
  'pressure-altitude': (given) =>
    given.number('elevationFt') + inFeet(isaHeightM(given.number('qnhHpa') / 1013.25)),
  'density-altitude': (given) => {
    const kelvin = given.number('temperatureC') + 273.15;
    const standardKelvin = 288.15 - 0.0065 * 0.3048 * given.number('pressureAltitude');
    const pressureRatio = (standardKelvin / 288.15) ** ISA_POWER;
    const sigma = (pressureRatio * 288.15) / kelvin;
    return inFeet((288.15 / 0.0065) * (1 - sigma ** (1 / (ISA_POWER - 1))));
  },
  'density-altitude-moist': (given) => {
    // Vapour is 0.622 of air's mass for its pressure: WMO-No. 8, Annex 4.B, e = 6.112 exp (17.62 t / (243.12 + t)) hPa.
    const kelvin = given.number('temperatureC') + 273.15;
    const standardKelvin = 288.15 - 0.0065 * 0.3048 * given.number('pressureAltitude');
    const pressureRatio = (standardKelvin / 288.15) ** ISA_POWER;
    const dewC = given.number('dewPointC');
    const vapourPa = 611.2 * Math.exp((17.62 * dewC) / (243.12 + dewC));
    const moist = 1 - (0.378 * vapourPa) / (101_325 * pressureRatio);
    const sigma = (moist * pressureRatio * 288.15) / kelvin;
    return inFeet((288.15 / 0.0065) * (1 - sigma ** (1 / (ISA_POWER - 1))));
  },
  'smaller-spare': (given) => Math.min(...given.numbers()),
  'limit-speed': (given) =>
    (given.number('speedKt') * given.number('limitKt')) / given.number('worstKt'),
  'sun-height': (given) =>
    getPosition(new Date(given.text('time')), given.number('latDeg'), given.number('lonDeg'))
      .altitude,
  'gust-spread': (given) => given.number('gustKt') - given.number('speedKt'),
  'zero-fuel-mass': (given) =>
    given.number('emptyKg') + given.number('crewKg') + given.number('carriedKg'),
  'mass-with-fuel': (given) => given.number('zeroFuelMass') + given.number('fuelKg'),
  'centre-of-gravity': (given) => given.number('momentKgM') / given.number('mass'),
  'standard-temperature': (given) => 15 - (6.5 * 0.3048 * given.number('pressureAltitude')) / 1000,
  'root-of-mass': (given) => given.number('bookKt') * rootOfMass(given),
  'safety-speed': (given) => Math.max(given.number('liftOff'), 1.2 * given.number('stallKt')),
  'climb-speed': (given) => {
    const [least, most] = [given.number('leastKt'), given.number('mostKt')];
    return Math.min(most, Math.max(least, ((least + most) / 2) * rootOfMass(given)));
  },
  run: (given) => wayM(given, given.number('groundKt'), runN(given)),
  'landing-run': (given) => {
    const stopN = given.number('brakesN') + given.number('dragN') + given.number('slopeN');
    const groundKt = given.number('groundKt');
    const heldM = groundKt * MPS_PER_KT * given.number('heldS');
    return heldM + wayM(given, groundKt, stopN - given.number('thrustN'));
  },
  'run-and-climb': (given) => given.number('run') + given.number('airM'),
  'left-over': (given) =>
    given.number('availableM') - given.number('rollsFromM') - given.number('needed'),
  'smallest-of': (given) => Math.min(...given.numbers()),
  'accelerate-stop': (given) =>
    given.number('toSpeedM') +
    given.number('groundKt') * MPS_PER_KT * given.number('heldS') +
    given.number('brakingM'),
  'speed-at-mark': (given) => reachedKt(given, given.number('distanceM')),
  'greatest-of': (given) => Math.max(...given.numbers()),
  'engine-out-run': (given) => reachedKt(given, given.number('withinM') - given.number('onwardM')),
  'limit-less-speed': (given) => given.number('limitKt') - given.number('groundKt'),
  'climb-gradient': (given) =>
    (100 * (given.number('thrustN') - given.number('dragN'))) /
    given.number('weightN') /
    given.number('accelerationFactor'),
  'ground-gradient': (given) => {
    const [sine, air] = [given.number('gradient') / 100, given.number('trueKt')];
    const ground = air * Math.sqrt(1 - sine ** 2) - given.number('headwindKt');
    return (100 * sine * air) / ground;
  },
  pitch: (given) =>
    (Math.asin(given.number('gradient') / 100) * 180) / Math.PI + given.number('alphaDeg'),
  'climb-rate': (given) =>
    (given.number('trueKt') * (1852 / 0.3048 / 60) * given.number('gradient')) / 100,
  'reference-speed': (given) => given.number('factor') * given.number('stallKt'),
  'approach-half-gust': (given) => given.number('reference') + given.number('gustSpreadKt') / 2,
  'approach-half-wind-and-gust': (given) => {
    const head = Math.max(0, given.number('headwindKt'));
    return given.number('reference') + Math.min(20, head / 2 + given.number('gustSpreadKt'));
  },
  'share-of-approach': (given) => given.number('share') * given.number('approach'),
  'landing-air': (given) => {
    // Anderson, Aircraft Performance and Design, 6.8.1 and 6.8.2, and ISO 80000-3's g.
    const path = inRad(given.number('pathDeg'));
    const [approachKt, flareKt] = [given.number('approachTrueKt'), given.number('flareTrueKt')];
    const radiusM = (flareKt * MPS_PER_KT) ** 2 / (0.2 * 9.80665);
    const straightM = (50 * 0.3048 - radiusM * (1 - Math.cos(path))) / Math.tan(path);
    const still = (kt: number) => 1 - given.number('headwindKt') / kt;
    // Δ(½ m V²) = (D − T) s.
    const [from, to] = [approachKt, given.number('touchdownTrueKt')].map((kt) => kt * MPS_PER_KT);
    const lostJ = (given.number('massKg') * ((from ?? 0) ** 2 - (to ?? 0) ** 2)) / 2;
    const slowedM = lostJ / (given.number('dragN') - given.number('thrustN'));
    const flareM = Math.max(radiusM * Math.sin(path), slowedM);
    return straightM * still(approachKt) + flareM * still(flareKt);
  },
  sum: (given) => given.number('air') + given.number('run'),
  'times-factor': (given) => given.number('needed') * given.number('factor'),
  'left-of-lda': (given) => given.number('availableM') - given.number('needed'),
  'left-of-end': (given) => {
    const declared = ['toraM', 'todaM', 'ldaM'].find((name) => name in given.why.inputs) ?? '';
    return given.number(declared) - given.number('neededM');
  },
  'path-sink': (given) =>
    given.number('groundKt') * Math.tan(inRad(given.number('pathDeg'))) * (1852 / 0.3048 / 60),
  'go-around': (given) =>
    (100 * (given.number('thrustN') - given.number('dragN'))) / given.number('weightN'),
  tora: (given) => given.number('given'),
  toda: (given) => given.number('given'),
  asda: (given) => given.number('given'),
  lda: (given) => given.number('given'),
};

/** A figure's value, worked out again from its own why. */
export function workedOutAgain(why: Why): number {
  const formula = FORMULAS[why.formula];
  if (formula === undefined) throw new Error(`there is no formula ${why.formula}`);
  return formula(new Given(why));
}
