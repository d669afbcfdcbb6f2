/** A step's text with its live numbers filled in, as words to read or as words to say. */

import { enteredWind, wind } from '../../board/board';
import { steps } from '../../board/flight';
import { isLiveName, LIVE, type LiveName, piecesOf, roundedLive } from '../../core';
import { direction, whole } from '../../parts/format';
import { saidDigits, saidDirection, saidRunway } from '../../parts/spoken.en';
import { words } from './words.en';

/** The text as it is read today; what is not known yet is a dash. */
export const liveText = (text: string): string => filled(text, liveNumber);

/** The text as it is said on the radio. */
export const callText = (text: string): string => filled(text, spoken);

const filled = (text: string, fill: (name: LiveName) => string) =>
  piecesOf(text)
    .map((piece) =>
      typeof piece === 'string' ? piece : isLiveName(piece.live) ? fill(piece.live) : '',
    )
    .join('');

const factOf = (name: LiveName) => steps.value?.facts[name] ?? null;

/** A live number as it is read; a dash where it is not known. */
export function liveNumber(name: LiveName): string {
  if (name === 'wind') return windWords();
  const value = factOf(name);
  if (value === null) return name === 'callsign' ? words.yourCallsign : words.unknownLive;
  if (typeof value !== 'number') return String(value);
  return LIVE[name].form === 'heading' ? direction(value) : whole(roundedLive(name, value));
}

function spoken(name: LiveName): string {
  const value = factOf(name);
  if (name === 'runway' && value !== null) return saidRunway(String(value));
  if (typeof value !== 'number') return liveNumber(name);
  if (LIVE[name].form === 'heading') return saidDirection(value);
  return saidDigits(roundedLive(name, value));
}

function windWords(): string {
  const read = wind.value.wind;
  if (enteredWind.value === null || read === null) return words.unknownLive;
  const from = read.fromDeg === null ? '' : `${direction(read.fromDeg)} `;
  const gust = read.gustKt === null ? '' : ` ${words.gust} ${whole(read.gustKt)}`;
  return `${from}${whole(read.speedKt ?? 0)}${gust}`;
}
