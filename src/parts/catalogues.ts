/**
 * The words of the page. Each screen's words stand beside it, once per language, and load with it:
 * a module such as `words.ts` registers here where they are and what takes them, and whatever is
 * loaded later waits for the words it brings.
 */

import type { Language } from '../device/language';

type Fetch = (language: Language) => Promise<void>;

/** The catalogues registered so far. */
const catalogues: Fetch[] = [];

let spoken: Language = 'en';

/**
 * Registers where words are in each language, and what takes them. Until they load there are none.
 */
export function inLanguage<Said>(
  from: Readonly<Record<Language, () => Promise<Said>>>,
  take: (said: Said) => void,
): void {
  let taken: Language | null = null;
  catalogues.push(async (language) => {
    if (taken === language) return;
    take(await from[language]());
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
