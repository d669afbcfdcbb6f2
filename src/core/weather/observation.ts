/** What a statement says is observed: finds its wind, recognises its other groups. */

import type { Explainer } from './explainer';
import { isKnownGroup } from './groups';
import { type JudgedWind, judgeWind, type WrittenSwing } from './judgeWind';
import type { TextSpan } from './report';
import { addSpan } from './spans';
import { type Heading, isModifier } from './statements';
import { type Token, textAt } from './tokens';
import type { ReadSpan } from './whole/report';
import {
  codedWind,
  isUnfinishedWind,
  spokenWind,
  type WrittenWind,
  withWhatStandsApart,
} from './writtenWind';

/** What an observation was read as. */
export interface Observation extends JudgedWind {
  /** The wind as written; null if there is none. */
  readonly written: WrittenWind | null;
  /** The end of the text, if it may still become something; null if it is complete. */
  readonly unfinished: TextSpan | null;
  /** It contains groups of a report other than wind. */
  readonly hasOtherGroups: boolean;
  readonly hasUnread: boolean;
}

const SWING = /^(\d{3})V(\d{3})$/;
const SWING_BEGUN = /^\d{1,3}(?:V\d{0,2})?$/;

/** Words that introduce a wind and add nothing. Common practice, no published source. */
const LEADING_WORD = /^(?:SURFACE|WINDS?|WND|FROM|IS)$/;

/** The start of a type, a station or a modifier. */
const HEADING_BEGUN = /^[A-Z][A-Z0-9]{0,3}$/;

/**
 * Reads the tokens from `start` to `end`, between heading and trend, and adds what each is to
 * `spans`.
 */
export function observationOf(
  tokens: readonly Token[],
  start: number,
  end: number,
  heading: Heading,
  explainer: Explainer,
  spans: ReadSpan[],
): Observation {
  const found = findWind(tokens, start, end, heading);
  const written = found?.wind ?? null;
  const swing = found && (findSwing(tokens, start, end) ?? swingWithin(found.wind));
  const { wind, problems } = written ? judgeWind(written, swing) : { wind: null, problems: [] };
  const openFrom = found ? end : openEnd(tokens, start, end, heading);
  let unfinished: TextSpan | null = null;
  let hasOtherGroups = false;
  let hasUnread = false;
  let likeWind: TextSpan | null = null;

  for (let i = start; i < end; i++) {
    const token = tokens[i];
    if (!token) break;
    const { text, from, to } = token;
    if (found && i === found.index) {
      const { at, end: next, unfinishedFrom } = found.wind;
      addSpan(spans, 'wind', at[0], at[1], explainer.word('wind', text, null, wind));
      i = next - 1;
      if (unfinishedFrom !== null) unfinished = [unfinishedFrom, tokens[i]?.to ?? to];
      continue;
    }
    if (i >= openFrom) {
      unfinished = [from, tokens[end - 1]?.to ?? to];
      break;
    }
    // No group is a swing, or starts like one, so this skips the tests of all group shapes.
    if (found && i === tokens.length - 1 && SWING_BEGUN.test(text)) {
      unfinished = [from, to];
      break;
    }
    const isSwing = swing?.at[0] === from;
    const group = isSwing ? null : explainer.observed(tokens, i, end);
    if (group) {
      hasOtherGroups = true;
      i = group.end - 1;
      addSpan(spans, 'other', from, tokens[i]?.to ?? to, group.meaning);
      continue;
    }
    const kind = isSwing ? 'swing' : kindOf(text);
    if (kind === 'unread') hasUnread = true;
    if (kind === 'unread' && found && LIKE_WIND.test(text)) likeWind ??= [from, to];
    addSpan(spans, kind, from, to, explainer.word(kind, text, null, wind));
  }
  if (unfinished) addSpan(spans, 'unfinished', unfinished[0], unfinished[1]);
  if (likeWind && wind) {
    problems.push({ code: 'wind-unread', at: likeWind });
    const readInPart = { ...wind, gustIsMinimum: true };
    return { written, wind: readInPart, problems, unfinished, hasOtherGroups, hasUnread };
  }
  return { written, wind, problems, unfinished, hasOtherGroups, hasUnread };
}

/** Perhaps more of the wind: until it is read, the wind may be stronger than it seems. */
const LIKE_WIND =
  /^(?:G(?:P|ABV)?\d{1,3}[A-Z]*|MAX.*|GUST.*|BTN|VRB.*|\d{3}\/(?:ABV|P)?\d{1,3}[A-Z/]*)$/;

/** What a local report says within its wind. */
const swingWithin = ({ between, at }: WrittenWind): WrittenSwing | null =>
  between && { degs: between, at };

/** The kind of a word that is no group. */
const kindOf = (text: string): 'modifier' | 'other' | 'unread' =>
  isModifier(text) ? 'modifier' : LEADING_WORD.test(text) ? 'other' : 'unread';

/** The first two directions, `200V280`, of an observation. */
function findSwing(tokens: readonly Token[], start: number, end: number): WrittenSwing | null {
  for (let i = start; i < end; i++) {
    const token = tokens[i];
    const parts = token && SWING.exec(token.text);
    if (parts) return { degs: [Number(parts[1]), Number(parts[2])], at: [token.from, token.to] };
  }
  return null;
}

/**
 * The first whole group with its unit; failing that, the first wind in short or in words. Under a
 * heading the latter must precede any other group: after one, bare numbers aren't wind.
 */
function findWind(
  tokens: readonly Token[],
  start: number,
  end: number,
  heading: Heading,
): { readonly wind: WrittenWind; readonly index: number } | null {
  for (let index = start; index < end; index++) {
    const wind = codedWind(tokens, index);
    if (wind) return { wind: withWhatStandsApart(wind, tokens, end), index };
  }
  for (let index = start; index < end; index++) {
    if (mayBecomeTime(tokens, index, heading)) return null;
    if (heading.timed && isKnownGroup(textAt(tokens, index), '')) return null;
    const wind = spokenWind(tokens, index);
    if (wind) return { wind: withWhatStandsApart(wind, tokens, end), index };
  }
  return null;
}

/** Five digits at the end, where a time is still to come: `XHAR 01125` on the way to `011250Z`. */
const mayBecomeTime = (tokens: readonly Token[], at: number, heading: Heading): boolean =>
  at === tokens.length - 1 &&
  !heading.timed &&
  (heading.station !== null || heading.type !== null) &&
  /^\d{5}$/.test(textAt(tokens, at));

/** The first token from which all to the end may still become a wind; `end` if none. */
function openEnd(tokens: readonly Token[], start: number, end: number, heading: Heading): number {
  if (end < tokens.length) return end;
  for (let i = start; i < end; i++) {
    if (isUnfinishedWind(tokens, i) || mayBecomeTime(tokens, i, heading)) return i;
  }
  const text = textAt(tokens, start);
  const mayGrow = HEADING_BEGUN.test(text) && !isKnownGroup(text, '') && !LEADING_WORD.test(text);
  return start === end - 1 && mayGrow ? start : end;
}
