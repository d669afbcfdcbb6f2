/** The words of words.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './words.en';

type Said = Translated<typeof english>;

export let { words, troubles, tableProblem }: Said = english;

inLanguage<Said>(english, { de: () => import('./words.de') }, (said) => {
  ({ words, troubles, tableProblem } = said);
});
