/**
 * Which store is in use. If a store can't be used any more, the pilot starts another beside it; the
 * old one stays intact, and the pilot can go back to it.
 */

const KEPT_AS = 'lapstrip.store';
const FIRST = 'lapstrip';

function chosen(): string {
  try {
    const name = localStorage.getItem(KEPT_AS) ?? '';
    return /^lapstrip-[2-9]$/.test(name) ? name : FIRST;
  } catch {
    // Refused: then nothing else is stored either.
    return FIRST;
  }
}

/** This window's store. It never changes while the window is open. */
export const storeName = chosen();

/** The store before this one; null if this is the first. */
export const storeBefore = (): string | null => {
  const number = numberOf(storeName);
  return number === 1 ? null : named(number - 1);
};

/** The next store beside this one; null if there are too many. */
export const storeBeside = (): string | null => {
  const number = numberOf(storeName) + 1;
  return number > 9 ? null : named(number);
};

const numberOf = (name: string): number => (name === FIRST ? 1 : Number(name.at(-1)));
const named = (number: number): string => (number === 1 ? FIRST : `${FIRST}-${number}`);

/** Makes windows opened from now on use a store. Returns whether the device allowed it. */
export function useStore(name: string | null): boolean {
  if (name === null) return false;
  try {
    localStorage.setItem(KEPT_AS, name);
    return true;
  } catch {
    return false;
  }
}
