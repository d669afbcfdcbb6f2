/** A place by latitude and longitude, as people write them. */

import type { JSX } from 'preact';
import { type Place, readCoordinate } from '../../core';
import { EntryField, plainNumber } from '../../parts/field/EntryField';
import styles from './FieldEditor.module.css';
import { words } from './words';

/** Degrees to about a decimetre. */
const PLACES = 6;

/** Two inputs; `of` says whose place it is, for screen readers. */
export function PlaceEntry({
  of,
  place,
  onChange,
}: {
  readonly of: string;
  readonly place: Place;
  readonly onChange: (place: Place) => void;
}): JSX.Element {
  return (
    <fieldset class={styles.pair} aria-label={of}>
      <EntryField
        name={words.latitude}
        text={plainNumber(place.latDeg, PLACES)}
        read={(text) => readCoordinate(text, 'lat')}
        bad={words.latitudeBad}
        most={24}
        onChange={(latDeg) => onChange({ ...place, latDeg })}
      />
      <EntryField
        name={words.longitude}
        text={plainNumber(place.lonDeg, PLACES)}
        read={(text) => readCoordinate(text, 'lon')}
        bad={words.longitudeBad}
        most={24}
        onChange={(lonDeg) => onChange({ ...place, lonDeg })}
      />
    </fieldset>
  );
}
