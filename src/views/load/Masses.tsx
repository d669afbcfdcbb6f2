/** The masses against their limits. */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import type { Aircraft, Figure, LoadSheet } from '../../core';
import { Asked } from '../../parts/asked/Asked';

import { LimitBar } from '../../parts/limitBar/LimitBar';
import { mass, massAgainst } from '../../parts/units';
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
  const limit = mass(limitKg, 'down');
  const shown = figure.value === null ? null : massAgainst(figure.value, limitKg);
  return (
    <div class={styles.mass}>
      <dt>{name}</dt>
      <dd>
        {figure.value === null ? (
          <span class={styles.hint}>{words.because[figure.because]}</span>
        ) : (
          <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
            {shown}
          </Asked>
        )}{' '}
        <span class={styles.limit}>{words.of(limit)}</span>
        <LimitBar
          steady={figure.value ?? 0}
          worst={figure.value ?? 0}
          limit={limitKg}
          label={words.bar(name, shown ?? words.because['no-fuel'] ?? '', limit)}
        />
      </dd>
    </div>
  );
}
