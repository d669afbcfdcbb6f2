/** Choosing another language. */

import { LANGUAGE_KEY, type Language } from './language';

/** Stores the choice and reloads the page in that language; work in progress is resumed. */
export function chooseLanguage(language: Language): void {
  try {
    localStorage.setItem(LANGUAGE_KEY, language);
  } catch {
    // Storage is refused: the device's own language stays.
  }
  location.reload();
}
