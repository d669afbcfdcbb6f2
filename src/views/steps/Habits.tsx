/** Steps of the phase that are held back, taken out of order or done late again and again. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { day } from '../../board/board';
import { procedure } from '../../board/documents/inUse';
import { stepsLang } from '../../board/language';
import { habits, recall, tie } from '../../board/steps/memory';
import { canMove, type Habit, rowsOf, type StepRow, tiesOf, type Walk } from '../../core';
import { Key } from '../../parts/key/Key';
import { marked, seenAndSaid } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import dueStyles from './Due.module.css';
import styles from './Habits.module.css';
import { liveText } from './liveText';
import { words } from './words';

/** How many are mentioned at once: if everything is mentioned, nothing is heard. */
const SAID = 2;

interface Said {
  readonly habit: Habit;
  readonly row: StepRow;
}

/** What is said about the phase's steps. */
export function habitsOfPart(walk: Walk): readonly Said[] {
  const tied = procedure.value === null ? null : tiesOf(procedure.value, day.inputs().ties);
  const rows = rowsOf(walk);
  return habits.value
    .flatMap((habit): Said[] => {
      const row = rows.find(({ step }) => step.id === habit.step);
      const counts = row?.phase === walk.phase && tied?.has(habit.step) !== true;
      return row !== undefined && counts ? [{ habit, row }] : [];
    })
    .slice(0, SAID);
}

interface HabitsProps {
  readonly walk: Walk;
  readonly said: readonly Said[];
}

/** One line each, with the key that moves the step earlier from now on. */
export function Habits({ walk, said }: HabitsProps): JSX.Element {
  const code = procedure.value?.code;
  useEffect(() => {
    void recall();
  }, [code]);
  const rows = rowsOf(walk);
  return (
    <>
      {said.map((one) => (
        <OneHabit key={one.habit.step} said={one} rows={rows} />
      ))}
    </>
  );
}

function OneHabit({ said: { habit, row }, rows }: { said: Said; rows: readonly StepRow[] }) {
  const [moving, setMoving] = useState(false);
  return (
    <li class={`${dueStyles.beforeRow} ${styles.habit}`}>
      <span class={dueStyles.beforeItem}>
        <b lang={stepsLang()}>{liveText(row.step.item)}</b>
        {words.habit[habit.kind](habit.times, habit.of)}
      </span>
      {canMove(row.step) && rows.indexOf(row) > 0 && (
        <Key className={styles.earlier} onPress={() => setMoving(true)}>
          {seenAndSaid(
            words.earlier,
            marked(stepsLang(), (item) => `${words.earlier}: ${item}`, liveText(row.step.item)),
          )}
        </Key>
      )}
      {moving && <Earlier row={row} rows={rows} onClose={() => setMoving(false)} />}
    </li>
  );
}

interface EarlierProps {
  readonly row: StepRow;
  readonly rows: readonly StepRow[];
  readonly onClose: () => void;
}

/** The moments a step can be tied to: before any step that comes before it, nearest first. */
function Earlier({ row, rows, onClose }: EarlierProps) {
  const before = rows.slice(0, rows.indexOf(row)).reverse();
  return (
    <Sheet
      title={marked(stepsLang(), words.doEarlier, liveText(row.step.item))}
      close={words.close}
      size="page"
      onClose={onClose}
    >
      <p class={styles.hint}>{words.earlierHint}</p>
      <ol class={styles.moments}>
        {before.map(({ step, phase }) => (
          <li key={step.id}>
            <Key
              onPress={() => {
                tie(row.step.id, step.id);
                onClose();
              }}
            >
              {marked(
                stepsLang(),
                (item) => words.beforeStep(item, words.phase[phase]),
                liveText(step.item),
              )}
            </Key>
          </li>
        ))}
      </ol>
    </Sheet>
  );
}
