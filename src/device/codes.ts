/**
 * Codes read so far of a document spread over several. The camera opens each in a window of its
 * own, so they meet in localStorage.
 */

const NAME = 'lapstrip.codes';

/** The codes stored so far; null if there are none, or storage is refused. */
export function keptCodes(): unknown {
  try {
    return JSON.parse(localStorage.getItem(NAME) ?? 'null');
  } catch {
    return null;
  }
}

/** Stores the codes read so far; null deletes them. Returns whether the device allowed it. */
export function keepCodes(codes: object | null): boolean {
  try {
    if (codes === null) localStorage.removeItem(NAME);
    else localStorage.setItem(NAME, JSON.stringify(codes));
    return true;
  } catch {
    return false;
  }
}
