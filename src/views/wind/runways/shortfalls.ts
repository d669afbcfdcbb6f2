/** What an end falls short of, in words; the field's document says why one is closed. */

import type { ComponentChildren } from 'preact';
import { fieldText } from '../../../board/language';
import type { RankedEnd, Shortfall } from '../../../core';
import { marked } from '../../../parts/marked';
import { quoted } from '../../../parts/quoted/Quoted';
import { words } from './words';

const because = (fall: Shortfall, why: string): Shortfall =>
  fall.code === 'closed' ? { ...fall, why } : fall;

const whyOf = (falls: readonly Shortfall[]) => {
  const closed = falls.find((fall) => fall.code === 'closed');
  if (closed === undefined) return { text: '', lang: undefined };
  const { text, lang } = fieldText(closed.why);
  return { text: quoted(text), lang };
};

/** One shortfall as a sentence. */
export function shortfallWords(fall: Shortfall): ComponentChildren {
  const { text, lang } = whyOf([fall]);
  return marked(lang, (why) => words.shortfall(because(fall, why)), text);
}

/** Which end fails by least, and how, for when none is within limits. */
export function leastFailingWords([end]: readonly RankedEnd[]): ComponentChildren {
  if (end === undefined) return '';
  const { shortfalls } = end;
  const { text, lang } = whyOf(shortfalls);
  return marked(
    lang,
    (why) =>
      words.leastFailing([{ ...end, shortfalls: shortfalls.map((fall) => because(fall, why)) }]),
    text,
  );
}
