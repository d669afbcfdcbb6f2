/** What detailWords.en.ts holds, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './detailWords.en';

type Said = Translated<typeof english>;

export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./detailWords.en'), de: () => import('./detailWords.de') },
  (said) => {
    ({ words } = said);
  },
);
