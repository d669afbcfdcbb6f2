/**
 * The words of the page. Every screen's are written in English beside it, in a file named `*.en.ts`;
 * where the page speaks another language, that language's twin of the file takes its place while the
 * app starts. tools/languages.ts adds to each English file what lists it here.
 */

/** A catalogue by its file, and how it takes the words of another language in place of its own. */
type Catalogue = readonly [name: string, take: (twin: object) => void];

/** The catalogues of the files that have arrived. */
export const catalogues: Catalogue[] = [];

let further = (): Promise<unknown> => Promise.resolve();

/** Fetches the words that the first answer did without; in English they are there with what says them. */
export const fetchFurtherWords = (): Promise<unknown> => further();

/** Says where the words come from that the first answer does without. */
export function setFurtherWords(fetch: () => Promise<unknown>): void {
  further = fetch;
}
