/** The words of route.en.ts, in the language of the page. */

import { inLanguage } from '../../parts/catalogues';
import type { Translated } from '../../parts/translated';
import type * as english from './route.en';

type Said = Translated<typeof english>;

export let tellRoute: Said['tellRoute'];
export let faultWords: Said['faultWords'];

inLanguage<Said>({ en: () => import('./route.en'), de: () => import('./route.de') }, (said) => {
  ({ tellRoute, faultWords } = said);
});
