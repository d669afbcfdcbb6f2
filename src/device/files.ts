/**
 * Files and links out, to downloads, the share sheet or the clipboard; and text in from the
 * clipboard.
 */

/** Saves a file to the browser's downloads. */
export function saveFile(file: File): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  // By then the download holds its own reference.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Whether the device has a share sheet that takes this. */
export function canShare(what: ShareData): boolean {
  return typeof navigator.share === 'function' && (navigator.canShare?.(what) ?? false);
}

/** Opens the share sheet. Also resolves if the pilot closes it without sharing. */
export async function openShareSheet(what: ShareData): Promise<void> {
  await navigator.share(what).catch(() => undefined);
}

/** Copies a text. Resolves to whether the browser allowed it. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** The text on the clipboard; null if the browser has none for the page, or refuses. */
export async function readClipboard(): Promise<string | null> {
  try {
    return await navigator.clipboard.readText();
  } catch {
    return null;
  }
}
