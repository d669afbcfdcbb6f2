/** The words of roomWords.en.ts, in the language of the page. */

import { inLanguage } from '../parts/catalogues';
import type { Translated } from '../parts/translated';
import * as english from './roomWords.en';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./roomWords.de') }, (said) => {
  ({ words } = said);
});
