/** The words of faultWords.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './faultWords.en';

type Said = Translated<typeof english>;

export let { faults, otherFault, places }: Said = english;

inLanguage<Said>(english, { de: () => import('./faultWords.de') }, (said) => {
  ({ faults, otherFault, places } = said);
});
