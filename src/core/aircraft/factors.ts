/** Factors on planned lengths: worn engines and ordinary pilots need more. */

import type { Surface } from '../airfield/field';
import type { Aircraft } from './aircraft';

/** Whose factors apply: no one's, the document's, or common ones. */
export type FactorChoice = 'none' | 'document' | 'common';

/** Light aircraft, and every propeller. UK CAA Safety Sense Leaflet 7c. */
const LIGHT = { takeoff: 1.33, landing: 1.43 };

/** Jets. 14 CFR 25.113, all engines; 14 CFR 121.195, landing within 0.6 of the LDA. */
const JET = { takeoff: 1.15, landing: 1 / 0.6 };

/** More on a runway that isn't dry. 14 CFR 121.195(d) (value from memory). */
const NOT_DRY = 1.15;

const commonOf = ({ engine }: Aircraft) =>
  engine === 'piston' || engine === 'turboprop' ? LIGHT : JET;

/**
 * Planned over computed run and distance to 50 ft, 1 for none; the common one if the document has
 * none. It never covers a stop, and so not ASDA.
 */
export function takeoffFactor(aircraft: Aircraft, choice: FactorChoice = 'document'): number {
  if (choice === 'none') return 1;
  const common = commonOf(aircraft).takeoff;
  return choice === 'common' ? common : (aircraft.performance?.takeoffFactor ?? common);
}

/** Planned over computed distance from 50 ft to rest, 1 for none; 1.15 more if not dry. */
export function landingFactor(
  aircraft: Aircraft,
  surface: Surface,
  choice: FactorChoice = 'document',
): number {
  if (choice === 'none') return 1;
  const common = commonOf(aircraft).landing;
  const dry = choice === 'common' ? common : (aircraft.performance?.landing.ldaFactor ?? common);
  return surface === 'dry' ? dry : dry * NOT_DRY;
}
