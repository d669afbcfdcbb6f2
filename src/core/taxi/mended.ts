/** What may have been meant where a route as told doesn't fit. */

import type { AsTold } from './asTold';
import { type ToldItem, writtenInstruction } from './instruction';

/**
 * Each text that would mend a problem: with a name that exists, or with what lies between. Empty if
 * only the pilot can know.
 */
export function mendedTexts(text: string, { items, problems }: AsTold): readonly string[] {
  const [problem] = problems;
  switch (problem?.code) {
    case 'no-name':
    case 'no-runway':
      return problem.said === ''
        ? []
        : problem.suggestions.map((name) => replaced(text, problem.said, name));
    case 'not-joined': {
      const at = items.findIndex(
        (item, index) =>
          item.code === 'taxiway' &&
          item.name === problem.other &&
          items.slice(0, index).findLast(isTaxiway)?.name === problem.one,
      );
      return problem.by.length === 0 || at < 0 ? [] : [withNames(items, at, problem.by)];
    }
    case 'ends-short':
      return problem.by.length === 0
        ? []
        : [withNames(items, items.findLastIndex(isTaxiway) + 1, problem.by)];
    default:
      return [];
  }
}

const isTaxiway = (item: ToldItem): item is Extract<ToldItem, { code: 'taxiway' }> =>
  item.code === 'taxiway';

const withNames = (items: readonly ToldItem[], at: number, names: readonly string[]): string =>
  writtenInstruction(
    items.toSpliced(at, 0, ...names.map((name) => ({ code: 'taxiway', name }) as const)),
  );

/** The last place at which a word stands by itself, with another in its stead. */
function replaced(text: string, word: string, by: string): string {
  const parts = text.split(/([\s,;.]+)/);
  const at = parts.findLastIndex((part) => part.toUpperCase() === word);
  return at < 0 ? text : parts.with(at, by).join('');
}
