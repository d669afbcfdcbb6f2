/** A labelled text input: what can't be read stays as typed, with a sentence. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { inputClass, Labelled, linesClass } from './Labelled';

interface EntryProps<T> {
  readonly name: string;
  /** The placeholder. */
  readonly text: string;
  /** Parses a text; null if it can't be read. */
  readonly read: (text: string) => T | null;
  readonly bad: string;
  /** The `lang` of the text. */
  readonly lang?: string | undefined;
  readonly hint?: string;
  readonly most?: number;
  /** Several lines, for sentences. */
  readonly lines?: number;
  readonly onChange: (value: T) => void;
}

/** What was typed, in a line or in several. */
interface Typed {
  readonly currentTarget: { readonly value: string };
}

/** An input. Each readable text counts at once. */
export function EntryField<T>(props: EntryProps<T>): JSX.Element {
  const { name, text, lang, read, bad, hint, most = 80, lines, onChange } = props;
  const [typed, setTyped] = useState<string | null>(null);
  const isUnread = (now: string) => now.trim() !== '' && read(now) === null;
  const isBad = typed !== null && isUnread(typed);
  const control = {
    lang,
    maxLength: most,
    placeholder: hint ?? '',
    value: typed ?? text,
    'aria-invalid': isBad,
    onInput: ({ currentTarget: { value: now } }: Typed) => {
      setTyped(now);
      const value = read(now);
      if (value !== null) onChange(value);
    },
    onBlur: ({ currentTarget: { value: now } }: Typed) => {
      if (!isUnread(now)) setTyped(null);
    },
  };
  return (
    <Labelled name={name} bad={isBad && bad}>
      {lines === undefined ? (
        <input class={inputClass} autocomplete="off" spellcheck={false} {...control} />
      ) : (
        <textarea class={linesClass} rows={lines} {...control} />
      )}
    </Labelled>
  );
}

/** Any text up to a maximum length, trimmed. */
export const anyText =
  (most: number) =>
  (text: string): string | null =>
    text.trim().length <= most ? text.trim() : null;

/** Lets the entry of a number be left empty, where nobody knows it: null then. */
export const orUnknown =
  (read: (text: string) => number | null) =>
  (text: string): { readonly known: number | null } | null => {
    if (text.trim() === '') return { known: null };
    const known = read(text);
    return known === null ? null : { known };
  };

/** A number within bounds; accepts a comma or a point, and a minus of any kind. */
export const numberWithin =
  (least: number, most: number) =>
  (text: string): number | null => {
    const plain = text.trim().replace('−', '-').replace(',', '.');
    const value = plain === '' ? Number.NaN : Number(plain);
    return value >= least && value <= most ? value : null;
  };

/** A number as shown in an input, with a maximum number of decimals. */
export const plainNumber = (value: number, places = 0): string =>
  String(Number(value.toFixed(places)));
