/** The words of procedure.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import type * as english from './procedure.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let phaseWords: Said['phaseWords'];
export let momentWords: Said['momentWords'];
export let rungWords: Said['rungWords'];
export let climbRungWords: Said['climbRungWords'];

inLanguage<Said>(
  { en: () => import('./procedure.en'), de: () => import('./procedure.de') },
  (said) => {
    ({ phaseWords, momentWords, rungWords, climbRungWords } = said);
  },
);
