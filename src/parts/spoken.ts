/** The words of spoken.en.ts, in the language of the page. */

import { inLanguage } from './catalogues';
import * as english from './spoken.en';
import type { Translated } from './translated';

type Said = Translated<typeof english>;

export let {
  saidEach,
  saidRunway,
  saidDirection,
  saidDigits,
  saidPoint,
  saidStand,
  saidCallsign,
  saidHundreds,
}: Said = english;

inLanguage<Said>(english, { de: () => import('./spoken.de') }, (said) => {
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
