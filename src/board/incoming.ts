/** Text that comes with the address: shared from another app, or in a link with a report in it. */

import { takeText } from './windEntry';

/** The names under which a shared text may come; a link of ours says `report`. */
const NAMES = ['report', 'text', 'title'] as const;

/** The text in an address, from its query or from what follows `#/wind?`; null when there is none. */
export function textInAddress({ search, hash }: Pick<Location, 'search' | 'hash'>): string | null {
  const queries = [search, hash.split('?')[1] ?? ''];
  for (const query of queries) {
    const values = new URLSearchParams(query);
    for (const name of NAMES) {
      const text = values.get(name)?.trim();
      if (text) return text;
    }
  }
  return null;
}

/** Takes the text that came with the address into the wind entry, and clears the address of it. */
export function takeIncoming(): void {
  const text = textInAddress(location);
  if (text === null) return;
  history.replaceState(null, '', `${location.pathname}#/wind`);
  // What holds a wind is in use at once; anything else stands in the entry, to be mended.
  takeText(text);
}
