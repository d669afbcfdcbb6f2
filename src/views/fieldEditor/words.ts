/** The words of words.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './words.en';

type Said = Translated<typeof english>;

export let words: Said['words'];
export let needs: Said['needs'];
export let gapWords: Said['gapWords'];
export let pointName: Said['pointName'];
export let stretchName: Said['stretchName'];

inLanguage<Said>({ en: () => import('./words.en'), de: () => import('./words.de') }, (said) => {
  ({ words, needs, gapWords, pointName, stretchName } = said);
});
