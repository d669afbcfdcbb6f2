/** Giving files and links away, to the browser's downloads, its share sheet, its clipboard; and reading the clipboard. */

/** Saves a file where the browser puts what it downloads. */
export function saveFile(file: File): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = file.name;
  link.click();
  // The download has its own hold on it by then.
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

/** Whether the device has a share sheet that takes this. */
export function canShare(what: ShareData): boolean {
  return typeof navigator.share === 'function' && (navigator.canShare?.(what) ?? false);
}

/** Opens the share sheet. Resolves also when the pilot closes it again. */
export async function openShareSheet(what: ShareData): Promise<void> {
  await navigator.share(what).catch(() => undefined);
}

/** Copies a text; whether the browser let it. */
export async function copyText(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** The text on the clipboard; null where the browser has none for the page, or does not let it. */
export async function readClipboard(): Promise<string | null> {
  try {
    return await navigator.clipboard.readText();
  } catch {
    return null;
  }
}
