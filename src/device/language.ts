/** The language of the page: the pilot's choice, else the device's if the app has words in it. */

/** A language the whole app is available in, by its BCP 47 tag. */
export type Language = 'en' | 'de';

/** Where the choice is stored. */
export const LANGUAGE_KEY = 'lapstrip.language';

function wanted(): string {
  try {
    return localStorage.getItem(LANGUAGE_KEY) ?? navigator.language;
  } catch {
    return navigator.language;
  }
}

/** The page's language until it is reloaded. */
export const language: Language = wanted().startsWith('de') ? 'de' : 'en';
