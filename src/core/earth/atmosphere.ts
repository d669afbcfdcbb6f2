/**
 * The standard atmosphere, and today's air relative to it.
 *
 * ICAO Doc 7488, Manual of the ICAO Standard Atmosphere: up to the tropopause the temperature falls
 * by 6.5 K per kilometre, and pressure and density follow from it, the air being dry and at rest.
 * Heights are geopotential; at 5 000 ft that is a foot less than geometric. Humidity counts if a
 * dew point is known: air of 30 °C with a dew point of 28 °C is as thin as dry air some 480 ft
 * higher. Handbook charts leave it out.
 */

import { GRAVITY, HPA_PER_INHG, M_PER_FT } from '../units';

/** Temperature at sea level, K. ICAO Doc 7488, table A. */
const SEA_LEVEL_K = 288.15;

/** Pressure at sea level, Pa. ICAO Doc 7488, table A. */
const SEA_LEVEL_PA = 101_325;

/** The temperature lapse rate, K per metre. ICAO Doc 7488, table D. */
export const LAPSE_K_PER_M = 0.0065;

/** Specific gas constant of dry air, J per kilogram and kelvin. ICAO Doc 7488, table A. */
export const GAS_CONSTANT = 287.05287;

/** p is proportional to this power of T, 5.25588; and ρ, which is p over T, to one less. */
const PRESSURE_POWER = GRAVITY / (GAS_CONSTANT * LAPSE_K_PER_M);

/** 0 °C, K. */
export const KELVIN_AT_0_C = 273.15;

/**
 * The tables start 5 000 m below sea level, and the temperature stops falling at 11 000 m. ICAO Doc
 * 7488.
 */
const LOWEST_M = -5000;
const TROPOPAUSE_M = 11_000;

/**
 * Bounds of field elevations and altimeter settings, ft: the shore of the Dead Sea and the
 * tropopause.
 */
const LOWEST_FT = -1500;
const HIGHEST_FT = 36_000;

/** Standard temperature at a height, K. Throws RangeError below −5 000 m and above 11 000 m. ICAO Doc 7488. */
export function isaTemperatureK(heightM: number): number {
  if (!(heightM >= LOWEST_M && heightM <= TROPOPAUSE_M)) {
    throw new RangeError(`${heightM} m is not within ${LOWEST_M} to ${TROPOPAUSE_M} m`);
  }
  return SEA_LEVEL_K - LAPSE_K_PER_M * heightM;
}

/** Standard pressure at a height, Pa. Throws as {@link isaTemperatureK}. ICAO Doc 7488. */
export const isaPressurePa = (heightM: number): number =>
  SEA_LEVEL_PA * (isaTemperatureK(heightM) / SEA_LEVEL_K) ** PRESSURE_POWER;

/** Standard density at a height, kg/m³. Throws as {@link isaTemperatureK}. ICAO Doc 7488. */
export const isaDensityKgM3 = (heightM: number): number =>
  densityKgM3(isaPressurePa(heightM), isaTemperatureK(heightM));

/** Density of dry air, kg/m³: ρ = p / (R T). ICAO Doc 7488. */
export const densityKgM3 = (pressurePa: number, temperatureK: number): number =>
  pressurePa / (GAS_CONSTANT * temperatureK);

/**
 * Pressure altitude: the height in the standard atmosphere that has the field's pressure, ft. QNH
 * is the setting with which an altimeter on the ground shows the elevation (ICAO Doc 8896), and
 * changing the setting shifts all it shows by the same height. Null if elevation or result lies
 * outside −1 500 to 36 000 ft, or if QNH is no pressure.
 */
export function pressureAltitudeFt(qnhHpa: number, elevationFt: number): number | null {
  const settingM = heightOf(((100 * qnhHpa) / SEA_LEVEL_PA) ** (1 / PRESSURE_POWER));
  const altitudeFt = elevationFt + settingM / M_PER_FT;
  return isInReach(elevationFt) && isInReach(altitudeFt) ? altitudeFt : null;
}

/**
 * Density altitude: the height in the standard atmosphere that has the air's density, ft. Null if
 * the pressure altitude lies outside −1 500 to 36 000 ft, or the density outside the tables up to
 * the tropopause. With a dew point, °C, the air is that moist; absent or null, dry.
 */
export function densityAltitudeFt(
  pressureAltitudeFt: number,
  temperatureC: number,
  dewPointC: number | null = null,
): number | null {
  if (!isInReach(pressureAltitudeFt)) return null;
  const sigma = densityRatio(pressureAltitudeFt, temperatureC, dewPointC);
  const heightM = heightOf(sigma ** (1 / (PRESSURE_POWER - 1)));
  return heightM >= LOWEST_M && heightM <= TROPOPAUSE_M ? heightM / M_PER_FT : null;
}

/**
 * σ, the air's density relative to sea level on a standard day; true airspeed is equivalent
 * airspeed divided by its root. With a dew point, °C, the air is that moist; absent or null, dry.
 * Throws as {@link isaTemperatureK}.
 */
export function densityRatio(
  pressureAltitudeFt: number,
  temperatureC: number,
  dewPointC: number | null = null,
): number {
  const pressurePa = isaPressurePa(pressureAltitudeFt * M_PER_FT);
  const dry = densityKgM3(pressurePa, temperatureC + KELVIN_AT_0_C);
  return (dry * moistShare(pressurePa, dewPointC)) / densityKgM3(SEA_LEVEL_PA, SEA_LEVEL_K);
}

/**
 * How much lighter water vapour is than air: 1 − 18.015 / 28.964, per share of vapour pressure.
 * WMO-No. 8.
 */
const LIGHTER = 0.378;

/** Vapour pressure at a dew point, Pa. WMO-No. 8, Annex 4.B, over water. */
const vapourPa = (dewPointC: number): number =>
  611.2 * Math.exp((17.62 * dewPointC) / (243.12 + dewPointC));

/** Density of moist air relative to dry air at the same pressure and temperature. */
const moistShare = (pressurePa: number, dewPointC: number | null): number =>
  dewPointC === null ? 1 : 1 - (LIGHTER * vapourPa(dewPointC)) / pressurePa;

/** A pressure in inches of mercury. ICAO Annex 5. */
export const inHgFromHpa = (pressureHpa: number): number => pressureHpa / HPA_PER_INHG;

/** The height, m, at which the standard temperature is that share of sea level's. */
const heightOf = (temperatureShare: number): number =>
  (SEA_LEVEL_K / LAPSE_K_PER_M) * (1 - temperatureShare);

const isInReach = (altitudeFt: number): boolean =>
  altitudeFt >= LOWEST_FT && altitudeFt <= HIGHEST_FT;
