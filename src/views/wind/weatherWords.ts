/** What weatherWords.en.ts holds, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './weatherWords.en';

type Said = Translated<typeof english>;

export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./weatherWords.en'), de: () => import('./weatherWords.de') },
  (said) => {
    ({ words } = said);
  },
);
