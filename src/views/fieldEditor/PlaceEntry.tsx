/** A place in one entry: latitude and longitude together, as people write and paste them. */

import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { degreesWritten, LONGEST_PLACES, type Place, readPlaces } from '../../core';
import { hintClass, Labelled, linesClass, wrongClass } from '../../parts/field/Labelled';
import styles from './FieldEditor.module.css';
import { placeBad } from './words';

interface PlaceEntryProps {
  readonly name: string;
  /** Null if it isn't known yet. */
  readonly place: Place | null;
  /** A second place is handed on if the text holds two: a table's two thresholds, pasted at once. */
  readonly onChange: (place: Place, second: Place | undefined) => void;
}

/**
 * The entry. Under it is room for what was understood, or why nothing was, so that nothing moves
 * while one types.
 */
export function PlaceEntry({ name, place, onChange }: PlaceEntryProps): JSX.Element {
  const [typed, setTyped] = useState<string | null>(null);
  const id = useId();
  const shown = typed ?? (place === null ? '' : degreesWritten(place));
  const read = typed === null || typed.trim() === '' ? null : readPlaces(typed);
  const [understood] = read?.places ?? [];
  return (
    <Labelled name={name}>
      <textarea
        class={`${linesClass} ${styles.place}`}
        rows={1}
        // A cell of a table is pasted with the line break between the two.
        maxLength={LONGEST_PLACES}
        autocomplete="off"
        spellcheck={false}
        value={shown}
        // What stands below describes it, and is no part of its name.
        aria-label={name}
        aria-describedby={id}
        aria-invalid={read?.problem != null}
        onInput={({ currentTarget: { value } }) => {
          setTyped(value);
          const [first, second] = readPlaces(value).places ?? [];
          if (first !== undefined) onChange(first, second);
        }}
        onBlur={() => {
          if (read?.problem == null) setTyped(null);
        }}
      />
      <span
        id={id}
        class={`${read?.problem ? wrongClass : hintClass} ${styles.understood}`}
        role="status"
      >
        {read?.problem && placeBad(read.problem)}
        {understood && degreesWritten(understood)}
      </span>
    </Labelled>
  );
}
