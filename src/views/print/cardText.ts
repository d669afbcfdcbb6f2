/** The text of a step on a printed card: live numbers as they are today, or room to write them. */

import { type Facts, isLiveName, type Step } from '../../core';
import { liveValue, piecesInUnits } from '../../parts/live';
import { words } from './words';

/** A piece of a printed line: words, or a number; null leaves room to write it by hand. */
export type Printed = { readonly text: string | null; readonly live: boolean };

/** A line of a step in pieces. Without facts, and for unknown facts, there is room to write. */
export function printedLine(text: string, facts: Facts | null): readonly Printed[] {
  return piecesInUnits(text).map((piece) =>
    typeof piece === 'string'
      ? { text: piece, live: false }
      : { text: liveText(piece.live, facts), live: true },
  );
}

function liveText(name: string, facts: Facts | null): string | null {
  const value = isLiveName(name) ? (facts?.[name] ?? null) : null;
  if (value === null || !isLiveName(name)) return null;
  return typeof value === 'boolean' ? String(value) : liveValue(name, value);
}

/** When a step applies, in words; empty where it always does. */
export function conditionText(when: Step['when']): string {
  return when === undefined ? '' : wordsOf(when);
}

function wordsOf(condition: object): string {
  const [name = '', value] = Object.entries(condition)[0] ?? [];
  const parts = () => (Array.isArray(value) ? value.map(wordsOf) : []);
  switch (name) {
    case 'fact':
      return words.facts[String(value)]?.[0] ?? String(value);
    case 'windAboveKt':
      return words.windAbove(String(value));
    case 'option':
      return words.fitted(String(value));
    case 'all':
      return parts().join(words.and);
    case 'any':
      return parts().join(words.or);
    case 'not': {
      const { fact } = Object(value);
      return words.facts[String(fact)]?.[1] ?? words.not(wordsOf(Object(value)));
    }
    default:
      return String(value);
  }
}
