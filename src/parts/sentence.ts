/** Sentences in which texts of another language stand: cut up to be drawn, and to be read aloud. */

import type { Said, Utterance } from '../device/speech';

/** Characters that no text holds stand for the texts while the sentence is made. Unicode, 23.5: private use. */
const FIRST_STAND_IN = 0xe000;

/**
 * The pieces of a sentence in order: its own words, and for each text that it is given, that text's
 * number, from 0. The sentence may put its texts in any order, and leave some out.
 */
export function cut(
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

/** What ends a piece, at the beginning of the next. */
const LEADING_STOPS = /^[\s.,:;!?]+/;

/** Whether there is something in it to be read, and not signs alone. */
const isRead = (text: string) => /[\p{L}\p{N}]/u.test(text);

/**
 * A sentence to be read aloud, its own words in `language`, with texts in it that may be in others.
 * What is next to each other in one language is said in one go; signs go with what they stand at.
 */
export function saying(
  language: string,
  sentence: (...texts: readonly string[]) => string,
  ...texts: readonly Said[]
): Said {
  const pieces = cut(sentence, texts.length).flatMap((piece) =>
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
      // A full stop ends what was said before it, and is not read with what comes after.
      const rest = text.replace(LEADING_STOPS, '');
      const stops = text.slice(0, text.length - rest.length);
      said[said.length - 1] = { text: last.text + stops, language: last.language };
      said.push({ text: rest, language: own });
    }
  }
  return said;
}
