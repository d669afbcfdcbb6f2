/** After lift-off: the speeds to clean up by, each with its limit and the seconds left. */

import type { ComponentChildren, JSX } from 'preact';
import { day, sortie } from '../../board/board';
import { wallMs } from '../../board/flight/time';
import { ask } from '../../board/places';
import type { ClimbRung } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { wholeNumber } from '../../parts/format';
import styles from './ClimbRungs.module.css';
import { words } from './words';

/** Once the climb is established, none of it counts any more, ms. */
const OVER_AFTER_MS = 180_000;

/**
 * The rungs of the climb, as long as they can matter. Times are expected, counted from the key
 * Airborne.
 */
export function ClimbRungs(): JSX.Element | null {
  const airborne = sortie.value.stamps.findLast(({ what }) => what === 'airborne');
  const last = sortie.value.stamps.at(-1);
  const rungs = day.ladder()?.climb ?? [];
  if (airborne === undefined || last !== airborne || rungs.length === 0) return null;
  const goneMs = wallMs.value - airborne.at.wallMs;
  if (goneMs > OVER_AFTER_MS) return null;
  return (
    <ol class={styles.rungs} aria-label={words.climbRungs}>
      {rungs.map((rung) => (
        <li key={rung.what} class={styles.rung}>
          <span class={styles.name}>{words.climbRung[rung.what]}</span>
          <Asked
            hint={words.opens}
            className={styles.speed}
            onAsk={() => ask(words.climbRung[rung.what], rung.figure)}
          >
            {wholeNumber(rung.speedKt)}
            <small class={styles.unit}>{words.knots}</small>
          </Asked>
          <span class={styles.left}>
            <Left rung={rung} goneS={goneMs / 1000} />
          </span>
        </li>
      ))}
    </ol>
  );
}

/** The time left, and the limit with where it comes from. */
function Left({ rung, goneS }: { rung: ClimbRung; goneS: number }): ComponentChildren {
  const { limit } = rung;
  const text = leftOf(rung, goneS);
  return limit === null ? (
    text
  ) : (
    <Asked hint={words.opens} onAsk={() => ask(words.limitOf(words.climbRung[rung.what]), limit)}>
      {text}
    </Asked>
  );
}

/** The time left until the limit or, without one, until the speed. */
function leftOf({ limitKt, limitS, fromLiftOffS }: ClimbRung, goneS: number): string {
  if (limitKt !== null) {
    if (limitS === null) return words.limitOnly(wholeNumber(limitKt));
    return words.limitIn(
      wholeNumber(limitKt),
      limitS > goneS ? wholeNumber(Math.floor(limitS - goneS)) : null,
    );
  }
  return fromLiftOffS > goneS
    ? words.speedIn(wholeNumber(Math.ceil(fromLiftOffS - goneS)))
    : words.aboutNow;
}
