/** The card on the roll: the ladder, and two keys that share the remaining space. */

import type { ComponentChildren, JSX } from 'preact';
import { sortie } from '../../board/board';
import { wallMs } from '../../board/flight/time';
import { stopText } from '../../board/language';
import { rollingSinceMs } from '../../board/steps/due';
import { doIt, offered, stopRoll } from '../../board/steps/stepping';
import { Fit } from '../../parts/fit/Fit';
import { stopwatch } from '../../parts/format';
import { RollKeys } from '../../parts/key/RollKeys';
import { marked } from '../../parts/marked';
import styles from './Card.module.css';
import { CardVerdict } from './CardVerdict';
import { endWords, windWords } from './edges';
import { Head } from './Head';
import { Rungs, rungsNow } from './Rungs';
import { words } from './words';

/** How long ago the brakes were released. */
export function sinceReleased(): string {
  const released = sortie.value.stamps.findLast(({ what }) => what === 'brakes released');
  return released === undefined ? '' : stopwatch(wallMs.value - released.at.wallMs);
}

/** How to stop. */
export const stopWords = (): ComponentChildren => {
  const { text, lang } = stopText();
  return text === '' ? '' : marked(lang, words.toStop, text);
};

/** The ladder and its keys. */
export function RollCard(): JSX.Element {
  const rungs = rungsNow();
  const now = offered.value;
  return (
    <>
      <Head cells={[sinceReleased(), endWords(), windWords()]} share={null} />
      <CardVerdict />
      <Fit className={styles.ladder} of={JSON.stringify(rungs)}>
        <Rungs rungs={rungs} />
      </Fit>
      <p class={styles.toStop}>{stopWords()}</p>
      <div class={styles.halves}>
        <RollKeys
          words={words}
          mayStop={now?.stop === true}
          sinceMs={rollingSinceMs}
          onStop={stopRoll}
          onAirborne={() => now && doIt(now.main)}
        />
      </div>
    </>
  );
}
