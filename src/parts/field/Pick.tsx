/** One of many: the device's own list to pick from. */

import type { JSX } from 'preact';
import { inputClass, Labelled } from './Labelled';

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
    <Labelled name={name}>
      <select
        class={inputClass}
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
    </Labelled>
  );
}
