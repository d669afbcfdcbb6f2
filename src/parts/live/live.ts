/** A step's text with its live numbers filled in, to read or to say. */

import { type Facts, isLiveName, LIVE, type LiveName, type Wind } from '../../core';
import { direction, NO_BREAK_SPACE, wholeNumber } from '../format';
import { liveDigits, liveValue, piecesInUnits } from '../live';
import { saidDigits, saidDirection, saidRunway } from '../radio/spelling';
import { words } from './words';

/** What live numbers are taken from; null before it is known. */
export interface LiveFrom {
  readonly facts: Facts | null;
  readonly wind: Wind | null;
}

/** The text to read; unknown values are dashes. */
export const readText = (text: string, from: LiveFrom): string =>
  filled(text, (name) => readNumber(name, from));

/** The text to say on the radio, in English on any page. */
export const saidText = (text: string, from: LiveFrom): string =>
  filled(text, (name) => said(name, from));

const filled = (text: string, fill: (name: LiveName) => string) =>
  piecesInUnits(text)
    .map((piece) =>
      typeof piece === 'string' ? piece : isLiveName(piece.live) ? fill(piece.live) : '',
    )
    .join('');

/** A live number to read; a dash if unknown. */
export function readNumber(name: LiveName, from: LiveFrom): string {
  if (name === 'wind') return readWindShort(from.wind);
  const value = from.facts?.[name] ?? null;
  if (value === null) return name === 'callsign' ? words.yourCallsign : words.unknown;
  return typeof value === 'boolean' ? String(value) : liveValue(name, value);
}

function said(name: LiveName, from: LiveFrom): string {
  const value = from.facts?.[name] ?? null;
  if (name === 'runway' && value !== null) return saidRunway(String(value));
  if (name === 'callsign' && value === null) return '(callsign)';
  if (name === 'wind') return windShort(from.wind, 'gust');
  if (typeof value !== 'number') return readNumber(name, from);
  if (LIVE[name].form === 'heading') return saidDirection(value);
  return saidDigits(liveDigits(name, value));
}

/** A wind in a few characters: `270° 12 gust 20`; a dash if there is none. */
export const readWindShort = (read: Wind | null): string => windShort(read, words.gust);

function windShort(read: Wind | null, gustWord: string): string {
  if (read === null) return words.unknown;
  const from = read.fromDeg === null ? '' : `${direction(read.fromDeg)} `;
  const gust =
    read.gustKt === null ? '' : ` ${gustWord}${NO_BREAK_SPACE}${wholeNumber(read.gustKt)}`;
  return `${from}${wholeNumber(read.speedKt ?? 0)}${gust}`;
}
