/** Steps and their conditions in words. */

import { type Condition, isLiveName, type ProcedureOption, piecesOf } from '../core';
import { stepWords as words } from './stepTextWords';

/** What a leaf of a condition asks for, and its negation. */
export function leafSaid(
  leaf: Exclude<Condition, { all: unknown } | { any: unknown } | { not: unknown }>,
  options: readonly ProcedureOption[] | undefined,
): readonly [string, string] {
  if ('fact' in leaf) return words.facts[leaf.fact];
  const [yes = '', no = ''] =
    'option' in leaf
      ? words.option(options?.find(({ id }) => id === leaf.option)?.name ?? leaf.option)
      : words.wind(String(leaf.windAboveKt));
  return [yes, no];
}

/** A condition in words. */
export function conditionSaid(
  condition: Condition,
  options: readonly ProcedureOption[] | undefined,
): string {
  const said = (part: Condition) => conditionSaid(part, options);
  if ('all' in condition) return condition.all.map(said).join(words.and);
  if ('any' in condition) return condition.any.map(said).join(words.or);
  if (!('not' in condition)) return leafSaid(condition, options)[0];
  const { not } = condition;
  return 'all' in not || 'any' in not || 'not' in not
    ? words.not(said(not))
    : leafSaid(not, options)[1];
}

/** A text as it is written: what is put in for a live number stands there by its name. */
export const textWritten = (text: string): string =>
  piecesOf(text)
    .map((piece) => {
      if (typeof piece === 'string') return piece;
      return words.putIn(isLiveName(piece.live) ? words.live[piece.live] : piece.live);
    })
    .join('');
