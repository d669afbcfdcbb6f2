/**
 * Units and the factors between them.
 *
 * Quantities carry their unit in their name (`headwindKt`, `lengthM`), and the code uses one unit
 * per kind of quantity: kt, m for runways, ft for altitude, hPa, °C, kg. Everything else is
 * converted on the way in, and back on display (`parts/units.ts`).
 */

/** Units a figure can be given in. */
export type Unit =
  | 'kt'
  | 'm'
  | 'ft'
  | 'ft/min'
  | 'kg'
  | 'hPa'
  | 'inHg'
  | 'degC'
  | 'deg'
  | 's'
  | 'min'
  | '%'
  | 'rpm';

/** Knots in one metre per second: 3600 / 1852, the international nautical mile. ICAO Annex 5. */
export const KT_PER_MPS = 3600 / 1852;

/** Knots in one kilometre per hour: 1 / 1.852. ICAO Annex 5. */
export const KT_PER_KMH = 1 / 1.852;

/** Metres in one foot. ICAO Annex 5. */
export const M_PER_FT = 0.3048;

/** Hectopascals in one inch of mercury, by the conventional value 33.8639. ICAO Annex 5. */
export const HPA_PER_INHG = 33.8639;

/** Kilograms in one pound. International Yard and Pound Agreement, 1959; ICAO Annex 5. */
export const KG_PER_LB = 0.45359237;

/** Standard acceleration of free fall, m/s². ICAO Doc 7488, table A. */
export const GRAVITY = 9.80665;

/** Radians in one degree. */
export const RADIANS_PER_DEGREE = Math.PI / 180;
