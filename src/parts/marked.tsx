/** Texts in another language within a sentence of the page, each marked with its language. */

import type { ComponentChildren } from 'preact';
import { cutSentence } from './sentence';

/**
 * A sentence containing texts in the language `lang`; without one they are in the language of the
 * page, and the sentence is plain text.
 */
export function marked(
  lang: string | undefined,
  sentence: (...texts: readonly string[]) => string,
  ...texts: readonly string[]
): ComponentChildren {
  if (lang === undefined) return sentence(...texts);
  return cutSentence(sentence, texts.length).map((piece, index) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      <span key={index} lang={lang}>
        {texts[piece]}
      </span>
    ),
  );
}

/** A text of its own, marked if it isn't in the language of the page. */
export const markedText = (lang: string | undefined, text: string): ComponentChildren =>
  lang === undefined ? text : <span lang={lang}>{text}</span>;

/**
 * A key's label as seen and, if more is to be said, what is read out instead; each may be marked.
 */
export const seenAndSaid = (
  seen: ComponentChildren,
  said: ComponentChildren,
): ComponentChildren => (
  <>
    <span aria-hidden="true">{seen}</span>
    <span class="spoken">{said}</span>
  </>
);

/** A sentence both as plain text, to measure or use in a label, and as drawn. */
export interface Worded {
  readonly text: string;
  readonly drawn: ComponentChildren;
}

/** The same sentence both ways. */
export const worded = (...[lang, sentence, ...texts]: Parameters<typeof marked>): Worded => ({
  text: sentence(...texts),
  drawn: marked(lang, sentence, ...texts),
});

/** Joins sentences with a separator. */
export const joined = (between: string, sentences: readonly Worded[]): Worded => ({
  text: sentences.map(({ text }) => text).join(between),
  drawn: sentences.map(({ drawn }, index) => (index === 0 ? drawn : [between, drawn])),
});
