/** Every end against the limits, best first; a tap on one uses it. */

import type { JSX } from 'preact';
import { settled } from '../../board/board';
import { useEnd } from '../../board/choices';
import type { RankedEnd, WindAnswer } from '../../core';
import { againstLimit, whole } from '../../parts/format';
import { LimitBar } from '../../parts/limitBar/LimitBar';
import { words } from './detailWords.en';
import styles from './Ends.module.css';
import { words as windWords } from './words.en';

/** The list of ends. */
export function Ends({ answered }: { answered: WindAnswer }): JSX.Element | null {
  if (answered.ranked === null) return null;
  return (
    <ol class={styles.ends} aria-label={words.endsTitle}>
      {answered.ranked.ends.map((end) => (
        <EndRow key={end.designator} end={end} used={end.designator === answered.using} />
      ))}
    </ol>
  );
}

function EndRow({ end, used }: { end: RankedEnd; used: boolean }) {
  const limit = settled.value.crosswindLimit.value ?? 0;
  const steady = Math.abs(end.crosswindKt ?? end.crosswindWorstKt ?? 0);
  const worst = end.crosswindWorstKt ?? 0;
  const closed = end.shortfalls.some(({ code }) => code === 'closed');
  const shown = [whole(steady), againstLimit(worst, limit), whole(limit)] as const;
  return (
    <li class={styles.end}>
      <button
        type="button"
        class={`${styles.use} ${used ? styles.used : ''}`}
        aria-pressed={used}
        aria-label={windWords.use(end.designator)}
        disabled={closed}
        onClick={() => useEnd(end.designator)}
      >
        <span class={styles.useWord}>{used ? windWords.usingShort : windWords.useShort}</span>
        {end.designator}
      </button>
      <div class={styles.facts}>
        {end.shortfalls.map((fall) => (
          <p key={fall.code} class={styles.short}>
            {windWords.shortfall(fall)}
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
      </div>
    </li>
  );
}

function alongWords({ headwindKt, tailwindWorstKt, shortfalls }: RankedEnd): string {
  const tailSaid = shortfalls.some(({ code }) => code === 'tailwind');
  const worstTail = Math.round(tailwindWorstKt ?? 0);
  const along =
    headwindKt === null
      ? []
      : [
          Math.round(headwindKt) < 0
            ? words.tail(whole(-headwindKt))
            : words.head(whole(Math.abs(headwindKt))),
        ];
  const behind =
    !tailSaid && worstTail > Math.max(0, Math.round(-(headwindKt ?? 0)))
      ? [words.worstTail(whole(worstTail))]
      : [];
  return [...along, ...behind].join(', ');
}
