/** Where a field being drawn was kept in the first version: what was left there is gone on with. */

const PREFIX = 'lapstrip.draft.';

/** What was kept under a name; null where nothing was, or it cannot be read. */
export function readFirstDraft(name: string): unknown {
  try {
    return JSON.parse(localStorage.getItem(PREFIX + name) ?? 'null');
  } catch {
    return null;
  }
}

/** All that the device keeps beside the record, drafts and settings, as it is stored. */
export function storedSettings(): Readonly<Record<string, string>> {
  try {
    return Object.fromEntries(
      Object.entries(localStorage).filter(([name]) => name.startsWith('lapstrip.')),
    );
  } catch {
    return {};
  }
}

/** Forgets what was kept under a name. */
export function forgetFirstDraft(name: string): void {
  try {
    localStorage.removeItem(PREFIX + name);
  } catch {
    // Storage is refused: there is nothing to forget.
  }
}
