/** Before the runway and before brake release: what is outside limits, and going on in spite of it. */

import type { JSX } from 'preact';
import { cautions, isOtherWithin } from '../../board/flight/cautions';
import { openPlace } from '../../board/places';
import { doIt } from '../../board/steps/stepping';
import { type Main, wantsHold } from '../../core';
import { Key } from '../../parts/key/Key';
import { TickKey } from '../../parts/key/TickKey';
import { cautionText } from '../../parts/verdict/cautionText';
import { words as verdictWords } from '../../parts/verdict/words';
import { BackKey } from './BackKey';
import styles from './Moments.module.css';
import { words } from './words';

interface GoOutsideProps {
  readonly main: Extract<Main, { what: 'go-outside' }>;
}

/** The cautions that stop, worst first, and the keys. */
export function GoOutside({ main }: GoOutsideProps): JSX.Element {
  const [worst, ...others] = cautions.value.filter(({ stops }) => stops);
  return (
    <div class={styles.moment}>
      <div class={styles.outside} role="alert">
        <p class={styles.label}>{verdictWords.stops}</p>
        <p class={styles.worst}>{worst && cautionText(worst).drawn}</p>
        {others.map((caution) => (
          <p key={`${caution.code} ${caution.limit}`}>{cautionText(caution).drawn}</p>
        ))}
        <p class={styles.mend}>{worst && verdictWords.mend(worst.code, isOtherWithin.value)}</p>
      </div>
      <div class={`${styles.keys} ${styles.three}`}>
        <BackKey />
        <Key moving onPress={() => openPlace('wind')}>
          {words.toWind}
        </Key>
        <TickKey
          refusals={words.refused}
          moving
          step="go outside"
          hold={wantsHold(main, false)}
          holdHint={words.holdHint}
          onPress={() => doIt(main)}
        >
          <span class={styles.goOn}>{verdictWords.goOn}</span>
          <span class={styles.hold}>{verdictWords.hold}</span>
        </TickKey>
      </div>
    </div>
  );
}
