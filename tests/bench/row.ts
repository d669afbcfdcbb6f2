/** One line of the table that `npm run bench` prints. */

/** A measurement beside its budget. */
export interface Row {
  /** Worded as in the README's table. */
  readonly what: string;
  /** Null if it could not be measured, which counts as over budget; `note` says why. */
  readonly measured: number | null;
  /** Follows the numbers: `KB`, `ms`, `times as many a second`. */
  readonly unit: string;
  readonly budget: { readonly atMost: number } | { readonly atLeast: number };
  /** How the number breaks down, or why there is none. */
  readonly note?: string;
}

/**
 * What every file of tests/bench exports. Files are measured one after another, so that they don't
 * slow each other down.
 */
export type Rows = () => readonly Row[] | Promise<readonly Row[]>;

export function keeps({ measured, budget }: Row): boolean {
  if (measured === null) return false;
  return 'atMost' in budget ? measured <= budget.atMost : measured >= budget.atLeast;
}

/** The value that `share` of the samples don't exceed: 0.5 is the median, 0.95 the slow ones. */
export function quantile(samples: readonly number[], share: number): number | null {
  const sorted = [...samples].sort((a, b) => a - b);
  return sorted[Math.ceil(share * sorted.length) - 1] ?? null;
}

/** Runs `work` repeatedly for about `ms`; returns runs per second. */
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
 * How many times faster `ours` runs than `theirs`: the median over rounds in which they alternate,
 * so that a busy moment hits both.
 */
export function ratio(ours: () => unknown, theirs: () => unknown, rounds = 5): number | null {
  timesASecond(ours, 300);
  timesASecond(theirs, 300);
  const ratios = Array.from({ length: rounds }, () => timesASecond(ours) / timesASecond(theirs));
  return quantile(ratios, 0.5);
}

export function firstLineOf(error: unknown): string {
  return error instanceof Error ? (error.message.split('\n')[0] ?? '') : String(error);
}
