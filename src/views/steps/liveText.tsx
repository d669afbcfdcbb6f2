/** A step's text with its live numbers filled in, as words. */

import { enteredWind, wind } from '../../board/board';
import { steps } from '../../board/flight';
import { isLiveName, LIVE, type LiveName, piecesOf } from '../../core';
import { direction, whole } from '../../parts/format';
import { words } from './words.en';

/** The text as it is read today; what is not known yet is a dash. */
export function liveText(text: string): string {
  return piecesOf(text)
    .map((piece) =>
      typeof piece === 'string' ? piece : isLiveName(piece.live) ? liveWords(piece.live) : '',
    )
    .join('');
}

function liveWords(name: LiveName): string {
  if (name === 'wind') return windWords();
  const value = steps.value?.facts[name] ?? null;
  if (value === null) return name === 'callsign' ? words.yourCallsign : words.unknownLive;
  if (typeof value !== 'number') return String(value);
  return LIVE[name].form === 'heading' ? direction(value) : whole(value);
}

function windWords(): string {
  const read = wind.value.wind;
  if (enteredWind.value === null || read === null) return words.unknownLive;
  const from = read.fromDeg === null ? '' : `${direction(read.fromDeg)} `;
  const gust = read.gustKt === null ? '' : ` ${words.gust} ${whole(read.gustKt)}`;
  return `${from}${whole(read.speedKt ?? 0)}${gust}`;
}
