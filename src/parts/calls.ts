/** The words of calls.en.ts, in the language of the page. */

import type * as english from './calls.en';
import { inLanguage } from './catalogues';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let compass: Said['compass'];
export let callTitles: Said['callTitles'];
export let readbackWords: Said['readbackWords'];

inLanguage<Said>({ en: () => import('./calls.en'), de: () => import('./calls.de') }, (said) => {
  ({ compass, callTitles, readbackWords } = said);
});
