/** Texts of another language within a sentence of the page, each marked as what it is. */

import type { ComponentChildren } from 'preact';
import { cut } from './sentence';

/**
 * A sentence with texts in it that are in the language `lang`; without one they are in the language
 * of the page, and the sentence is a plain text.
 */
export function marked(
  lang: string | undefined,
  sentence: (...texts: readonly string[]) => string,
  ...texts: readonly string[]
): ComponentChildren {
  if (lang === undefined) return sentence(...texts);
  return cut(sentence, texts.length).map((piece, index) =>
    typeof piece === 'string' ? (
      piece
    ) : (
      <span key={index} lang={lang}>
        {texts[piece]}
      </span>
    ),
  );
}

/** A text of its own, marked where it is not in the language of the page. */
export const markedText = (lang: string | undefined, text: string): ComponentChildren =>
  lang === undefined ? text : <span lang={lang}>{text}</span>;

/** The words on a key as they are seen, and in their place what is read out, where that says more; each may be marked. */
export const seenAndSaid = (
  seen: ComponentChildren,
  said: ComponentChildren,
): ComponentChildren => (
  <>
    <span aria-hidden="true">{seen}</span>
    <span class="spoken">{said}</span>
  </>
);

/** A sentence as plain text, to be measured or put into a label, and as it is drawn. */
export interface Worded {
  readonly text: string;
  readonly drawn: ComponentChildren;
}

/** The same sentence both ways. */
export const worded = (...[lang, sentence, ...texts]: Parameters<typeof marked>): Worded => ({
  text: sentence(...texts),
  drawn: marked(lang, sentence, ...texts),
});

/** Sentences one after the other, with the same between any two. */
export const joined = (between: string, sentences: readonly Worded[]): Worded => ({
  text: sentences.map(({ text }) => text).join(between),
  drawn: sentences.map(({ drawn }, index) => (index === 0 ? drawn : [between, drawn])),
});
