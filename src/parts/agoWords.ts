/** The words of agoWords.en.ts, in the language of the page. */

import * as english from './agoWords.en';
import { inLanguage } from './catalogues';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./agoWords.de') }, (said) => {
  ({ words } = said);
});
