/**
 * What says what the groups of a report mean, as its reader goes through them.
 *
 * For the wind alone nothing need be said, and groups are only told apart (readWind.ts); the reader
 * of whole reports says it all (whole/explain.ts). That is all they differ in.
 */

import type { SpanKind, Wind } from './report';
import type { Issued } from './statements';
import type { Token } from './tokens';
import type { Meaning } from './whole/meaning';

/** A group that was read. */
export interface Read {
  /** Null where it is only told apart. */
  readonly meaning: Meaning | null;
  /** Of its last token, plus one. */
  readonly end: number;
}

/** Reads the group that begins at a token, and ends before another; null where none does. */
export type GroupReader = (tokens: readonly Token[], at: number, end: number) => Read | null;

export interface Explainer {
  /** What a word means whose kind is known, in a report with these, as far as they are read. */
  readonly word: (
    kind: SpanKind,
    text: string,
    issued: Issued | null,
    wind: Wind | null,
  ) => Meaning | null;
  /** Groups of an observation, but for wind. Reads at least all that are known groups. */
  readonly observed: GroupReader;
  /** Of a trend and of a forecast; null where these are not gone into. */
  readonly expected: GroupReader | null;
  /** Of the remarks; null where these are not gone into. */
  readonly remarks: GroupReader | null;
}
