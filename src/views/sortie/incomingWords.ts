/** The words of incomingWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './incomingWords.en';

type Said = Translated<typeof english>;

export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./incomingWords.en'), de: () => import('./incomingWords.de') },
  (said) => {
    ({ words } = said);
  },
);
