/** The words of worldWords.en.ts, in the language of the page. */

import { inLanguage } from '../catalogues';
import type { Translated } from '../translated';
import * as english from './worldWords.en';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./worldWords.de') }, (said) => {
  ({ words } = said);
});
