/** The question in SI units, with what all forces share; or why it has no answer. */

import { densityRatio, isaTemperatureK, KELVIN_AT_0_C } from '../earth/atmosphere';
import { GRAVITY, KT_PER_MPS, M_PER_FT } from '../units';
import { brakingFriction, rollingFriction } from './friction';
import type { Cannot, CannotCode, GroundQuestion, Performance } from './performance';

export interface RollConditions {
  readonly performance: Performance;
  readonly massKg: number;
  readonly weightN: number;
  readonly densityRatio: number;
  readonly temperatureK: number;
  /** Standard temperature at that pressure, K. */
  readonly standardK: number;
  readonly headwindMps: number;
  /** Of the slope's angle. */
  readonly sin: number;
  readonly cos: number;
  readonly rollingFriction: number;
  readonly brakingFriction: number;
}

/** Steeper than any runway, per cent. */
const MOST_SLOPE_PERCENT = 10;
/** Stronger than anyone takes off in, kt. */
const MOST_WIND_KT = 80;

export const cannot = (because: CannotCode): Cannot => ({ kind: 'cannot', because });

export const isCannot = (answer: object): answer is Cannot =>
  'kind' in answer && answer.kind === 'cannot';

/** A question's conditions, for a greatest mass. */
export function conditionsOf(
  question: GroundQuestion,
  maxKg: number,
  fuelKg?: number,
): RollConditions | Cannot {
  const { aircraft, massKg, air, headwindKt, slopePercent, surface, ground } = question;
  const { performance, masses } = aircraft;
  if (performance === undefined) return cannot('no-performance');
  const { pressureAltitudeFt, temperatureC, dewPointC = null } = air;
  const airGiven = [pressureAltitudeFt, temperatureC, dewPointC ?? 0];
  const given = [massKg, ...airGiven, headwindKt, slopePercent, fuelKg ?? 1];
  if (!given.every(Number.isFinite)) return cannot('not-a-number');
  if (massKg < masses.emptyKg) return cannot('under-empty');
  if (massKg > maxKg) return cannot('over-mass');
  if (fuelKg !== undefined && fuelKg <= 0) return cannot('no-fuel');
  if (Math.abs(slopePercent) > MOST_SLOPE_PERCENT) return cannot('slope-unreasonable');
  if (Math.abs(headwindKt) > MOST_WIND_KT) return cannot('wind-unreasonable');
  if (!isAir(pressureAltitudeFt, temperatureC)) return cannot('air-unreasonable');
  const temperatureK = temperatureC + KELVIN_AT_0_C;
  const angle = Math.atan(slopePercent / 100);
  return {
    performance,
    massKg,
    weightN: massKg * GRAVITY,
    densityRatio: densityRatio(pressureAltitudeFt, temperatureC, dewPointC),
    temperatureK,
    standardK: isaTemperatureK(pressureAltitudeFt * M_PER_FT),
    headwindMps: headwindKt / KT_PER_MPS,
    sin: Math.sin(angle),
    cos: Math.cos(angle),
    rollingFriction: rollingFriction(performance, surface, ground),
    brakingFriction: brakingFriction(performance, surface, ground),
  };
}

const isAir = (pressureAltitudeFt: number, temperatureC: number): boolean =>
  pressureAltitudeFt >= -1500 &&
  pressureAltitudeFt <= 20_000 &&
  temperatureC >= -80 &&
  temperatureC <= 60;
