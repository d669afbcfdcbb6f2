/**
 * Codes read so far of a document that is spread over several. Each is opened in a window of its own
 * by the camera, and so they meet in localStorage.
 */

const NAME = 'lapstrip.codes';

/** What was kept of the codes; null where there is nothing, or storage is refused. */
export function keptCodes(): unknown {
  try {
    return JSON.parse(localStorage.getItem(NAME) ?? 'null');
  } catch {
    return null;
  }
}

/** Keeps the codes read so far; null forgets them. Whether the device took it. */
export function keepCodes(codes: object | null): boolean {
  try {
    if (codes === null) localStorage.removeItem(NAME);
    else localStorage.setItem(NAME, JSON.stringify(codes));
    return true;
  } catch {
    return false;
  }
}
