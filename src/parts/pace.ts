/** The words of pace.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import * as english from './pace.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { durationWords, holdWords, markWords, passingWords, turnWords }: Said = english;

inLanguage<Said>(english, { de: () => import('./pace.de') }, (said) => {
  ({ durationWords, holdWords, markWords, passingWords, turnWords } = said);
});
