/** The five places, always one tap apart, at the bottom edge. */

import type { JSX } from 'preact';
import { openPlace, PLACES, place } from '../board/places';
import styles from './Places.module.css';
import { words } from './words.en';

/** The keys of the places. */
export function Places(): JSX.Element {
  return (
    <nav class={styles.places} aria-label={words.placesLabel}>
      {PLACES.map((name) => (
        <button
          key={name}
          type="button"
          class={`${styles.place} ${name === place.value ? styles.here : ''}`}
          aria-current={name === place.value ? 'page' : undefined}
          onClick={() => openPlace(name)}
        >
          {words.places[name]}
        </button>
      ))}
    </nav>
  );
}
