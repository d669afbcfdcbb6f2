/** Working things out once, and again only when their inputs change. */

/**
 * A getter that computes when asked, and again only when what it read has changed. A new value that
 * `same` finds equal to the last doesn't count as a change.
 */
export type Memo = <T>(work: () => T, same?: (a: T, b: T) => boolean) => () => T;

/** For sources that never change: computes each value once, when first asked. */
export const plainMemo: Memo = <T>(work: () => T): (() => T) => {
  let kept: { readonly value: T } | null = null;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
};
