/** What does not fit of a handbook's table, as sentences. */

import type { Aircraft, FitTrouble } from '../../core';
import { bookSaid, percentText } from './said';
import { troubles } from './words';

/** A share as a percentage without its sign, rounded away from nothing. */
export const percent = (share: number) =>
  percentText(Math.ceil(1000 * share) / 1000).replace('+', '');

/** A trouble as a sentence, with what would mend it. */
export function troubleSaid(trouble: FitTrouble, { handbook }: Aircraft): string {
  const { row, figure } = trouble;
  const book = handbook?.rows[row]?.[figure];
  const factor = trouble.code === 'thrust-apart' ? trouble.factor : 1;
  const told = {
    row: row + 1,
    figure,
    book: book === undefined ? '' : bookSaid(figure, book),
    foretold: trouble.code === 'row-apart' ? bookSaid(figure, trouble.foretold) : '',
    percent: 'by' in trouble ? percentText(trouble.by) : '',
    thrust: percent(Math.abs(factor - 1)),
    isMore: factor > 1,
  };
  if (trouble.code !== 'no-figure') return troubles[trouble.code](told);
  const { because } = trouble;
  switch (because) {
    case 'over-mass':
    case 'under-empty':
    case 'never-stops':
    case 'cannot-climb':
      return troubles[because](told);
    default:
      return troubles['no-figure'](told);
  }
}
