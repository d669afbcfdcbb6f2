/** What comes with the address: text shared from another app, a link with a report, or a document in it. */

import { ADD } from '../../exchange/link';
import { sheet } from '../places';
import { takeText } from '../wind/windEntry';

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

/** Takes what came with an address, and clears the page's own of it. */
export function takeIncoming(address: Pick<Location, 'search' | 'hash'> = location): void {
  const { hash } = address;
  if (hash.startsWith(ADD)) {
    history.replaceState(null, '', `${location.pathname}#/wind`);
    // Nothing is kept before the pilot has seen what it is.
    sheet.value = { kind: 'incoming', from: hash, over: null };
    return;
  }
  const text = textInAddress(address);
  if (text === null) return;
  history.replaceState(null, '', `${location.pathname}#/wind`);
  // What holds a wind is in use at once, until it is taken back; anything else stands in the entry.
  takeText(text, true);
}
