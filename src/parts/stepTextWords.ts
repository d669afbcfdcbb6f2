/** The words of stepTextWords.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import type * as english from './stepTextWords.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let stepWords: Said['stepWords'];

inLanguage<Said>(
  { en: () => import('./stepTextWords.en'), de: () => import('./stepTextWords.de') },
  (said) => {
    ({ stepWords } = said);
  },
);
