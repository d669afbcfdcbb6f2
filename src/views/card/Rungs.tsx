/** The speeds of the roll, as large as they fit: read from the bottom up. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { wholeNumber } from '../../parts/format';
import { rungWords } from '../../parts/procedure';
import styles from './Card.module.css';
import { words } from './words';

interface Read {
  readonly name: string;
  readonly kt: string;
  readonly note: string;
  readonly isLastStop: boolean;
}

/** The rungs in order; today's, or the book's if there are no others. */
export function rungsNow(): readonly Read[] {
  const todays = day.ladder();
  if (todays !== null) {
    return todays.rungs.map(({ what, speed, distanceM, least }) => ({
      name: rungWords[what](day.inputs().checkMarkM ?? distanceM),
      // What must not be exceeded rounds down.
      kt: ktWords(speed.value, what === 'last-stop' ? Math.floor : Math.round),
      note: least?.value == null ? '' : words.stopUnder(wholeNumber(Math.ceil(least.value))),
      isLastStop: what === 'last-stop',
    }));
  }
  const book = day.numbers()?.takeoff;
  if (book === undefined) return [];
  return (['rotate', 'lift-off'] as const).map((what) => ({
    name: rungWords[what](0),
    kt: ktWords((what === 'rotate' ? book.rotateKt : book.liftOffKt).value, Math.round),
    note: '',
    isLastStop: false,
  }));
}

const ktWords = (kt: number | null, round: (kt: number) => number) =>
  kt === null ? words.unknown : wholeNumber(round(kt));

/** The rungs; sizes are in em, so that the container sets the scale. */
export function Rungs({ rungs }: { rungs: readonly Read[] }): JSX.Element {
  return (
    <ol class={styles.rungs}>
      {[...rungs].reverse().map(({ name, kt, note, isLastStop }) => (
        <li key={name} class={`${styles.rung} ${isLastStop ? styles.lastStop : ''}`}>
          <b class={styles.speed}>{kt}</b>
          <span class={styles.rungName}>
            {name}
            {note !== '' && <small>{note}</small>}
          </span>
        </li>
      ))}
    </ol>
  );
}
