/** The words of ageWords.en.ts, in the language of the page. */

import * as english from './ageWords.en';
import { inLanguage } from './catalogues';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./ageWords.de') }, (said) => {
  ({ words } = said);
});
