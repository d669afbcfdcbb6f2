/** One of many: the device's own list to pick from. */

import type { JSX } from 'preact';
import styles from './Editor.module.css';

interface PickProps {
  readonly name: string;
  readonly options: readonly {
    readonly value: string;
    readonly name: string;
    /** The `lang` of the name. */
    readonly lang?: string | undefined;
  }[];
  readonly chosen: string;
  readonly onChoose: (value: string) => void;
}

/** A labelled list to choose one item from. */
export function Pick({ name, options, chosen, onChoose }: PickProps): JSX.Element {
  return (
    <label class={styles.name}>
      {name}
      <select
        class={styles.input}
        value={chosen}
        onChange={(event) => onChoose(event.currentTarget.value)}
      >
        {options.map((option) => (
          <option
            key={option.value}
            value={option.value}
            lang={option.lang}
            selected={option.value === chosen}
          >
            {option.name}
          </option>
        ))}
      </select>
    </label>
  );
}
