/** The words of noteWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './noteWords.en';

type Said = Translated<typeof english>;

export let { problems, notes }: Said = english;

inLanguage<Said>(english, { de: () => import('./noteWords.de') }, (said) => {
  ({ problems, notes } = said);
});
