/** A number that may be empty: unusable input stays as typed, with a sentence. */

import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { inputClass, Labelled } from './Labelled';

interface NumberFieldProps {
  readonly name: ComponentChildren;
  readonly value: number | null;
  readonly least: number;
  readonly most: number;
  /** Said if the input is no such number. */
  readonly bad: string;
  /** What applies while it is empty. */
  readonly hint: string;
  /** What it means, said below it. */
  readonly about?: string | undefined;
  readonly onChange: (value: number | null) => void;
}

/** Empty is null; accepts a comma or a point, and a minus of any kind. */
function read(text: string): number | null {
  const plain = text.trim().replace('−', '-').replace(',', '.');
  return plain === '' ? null : Number(plain);
}

/** A labelled input for a number. */
export function NumberField(props: NumberFieldProps): JSX.Element {
  const { name, value, least, most, bad, hint, about, onChange } = props;
  const id = useId();
  const [typed, setTyped] = useState<string | null>(null);
  const number = typed === null ? value : read(typed);
  const fits = (entered: number | null) =>
    entered === null || (entered >= least && entered <= most);
  const wrong = !fits(number);
  return (
    <Labelled
      name={name}
      bad={wrong && bad}
      about={about === undefined ? undefined : { id, text: about }}
    >
      <input
        class={inputClass}
        inputMode={least < 0 ? 'text' : 'decimal'}
        maxLength={8}
        value={typed ?? (value === null ? '' : String(value))}
        aria-invalid={wrong}
        aria-describedby={about === undefined ? undefined : id}
        placeholder={hint}
        onInput={(event) => {
          const text = event.currentTarget.value;
          setTyped(text);
          const entered = read(text);
          if (fits(entered)) onChange(entered);
        }}
        onBlur={(event) => {
          if (fits(read(event.currentTarget.value))) setTyped(null);
        }}
      />
    </Labelled>
  );
}
