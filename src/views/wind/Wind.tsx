/** Wind: a wind in, the best runway end out, with its reasons and how firm it is. */

import type { JSX } from 'preact';
import { draft, enteredWind, settled, typedWind, wind } from '../../board/board';
import { typing } from '../../board/places';
import { closeKeypad, typeWind } from '../../board/windEntry';
import { Keypad } from '../../parts/keypad/Keypad';
import { later } from '../../parts/later/Later';
import { Answer } from './Answer';
import { ChooseField } from './ChooseField';
import { Entry } from './Entry';
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
  const shown = typedWind.value;
  // What cannot be used leaves the last good answer standing, and visibly old.
  const old = shown.ranked === null && wind.value.ranked !== null && draft.value.trim() !== '';
  const answered = old ? wind.value : shown;
  const typed = draft.value || (enteredWind.value?.text ?? '');
  if (settled.value.field === null) return <ChooseField />;
  return (
    <div class={`${styles.wind} ${typing.value ? styles.typing : ''}`}>
      <div class={styles.first}>
        <Entry text={typed} read={shown} isDraft={draft.value !== ''} />
        <Answer answered={answered} old={old} />
        <dial.Later answered={answered} old={old} />
      </div>
      {typing.value ? (
        <div class={styles.keys}>
          <Keypad
            // The wind in use stands in the entry; the first key begins a new one.
            text={draft.value}
            words={words.pad}
            setLabel={shown.report?.wind == null ? words.setAndClose : words.set}
            onType={typeWind}
            onSet={closeKeypad}
          />
        </div>
      ) : (
        <list.Later answered={answered} />
      )}
    </div>
  );
}
