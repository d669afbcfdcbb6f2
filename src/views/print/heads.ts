/** What stands at the head of what is printed. */

import { day, sortieMinute } from '../../board/board';
import { versionOf } from '../../board/documents/ownDocuments';
import type { Facts, Hash } from '../../core';
import { direction, utcDate, wholeNumber } from '../../parts/format';
import { words } from './words';

/** Which version it is, and when it was kept; empty where there is only the one of the app. */
export function versionSaid(hash: Hash): string {
  const { number, keptMs } = versionOf(hash);
  return [
    ...(number === null ? [] : [words.version(number)]),
    ...(keptMs === null ? [] : [utcDate(keptMs)]),
  ].join(', ');
}

/** Today's numbers; null where there are none. A whole report would fill a card: steps ask for the wind alone. */
export function todaysFacts(): Facts | null {
  const brief = day.steps();
  return brief === null ? null : { ...brief.facts, wind: windText() };
}

/** The wind in use, in short; null where there is none. */
function windText(): string | null {
  const read = day.wind().wind;
  if (day.enteredWind() === null || read === null) return null;
  return [
    read.fromDeg === null ? '' : direction(read.fromDeg),
    wholeNumber(read.speedKt ?? 0),
    read.gustKt === null ? '' : `${words.gust} ${wholeNumber(read.gustKt)}`,
  ]
    .filter(Boolean)
    .join(' ');
}

/** The head of today's cards. */
export function todayText(): readonly string[] {
  const { field } = day.settled();
  const { using } = day.wind();
  const said = windText();
  return [
    field === null ? '' : `${field.code} ${field.name}`,
    using === null ? '' : words.runway(using),
    said === null ? '' : words.wind(said),
    utcDate(sortieMinute.value),
  ].filter(Boolean);
}
