/**
 * How things are said on the radio, on a page in any language. ICAO Annex 10, vol. II, 5.2.1.3 and
 * 5.2.1.4; Doc 9432, ch. 2.
 */

import { spellingWith } from '../spelling';

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
  digits: ['zero', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine'],
  point: 'decimal',
  minus: 'minus',
  thousand: 'thousand',
  hundred: 'hundred',
  sides: { L: 'left', C: 'centre', R: 'right' },
  stand: 'stand',
});
