/** The keypad, typing into the entry. */

import { computed } from '@preact/signals';
import type { JSX } from 'preact';
import { draft } from '../../../board/board';
import { closeKeypad, isUsable, typeWind } from '../../../board/wind/windEntry';
import { Key } from '../../../parts/key/Key';
import { Keypad } from '../../../parts/keypad/Keypad';
import styles from '../Wind.module.css';
import { words } from '../words';
import { letters } from './caret';

const setLabel = computed(() => (isUsable.value ? words.set : words.setAndClose));

/** The keypad. The entry shows the wind in use; the first key starts a new one. */
export function Pad(): JSX.Element {
  return (
    <Keypad
      text={draft}
      words={words.pad}
      setLabel={setLabel}
      beside={
        <Key
          moving
          className={styles.letters}
          pressed={letters.value}
          onPress={() => {
            letters.value = !letters.value;
          }}
        >
          {words.letters}
        </Key>
      }
      onType={typeWind}
      onSet={closeKeypad}
    />
  );
}
