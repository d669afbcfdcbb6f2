/** A load sheet to begin with. */

import type { Aircraft } from '../aircraft';
import type { Loading } from '../load';

/** The names that a new load sheet begins with, in the pilot's language. */
export interface LoadTexts {
  readonly pilot: string;
  readonly usual: string;
}

/** What a pilot with their gear is taken to weigh, kg. Common practice, no published source. */
const PILOT_KG = 85;

/** Share of the fuel that one lands with. Likewise. */
const LEFT = 0.15;

/** One pilot, no stations, and tanks for all that may still come aboard. */
export function newLoading({ masses }: Aircraft, { pilot, usual }: LoadTexts): Loading {
  const fuelKg = Math.max(Math.round(masses.usualTakeoffKg - masses.emptyKg - PILOT_KG), 2);
  return {
    fuel: { maxKg: fuelKg, landingKg: Math.max(Math.round(LEFT * fuelKg), 1) },
    crew: [{ name: pilot, kg: PILOT_KG }],
    stations: [],
    presets: [{ name: usual, fuelKg, stations: {} }],
  };
}
