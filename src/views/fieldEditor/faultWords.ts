/** The words of faultWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './faultWords.en';

type Said = Translated<typeof english>;

export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./faultWords.en'), de: () => import('./faultWords.de') },
  (said) => {
    ({ words } = said);
  },
);
