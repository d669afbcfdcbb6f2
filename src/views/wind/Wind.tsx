/** Wind: a wind in, the best runway end out, with its reasons and how firm it is. */

import type { JSX } from 'preact';
import { settled } from '../../board/board';
import { typing } from '../../board/places';
import { later } from '../../parts/later/Later';
import { Answer } from './Answer';
import { ChooseField } from './ChooseField';
import { Entry } from './Entry';
import { Pad } from './Pad';
import styles from './Wind.module.css';
import { words } from './words.en';

// The answer stands in words first; the picture and the list of all ends follow.
const dial = later(
  () => import('./Detail').then(({ DialPanel }) => DialPanel),
  words.later,
  'asked',
);
const list = later(
  () => import('./Detail').then(({ EndsAndWinds }) => EndsAndWinds),
  words.later,
  'asked',
);

/** Loads the dial and the list of ends. */
export function loadWindDetail(): void {
  dial.preload();
  list.preload();
}

/** The place Wind; while a wind is typed, the keypad takes the lower half. */
export function Wind(): JSX.Element {
  if (settled.value.field === null) return <ChooseField />;
  return (
    <div class={`${styles.wind} ${typing.value ? styles.typing : ''}`}>
      <div class={styles.first}>
        <Entry />
        <Answer />
        <dial.Later />
      </div>
      {typing.value ? (
        <div class={styles.keys}>
          <Pad />
        </div>
      ) : (
        <list.Later />
      )}
    </div>
  );
}
