/**
 * The words of the page. Each screen's words stand beside it, once per language: the English ones
 * are part of it, others load with it. A module such as `words.ts` registers here where they are and
 * what takes them, and whatever is loaded later waits for the words it brings.
 */

import type { Language } from '../device/language';

type Fetch = (language: Language) => Promise<void>;

/** The catalogues registered so far. */
const catalogues: Fetch[] = [];

let spoken: Language = 'en';

/**
 * Registers words: in English they come with the screen, in other languages from elsewhere. Says
 * what takes them.
 */
export function inLanguage<Said>(
  english: Said,
  others: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Said>>>,
  take: (said: Said) => void,
): void {
  let taken: Language = 'en';
  catalogues.push(async (language) => {
    if (taken === language) return;
    take(language === 'en' ? english : await others[language]());
    taken = language;
  });
}

/** Fetches the words of everything registered. After a failure, call it again. */
async function fetchWords(): Promise<void> {
  await Promise.all(catalogues.map((fetch) => fetch(spoken)));
}

/** Sets the page's language; resolves when the words of everything registered are loaded. */
export function speak(language: Language): Promise<void> {
  spoken = language;
  return fetchWords();
}

/** Loads a module that has words of its own; resolves when they are loaded too. */
export async function withWords<T>(load: () => Promise<T>): Promise<T> {
  const loaded = await load();
  await fetchWords();
  return loaded;
}
