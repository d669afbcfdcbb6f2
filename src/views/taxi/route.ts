/** The words of route.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import * as english from './route.en';

type Said = Translated<typeof english>;

export let { tellRoute, faultWords, problemWords, routeNames, wayWords }: Said = english;

inLanguage<Said>(english, { de: () => import('./route.de') }, (said) => {
  ({ tellRoute, faultWords, problemWords, routeNames, wayWords } = said);
});
