/** A link or a code that is pasted, because an installed app is not what the device opens links with. */

import { partInLink } from '../../exchange/link';
import { linksIn } from '../../exchange/pasted';
import { openPlace, openSheet, sheet } from '../places';
import { takeText } from '../wind/windEntry';
import { gather } from './codes';
import { textInAddress } from './incoming';

/** Takes what was pasted, as if a link had been opened: documents are looked at, a report goes to Wind. Whether there was any. */
export function takePasted(text: string): boolean {
  const links = linksIn(text);
  const last = links.at(-1);
  if (last !== undefined) {
    // Several codes of one document may come in one text: the last of them opens what came.
    for (const link of links.slice(0, -1)) {
      const part = partInLink(link);
      if (part !== null) gather(part);
    }
    openSheet({ kind: 'incoming', from: last, over: sheet.value });
    return true;
  }
  const report = reportIn(text.trim());
  if (report === null) return false;
  openPlace('wind');
  takeText(report);
  return true;
}

/** The report in a link to Wind; null where the text is none. */
function reportIn(text: string): string | null {
  const hash = /^\S*(#\/wind\?\S+)$/.exec(text)?.[1];
  return hash === undefined ? null : textInAddress({ search: '', hash });
}
