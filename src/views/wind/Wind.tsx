/** Wind: a wind in, the best runway out, with its reasons and the winds it holds for. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { typing } from '../../board/places';
import { dial, list } from './afterAnswer';
import { Answer } from './answer/Answer';
import { ChooseField } from './ChooseField';
import { WindEntry } from './entry/Entry';
import { Pad } from './entry/Pad';
import styles from './Wind.module.css';

/** The place Wind; while a wind is typed, the keypad takes the lower half. */
export function WindPlace(): JSX.Element {
  if (day.settled().field === null) return <ChooseField />;
  return (
    <div class={`${styles.wind} ${typing.value ? styles.typing : ''}`}>
      <div class={styles.first}>
        <WindEntry />
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
