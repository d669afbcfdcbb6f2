/** The words of procedure.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import * as english from './procedure.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let { phaseWords, momentWords, listGroupWords, rungWords, climbRungWords }: Said = english;

inLanguage<Said>(english, { de: () => import('./procedure.de') }, (said) => {
  ({ phaseWords, momentWords, listGroupWords, rungWords, climbRungWords } = said);
});
