/** That the wind being typed breaks a limit of the runway selected: once set, every place says so. */

import type { JSX } from 'preact';
import { typing } from '../../../board/places';
import { answered } from '../../../board/wind/answered';
import { shortfallWords } from '../runways/shortfalls';
import { words } from '../runways/words';
import styles from './Answer.module.css';

/** The first shortfall of it, as the list has it; nothing while it is within limits. */
export function UsingFails(): JSX.Element | null {
  const { inUse } = answered.value;
  const [first] = inUse?.shortfalls ?? [];
  if (!typing.value || inUse == null || first === undefined) return null;
  return (
    <p class={styles.fails}>
      <b>{words.selected(inUse.designator)}</b> {shortfallWords(first)}
    </p>
  );
}
