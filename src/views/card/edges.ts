/** What stands along the edges of the card, and of the page that watches. */

import { day, sortie } from '../../board/board';
import { live } from '../../board/flight/live';
import { wallMs } from '../../board/flight/time';
import type { Walk } from '../../core';
import { wholeNumber } from '../../parts/format';
import { readNumber, readText, readWindShort, saidText } from '../../parts/live/live';
import { climbRungWords } from '../../parts/procedure';
import { words } from './words';

/** A text of the steps as read today, and as said on the radio. */
export const read = (text: string): string => readText(text, live.value);
export const radioText = (text: string): string => saidText(text, live.value);
export const number = (name: Parameters<typeof readNumber>[0]): string =>
  readNumber(name, live.value);

/** The end in use; with the best one if they differ. */
export function endWords(): string {
  const { using, ranked } = day.wind();
  const best = ranked?.best?.designator ?? using;
  if (using === null) return best === null ? words.noEnd : words.best(best);
  return best === using || best === null ? using : words.usingOther(using, best);
}

/** The wind in use, in a few characters. */
export function windWords(): string {
  const { wind: now } = day.wind();
  if (day.enteredWind() === null || now === null) return words.noWind;
  return now.speedKt === 0 && now.gustKt === null ? words.calm : readWindShort(now);
}

/** The one number that matters in a phase: the next speed to fly, and until then the wind. */
export function liveWords({ phase }: Walk): string {
  if (phase === 'climb') return climbWords() ?? windWords();
  if (phase !== 'recovery') return windWords();
  const approach = number('approachKt');
  return approach === words.unknown ? windWords() : words.approach(approach);
}

/** The next limit or speed of the climb; null after the last. */
function climbWords(): string | null {
  const airborne = sortie.value.stamps.findLast(({ what }) => what === 'airborne');
  if (airborne === undefined) return null;
  const goneS = (wallMs.value - airborne.at.wallMs) / 1000;
  const next = day
    .ladder()
    ?.climb.find(({ fromLiftOffS, limitS }) => (limitS ?? fromLiftOffS) > goneS);
  if (next === undefined) return null;
  const name = climbRungWords[next.what];
  return next.limitKt === null
    ? words.climbAt(name, wholeNumber(next.speedKt))
    : words.climbLimit(name, wholeNumber(next.limitKt));
}
