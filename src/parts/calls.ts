/** The words of calls.en.ts, in the language of the page. */

import * as english from './calls.en';
import { inLanguage } from './catalogues';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { compass, callTitles, readbackWords }: Said = english;

inLanguage<Said>(english, { de: () => import('./calls.de') }, (said) => {
  ({ compass, callTitles, readbackWords } = said);
});
