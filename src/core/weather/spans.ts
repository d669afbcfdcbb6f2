/** Spans put together in order. */

import type { Span, SpanKind } from './report';
import type { Token } from './tokens';

/** Kinds whose neighbours are one stretch, so that a long text makes few spans. */
const RUNNING = new Set<SpanKind>(['heading', 'trend', 'remarks', 'forecast', 'another', 'unread']);

/** Whether stretches of a kind run on over the blanks between them. */
export const isRunning = (kind: SpanKind): boolean => RUNNING.has(kind);

/** Adds a stretch to the end of a list, or to the last stretch where both run on. */
export function addSpan(spans: Span[], kind: SpanKind, from: number, to: number): void {
  const last = spans.at(-1);
  if (last?.kind === kind && isRunning(kind)) {
    spans[spans.length - 1] = { at: [last.at[0], to], kind };
  } else {
    spans.push({ at: [from, to], kind });
  }
}

/** Adds the tokens from `start` to `end` as stretches of one kind. */
export function addSpans(
  spans: Span[],
  kind: SpanKind,
  tokens: readonly Token[],
  start: number,
  end: number,
): void {
  for (let i = start; i < end; i++) {
    const token = tokens[i];
    if (token) addSpan(spans, kind, token.from, token.to);
  }
}
