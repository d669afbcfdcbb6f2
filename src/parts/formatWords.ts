/** The words of formatWords.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import * as english from './formatWords.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { point, dateWords }: Said = english;

inLanguage<Said>(english, { de: () => import('./formatWords.de') }, (said) => {
  ({ point, dateWords } = said);
});
