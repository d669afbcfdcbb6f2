/** Goes once more through a report whose wind is read, and says what each of its groups means. */

import type { SpanKind, WindReport } from '../report';
import { isRunning } from '../spans';
import { type Token, textAt } from '../tokens';
import { readExpected } from './expected';
import type { Meaning, Modifier } from './meaning';
import { type Read, readGroup } from './readGroup';
import { readRemark } from './remarks';
import type { ReadSpan } from './report';

/** Stretches that hold groups still to be read, and by what they are read. */
function readerOf(kind: SpanKind): ((tokens: readonly Token[], at: number) => Read | null) | null {
  switch (kind) {
    case 'other':
      return readGroup;
    case 'trend':
    case 'forecast':
      return readExpected;
    case 'remarks':
      return readRemark;
    default:
      return null;
  }
}

/**
 * The stretches of a report whose tokens begin at `start`, with their meanings; also gives the
 * token after its last. The tokens are those that the wind's reader had, so that both speak of the
 * same groups.
 */
export function explain(
  tokens: readonly Token[],
  start: number,
  report: WindReport,
): { spans: ReadSpan[]; end: number } {
  let end = start;
  const last = report.spans.at(-1)?.at[1] ?? 0;
  while (isBefore(end, tokens, last)) end++;
  // Its own alone: no group goes on into the next report.
  const own = end - start === tokens.length ? tokens : tokens.slice(start, end);
  const spans: ReadSpan[] = [];
  let at = 0;
  for (const { kind, at: place } of report.spans) {
    const reader = readerOf(kind);
    if (!reader) {
      spans.push({ at: place, kind, meaning: meaningOf(kind, textAt(own, at), report) });
      while (isBefore(at, own, place[1])) at++;
      continue;
    }
    // Nothing is left of a stretch whose words were one group with those before it.
    while (isBefore(at, own, place[1])) {
      const read = reader(own, at);
      const next = read?.end ?? at + 1;
      const [from, to] = [own[at]?.from ?? 0, own[next - 1]?.to ?? 0];
      add(spans, { at: [from, to], kind, meaning: read?.meaning ?? null });
      at = next;
    }
  }
  return { spans, end };
}

/** Whether there is a token at an index, and it begins before a place in the text. */
function isBefore(index: number, tokens: readonly Token[], place: number): boolean {
  const token = tokens[index];
  return token !== undefined && token.from < place;
}

/** What is not read runs on, so that a long text makes few stretches. */
function add(spans: ReadSpan[], span: ReadSpan): void {
  const last = spans.at(-1);
  if (last?.kind === span.kind && !last.meaning && !span.meaning && isRunning(span.kind)) {
    spans[spans.length - 1] = { at: [last.at[0], span.at[1]], kind: span.kind, meaning: null };
  } else {
    spans.push(span);
  }
}

/** What a stretch means that the wind's reader has told apart already. */
function meaningOf(kind: SpanKind, text: string, report: WindReport): Meaning | null {
  const { station, issued, wind } = report;
  switch (kind) {
    case 'heading':
      return { code: 'bulletin' };
    case 'type':
      return { code: 'type', type: text === 'METAR' || text === 'SPECI' ? text : 'TAF' };
    case 'station':
      return station === null ? null : { code: 'station', station };
    case 'time':
      return (
        issued && { code: 'issued', day: issued.day, hour: issued.hour, minute: issued.minute }
      );
    case 'modifier':
      return { code: 'modifier', modifier: modifierOf(text) };
    case 'wind':
      return wind && { code: 'wind', wind };
    case 'swing':
      return wind?.sectorDeg ? { code: 'swing', sectorDeg: wind.sectorDeg } : null;
    case 'end':
      return { code: 'end' };
    default:
      return null;
  }
}

/** FM 15, 15.4; WMO-No. 386, Part II, 2.3.2 for those of three letters. */
function modifierOf(text: string): Modifier {
  if (text === 'AUTO') return 'automatic';
  if (text === 'NIL') return 'missing';
  if (text === 'RTD' || text.startsWith('RR')) return 'late';
  return text.startsWith('C') ? 'corrected' : 'amended';
}
