/** The part of a statement that says what is observed: finding its wind, naming its other groups. */

import { isKnownGroup } from './groups';
import type { WrittenSwing } from './judgeWind';
import type { Place, Span, SpanKind } from './report';
import { addSpan } from './spans';
import { type Heading, isModifier } from './statements';
import { type Token, textAt } from './tokens';
import { codedWind, isUnfinishedWind, spokenWind, type WrittenWind } from './writtenWind';

/** What an observation was read as. */
export interface Observation {
  /** The wind as written; null where there is none. */
  readonly wind: WrittenWind | null;
  readonly swing: WrittenSwing | null;
  /** The end of the text, where it may still become something; null where it is whole. */
  readonly unfinished: Place | null;
  /** Groups of a report were met, other than wind. */
  readonly hasOtherGroups: boolean;
  readonly hasUnread: boolean;
}

const SWING = /^(\d{3})V(\d{3})$/;
const SWING_LENGTH = 7;
const SWING_BEGUN = /^\d{1,3}(?:V\d{0,2})?$/;

/** Words that lead up to a wind and add nothing. Common practice, no published source. */
const LEADING_WORD = /^(?:SURFACE|WINDS?|WND|FROM|IS)$/;

/** The beginning of a type, a station or a modifier. */
const HEADING_BEGUN = /^[A-Z][A-Z0-9]{0,3}$/;

/**
 * Reads the tokens from `start` to `end`, after the heading and before any trend, and adds what each
 * was read as to `spans`.
 */
export function observationOf(
  tokens: readonly Token[],
  start: number,
  end: number,
  heading: Heading,
  spans: Span[],
): Observation {
  const found = findWind(tokens, start, end, heading);
  const openFrom = found ? end : openEnd(tokens, start, end, heading);
  let swing: WrittenSwing | null = null;
  let unfinished: Place | null = null;
  let hasOtherGroups = false;
  let hasUnread = false;

  for (let i = start; i < end; i++) {
    const token = tokens[i];
    if (!token) break;
    const { text } = token;
    let kind: SpanKind;
    if (found && i === found.index) {
      addSpan(spans, 'wind', ...found.wind.at);
      i = found.wind.end - 1;
      if (found.wind.unfinishedFrom === null) continue;
      unfinished = [found.wind.unfinishedFrom, tokens[i]?.to ?? token.to];
      kind = 'unfinished';
    } else if (i >= openFrom) {
      unfinished = [token.from, tokens[end - 1]?.to ?? token.to];
      i = end;
      kind = 'unfinished';
    } else if (isKnownGroup(text, textAt(tokens, i + 1))) {
      hasOtherGroups = true;
      kind = 'other';
    } else if (found && !swing && text.length === SWING_LENGTH && SWING.test(text)) {
      swing = { degs: directionsOf(text), at: [token.from, token.to] };
      kind = 'swing';
    } else if (isModifier(text)) {
      kind = 'modifier';
    } else if (LEADING_WORD.test(text)) {
      kind = 'other';
    } else if (found && i === tokens.length - 1 && SWING_BEGUN.test(text)) {
      unfinished = [token.from, token.to];
      kind = 'unfinished';
    } else {
      hasUnread = true;
      kind = 'unread';
    }
    const [from, to] = kind === 'unfinished' && unfinished ? unfinished : [token.from, token.to];
    addSpan(spans, kind, from, to);
  }
  return { wind: found?.wind ?? null, swing, unfinished, hasOtherGroups, hasUnread };
}

/**
 * The first whole group with its unit; where there is none, the first wind in short or in words.
 * Under a heading the latter must come before any other group: beyond it, bare numbers are not wind.
 */
function findWind(
  tokens: readonly Token[],
  start: number,
  end: number,
  heading: Heading,
): { readonly wind: WrittenWind; readonly index: number } | null {
  for (let index = start; index < end; index++) {
    const wind = codedWind(tokens, index);
    if (wind) return { wind, index };
  }
  for (let index = start; index < end; index++) {
    if (mayBecomeTime(tokens, index, heading)) return null;
    if (heading.timed && isKnownGroup(textAt(tokens, index), '')) return null;
    const wind = spokenWind(tokens, index);
    if (wind) return { wind, index };
  }
  return null;
}

/** Five digits at the end, where a time is still to come: `XHAR 01125` on the way to `011250Z`. */
const mayBecomeTime = (tokens: readonly Token[], at: number, heading: Heading): boolean =>
  at === tokens.length - 1 &&
  !heading.timed &&
  (heading.station !== null || heading.type !== null) &&
  /^\d{5}$/.test(textAt(tokens, at));

/** The token from which all to the end of the text may still become a wind; `end` where none is. */
function openEnd(tokens: readonly Token[], start: number, end: number, heading: Heading): number {
  if (end < tokens.length) return end;
  for (let i = start; i < end; i++) {
    if (isUnfinishedWind(tokens, i) || mayBecomeTime(tokens, i, heading)) return i;
  }
  const text = textAt(tokens, start);
  const mayGrow = HEADING_BEGUN.test(text) && !isKnownGroup(text, '') && !LEADING_WORD.test(text);
  return start === end - 1 && mayGrow ? start : end;
}

function directionsOf(swing: string): [number, number] {
  const [, first, second] = SWING.exec(swing) ?? [];
  return [Number(first), Number(second)];
}
