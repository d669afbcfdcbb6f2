/** The words of ageWords.en.ts, in the language of the page. */

import type * as english from './ageWords.en';
import { inLanguage } from './catalogues';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./ageWords.en'), de: () => import('./ageWords.de') },
  (said) => {
    ({ words } = said);
  },
);
