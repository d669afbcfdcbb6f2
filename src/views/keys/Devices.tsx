/** What each device sends, live. */

import type { JSX } from 'preact';
import { mediaKeys, seen } from '../../board/hands/hands';
import { type PadNow, padAccess, pads } from '../../device/gamepads';
import { decimal } from '../../parts/format';
import { controlName, padName } from './controlName';
import styles from './Keys.module.css';
import { words } from './words';

/** A button counts as down on this page from here. */
const DOWN = 0.5;

/** The keyboard and every pad. */
export function Devices(): JSX.Element {
  const keys = seen.value.filter(({ control }) => !control.startsWith('pad:'));
  return (
    <section>
      <h3 class={styles.title}>{words.devices}</h3>
      <h4 class={styles.device}>{words.keyboard}</h4>
      {keys.length === 0 ? (
        <p class={styles.note}>{words.nothingYet}</p>
      ) : (
        <ul class={styles.sent}>
          {keys.map(({ control, manner }) => (
            <li key={control}>
              {words.bound(
                controlName(control),
                manner === null ? words.down : words.manner[manner],
              )}
            </li>
          ))}
        </ul>
      )}
      <p class={styles.note}>
        {words.otherKeys} {mediaKeys.value ? words.mediaHint : words.mediaMissing}
      </p>
      {pads.value.map((pad) => (
        <Pad key={`${pad.copy} ${pad.name}`} pad={pad} />
      ))}
      <p class={styles.note}>{padWords()}</p>
    </section>
  );
}

function padWords(): string {
  if (padAccess.value === 'missing') return words.padMissing;
  if (padAccess.value === 'refused') return words.padRefused;
  return pads.value.length === 0 ? words.noPad : words.padHint;
}

function Pad({ pad }: { pad: PadNow }) {
  const down = pad.buttons.flatMap((value, index) => (value >= DOWN ? [words.button(index)] : []));
  return (
    <div class={styles.pad}>
      <h4 class={styles.device}>{padName(pad.name, pad.copy)}</h4>
      <dl class={styles.reads}>
        <div>
          <dt>{words.buttons}</dt>
          <dd>{down.join(', ') || words.noButtons}</dd>
        </div>
        {pad.axes.map((value, index) => (
          <Axis key={index} number={index} value={value} />
        ))}
      </dl>
    </div>
  );
}

/** An axis as a bar from its middle. */
function Axis({ number, value }: { number: number; value: number }) {
  const out = Math.max(-1, Math.min(1, value));
  return (
    <div>
      <dt>{words.axis(number)}</dt>
      <dd class={styles.axis}>
        <svg
          class={styles.bar}
          viewBox="-100 0 200 8"
          preserveAspectRatio="none"
          aria-hidden="true"
        >
          <rect class={styles.frame} x="-99" y="1" width="198" height="6" />
          <rect
            class={styles.full}
            x={Math.min(0, 98 * out)}
            y="1"
            width={Math.abs(98 * out)}
            height="6"
          />
        </svg>
        {decimal(value, 2)}
      </dd>
    </div>
  );
}
