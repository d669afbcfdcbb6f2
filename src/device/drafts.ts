/** What is half done and belongs to no sortie, such as a field being drawn: kept on the device until it is done. */

const PREFIX = 'lapstrip.draft.';

/** What was kept under a name; null where nothing was, or it cannot be read. */
export function readDraft(name: string): unknown {
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

/** Keeps something under a name, or forgets it. Whether it will be there after a reload. */
export function keepDraft(name: string, draft: object | null): boolean {
  try {
    if (draft === null) localStorage.removeItem(PREFIX + name);
    else localStorage.setItem(PREFIX + name, JSON.stringify(draft));
    return true;
  } catch {
    return false;
  }
}
