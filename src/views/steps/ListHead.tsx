/**
 * Over an open list: its title, the list beneath it, what isn't there to be used, and the way out.
 */

import type { JSX } from 'preact';
import { day, sortie } from '../../board/board';
import { stepsLang } from '../../board/language';
import { closeList } from '../../board/steps/stepping';
import type { StepRow, StepsBrief } from '../../core';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import styles from './ListHead.module.css';
import { liveText } from './liveText';
import { stateWords } from './StepMark';
import { words } from './words';

export function ListHead({
  abnormal,
}: {
  abnormal: NonNullable<StepsBrief['abnormal']>;
}): JSX.Element {
  const under = sortie.value.lists.at(-2)?.list;
  const over = day.steps()?.procedure.lists.find(({ id }) => id === under)?.title;
  return (
    <div class={styles.head}>
      <div class={styles.names}>
        <h2 class={styles.title} lang={stepsLang()}>
          {abnormal.list.title}
        </h2>
        {over !== undefined && <p>{marked(stepsLang(), words.listOver, over)}</p>}
        {onceEach(abnormal.notThere).map((row) => (
          <p key={row.step.id} class={styles.not}>
            {marked(
              stepsLang(),
              (item) => words.notThere(item, stateWords(row)),
              liveText(row.step.item),
            )}
          </p>
        ))}
      </div>
      <Key className={styles.leave} onPress={() => closeList('return')}>
        {words.leaveList}
      </Key>
    </div>
  );
}

/** Steps that build on the same one are mentioned once. */
const onceEach = (rows: readonly StepRow[]) =>
  rows.filter(
    ({ step }, place) => rows.findIndex((other) => other.step.needs === step.needs) === place,
  );
