/** What planned lengths are multiplied by: an engine that is not new and a pilot who does not test aircraft need more. */

import type { Surface } from '../airfield/field';
import type { Aircraft } from './aircraft';

/** Whose factors the pilot wants: none, those of the aircraft's document, or common ones. */
export type FactorChoice = 'none' | 'document' | 'common';

/** Light aircraft. UK CAA Safety Sense Leaflet 7c. */
const LIGHT = { takeoff: 1.33, landing: 1.43 };

/** Jets: 14 CFR 25.113, all engines running, and 14 CFR 121.195, which leaves a landing within 0.6 of the LDA. */
const JET = { takeoff: 1.15, landing: 1 / 0.6 };

/** Longer wanted of a runway that is not dry. 14 CFR 121.195(d) (value from memory). */
const NOT_DRY = 1.15;

const commonOf = ({ engine }: Aircraft) => (engine === 'piston' ? LIGHT : JET);

/**
 * Planned over worked-out take-off run and distance to 50 ft; it never covers a stop, and so not ASDA.
 * A document that says nothing has the common one. 1 for none.
 */
export function takeoffFactor(aircraft: Aircraft, choice: FactorChoice = 'document'): number {
  if (choice === 'none') return 1;
  const common = commonOf(aircraft).takeoff;
  return choice === 'common' ? common : (aircraft.performance?.takeoffFactor ?? common);
}

/** Planned over worked-out landing distance from 50 ft to rest; 1.15 more where it is not dry. 1 for none. */
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
