/** A problem as a sentence, put together alike in every language. */

import type { DocumentProblem } from '../../core';
import { filled } from '../filled';

/** What a language has for it. */
export interface ProblemWords {
  readonly language: string;
  /** By code; `{allowed}` stands for what may be there. */
  readonly sentences: Readonly<Partial<Record<string, string>>>;
  readonly line: (line: number) => string;
  readonly character: (character: number) => string;
  readonly instead: (given: string) => string;
}

/** Where a problem is, what must be there, and what stands there instead. */
export function problemTold(
  { at, what, given, allowed = [], line, column }: DocumentProblem,
  words: ProblemWords,
): string {
  const place = [
    ...(line === undefined ? [] : [words.line(line)]),
    ...(column === undefined ? [] : [words.character(column)]),
    ...(at === '' ? [] : [at]),
  ].join(', ');
  // A code has its figures behind it; what has no sentence is told as it is.
  const [code = '', ...figures] = what.split(' ');
  const sentence = words.sentences[code];
  const list = new Intl.ListFormat(words.language, { type: 'disjunction' });
  const said =
    sentence === undefined
      ? what
      : filled(sentence, figures).replace('{allowed}', list.format(allowed));
  const instead = given === undefined ? '' : words.instead(given);
  return `${place}${place === '' ? '' : ': '}${said}${instead}`;
}
