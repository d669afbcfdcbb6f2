/** A caution as a sentence, with a document's own words marked as such. */

import type { Caution } from '../../core';
import { type Worded, worded } from '../marked';
import { quoted } from '../quoted/Quoted';
import { words } from './words';

/** A caution, and the words a document has for what it is about. */
export interface Written extends Caution {
  readonly written: { readonly text: string; readonly lang: string | undefined } | null;
}

/** The sentence. */
export function cautionText({ code, value, limit, written }: Written): Worded {
  if (written === null) return worded(undefined, () => words.said({ code, value, limit }));
  const sentence = (text: string) =>
    words.said(code === 'closed' ? { code, value: text, limit } : { code, value, limit: text });
  return worded(written.lang, sentence, code === 'closed' ? quoted(written.text) : written.text);
}
