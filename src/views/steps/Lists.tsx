/**
 * What to do when something goes wrong: every list with its first steps, one tap from anywhere.
 * Emergencies stand first; malfunctions and the go-around apart from them.
 */

import type { JSX } from 'preact';
import { day, sortie } from '../../board/board';
import { stepsLang } from '../../board/language';
import { openList } from '../../board/steps/stepping';
import {
  type AbnormalList,
  groupOf,
  LIST_GROUPS,
  type ListGroup,
  notThereIn,
  type StepsBrief,
} from '../../core';
import { keyClass } from '../../parts/key/Key';
import { markedText } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Lists.module.css';
import { liveText } from './liveText';
import { words } from './words';

/** How many of its first steps stand under a list's title. */
const BEGINS_WITH = 2;

/** The sheet with all lists; in each group, those of the present phase come first. */
export function Lists({ onClose }: { onClose: () => void }): JSX.Element {
  const brief = day.steps();
  const lists = brief === null ? [] : ordered(brief);
  return (
    <Sheet title={words.wrong} close={words.close} size="page" onClose={onClose}>
      {lists.length === 0 && <p class={styles.none}>{words.noLists}</p>}
      {brief !== null &&
        LIST_GROUPS.map((group) => (
          <Group
            key={group}
            group={group}
            brief={brief}
            lists={lists.filter((list) => groupOf(list) === group)}
          />
        ))}
    </Sheet>
  );
}

interface GroupProps {
  readonly group: ListGroup;
  readonly brief: StepsBrief;
  readonly lists: readonly AbnormalList[];
}

function Group({ group, brief, lists }: GroupProps) {
  if (lists.length === 0) return null;
  const name = words.listGroups[group];
  return (
    <section class={styles.group} aria-label={name}>
      {/* The sheet's own title names the first. */}
      {group !== LIST_GROUPS[0] && <h3 class={styles.groupName}>{name}</h3>}
      <ul class={styles.lists}>
        {lists.map((list) => (
          <li key={list.id}>
            <button
              type="button"
              class={keyClass({ look: 'plain', moving: true, className: styles.list })}
              onClick={() => openList(list.id)}
            >
              <b class={styles.title}>
                {markedText(stepsLang(), list.title)}
                {isOpen(list) && <span class={styles.open}>{words.listOpen}</span>}
              </b>
              <span class={styles.begins} lang={stepsLang()}>
                {beginning(brief, list)}
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}

const isOpen = ({ id }: AbnormalList) => sortie.value.lists.some(({ list }) => list === id);

function ordered({ procedure: { lists }, walk }: StepsBrief): readonly AbnormalList[] {
  const isHere = ({ phases = [] }: AbnormalList) => phases.includes(walk.phase);
  return [...lists.filter(isHere), ...lists.filter((list) => !isHere(list))];
}

/** The first things to do, without those that aren't there to be used. */
function beginning(brief: StepsBrief, { id, steps: all }: AbnormalList): string {
  const missing = notThereIn(brief, id).map(({ step }) => step.id);
  return all
    .filter((step) => !missing.includes(step.id))
    .slice(0, BEGINS_WITH)
    .map(({ item, response }) => `${liveText(item)} ${liveText(response)}`)
    .join(' · ');
}
