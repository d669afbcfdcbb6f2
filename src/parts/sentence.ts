/** Sentences containing texts in another language: split to be drawn, or to be read aloud. */

import type { Said, Utterance } from '../device/speech';

/**
 * Characters that no text contains stand in for the texts while the sentence is built. Unicode,
 * 23.5: private use.
 */
const FIRST_STAND_IN = 0xe000;

/**
 * The pieces of a sentence in order: its own words, and for each text passed to it that text's
 * index, from 0. The sentence may reorder or omit texts.
 */
export function cutSentence(
  sentence: (...texts: readonly string[]) => string,
  texts: number,
): readonly (string | number)[] {
  const standIns = Array.from({ length: texts }, (_, index) =>
    String.fromCharCode(FIRST_STAND_IN + index),
  );
  return sentence(...standIns)
    .split(new RegExp(`([${standIns.join('')}])`))
    .filter((piece) => piece !== '')
    .map((piece) => (standIns.includes(piece) ? standIns.indexOf(piece) : piece));
}

/** Punctuation that ends a piece, at the beginning of the next. */
const LEADING_STOPS = /^[\s.,:;!?]+/;

/** Whether there is anything to read, not just punctuation. */
const isRead = (text: string) => /[\p{L}\p{N}]/u.test(text);

/**
 * A sentence to read aloud, its own words in `language`, containing texts that may be in others.
 * Neighbours in one language are said in one go; punctuation goes with what it follows.
 */
export function saying(
  language: string,
  sentence: (...texts: readonly string[]) => string,
  ...texts: readonly Said[]
): Said {
  const pieces = cutSentence(sentence, texts.length).flatMap((piece) =>
    typeof piece === 'string' ? [{ text: piece, language }] : (texts[piece] ?? []),
  );
  const said: Utterance[] = [];
  for (const { text, language: own } of pieces) {
    const last = said.at(-1);
    if (last === undefined) said.push({ text, language: own });
    else if (last.language === own || !isRead(text) || !isRead(last.text))
      said[said.length - 1] = {
        text: last.text + text,
        language: isRead(text) ? own : last.language,
      };
    else {
      // A full stop ends what was said before it; it isn't read with what comes after.
      const rest = text.replace(LEADING_STOPS, '');
      const stops = text.slice(0, text.length - rest.length);
      said[said.length - 1] = { text: last.text + stops, language: last.language };
      said.push({ text: rest, language: own });
    }
  }
  return said;
}
