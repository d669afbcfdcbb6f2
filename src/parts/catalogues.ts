/**
 * The words of the page. Those of every screen are written beside it, once in each language, and come
 * with it: a module such as `words.ts` says here where they are and what takes them, and what is
 * loaded later waits for the words of all that came with it.
 */

import type { Language } from '../device/language';

type Fetch = (language: Language) => Promise<void>;

/** The catalogues that have arrived. */
const catalogues: Fetch[] = [];

let spoken: Language = 'en';

/** Says where words are in each language, and what takes them. Until then there are none. */
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

/** Fetches the words of all that has arrived. Where that fails, it can be tried again. */
async function fetchWords(): Promise<void> {
  await Promise.all(catalogues.map((fetch) => fetch(spoken)));
}

/** Speaks a language from now on; resolves when the words are there of all that has arrived. */
export function speak(language: Language): Promise<void> {
  spoken = language;
  return fetchWords();
}

/** Loads what has words of its own; resolves when they are there too. */
export async function withWords<T>(load: () => Promise<T>): Promise<T> {
  const loaded = await load();
  await fetchWords();
  return loaded;
}
