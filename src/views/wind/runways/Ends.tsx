/**
 * Every end against the limits, best first: a key to use it, and its numbers, which open why it
 * stands there.
 */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day } from '../../../board/board';
import { useEnd } from '../../../board/record/choices';
import type { RankedEnd, WindAnswer } from '../../../core';
import { againstLimit, wholeNumber } from '../../../parts/format';
import { LimitBar } from '../../../parts/limitBar/LimitBar';
import { words as windWords } from '../words';
import { EndSheet } from './EndSheet';
import styles from './Ends.module.css';
import { shortfallWords } from './shortfalls';
import { words } from './words';

/** The list of ends. */
export function Ends({ answered }: { answered: WindAnswer }): JSX.Element | null {
  const [open, setOpen] = useState<string | null>(null);
  if (answered.ranked === null) return null;
  return (
    <>
      <ol class={styles.ends} aria-label={words.endsTitle}>
        {answered.ranked.ends.map((end, place, ends) => (
          <EndRow
            key={end.designator}
            end={end}
            next={ends[place + 1]?.designator ?? null}
            used={end.designator === answered.using}
            onOpen={() => setOpen(end.designator)}
          />
        ))}
      </ol>
      {open !== null && <EndSheet end={open} answered={answered} onClose={() => setOpen(null)} />}
    </>
  );
}

interface EndRowProps {
  readonly end: RankedEnd;
  /** The next end after it. */
  readonly next: string | null;
  readonly used: boolean;
  readonly onOpen: () => void;
}

/** The rule that puts an end above the next, in words. */
function reasonOf({ reasons: [reason] }: RankedEnd): string | null {
  return reason === undefined ? null : windWords.reason[reason.code];
}

function EndRow({ end, next, used, onOpen }: EndRowProps) {
  const limit = day.settled().crosswindLimit.value ?? 0;
  const steady = Math.abs(end.crosswindKt ?? end.crosswindWorstKt ?? 0);
  const worst = end.crosswindWorstKt ?? 0;
  const closed = end.shortfalls.some(({ code }) => code === 'closed' || code === 'closed-today');
  const shown = [wholeNumber(steady), againstLimit(worst, limit), wholeNumber(limit)] as const;
  return (
    <li class={`${styles.end} ${end.shortfalls.length === 0 ? styles.within : ''}`}>
      <button
        type="button"
        class={`${styles.use} ${used ? styles.used : ''}`}
        aria-pressed={used}
        disabled={closed}
        onClick={() => useEnd(end.designator)}
      >
        <span class={styles.useWord}>{used ? words.usingShort : words.useShort}</span>{' '}
        {end.designator}
      </button>
      <button
        type="button"
        class={styles.facts}
        aria-description={words.openEnd(end.designator)}
        onClick={onOpen}
      >
        <span class="spoken">{words.ranked(end.designator, next, reasonOf(end))}</span>
        {end.shortfalls.map((fall) => (
          <p key={fall.code} class={styles.short}>
            {shortfallWords(fall)}
          </p>
        ))}
        <div class={styles.line}>
          <span>{alongWords(end)}</span>
          {end.crosswindWorstKt !== null && <b>{words.acrossBar(...shown)}</b>}
        </div>
        {end.crosswindWorstKt !== null && limit > 0 && (
          <LimitBar
            steady={steady}
            worst={worst}
            limit={limit}
            label={words.acrossBarSpoken(...shown)}
          />
        )}
      </button>
    </li>
  );
}

function alongWords({ headwindKt, tailwindWorstKt, shortfalls }: RankedEnd): string {
  const tailSaid = shortfalls.some(({ code }) => code === 'tailwind');
  const worstTail = Math.round(tailwindWorstKt ?? 0);
  const along =
    headwindKt === null || (tailSaid && headwindKt < 0)
      ? []
      : [
          Math.round(headwindKt) < 0
            ? words.tail(wholeNumber(-headwindKt))
            : words.head(wholeNumber(Math.abs(headwindKt))),
        ];
  const behind =
    !tailSaid && worstTail > Math.max(0, Math.round(-(headwindKt ?? 0)))
      ? [words.worstTail(wholeNumber(worstTail))]
      : [];
  return [...along, ...behind].join(', ');
}
