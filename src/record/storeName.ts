/**
 * Which store is in use. Where what is stored cannot be gone on with, another is begun beside it, and
 * the one before stays as it is and can be gone back to.
 */

const KEPT_AS = 'lapstrip.store';
const FIRST = 'lapstrip';

function chosen(): string {
  try {
    const name = localStorage.getItem(KEPT_AS) ?? '';
    return /^lapstrip-[2-9]$/.test(name) ? name : FIRST;
  } catch {
    // Refused: then nothing is stored beside the first either.
    return FIRST;
  }
}

/** The store of this window. It never changes while the window is open. */
export const storeName = chosen();

/** The store before this one; null where this is the first. */
export const storeBefore = (): string | null => {
  const number = numberOf(storeName);
  return number === 1 ? null : named(number - 1);
};

/** The next store beside this one; null where there are too many. */
export const storeBeside = (): string | null => {
  const number = numberOf(storeName) + 1;
  return number > 9 ? null : named(number);
};

const numberOf = (name: string): number => (name === FIRST ? 1 : Number(name.at(-1)));
const named = (number: number): string => (number === 1 ? FIRST : `${FIRST}-${number}`);

/** Makes a store the one that windows opened from now on use. Whether the device let it. */
export function useStore(name: string | null): boolean {
  if (name === null) return false;
  try {
    localStorage.setItem(KEPT_AS, name);
    return true;
  } catch {
    return false;
  }
}
