/** A labelled entry for something that is written: what cannot be read stays as typed, with a sentence. */

import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import styles from './FieldEditor.module.css';

interface EntryProps<T> {
  readonly name: string;
  /** What stands there while nothing is typed. */
  readonly text: string;
  /** What a text says; null where it says nothing of the kind. */
  readonly read: (text: string) => T | null;
  readonly bad: string;
  /** What `lang` has to say of the text. */
  readonly lang?: string | undefined;
  readonly hint?: string;
  readonly most?: number;
  /** Several lines, for sentences. */
  readonly lines?: number;
  readonly onChange: (value: T) => void;
}

/** An entry. Each text that can be read counts at once. */
export function Entry<T>(props: EntryProps<T>): JSX.Element {
  const { name, text, lang, read, bad, hint, most = 80, lines, onChange } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const isBad = typed !== null && typed.trim() !== '' && read(typed) === null;
  const id = useId();
  const control = {
    id,
    lang,
    maxLength: most,
    placeholder: hint ?? '',
    value: typed ?? text,
    'aria-invalid': isBad,
    onInput: (event: { readonly currentTarget: { readonly value: string } }) => {
      const now = event.currentTarget.value;
      setTyped(now);
      const value = read(now);
      if (value !== null) onChange(value);
    },
    onBlur: () => {
      if (!isBad) setTyped(null);
    },
  };
  return (
    <label class={styles.entry} for={id}>
      {name}
      {lines === undefined ? (
        <input class={styles.input} autocomplete="off" spellcheck={false} {...control} />
      ) : (
        <textarea class={`${styles.input} ${styles.text}`} rows={lines} {...control} />
      )}
      {isBad && <span class={styles.bad}>{bad}</span>}
    </label>
  );
}

/** Any text of so many characters, its ends trimmed. */
export const anyText =
  (most: number) =>
  (text: string): string | null =>
    text.trim().length <= most ? text.trim() : null;

/** A number within bounds; a comma or a point, a minus of any kind. */
export const numberWithin =
  (least: number, most: number) =>
  (text: string): number | null => {
    const plain = text.trim().replace('−', '-').replace(',', '.');
    const value = plain === '' ? Number.NaN : Number(plain);
    return value >= least && value <= most ? value : null;
  };

/** A number as it stands in an entry: with so many decimals at most. */
export const plainNumber = (value: number, places = 0): string =>
  String(Number(value.toFixed(places)));
