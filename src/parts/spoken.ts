/** The words of spoken.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import type * as english from './spoken.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let saidEach: Said['saidEach'];
export let saidRunway: Said['saidRunway'];
export let saidDirection: Said['saidDirection'];
export let saidDigits: Said['saidDigits'];
export let saidPoint: Said['saidPoint'];
export let saidStand: Said['saidStand'];
export let saidCallsign: Said['saidCallsign'];
export let saidHundreds: Said['saidHundreds'];

inLanguage<Said>({ en: () => import('./spoken.en'), de: () => import('./spoken.de') }, (said) => {
  ({
    saidEach,
    saidRunway,
    saidDirection,
    saidDigits,
    saidPoint,
    saidStand,
    saidCallsign,
    saidHundreds,
  } = said);
});
