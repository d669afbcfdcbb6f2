/** The words of documentWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './documentWords.en';

type Said = Translated<typeof english>;

export let faults: Said['faults'];
export let words: Said['words'];

inLanguage<Said>(
  { en: () => import('./documentWords.en'), de: () => import('./documentWords.de') },
  (said) => {
    ({ faults, words } = said);
  },
);
