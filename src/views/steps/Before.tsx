/**
 * What was just done, what is held back and, at the start of a phase, which of its steps keep
 * departing from the procedure.
 */

import type { JSX } from 'preact';
import { day, sortie } from '../../board/board';
import { stepsLang } from '../../board/language';
import { tick } from '../../board/steps/stepping';
import { mayDoNow, rowsOf, type StepRow, type Walk } from '../../core';
import { timeOfDay } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { marked, seenAndSaid } from '../../parts/marked';
import styles from './Due.module.css';
import { Habits, habitsOfPart } from './Habits';
import habitStyles from './Habits.module.css';
import { liveText } from './liveText';
import { StepMark, stateLang, stateWords } from './StepMark';
import { words } from './words';

/** How many held-back steps are shown; the others are counted. */
const HELD_SHOWN = 2;

/** The moment stamped last, if no step was done since. */
function lastMoment(): string {
  const last = sortie.value.stamps.at(-1);
  return last === undefined
    ? words.nothingYet
    : words.stamped(words.moment[last.what], timeOfDay(last.at.sortieMs));
}

/** The rows over the due step. */
export function Before({ walk }: { walk: Walk }): JSX.Element {
  const { lastHandled, heldBack } = walk;
  const more = heldBack.length - HELD_SHOWN;
  const shown = [
    ...(lastHandled !== null && lastHandled.state.kind !== 'held' ? [lastHandled] : []),
    ...heldBack.slice(0, HELD_SHOWN),
  ];
  const isFresh = isPhaseFresh(walk);
  const habits = isFresh ? habitsOfPart(walk) : [];
  const habitual = habits.length > 0 ? habitStyles.habitual : '';
  return (
    <ul class={`${styles.before} ${habitual}`} aria-label={words.justBefore}>
      {shown.length === 0 && <li class={styles.beforeRow}>{lastMoment()}</li>}
      {shown.map((row) => (
        <Handled key={row.step.id} row={row} />
      ))}
      {more > 0 && <li class={`${styles.beforeRow} ${styles.more}`}>{words.moreHeld(more)}</li>}
      {isFresh && <Habits walk={walk} said={habits} />}
    </ul>
  );
}

function Handled({ row }: { row: StepRow }) {
  const facts = day.steps()?.facts;
  return (
    <li class={`${styles.beforeRow} ${row.state.kind === 'held' ? styles.heldRow : ''}`}>
      <StepMark row={row} />
      <span class={styles.beforeItem} lang={stepsLang()}>
        {liveText(row.step.item)}
      </span>
      {row.state.kind === 'held' ? (
        <span class={styles.heldState}>
          <span class={styles.held}>{words.heldBack}</span>
          {facts !== undefined && mayDoNow(row, facts) && (
            <Key className={styles.now} onPress={() => tick(row, 'done')}>
              {seenAndSaid(
                words.doneNow,
                marked(stepsLang(), (item) => `${words.doneNow}: ${item}`, liveText(row.step.item)),
              )}
            </Key>
          )}
        </span>
      ) : (
        <span class={styles.beforeState} lang={stateLang(row)}>
          {stateWords(row)}
        </span>
      )}
    </li>
  );
}

/** Whether nothing was done in the phase yet, in its present pass. */
const isPhaseFresh = (walk: Walk) =>
  rowsOf(walk).every(
    ({ phase, state }) =>
      phase !== walk.phase ||
      state.kind === 'open' ||
      state.kind === 'not-needed' ||
      state.kind === 'not-flown',
  );
