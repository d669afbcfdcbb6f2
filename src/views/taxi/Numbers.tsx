/** The reminder: speeds not to exceed, and the power to get and keep rolling. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import { aircraftText } from '../../board/language';
import { ask } from '../../board/places';
import type { Figure, TaxiBrief, Unit } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { wholeNumber } from '../../parts/format';
import { marked } from '../../parts/marked';
import { turnWords } from '../../parts/pace';
import styles from './Taxi.module.css';
import { words } from './words';

/** Three numbers in a row. */
export function TaxiNumbers({ brief }: { brief: TaxiBrief }): JSX.Element {
  const number = (title: string, figure: Figure<Unit>) => (
    <Asked hint={words.ask} className={styles.number} onAsk={() => ask(title, figure)}>
      {figure.value === null ? '—' : wholeNumber(figure.value)}
    </Asked>
  );
  const afterwards = aircraftText(brief.afterBreakaway);
  const steering = aircraftText(brief.steering);
  const unit = brief.getRolling.value === null ? '' : brief.getRolling.unit;
  return (
    <dl class={styles.numbers}>
      <div class={styles.limit}>
        <dt>{words.doNotExceed}</dt>
        <dd class={styles.big}>
          {number(words.doNotExceed, brief.doNotExceedKt)}
          <small>{words.kt}</small>
        </dd>
        <dd class={styles.aside}>{nextWords(brief)}</dd>
      </div>
      <div>
        <dt>{words.getRolling}</dt>
        <dd class={styles.big}>
          {number(words.getRolling, brief.getRolling)}
          <small>{unit}</small>
        </dd>
        {afterwards.text !== '' && (
          <dd class={styles.aside}>{marked(afterwards.lang, words.afterwards, afterwards.text)}</dd>
        )}
      </div>
      <div>
        <dt>{words.keepRolling}</dt>
        <dd class={`${styles.big} ${(brief.keepRollingMost.value ?? 0) > 999 ? styles.long : ''}`}>
          {number(words.keepRolling, brief.keepRollingLeast)}
          {brief.keepRollingLeast.value !== null && '–'}
          {brief.keepRollingLeast.value !== null &&
            number(words.keepRolling, brief.keepRollingMost)}
          <small>{unit}</small>
        </dd>
        <dd class={styles.aside} lang={steering.lang}>
          {steering.text}
        </dd>
      </div>
    </dl>
  );
}

/** The speed for the route's next turn; without one, the aircraft's for sharp turns. */
function nextWords({ inTurnsKt }: TaxiBrief): string {
  const turn = day.nextTurn();
  if (turn !== null) return turnWords(turn);
  return inTurnsKt.value === null ? '' : words.inTurns(wholeNumber(inTurnsKt.value));
}
