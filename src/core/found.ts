/** Finding something by the beginnings of its words, with slips of the finger forgiven. */

/** Letters without accents and case, as they are typed in a hurry. */
export const folded = (text: string): string =>
  text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/ß/g, 'ss')
    .replace(/[øœ]/g, (letter) => (letter === 'ø' ? 'o' : 'oe'))
    .replace(/æ/g, 'ae');

/** The words of a text, {@link folded}. */
export const wordsIn = (text: string): readonly string[] =>
  folded(text).match(/[\p{L}\p{N}]+/gu) ?? [];

/** How many slips are forgiven in a word of so many letters: fewer would match anything. */
export const forgiven = (letters: number) => (letters < 4 ? 0 : letters < 8 ? 1 : 2);

/**
 * How far the beginning of a word is from what was typed: the letters to change, add, leave out or
 * swap with their neighbour (Damerau, CACM 7/3, 1964), up to `most`; null if it is further.
 */
export function slipsIn(typed: string, word: string, most: number): number | null {
  // A row per letter typed; its last entries are the distances to longer and longer beginnings.
  let before: readonly number[] = [];
  let row: readonly number[] = Array.from({ length: word.length + 1 }, (_, at) => at);
  for (let i = 1; i <= typed.length; i++) {
    const next = [i];
    for (let j = 1; j <= word.length; j++) {
      const isSame = typed[i - 1] === word[j - 1];
      const isSwapped =
        i > 1 && j > 1 && typed[i - 1] === word[j - 2] && typed[i - 2] === word[j - 1];
      next.push(
        Math.min(
          (row[j] ?? most) + 1,
          (next[j - 1] ?? most) + 1,
          (row[j - 1] ?? most) + (isSame ? 0 : 1),
          ...(isSwapped ? [(before[j - 2] ?? most) + 1] : []),
        ),
      );
    }
    if (Math.min(...next) > most) return null;
    [before, row] = [row, next];
  }
  const slips = Math.min(...row);
  return slips <= most ? slips : null;
}

/** What is searched: a code, and the texts whose words count too. */
export interface Searched {
  readonly code: string;
  readonly texts: readonly string[];
}

/**
 * How well something matches what was typed, 0 best; null if a word typed is nowhere in it. Every
 * word typed must be found: as its code, as the beginning of a word, or with a slip.
 */
export function matchOf(typed: string, { code, texts }: Searched): number | null {
  const asked = wordsIn(typed);
  if (asked.length === 0) return 0;
  const own = folded(code);
  const words = [own, ...texts.flatMap(wordsIn)];
  let sum = 0;
  for (const word of asked) {
    const score =
      own === word
        ? 0
        : own.startsWith(word)
          ? 1
          : words.includes(word)
            ? 2
            : words.some((one) => one.startsWith(word))
              ? 3
              : slipScore(word, words);
    if (score === null) return null;
    sum += score;
  }
  return sum / asked.length;
}

function slipScore(typed: string, words: readonly string[]): number | null {
  const most = forgiven(typed.length);
  if (most === 0) return null;
  const slips = words.flatMap((word) => slipsIn(typed, word, most) ?? []);
  return slips.length === 0 ? null : 4 + Math.min(...slips);
}

/** What matches what was typed, best first; what matches alike stays in order. */
export function found<T>(
  typed: string,
  all: readonly T[],
  searched: (one: T) => Searched,
): readonly T[] {
  return all
    .flatMap((one) => {
      const match = matchOf(typed, searched(one));
      return match === null ? [] : [{ one, match }];
    })
    .sort((a, b) => a.match - b.match)
    .map(({ one }) => one);
}
