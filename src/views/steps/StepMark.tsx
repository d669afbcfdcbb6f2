/** How a step stands, as a shape and in words. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { stepsLang } from '../../board/language';
import type { FactName, FactValue, StepRow } from '../../core';
import { timeOfDay, wholeNumber } from '../../parts/format';
import { liveText, seenText } from './liveText';
import styles from './StepMark.module.css';
import { words } from './words';

/** Done is full, held back half, cannot crossed, not needed a dash, open empty. */
export function StepMark({ row }: { row: StepRow }): JSX.Element {
  const { kind } = row.state;
  return (
    <svg class={styles.mark} viewBox="0 0 20 20" aria-hidden="true">
      {kind === 'not-needed' || kind === 'not-flown' ? (
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

/** What follows a step in a list. */
export function stateWords(row: StepRow): string {
  const { state, step } = row;
  switch (state.kind) {
    case 'held':
      return words.heldBack;
    case 'cannot':
      return words.cannotState(state.tick.why ?? '');
    case 'not-flown':
      return words.notFlown;
    case 'not-needed':
      return notNeededWords(state);
    case 'done':
    case 'again':
      return seenText(step.response, state.tick.saw);
    default:
      return liveText(step.response);
  }
}

/** Its language: the response is the procedure's own text, everything else is the page's. */
export const stateLang = ({ state: { kind } }: StepRow): string | undefined =>
  kind === 'open' || kind === 'done' || kind === 'again' ? stepsLang() : undefined;

/** Why a step is not needed, and when that was decided. */
function notNeededWords({ facts, passed, decided, notSimulated }: NotNeeded): string {
  if (notSimulated) return words.notNeeded(words.notSimulatedState);
  if (decided === null) {
    const now = facts.map((name) => factWords(name, day.steps()?.facts[name] ?? null, true));
    return passed ? words.notNeededThen : words.notNeeded(now.join(', '));
  }
  const then = facts.map((name) => factWords(name, decided.saw[name] ?? null, false));
  return words.decided(words.notNeeded(then.join(', ')), timeOfDay(decided.at.sortieMs));
}

type NotNeeded = Extract<StepRow['state'], { readonly kind: 'not-needed' }>;

/** A fact as it is or was: `day until 2030Z`. */
function factWords(name: FactName, value: FactValue, now: boolean): string {
  const said = becameWords(name, value) ?? name;
  const spell = name === 'night' || name === 'lights' ? day.settled().sun?.[name] : undefined;
  return now && spell?.until ? said + words.until(timeOfDay(spell.until.getTime())) : said;
}

/** A fact's value in words; null if it has none. */
export function becameWords(name: FactName, value: FactValue): string | null {
  const said = words.fact[name];
  if (said !== undefined) return value === true ? said.yes : said.no;
  if (name === 'windKt' && typeof value === 'number') return words.windOf(wholeNumber(value));
  return name === 'options' ? words.otherOptions : null;
}
