/** What a load is beyond, as sentences. */

import type { Exceeded, Station } from '../../core';
import { whole } from '../../parts/format';
import { words } from './words.en';

/** Kilograms over or short, never written as none. */
const byWhole = (kg: number) => whole(Math.max(1, Math.ceil(kg - 0.5)));

/** The sentence for what is exceeded. */
export function told(exceeded: Exceeded, stations: readonly Station[]): string {
  switch (exceeded.code) {
    case 'over-max-take-off':
      return words.takeoffOver(byWhole(exceeded.byKg));
    case 'over-max-landing':
      return words.landingOver(byWhole(exceeded.byKg));
    case 'fuel-over':
      return words.fuelOver(byWhole(exceeded.byKg));
    case 'below-landing-fuel':
      return words.fuelShort(byWhole(exceeded.byKg));
    case 'no-fuel':
      return words.noFuel;
    case 'station-over': {
      const name = stations.find(({ id }) => id === exceeded.station)?.name ?? exceeded.station;
      return words.stationOver(name, byWhole(exceeded.byKg));
    }
    case 'outside-envelope':
      return words.outside(exceeded);
  }
}
