/** The words of figureWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './figureWords.en';

type Said = Translated<typeof english>;

export let { figures }: Said = english;

inLanguage<Said>(english, { de: () => import('./figureWords.de') }, (said) => {
  ({ figures } = said);
});
