/** The masses against their limits. */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import type { Aircraft, Figure, LoadSheet } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { againstLimit, wholeNumber } from '../../parts/format';
import { LimitBar } from '../../parts/limitBar/LimitBar';
import styles from './LoadSheet.module.css';
import { words } from './words';

interface MassesProps {
  readonly sheet: LoadSheet;
  readonly masses: Aircraft['masses'];
}

/** Take-off and landing mass, each a bar against its limit. */
export function Masses({ sheet, masses }: MassesProps): JSX.Element {
  return (
    <dl class={styles.masses}>
      <Mass name={words.takeoff} figure={sheet.takeoffMassKg} limitKg={masses.maxTakeoffKg} />
      <Mass name={words.landing} figure={sheet.landingMassKg} limitKg={masses.maxLandingKg} />
    </dl>
  );
}

interface MassProps {
  readonly name: string;
  readonly figure: Figure<'kg'>;
  readonly limitKg: number;
}

function Mass({ name, figure, limitKg }: MassProps) {
  const limit = wholeNumber(limitKg);
  const kg = figure.value === null ? null : againstLimit(figure.value, limitKg);
  return (
    <div class={styles.mass}>
      <dt>{name}</dt>
      <dd>
        {figure.value === null ? (
          <span class={styles.hint}>{words.because[figure.because]}</span>
        ) : (
          <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
            {words.kg(kg ?? '')}
          </Asked>
        )}{' '}
        <span class={styles.limit}>{words.of(limit)}</span>
        <LimitBar
          steady={figure.value ?? 0}
          worst={figure.value ?? 0}
          limit={limitKg}
          label={words.bar(name, kg ?? words.because['no-fuel'] ?? '', limit)}
        />
      </dd>
    </div>
  );
}
