/** Assembling spans in order. */

import type { GroupReader } from './explainer';
import type { SpanKind } from './report';
import type { Token } from './tokens';
import type { Meaning } from './whole/meaning';
import type { ReadSpan } from './whole/report';

/** Kinds whose neighbours merge into one stretch, so that a long text makes few spans. */
const RUNNING = new Set<SpanKind>(['heading', 'trend', 'remarks', 'forecast', 'another', 'unread']);

/** Appends a stretch, or extends the last if both merge and say the same. Ignores an empty one. */
export function addSpan(
  spans: ReadSpan[],
  kind: SpanKind,
  from: number,
  to: number,
  meaning: Meaning | null = null,
): void {
  if (from === to) return;
  const last = spans.at(-1);
  if (last?.kind === kind && last.meaning === meaning && RUNNING.has(kind)) {
    spans[spans.length - 1] = { at: [last.at[0], to], kind, meaning };
  } else {
    spans.push({ at: [from, to], kind, meaning });
  }
}

/** Adds the tokens from `start` to `end`, all of one kind: group by group if there is a reader. */
export function addGroups(
  spans: ReadSpan[],
  kind: SpanKind,
  tokens: readonly Token[],
  start: number,
  end: number,
  read: GroupReader | null,
): void {
  for (let at = start; at < end; ) {
    const group = read ? read(tokens, at, end) : null;
    const next = group?.end ?? (read ? at + 1 : end);
    const [first, last] = [tokens[at], tokens[next - 1]];
    if (first && last) addSpan(spans, kind, first.from, last.to, group?.meaning);
    at = next;
  }
}
