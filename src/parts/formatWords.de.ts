/** How numbers and dates are written in German. */

import type * as english from './formatWords.en';

const MONTHS = [
  'Jan.',
  'Feb.',
  'März',
  'Apr.',
  'Mai',
  'Juni',
  'Juli',
  'Aug.',
  'Sept.',
  'Okt.',
  'Nov.',
  'Dez.',
];

export const point: typeof english.point = ',';

export const dateWords: typeof english.dateWords = (day, month, year, space) =>
  `${day}.${space}${MONTHS[month]}${space}${year}`;
