/**
 * What comes with the address: text shared from another app, a link with a report, or a document in
 * it.
 */

import { ADD } from '../../exchange/link';
import { sheet } from '../places';
import { takeText } from '../wind/windEntry';
import { SHARED_QUERY, takeSharedFile } from './sharedFile';

/** The names under which shared text may come; our own links say `report`. */
const NAMES = ['report', 'text', 'title'] as const;

/** The text in an address, from its query or from what follows `#/wind?`; null if none. */
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

/** Takes what came with an address, and clears it from the page's own. */
export function takeIncoming(address: Pick<Location, 'search' | 'hash'> = location): void {
  const { hash } = address;
  if (hash.startsWith(ADD)) {
    history.replaceState(null, '', `${location.pathname}#/wind`);
    // Nothing is stored before the pilot has seen what it is.
    sheet.value = { kind: 'incoming', from: hash, over: null };
    return;
  }
  if (address.search === SHARED_QUERY) {
    history.replaceState(null, '', `${location.pathname}#/wind`);
    void takeSharedFile();
    return;
  }
  const text = textInAddress(address);
  if (text === null) return;
  history.replaceState(null, '', `${location.pathname}#/wind`);
  // A text with a wind is in use at once, until undone; any other goes into the entry.
  takeText(text, true);
}
