/** The words of words.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './words.en';

type Said = Translated<typeof english>;

export let { words, needs, changeWords, gapWords, placeBad, pointName, stretchName }: Said =
  english;

inLanguage<Said>(english, { de: () => import('./words.de') }, (said) => {
  ({ words, needs, changeWords, gapWords, placeBad, pointName, stretchName } = said);
});
