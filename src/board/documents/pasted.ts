/** What is pasted: a link or code, as devices open none in an installed app, or a piece of a map. */

import { partInLink } from '../../exchange/link';
import { linksIn } from '../../exchange/pasted';
import { openPlace, openSheet, sheet } from '../places';
import { takeText } from '../wind/windEntry';
import { gatherCodes } from './codes';
import { textInAddress } from './incoming';
import { openMapText } from './opened';

/**
 * Takes pasted text as if its link had been opened: documents are shown first, a report goes to
 * Wind. Returns whether there was anything.
 */
export function takePasted(text: string): boolean {
  const links = linksIn(text);
  const last = links.at(-1);
  if (last !== undefined) {
    // One text may hold several codes of a document: the last one opens the result.
    for (const link of links.slice(0, -1)) {
      const part = partInLink(link);
      if (part !== null) gatherCodes(part);
    }
    openSheet({ kind: 'incoming', from: last, over: sheet.value });
    return true;
  }
  if (openMapText(text)) return true;
  const report = reportIn(text.trim());
  if (report === null) return false;
  openPlace('wind');
  takeText(report);
  return true;
}

/** The report in a link to Wind; null if the text is none. */
function reportIn(text: string): string | null {
  const hash = /^\S*(#\/wind\?\S+)$/.exec(text)?.[1];
  return hash === undefined ? null : textInAddress({ search: '', hash });
}
