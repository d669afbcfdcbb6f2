/** All the words of a new procedure: those of the page's language, and calls. */

import type { StarterWords } from '../../core';
import { starter } from './words';

/** Calls are English in every language. ICAO Annex 10, vol. II, 5.2.1.2. */
const calls: StarterWords['calls'] = {
  'taxi-call-ground': '{ground}, {callsign}, ready to taxi, runway {runway}',
  'taxi-call-traffic': '{field} traffic, {callsign}, taxiing to runway {runway}, {field}',
  'ready-call-tower': '{tower}, {callsign}, ready for departure, runway {runway}',
  'ready-call-traffic': '{field} traffic, {callsign}, lining up runway {runway}, {field}',
};

/** In the language that the page has when it asks. */
export const starterWords = (): StarterWords => ({ ...starter, calls });
