/** Working something out once, and again only when what it was worked out from has changed. */

/**
 * A getter that works its value out when asked, and again only when what it read has changed. With
 * `same`, a new value that says the same as the one before does not count as a change.
 */
export type Memo = <T>(work: () => T, same?: (a: T, b: T) => boolean) => () => T;

/** The plain memo, for sources that never change: each value is worked out once, when first asked for. */
export const plainMemo: Memo = <T>(work: () => T): (() => T) => {
  let kept: { readonly value: T } | null = null;
  return () => {
    kept ??= { value: work() };
    return kept.value;
  };
};
