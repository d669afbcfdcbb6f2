/** The worst that speaks against the runway in use, under the card's top edge. */

import type { JSX } from 'preact';
import { cautionsOverhead } from '../../board/flight/cautions';
import { cautionText } from '../../parts/verdict/cautionText';
import { words } from '../../parts/verdict/words';
import styles from './Card.module.css';

/** In a line; nothing while nothing speaks against it. */
export function CardVerdict(): JSX.Element | null {
  const [worst, ...others] = cautionsOverhead.value;
  if (worst === undefined) return null;
  return (
    <span class={worst.stops ? styles.stops : styles.caution}>
      {worst.accepted && `${words.stops}: `}
      {cautionText(worst).drawn}
      {others.length > 0 && `, ${words.more(others.length)}`}
    </span>
  );
}
