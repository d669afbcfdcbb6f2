/** The steps that follow the due one. */

import type { JSX } from 'preact';
import { stepsLang } from '../../board/language';
import type { StepRow, Upcoming } from '../../core';
import { marked, markedText } from '../../parts/marked';
import styles from './Due.module.css';
import { liveText } from './liveText';
import { words } from './words';

/** How many of the following steps are shown. */
const NEXT_SHOWN = 3;

interface NextProps {
  readonly upcoming: readonly Upcoming[];
  readonly heldBack: readonly StepRow[];
  readonly blocked: boolean;
}

/** The next steps; a barrier says what stands before it. */
export function Next({ upcoming, heldBack, blocked }: NextProps): JSX.Element {
  const first = heldBack[0];
  return (
    <ol class={styles.next} aria-label={words.next}>
      {upcoming.slice(0, NEXT_SHOWN).map((entry) => {
        if (entry.kind === 'moment') {
          return (
            <li key={entry.moment} class={`${styles.nextRow} ${styles.barrier}`}>
              <span>{words.moment[entry.moment]}</span>
            </li>
          );
        }
        const { step } = entry.row;
        const barrier = step.kind === 'barrier';
        return (
          <li key={step.id} class={`${styles.nextRow} ${barrier ? styles.barrier : ''}`}>
            <span lang={stepsLang()}>{liveText(step.item)}</span>
            <b>
              {barrier && first !== undefined && !blocked
                ? marked(stepsLang(), words.barrierFirst, liveText(first.step.item))
                : markedText(stepsLang(), liveText(step.response))}
            </b>
          </li>
        );
      })}
    </ol>
  );
}
