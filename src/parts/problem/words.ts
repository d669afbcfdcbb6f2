/** The words of words.en.ts, in the language of the page. */

import { inLanguage } from '../catalogues';
import type { Translated } from '../translated';
import * as english from './words.en';

type Said = Translated<typeof english>;

export let { faults, words }: Said = english;

inLanguage<Said>(english, { de: () => import('./words.de') }, (said) => {
  ({ faults, words } = said);
});
