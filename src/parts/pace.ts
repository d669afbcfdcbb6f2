/** The words of pace.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import type * as english from './pace.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let durationWords: Said['durationWords'];
export let markWords: Said['markWords'];
export let passingWords: Said['passingWords'];
export let turnWords: Said['turnWords'];

inLanguage<Said>({ en: () => import('./pace.en'), de: () => import('./pace.de') }, (said) => {
  ({ durationWords, markWords, passingWords, turnWords } = said);
});
