/** What a load exceeds, as sentences, and the names in them. */

import type { ComponentChildren } from 'preact';
import { aircraftText } from '../../board/language';
import type { Exceeded, Station } from '../../core';

import { marked, type Worded, worded } from '../../parts/marked';
import { fromShown, inShown, mass } from '../../parts/units';
import { words } from './words';

/** A name of the aircraft's document: a station, a store, a preset, one of the crew. */
export const named = (name: string): ComponentChildren => namedIn((text) => text, name);

/** The same in a sentence. */
export function namedIn(sentence: (name: string) => string, name: string): ComponentChildren {
  const { text, lang } = aircraftText(name);
  return marked(lang, sentence, text);
}

/** A mass over or short, never rounded to zero. */
const byWhole = (kg: number) =>
  mass(fromShown(Math.max(1, Math.ceil(inShown(kg, 'kg') - 0.5)), 'kg'));

/** The sentence for what is exceeded, as plain text and as it is drawn. */
export function exceededText(exceeded: Exceeded, stations: readonly Station[]): Worded {
  if (exceeded.code !== 'station-over') return worded(undefined, () => sentence(exceeded));
  const written = stations.find(({ id }) => id === exceeded.station)?.name ?? exceeded.station;
  const { text, lang } = aircraftText(written);
  return worded(lang, (name) => words.stationOver(name, byWhole(exceeded.byKg)), text);
}

function sentence(exceeded: Exclude<Exceeded, { code: 'station-over' }>): string {
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
    case 'outside-envelope':
      return words.outside(exceeded);
  }
}
