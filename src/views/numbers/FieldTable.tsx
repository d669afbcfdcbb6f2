/** The field's own numbers: elevation, variation, and what each end offers. */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import { degreesOf, endsOf, type Field, type Figure, toMagnetic } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { decimal, direction, wholeNumber } from '../../parts/format';
import { lengthDigits, unitFor } from '../../parts/units';
import styles from './Numbers.module.css';
import { words } from './words';

interface FieldTableProps {
  readonly field: Field;
  readonly variation: Figure<'deg'>;
}

/** The field as its document gives it. */
export function FieldTable({ field, variation }: FieldTableProps): JSX.Element {
  return (
    <section>
      <h2 class={styles.title}>{`${field.code} ${field.name}`}</h2>
      <dl class={styles.groups}>
        <div class={styles.line}>
          <dt>{words.elevation}</dt>
          <dd>
            <b>{words.feet(wholeNumber(field.place.elevationFt))}</b>
          </dd>
        </div>
        <div class={styles.line}>
          <dt>{words.variation}</dt>
          <dd>
            {variation.value === null ? (
              <span class={styles.absent}>{words.because[variation.because]}</span>
            ) : (
              <Asked hint={words.ask} onAsk={() => ask(words.variation, variation)}>
                {variation.value < 0
                  ? words.west(decimal(-variation.value, 1))
                  : words.east(decimal(variation.value, 1))}
              </Asked>
            )}
          </dd>
        </div>
      </dl>
      <div class={styles.scroll}>
        <table class={styles.table}>
          <caption class={styles.group}>{words.ends(unitFor('m'))}</caption>
          <thead>
            <tr>
              {words.endsHead.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {endsOf(field).map(({ designator, given, heading }) => (
              <tr key={designator}>
                <th scope="row">{designator}</th>
                {[given.toraM, given.todaM, given.asdaM, given.ldaM].map((length, i) => (
                  <td key={words.endsHead[i + 1]}>{lengthDigits(length, 'down')}</td>
                ))}
                <td>
                  {variation.value === null
                    ? '—'
                    : direction(degreesOf(toMagnetic(heading, variation.value)))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
