/** Asks why a step cannot be done: one tap for the usual reasons. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { stepsLang, withinSentence } from '../../board/language';
import { pageLanguage } from '../../device/pageLanguage';
import { Key } from '../../parts/key/Key';
import { marked } from '../../parts/marked';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './Cannot.module.css';
import { words } from './words';

interface CannotProps {
  readonly item: string;
  /** `lasting`: the simulation hasn't got it, which is remembered. */
  readonly onReason: (why: string, lasting?: boolean) => void;
  readonly onClose: () => void;
}

const LONGEST_REASON = 80;

/** The reasons, and a line for another. */
export function CannotDo({ item, onReason, onClose }: CannotProps): JSX.Element {
  const [other, setOther] = useState('');
  return (
    <Sheet
      title={marked(stepsLang(), words.cannotTitle, item)}
      close={words.close}
      onClose={onClose}
    >
      <p class={styles.question}>{words.whyCannot}</p>
      <div class={styles.reasons}>
        <Key
          moving
          onPress={() => onReason(withinSentence(words.notSimulated, pageLanguage()), true)}
        >
          {words.notSimulated}
        </Key>
        {words.reasons.map((reason) => (
          <Key key={reason} moving onPress={() => onReason(withinSentence(reason, pageLanguage()))}>
            {reason}
          </Key>
        ))}
      </div>
      <form
        class={styles.other}
        onSubmit={(event) => {
          event.preventDefault();
          if (other.trim() !== '') onReason(other.trim());
        }}
      >
        <label>
          {words.otherReason}
          <input
            class={styles.text}
            maxLength={LONGEST_REASON}
            value={other}
            onInput={(event) => setOther(event.currentTarget.value)}
          />
        </label>
        <Key disabled={other.trim() === ''} onPress={() => onReason(other.trim())}>
          {words.record}
        </Key>
      </form>
    </Sheet>
  );
}
