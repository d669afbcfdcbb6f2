/** The face of the card in Wind: the best end, how firm it is, and the wind along and across. */

import { day } from '../../board/board';
import { useEnd } from '../../board/record/choices';
import { answered } from '../../board/wind/answered';
import type { HoldsTo, RankedEnd, RankedEnds } from '../../core';
import { againstLimit, direction, wholeNumber } from '../../parts/format';
import styles from './Card.module.css';
import { endWords, windWords } from './edges';
import type { Face } from './face';
import { words } from './words';

const spareOf = (to: HoldsTo) => (to === 'never' ? 360 : to.spareDeg);

/** How far the wind can turn before another end is best; the side with less to spare counts. */
export function firmLines({ holdsUntil, light }: RankedEnds): readonly string[] {
  if (holdsUntil === null) return light ? [words.lightWind] : [];
  const { left, right, close } = holdsUntil;
  if (left === 'never' && right === 'never') return [words.firmAlways];
  const spare = Math.min(spareOf(left), spareOf(right));
  const range =
    left === 'never'
      ? words.firmRound(right === 'never' ? '' : direction(right.lastDeg))
      : right === 'never'
        ? words.firmBack(direction(left.lastDeg))
        : words.firm(direction(left.lastDeg), direction(right.lastDeg));
  return [range, close ? words.closeBy(spare) : words.spare(spare)];
}

/** The wind along an end, and across it against the limit. */
export function alongAndAcross(end: RankedEnd): readonly string[] {
  const limit = day.settled().crosswindLimit.value ?? 0;
  const ahead = end.headwindKt !== null && Math.round(end.headwindKt) >= 0;
  return [
    ahead
      ? words.head(wholeNumber(end.headwindKt ?? 0))
      : words.tail(wholeNumber(Math.ceil(end.tailwindWorstKt ?? 0))),
    words.across(againstLimit(end.crosswindWorstKt ?? 0, limit), wholeNumber(limit)),
  ];
}

/** The answer over the whole screen. */
export function windFace(): Face {
  const { ranked, using, purpose } = answered.value;
  const best = ranked?.best ?? null;
  const end = best?.designator ?? null;
  const lines =
    ranked === null || best === null ? [] : [...firmLines(ranked), ...alongAndAcross(best)];
  const title = end ?? (ranked === null ? words.noAnswer : words.noBest);
  const isUsed = end !== null && using === end;
  const label = end === null ? title : isUsed ? words.inUse(end) : words.use(end);
  return {
    name: `wind/${end ?? ''}/${using ?? ''}`,
    share: null,
    head: [words.bestFor[purpose], endWords(), windWords()],
    drawn: (
      <>
        <strong class={end === null ? styles.item : styles.end}>{title}</strong>
        {lines.map((line) => (
          <span key={line} class={styles.line}>
            {line}
          </span>
        ))}
      </>
    ),
    text: [title, ...lines].join(' '),
    foot: [end === null ? '' : label, ''],
    hint: end === null || isUsed ? '' : words.hints.use(end),
    label,
    spoken: [title, ...lines].join('. '),
    critical: false,
    held: '',
    does: end === null || isUsed ? {} : { tap: () => useEnd(end) },
    keys: [],
  };
}
