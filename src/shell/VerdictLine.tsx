/** Under the strip, over every place: the worst that speaks against the runway in use. */

import type { JSX } from 'preact';
import { day } from '../board/board';
import { cautionsOverhead, type ShownCaution } from '../board/flight/cautions';
import { openSheet, typing } from '../board/places';
import { useEnd } from '../board/record/choices';
import { Key } from '../parts/key/Key';
import { cautionText } from '../parts/verdict/cautionText';
import { words } from '../parts/verdict/words';
import { words as notice } from './noticeWords';
import styles from './VerdictLine.module.css';

/**
 * The line, with the best runway's key where the one in use is outside limits; nothing while nothing
 * speaks against it, and while a wind is being typed.
 */
export function VerdictLine(): JSX.Element | null {
  const [worst, ...others] = cautionsOverhead.value;
  if (typing.value) return null;
  // The region stays, so that what comes into it is read out.
  return (
    <div role="status">{worst !== undefined && <Line worst={worst} others={others.length} />}</div>
  );
}

interface LineProps {
  readonly worst: ShownCaution;
  readonly others: number;
}

function Line({ worst, others }: LineProps) {
  const said = (
    <>
      <span class={styles.said}>
        {worst.accepted && `${words.stops}: `}
        {cautionText(worst).drawn}
      </span>
      {others > 0 && <span class={styles.more}>{words.more(others)}</span>}
    </>
  );
  const { using, ranked } = day.wind();
  const best = ranked?.best?.designator ?? null;
  const isOffered = worst.stops && using !== null && best !== null && best !== using;
  return (
    <div class={worst.stops ? styles.row : undefined}>
      <button
        type="button"
        class={`${styles.line} ${worst.stops ? styles.stops : styles.inAWord}`}
        aria-description={words.opens}
        onClick={() => openSheet({ kind: 'verdict' })}
      >
        {said}
      </button>
      {isOffered && <Key onPress={() => useEnd(best)}>{notice.use(best)}</Key>}
      {/* Where there is little room, what doesn't stop takes a line of text, which is no key. */}
      {!worst.stops && <p class={styles.thin}>{said}</p>}
    </div>
  );
}
