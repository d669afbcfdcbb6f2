/** The words of brokenWords.en.ts, in the language of the page. */

import { inLanguage } from '../parts/catalogues';
import type { Translated } from '../parts/translated';
import type * as english from './brokenWords.en';

type Said = Translated<typeof english>;

export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./brokenWords.en'), de: () => import('./brokenWords.de') },
  (said) => {
    ({ words } = said);
  },
);
