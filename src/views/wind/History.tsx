/** The winds entered so far, newest first. */

import type { JSX } from 'preact';
import { sortie } from '../../board/board';
import { zulu } from '../../parts/format';
import { words } from './detailWords.en';
import styles from './Wind.module.css';

/** How many are shown: what a pilot compares. */
const SHOWN = 6;

/** A row of the last winds, each with its time. */
export function History(): JSX.Element | null {
  const winds = sortie.value.winds.slice(-SHOWN).reverse();
  if (winds.length < 2) return null;
  return (
    <section class={styles.history}>
      <h2>{words.history}</h2>
      <ol>
        {winds.map((wind) => (
          <li key={wind.id}>
            <time>{zulu(wind.at.sortieMs)}</time> {wind.text.slice(0, 40)}
          </li>
        ))}
      </ol>
    </section>
  );
}
