/**
 * Explains the groups of a report as its reader goes through them.
 *
 * Reading the wind alone, groups are only recognised (readWind.ts); reading whole reports, all are
 * explained (whole/explain.ts). That is the only difference.
 */

import type { SpanKind, Wind } from './report';
import type { Issued } from './statements';
import type { Token } from './tokens';
import type { Meaning } from './whole/meaning';

/** A group that was read. */
export interface Read {
  /** Null if it is only recognised. */
  readonly meaning: Meaning | null;
  /** Index after its last token. */
  readonly end: number;
}

/** Reads the group that starts at a token and ends before another; null if none does. */
export type GroupReader = (tokens: readonly Token[], at: number, end: number) => Read | null;

export interface Explainer {
  /** The meaning of a word whose kind is known, given what was read of the report so far. */
  readonly word: (
    kind: SpanKind,
    text: string,
    issued: Issued | null,
    wind: Wind | null,
  ) => Meaning | null;
  /** Groups of an observation, apart from wind. Reads at least every known group. */
  readonly observed: GroupReader;
  /** Of a trend and of a forecast; null if these are skipped. */
  readonly expected: GroupReader | null;
  /** Of the remarks; null if these are skipped. */
  readonly remarks: GroupReader | null;
}
