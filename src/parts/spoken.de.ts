/** How things are read aloud in German. Radio calls stay English. */

import { spellingWith } from './spelling';

export const {
  saidEach,
  saidRunway,
  saidDirection,
  saidDigits,
  saidPoint,
  saidStand,
  saidCallsign,
  saidHundreds,
  saidDistance,
} = spellingWith({
  // Zwo, because zwei sounds like drei.
  digits: ['null', 'eins', 'zwo', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'],
  point: 'Komma',
  minus: 'minus',
  thousand: 'tausend',
  hundred: 'hundert',
  sides: { L: 'links', C: 'Mitte', R: 'rechts' },
  stand: 'Standplatz',
});
