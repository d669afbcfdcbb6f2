/** The words of factWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './factWords.en';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./factWords.de') }, (said) => {
  ({ words } = said);
});
