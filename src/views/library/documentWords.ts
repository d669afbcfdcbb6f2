/** The words of documentWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './documentWords.en';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./documentWords.de') }, (said) => {
  ({ words } = said);
});
