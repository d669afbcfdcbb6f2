/** The field's own numbers: elevation, variation, and what each end offers. */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import { declaredFigures, type End, endsOf, type Field, type Figure, fromField } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { decimal, direction, wholeNumber } from '../../parts/format';
import { lengthDigits, unitFor } from '../../parts/units';
import styles from './Numbers.module.css';
import { words } from './words';

interface FieldTableProps {
  readonly field: Field;
  readonly variation: Figure<'deg'>;
}

/** What an end offers, in the order of the columns. */
function figuresOf(end: End, variation: Figure<'deg'>): readonly Figure<'m' | 'deg'>[] {
  const { toraM, todaM, asdaM, ldaM, headingMagnetic } = declaredFigures(end, variation);
  return [toraM, todaM, asdaM, ldaM, headingMagnetic];
}

/** The field as its document gives it. */
export function FieldTable({ field, variation }: FieldTableProps): JSX.Element {
  const elevation = fromField(field.place.elevationFt, 'ft');
  return (
    <section>
      <h2 class={styles.title}>{`${field.code} ${field.name}`}</h2>
      <dl class={styles.groups}>
        <div class={styles.line}>
          <dt>{words.elevation}</dt>
          <dd>
            <Asked hint={words.ask} onAsk={() => ask(words.elevation, elevation)}>
              {words.feet(wholeNumber(field.place.elevationFt))}
            </Asked>
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
        <table class={`${styles.table} ${styles.asking}`}>
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
            {endsOf(field).map((end) => (
              <tr key={end.designator}>
                <th scope="row">{end.designator}</th>
                {figuresOf(end, variation).map((figure, i) => {
                  const name = `${end.designator} ${words.endsHead[i + 1]}`;
                  return (
                    <td key={name}>
                      {figure.value === null ? (
                        '—'
                      ) : (
                        <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
                          {figure.unit === 'deg'
                            ? direction(figure.value)
                            : lengthDigits(figure.value, 'down')}
                        </Asked>
                      )}
                    </td>
                  );
                })}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}
