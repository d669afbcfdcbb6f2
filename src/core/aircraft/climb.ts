/** The climb the thrust sustains, gear and flaps up, reheat off. */

import { GAS_CONSTANT, LAPSE_K_PER_M } from '../earth/atmosphere';
import { GRAVITY, KT_PER_MPS, M_PER_FT } from '../units';
import { dynamicPressurePa, liftCoefficient, trueFromCalibratedMps } from './aerodynamics';
import type { Aircraft } from './aircraft';
import type { RollConditions } from './conditions';
import { aloftN } from './forces';
import { climbSpeedKt } from './speeds';
import type { Climb } from './takeoffAnswer';

/** Heat capacities of air, c_p / c_v. ICAO Doc 7488, table A. */
const KAPPA = 1.4;

/**
 * What it costs in a climb below the tropopause to hold the calibrated airspeed, not the true one:
 * 1 + (V / g) dV/dh. True airspeed grows with height and takes its part of the spare thrust. 1.16
 * at Mach 0.55 and 15 °C, 1.01 at 80 kt. The inverse of the energy share factor in Eurocontrol's
 * BADA user manual, 3.1 (value from memory).
 */
export function accelerationFactor(airMps: number, temperatureK: number): number {
  const mach2 = (airMps * airMps) / (KAPPA * GAS_CONSTANT * temperatureK);
  const stagnation = 1 + ((KAPPA - 1) / 2) * mach2;
  const compressed = stagnation ** (KAPPA / (KAPPA - 1)) - 1;
  const falling = (KAPPA * GAS_CONSTANT * -LAPSE_K_PER_M * mach2) / (2 * GRAVITY);
  return 1 + falling + stagnation ** (-1 / (KAPPA - 1)) * compressed;
}

/** Speed, pitch, gradient and rate for the mass, in the field's air, at constant IAS. */
export function climbOf(conditions: RollConditions, aircraft: Aircraft): Climb {
  const { performance, densityRatio, weightN } = conditions;
  const { areaM2, gearCd } = performance.wing;
  const speedKt = climbSpeedKt(aircraft, conditions.massKg);
  const airMps = trueFromCalibratedMps(speedKt, densityRatio, conditions.temperatureK);
  const { pullN, dragN } = aloftN(
    conditions,
    airMps,
    { setting: 'full', share: 1, deadDragM2: 0 },
    { gear: gearCd === undefined, flaps: false },
  );
  const factor = accelerationFactor(airMps, conditions.temperatureK);
  const sine = Math.min(Math.max((pullN - dragN) / weightN / factor, -1), 1);
  const groundMps = airMps * Math.sqrt(1 - sine * sine) - conditions.headwindMps;
  const liftN = weightN * Math.sqrt(1 - sine * sine);
  const alpha = alphaDeg(
    aircraft,
    conditions,
    liftN / (dynamicPressurePa(airMps, densityRatio) * areaM2),
  );
  return {
    speedKt,
    trueKt: airMps * KT_PER_MPS,
    pitchDeg: (Math.asin(sine) * 180) / Math.PI + alpha,
    gradientPercent: 100 * sine,
    groundGradientPercent: groundMps > 0 ? (100 * airMps * sine) / groundMps : null,
    rateFtMin: (airMps * sine * 60) / M_PER_FT,
    accelerationFactor: factor,
    thrustN: pullN,
    dragN,
    weightN,
    alphaDeg: alpha,
  };
}

/**
 * Angle of attack at a lift coefficient with flaps up, degrees: linear through the wing on its
 * wheels and at lift-off, less what the flaps gave there.
 */
function alphaDeg(
  { takeoff, masses }: Aircraft,
  { performance }: RollConditions,
  cl: number,
): number {
  const { areaM2, ground, rotated, flapsCl } = performance.wing;
  const liftOffCl = liftCoefficient(masses.usualTakeoffKg, areaM2, takeoff.liftOffKt);
  const slope = (liftOffCl - ground.cl) / (rotated.alphaDeg - ground.alphaDeg);
  return ground.alphaDeg + (cl - (ground.cl - flapsCl)) / slope;
}

/** Sink rate down a path, ft/min, its angle in degrees: at 3°, 5.3 per knot. */
export const sinkFtMin = (groundKt: number, pathDeg: number): number =>
  ((groundKt / KT_PER_MPS) * Math.tan((pathDeg * Math.PI) / 180) * 60) / M_PER_FT;
