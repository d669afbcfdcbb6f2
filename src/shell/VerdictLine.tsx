/** Under the strip, over every place: the worst that speaks against the runway in use. */

import type { JSX } from 'preact';
import { cautionsOverhead, type ShownCaution } from '../board/flight/cautions';
import { openSheet, typing } from '../board/places';
import { cautionText } from '../parts/verdict/cautionText';
import { words } from '../parts/verdict/words';
import styles from './VerdictLine.module.css';

/** The line; nothing while nothing speaks against it, and while a wind is being typed. */
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
  return (
    <>
      <button
        type="button"
        class={`${styles.line} ${worst.stops ? styles.stops : styles.inAWord}`}
        aria-description={words.opens}
        onClick={() => openSheet({ kind: 'verdict' })}
      >
        {said}
      </button>
      {/* Where there is little room, what doesn't stop takes a line of text, which is no key. */}
      {!worst.stops && <p class={styles.thin}>{said}</p>}
    </>
  );
}
