/**
 * When a field's preferred ends may come before the wind.
 *
 * ICAO Doc 8168 (PANS-OPS), noise abatement procedures, 2.1.3, with the same values in EASA AMC1
 * ATS.TR.260: noise should not determine the runway when its surface is affected, visibility is too
 * low, wind shear or thunderstorms are about, or the wind on it is too strong. The wind is judged
 * with the ends, at every direction; everything else is judged here.
 */

import type { Surface } from '../airfield/field';
import type { Purpose } from './question';

/** Greatest crosswind, gusts included, kt (28 km/h). ICAO Doc 8168, 2.1.3 c). */
export const PREFERRED_CROSSWIND_KT = 15;

/** Greatest tailwind, gusts included, kt (9 km/h). ICAO Doc 8168, 2.1.3 d). */
export const PREFERRED_TAILWIND_KT = 5;

/** What the scheme depends on besides wind. */
export interface PreferenceConditions {
  readonly purpose: Purpose;
  readonly surface: Surface;
  /** m; null when not known. */
  readonly visibilityM: number | null;
  /** Above the field, ft; Infinity when there is none, null when not known. */
  readonly ceilingFt: number | null;
  /** Reported or forecast. */
  readonly windShear: boolean;
  /** Expected to affect the approach or the departure. */
  readonly thunderstorm: boolean;
}

/** A reason why the preferred ends don't come first. */
export type AgainstPreference =
  /** Snow, slush, ice, water and the like. ICAO Doc 8168, 2.1.3 a). */
  | { readonly code: 'surface'; readonly surface: Surface }
  /** Below 1.9 km (1 NM). ICAO Doc 8168, 2.1.3 b). */
  | { readonly code: 'visibility'; readonly visibilityM: number; readonly leastM: number }
  /** Below 500 ft (150 m), for landing. ICAO Doc 8168, 2.1.3 b). */
  | { readonly code: 'ceiling'; readonly ceilingFt: number; readonly leastFt: number }
  /** ICAO Doc 8168, 2.1.3 e). */
  | { readonly code: 'wind-shear' }
  /** ICAO Doc 8168, 2.1.3 e). */
  | { readonly code: 'thunderstorm' };

const LEAST_VISIBILITY_M = 1900;
const LEAST_CEILING_FT = 500;

/**
 * Everything that speaks against a preferred-runway scheme; empty if it applies. Unknowns speak
 * neither for nor against: the pilot who set the scheme is the one to know.
 */
export function againstPreference(conditions: PreferenceConditions): AgainstPreference[] {
  const { purpose, surface, visibilityM, ceilingFt, windShear, thunderstorm } = conditions;
  const against: AgainstPreference[] = [];
  if (surface !== 'dry') against.push({ code: 'surface', surface });
  if (visibilityM !== null && visibilityM < LEAST_VISIBILITY_M) {
    against.push({ code: 'visibility', visibilityM, leastM: LEAST_VISIBILITY_M });
  }
  if (purpose === 'landing' && ceilingFt !== null && ceilingFt < LEAST_CEILING_FT) {
    against.push({ code: 'ceiling', ceilingFt, leastFt: LEAST_CEILING_FT });
  }
  if (windShear) against.push({ code: 'wind-shear' });
  if (thunderstorm) against.push({ code: 'thunderstorm' });
  return against;
}

/** Whether a preferred-runway scheme applies, wind apart: {@link againstPreference} is empty. */
export const preferenceApplies = (conditions: PreferenceConditions): boolean =>
  againstPreference(conditions).length === 0;
