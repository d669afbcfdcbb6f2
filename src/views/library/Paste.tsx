/**
 * The key that takes a link or a code from the clipboard; if that isn't allowed, a box to paste
 * into.
 */

import type { JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { takePasted } from '../../board/documents/pasted';
import { readClipboard } from '../../device/files';
import { LONGEST_PASTED } from '../../exchange/pasted';
import { Key } from '../../parts/key/Key';
import styles from './Bring.module.css';
import { words } from './documentWords';

/** The key, and the box if needed. */
export function Paste(): JSX.Element {
  const [isByHand, setByHand] = useState(false);
  const [text, setText] = useState('');
  const [isRefused, setRefused] = useState(false);
  const box = useRef<HTMLTextAreaElement>(null);
  useEffect(() => {
    if (isByHand) box.current?.focus();
  }, [isByHand]);

  const take = (pasted: string) => {
    const isTaken = takePasted(pasted);
    setText(isTaken ? '' : pasted.slice(0, LONGEST_PASTED));
    setRefused(!isTaken);
    setByHand(!isTaken);
  };
  const paste = () => {
    setRefused(false);
    // Missing over plain http, refused, or never answered: the box is shown until it is.
    setByHand(true);
    void readClipboard().then((read) => read !== null && take(read));
  };

  return (
    <>
      <Key className={styles.paste} onPress={paste}>
        {words.paste}
      </Key>
      {isByHand && (
        <div class={styles.byHand}>
          <textarea
            ref={box}
            class={styles.pasted}
            aria-label={words.paste}
            rows={3}
            maxLength={LONGEST_PASTED}
            value={text}
            spellcheck={false}
            autocapitalize="off"
            autocomplete="off"
            onPaste={(event) => {
              // The box cuts a long text; an extract of a map is taken before it does.
              const pasted = event.clipboardData?.getData('text') ?? '';
              if (pasted.length > LONGEST_PASTED) {
                event.preventDefault();
                take(pasted);
              }
            }}
            onInput={(event) => {
              setText(event.currentTarget.value);
              setRefused(false);
            }}
          />
          <Key disabled={text.trim() === ''} onPress={() => take(text)}>
            {words.lookAtPasted}
          </Key>
        </div>
      )}
      <div role="status">{isRefused && <p class={styles.refused}>{words.nothingPasted}</p>}</div>
    </>
  );
}
