/** The language of what is drawn and read aloud, where that is not the language of the page. */

import { languageOf } from '../core';
import { pageLanguage } from '../device/pageLanguage';
import { procedure } from './flight';

/** What `lang` has to say of a text in a language: nothing where the page is in it. */
export const langOf = (language: string): string | undefined =>
  language === pageLanguage() ? undefined : language;

/** The language of the procedure that is flown, as a BCP 47 tag. */
export const stepsLanguage = (): string =>
  procedure.value === null ? pageLanguage() : languageOf(procedure.value);

/** What `lang` has to say of a text of the procedure that is flown. */
export const stepsLang = (): string | undefined => langOf(stepsLanguage());

/** What is said on the radio is English on every page. ICAO Annex 10, vol. II, 5.2.1.2. */
export const CALL_LANGUAGE = 'en';

/** What `lang` has to say of a radio call. */
export const callLang = (): string | undefined => langOf(CALL_LANGUAGE);

/** A language by its name in the language of the page: German for `de`. */
export const languageName = (language: string): string =>
  new Intl.DisplayNames([pageLanguage()], { type: 'language' }).of(language) ?? language;

/** A text as it stands within a sentence. Only English begins nouns small there, names and codes aside. */
export const withinSentence = (text: string, language: string): string =>
  language.startsWith('en')
    ? text.replace(/^\p{Lu}(?=[\p{Ll} ])/u, (first) => first.toLowerCase())
    : text;
