/** The words of formatWords.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import type * as english from './formatWords.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let point: Said['point'];
export let dateWords: Said['dateWords'];

inLanguage<Said>(
  { en: () => import('./formatWords.en'), de: () => import('./formatWords.de') },
  (said) => {
    ({ point, dateWords } = said);
  },
);
