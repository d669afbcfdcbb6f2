/** Lift, drag and the stall. Anderson, Aircraft Performance and Design, ch. 2 and 5. */

import { GRAVITY, KT_PER_MPS } from '../units';

/** Density at sea level on a standard day, kg/m³. ICAO Doc 7488. */
export const SEA_LEVEL_KG_M3 = 1.225;

/** q = ½ ρ V², Pa, for a true airspeed in m/s. */
export const dynamicPressurePa = (airMps: number, densityRatio: number): number =>
  0.5 * SEA_LEVEL_KG_M3 * densityRatio * airMps * airMps;

/**
 * True airspeed of an indicated one near the runway, m/s. Leaves out position error and
 * compressibility, which are small below 250 kt.
 */
export const trueMps = (indicatedKt: number, densityRatio: number): number =>
  indicatedKt / KT_PER_MPS / Math.sqrt(densityRatio);

/** Speed of sound at sea level on a standard day, m/s: √(1.4 × 287.05287 × 288.15). ICAO Doc 7488. */
const SOUND_MPS = 340.294;

/**
 * True airspeed of a calibrated one, m/s, compressibility counted: its impact pressure at sea level
 * equals that at the Mach number here. Subsonic. ICAO Doc 7488; Saint-Venant's relation (value from
 * memory).
 */
export function trueFromCalibratedMps(
  calibratedKt: number,
  densityRatio: number,
  temperatureK: number,
): number {
  const temperatureRatio = temperatureK / 288.15;
  const pressureRatio = densityRatio * temperatureRatio;
  const stopped = (1 + 0.2 * (calibratedKt / KT_PER_MPS / SOUND_MPS) ** 2) ** 3.5 - 1;
  const mach2 = 5 * ((stopped / pressureRatio + 1) ** (1 / 3.5) - 1);
  return SOUND_MPS * Math.sqrt(temperatureRatio * mach2);
}

/** Indicated airspeed of a true one, kt; as {@link trueMps}. */
export const indicatedKt = (airMps: number, densityRatio: number): number =>
  airMps * KT_PER_MPS * Math.sqrt(densityRatio);

/** Indicated speed that carries the mass at a lift coefficient, kt: V = √(2 W / (ρ₀ S C_L)). */
export const speedAtLiftKt = (massKg: number, areaM2: number, cl: number): number =>
  Math.sqrt((2 * massKg * GRAVITY) / (SEA_LEVEL_KG_M3 * areaM2 * cl)) * KT_PER_MPS;

/** Lift coefficient that carries the mass at an indicated speed: C_L = 2 W / (ρ₀ S V²). */
export const liftCoefficient = (massKg: number, areaM2: number, speedKt: number): number =>
  (2 * massKg * GRAVITY) / (SEA_LEVEL_KG_M3 * areaM2 * (speedKt / KT_PER_MPS) ** 2);
