/** The words of words.en.ts, in the language of the page. */

import { inLanguage } from '../catalogues';
import type { Translated } from '../translated';
import * as english from './words.en';

type Said = Translated<typeof english>;

export let { starter, starterName }: Said = english;

inLanguage<Said>(english, { de: () => import('./words.de') }, (said) => {
  ({ starter, starterName } = said);
});
