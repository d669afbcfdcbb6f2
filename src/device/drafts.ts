/** Where the first version kept a field being drawn: what it left there is carried on. */

const PREFIX = 'lapstrip.draft.';

/** What was stored under a name; null if nothing was, or it can't be read. */
export function readFirstDraft(name: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + name) ?? 'null');
  } catch {
    return null;
  }
}

/** Everything the device keeps beside the record, drafts and settings, as stored. */
export function storedSettings(): Readonly<Record<string, string>> {
  try {
    return Object.fromEntries(
      Object.entries(localStorage).filter(([name]) => name.startsWith('lapstrip.')),
    );
  } catch {
    return {};
  }
}

/** Deletes what was stored under a name. */
export function forgetFirstDraft(name: string): void {
  try {
    localStorage.removeItem(PREFIX + name);
  } catch {
    // Storage is refused: there is nothing to delete.
  }
}
