/**
 * A document as a link: the whole of it stands in what follows `#`, which no browser sends to a
 * server. `d` holds it in letters, for links; `n` in digits, for the codes that cameras read.
 */

import { bytesOfDigits, bytesOfLetters, deflated, digitsOf, inflated, lettersOf } from './packed';

/** The place in the address that takes what is shared. */
export const ADD = '#/add?';

/** A document's two addresses, from the app's own. */
export interface Links {
  readonly link: string;
  /** The same for a code: all before `digits`, then the digits. */
  readonly before: string;
  readonly digits: string;
}

/** The addresses of a document, as its schema gave it out. */
export async function linksTo(app: string, document: object): Promise<Links> {
  const bytes = await deflated(JSON.stringify(document));
  return {
    link: `${app}${ADD}d=${lettersOf(bytes)}`,
    before: `${app}${ADD}n=`,
    digits: digitsOf(bytes),
  };
}

/** The text of the document in an address after `#`; null where it is cut short or damaged. */
export async function textInLink(hash: string): Promise<string | null> {
  const [, name, packed = ''] = /^#\/add\?([dn])=(.*)$/s.exec(hash) ?? [];
  const bytes = name === 'n' ? bytesOfDigits(packed) : bytesOfLetters(packed);
  return name === undefined || bytes === null ? null : inflated(bytes);
}
