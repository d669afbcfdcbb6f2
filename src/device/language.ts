/** The language of the page: the pilot's choice, or the device's where there are words in it. */

/** A language that all words of the app are in, by its BCP 47 tag. */
export type Language = 'en' | 'de';

/** Where the choice is kept. */
export const LANGUAGE_KEY = 'lapstrip.language';

function wanted(): string {
  try {
    return localStorage.getItem(LANGUAGE_KEY) ?? navigator.language;
  } catch {
    return navigator.language;
  }
}

/** What the page speaks until it is opened anew. */
export const language: Language = wanted().startsWith('de') ? 'de' : 'en';
