/** The words of lessonWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './lessonWords.en';

type Said = Translated<typeof english>;

export let { words }: Said = english;

inLanguage<Said>(english, { de: () => import('./lessonWords.de') }, (said) => {
  ({ words } = said);
});
