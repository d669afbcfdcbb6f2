/** The five places, always one tap apart, at the bottom edge. */

import type { JSX } from 'preact';
import { sortie } from '../board/board';
import { wallNowMs } from '../board/flight/time';
import { openPlace, PLACES, place } from '../board/places';
import styles from './Places.module.css';
import { words } from './words';

const SECOND_TAP_MS = 500;

/**
 * On the roll other keys stand here; the second tap of a double tap on them must not hit the keys
 * that replace them.
 */
const isSecondTap = () =>
  Math.abs(wallNowMs() - (sortie.value.stamps.at(-1)?.at.wallMs ?? 0)) < SECOND_TAP_MS;

/** The places' keys. */
export function Places(): JSX.Element {
  return (
    <nav class={styles.places} aria-label={words.placesLabel}>
      {PLACES.map((name) => (
        <button
          key={name}
          type="button"
          class={`${styles.place} ${name === place.value ? styles.here : ''}`}
          aria-current={name === place.value ? 'page' : undefined}
          onClick={() => isSecondTap() || openPlace(name)}
        >
          {words.places[name]}
        </button>
      ))}
    </nav>
  );
}
