/** The language of what is drawn and read aloud, if it isn't the language of the page. */

import { type InLanguages, languageOf, type StopNow, stopNow, textIn } from '../core';
import { pageLanguage } from '../device/pageLanguage';
import { day, documents } from './board';
import type { Listed } from './documents/documents';
import { procedure } from './documents/inUse';

/** The `lang` of a text in a language: undefined if the page is in it. */
export const langOf = (language: string): string | undefined =>
  language === pageLanguage() ? undefined : language;

/** The language of the procedure in use, as a BCP 47 tag. */
export const stepsLanguage = (): string =>
  procedure.value === null ? pageLanguage() : languageOf(procedure.value);

/** The `lang` of a text of the procedure in use. */
export const stepsLang = (): string | undefined => langOf(stepsLanguage());

/** The `lang` of a document's name: those of fields and aircraft are names in any language. */
export const nameLang = (listed: Listed | undefined): string | undefined =>
  listed?.kind === 'procedure' ? langOf(listed.language) : undefined;

/** A text of a document as drawn, and its `lang`. */
export interface Shown {
  readonly text: string;
  readonly lang: string | undefined;
}

/** A text of a document in the language of the page, or else as it stands. */
export function shownText(document: InLanguages, text: string): Shown {
  const found = textIn(document, text, pageLanguage());
  return { text: found.text, lang: langOf(found.language) };
}

export const fieldText = (text: string): Shown => shownText(documents.value.field ?? {}, text);

export const aircraftText = (text: string): Shown =>
  shownText(documents.value.aircraft ?? {}, text);

/** How to stop, as far as it is there to be used. */
export function stopping(): StopNow {
  const { aircraft } = documents.value;
  return aircraft === null ? { items: [], notThere: [] } : stopNow(aircraft, day.steps());
}

/** The same in words, all in one language, or as they stand. */
export function stopText(): Shown {
  const { aircraft } = documents.value;
  const written = stopping().items;
  const shown = written.map(aircraftText);
  const lang = shown[0]?.lang;
  return shown.every((one) => one.lang === lang)
    ? { text: shown.map(({ text }) => text).join(', '), lang }
    : { text: written.join(', '), lang: langOf(languageOf(aircraft ?? {})) };
}

/** The `lang` of a name painted at the field, which is the same on a page in any language. */
export const paintedLang = (): string | undefined =>
  langOf(languageOf(documents.value.field ?? {}));

/** Radio calls are English on every page. ICAO Annex 10, vol. II, 5.2.1.2. */
export const CALL_LANGUAGE = 'en';

/** The `lang` of a radio call. */
export const callLang = (): string | undefined => langOf(CALL_LANGUAGE);

/** A language by its name in the language of the page: German for `de`. */
export const languageName = (language: string): string =>
  new Intl.DisplayNames([pageLanguage()], { type: 'language' }).of(language) ?? language;

/**
 * A text as it stands within a sentence. Only English starts nouns in lower case there, names and
 * codes aside.
 */
export const withinSentence = (text: string, language: string): string =>
  language.startsWith('en')
    ? text.replace(/^\p{Lu}(?=[\p{Ll} ])/u, (first) => first.toLowerCase())
    : text;
