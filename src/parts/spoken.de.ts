/** How things are said when they are read aloud in German. What is said on the radio stays English. */

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
} = spellingWith({
  // Zwo, so that it is not taken for drei.
  digits: ['null', 'eins', 'zwo', 'drei', 'vier', 'fünf', 'sechs', 'sieben', 'acht', 'neun'],
  point: 'Komma',
  minus: 'minus',
  thousand: 'tausend',
  hundred: 'hundert',
  sides: { L: 'links', C: 'Mitte', R: 'rechts' },
  stand: 'Standplatz',
});
