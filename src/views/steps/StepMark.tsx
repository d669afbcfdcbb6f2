/** How a step stands, as a shape and in words. */

import type { JSX } from 'preact';
import { settled } from '../../board/board';
import { steps } from '../../board/flight';
import type { FactName, StepRow } from '../../core';
import { zulu } from '../../parts/format';
import { liveText } from './liveText';
import styles from './StepMark.module.css';
import { words } from './words.en';

/** Done is full, held back half, cannot crossed, not needed a stroke, open empty. */
export function Mark({ row }: { row: StepRow }): JSX.Element {
  const { kind } = row.state;
  return (
    <svg class={styles.mark} viewBox="0 0 20 20" aria-hidden="true">
      {kind === 'not-needed' ? (
        <path class={styles.stroke} d="M3 10H17" />
      ) : (
        <rect class={styles.stroke} x="2" y="2" width="16" height="16" />
      )}
      {kind === 'done' && <rect class={styles.fill} x="2" y="2" width="16" height="16" />}
      {kind === 'held' && <rect class={styles.fill} x="2" y="2" width="8" height="16" />}
      {kind === 'cannot' && <path class={styles.stroke} d="M2 2L18 18M18 2L2 18" />}
      {kind === 'again' && <path class={styles.stroke} d="M2 18L18 2" />}
    </svg>
  );
}

/** What stands behind a step in a list. */
export function stateWords(row: StepRow): string {
  const { state, step } = row;
  switch (state.kind) {
    case 'held':
      return words.heldBack;
    case 'cannot':
      return words.cannotState(state.tick.why ?? '');
    case 'not-needed':
      return state.passed
        ? words.notNeededThen
        : words.notNeeded(state.facts.map(factWords).join(', '));
    default:
      return liveText(step.response);
  }
}

/** A fact as it is now: `day until 2030Z`. */
function factWords(name: FactName): string {
  const value = steps.value?.facts[name];
  const said = words.fact[name];
  const spell = name === 'night' || name === 'lights' ? settled.value.sun?.[name] : undefined;
  const until = spell?.until ? words.until(zulu(spell.until.getTime())) : '';
  return said === undefined ? name : `${value === true ? said.yes : said.no}${until}`;
}
