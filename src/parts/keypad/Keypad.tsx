/** The keypad for a wind: digits like a phone turned upside down, and the letters a wind has. */

import type { ReadonlySignal } from '@preact/signals';
import type { ComponentChildren, JSX } from 'preact';
import { Key } from '../key/Key';
import styles from './Keypad.module.css';
import { type PadKey, press, ROWS } from './keys';

/** Labels of the keys that aren't their own letter. */
export interface KeypadWords {
  readonly erase: string;
  readonly clear: string;
  readonly calm: string;
  readonly space: string;
  readonly unit: string;
  /** For screen readers: what G, V, VRB and P mean. */
  readonly spoken: Readonly<Partial<Record<PadKey, string>>>;
}

interface KeypadProps {
  /**
   * Returns what is typed so far. Called on each key press, so that the keys needn't follow the
   * text.
   */
  readonly text: ReadonlySignal<string>;
  readonly words: KeypadWords;
  /** The label of the wide key at the bottom. */
  readonly setLabel: ReadonlySignal<string>;
  /** A key of another kind, before the wide one. */
  readonly beside: ComponentChildren;
  readonly onType: (text: string) => void;
  readonly onSet: () => void;
}

/** The keypad. It changes the text and nothing else. */
export function Keypad({ text, words, setLabel, beside, onType, onSet }: KeypadProps): JSX.Element {
  const face = (key: PadKey): string => {
    if (key === 'erase' || key === 'clear' || key === 'calm' || key === 'space' || key === 'unit') {
      return words[key];
    }
    return key;
  };
  return (
    <div class={styles.pad}>
      {ROWS.flat().map((key) => (
        <Key
          key={key}
          moving
          className={/^\d$/.test(key) ? styles.digit : styles.other}
          label={words.spoken[key]}
          onPress={() => onType(press(text.peek(), key))}
        >
          {face(key)}
        </Key>
      ))}
      {beside}
      <Key moving look="pick" className={styles.set} onPress={onSet}>
        {setLabel}
      </Key>
    </div>
  );
}
