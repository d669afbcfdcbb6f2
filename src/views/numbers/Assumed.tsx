/** What planned lengths assume, in a word each, beside them. */

import type { JSX } from 'preact';
import type { TodayBrief } from '../../core';
import { decimal } from '../../parts/format';
import styles from './Numbers.module.css';
import { words } from './words';

/** In one line, under the numbers of a take-off or a landing. */
export function Assumed({
  today: { factors, headwindKt, surface, air },
  of,
}: {
  today: TodayBrief;
  of: 'takeoff' | 'landing';
}): JSX.Element {
  const wind =
    headwindKt === null || headwindKt === 0
      ? words.noWind
      : headwindKt > 0
        ? words.halfWind
        : words.tailwind15;
  return (
    <p class={styles.taken}>
      {words.assumed([
        words.factor(factors.choice, decimal(factors[of], 2)),
        wind,
        words.surfaces[surface],
        ...(air.standard.includes('temperature') ? [words.isaTemperature] : []),
        ...(air.standard.includes('qnh') ? [words.isaPressure] : []),
      ])}
    </p>
  );
}
