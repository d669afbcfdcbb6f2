/** Choosing another language. */

import { LANGUAGE_KEY, type Language } from './language';

/** Keeps the choice and opens the page anew, in that language; what is being done is taken up again. */
export function chooseLanguage(language: Language): void {
  try {
    localStorage.setItem(LANGUAGE_KEY, language);
  } catch {
    // Storage is refused: the device's own language stays.
  }
  location.reload();
}
