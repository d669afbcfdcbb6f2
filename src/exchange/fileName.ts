/** What an exported file is called: for what it holds, in letters that any device takes. */

/** Some file systems take no more than 255 bytes; a letter takes up to four. */
const MOST_LETTERS = 50;

/**
 * A name such as `lapstrip-field-xhar-marram-haven.json`: what kind of document the file says it
 * is, and what the document is called, part by part; parts without a letter or a figure are left out.
 */
export function fileName(kind: string, ...called: readonly string[]): string {
  const words = called.map(plainWord).filter((word) => word !== '');
  const name = [...words.join('-')].slice(0, MOST_LETTERS).join('').replace(/-+$/, '');
  return [`lapstrip-${kind}`, ...(name === '' ? [] : [name])].join('-').concat('.json');
}

/** Letters and figures of every script; all else, which paths and shells may take amiss, is a hyphen. */
const plainWord = (text: string): string =>
  text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
