/** The words of stepTextWords.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import * as english from './stepTextWords.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { stepWords }: Said = english;

inLanguage<Said>(english, { de: () => import('./stepTextWords.de') }, (said) => {
  ({ stepWords } = said);
});
