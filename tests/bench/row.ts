/** One line of the table that `npm run bench` prints. */

/** A measured thing beside what it may be. */
export interface Row {
  /** What was measured, as the README's table says it. */
  readonly what: string;
  /** Null where it could not be measured, which counts as over the budget; `note` says why. */
  readonly measured: number | null;
  /** Follows the numbers: `KB`, `ms`, `times as many a second`. */
  readonly unit: string;
  readonly budget: { readonly atMost: number } | { readonly atLeast: number };
  /** What the number is made of, or why there is none. */
  readonly note?: string;
}

/**
 * Every file of tests/bench that has rows exports this. The rows of one file are measured after one
 * another, and no two files at once, so that they do not slow each other down.
 */
export type Rows = () => readonly Row[] | Promise<readonly Row[]>;

/** Whether a row keeps within its budget. */
export function keeps({ measured, budget }: Row): boolean {
  if (measured === null) return false;
  return 'atMost' in budget ? measured <= budget.atMost : measured >= budget.atLeast;
}

/** The value that `share` of the samples do not exceed: 0.5 for the median, 0.95 for the slow ones. */
export function quantile(samples: readonly number[], share: number): number | null {
  const sorted = [...samples].sort((a, b) => a - b);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? null;
}

/** Runs `work` over and over for about `ms` and gives how many times a second it was done. */
export function timesASecond(work: () => unknown, ms = 700): number {
  let done = 0;
  const start = performance.now();
  let spent = 0;
  while (spent < ms) {
    for (let i = 0; i < 16; i++) work();
    done += 16;
    spent = performance.now() - start;
  }
  return (done / spent) * 1000;
}

/**
 * How many times as often a second `ours` is done as `theirs`: the median of rounds in which they
 * take turns, because a machine that is busy for a moment is busy for both.
 */
export function ratio(ours: () => unknown, theirs: () => unknown, rounds = 5): number | null {
  timesASecond(ours, 300);
  timesASecond(theirs, 300);
  const ratios = Array.from({ length: rounds }, () => timesASecond(ours) / timesASecond(theirs));
  return quantile(ratios, 0.5);
}

/** Why something could not be measured. */
export function firstLineOf(error: unknown): string {
  return error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
}
