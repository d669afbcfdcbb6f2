/** Where a number comes from: its inputs, its formula in one line, its source. */

import type { JSX } from 'preact';
import { settled } from '../../board/board';
import type { AskedFigure } from '../../board/places';
import { endFigures, type Figure, sunFigure, type Unit } from '../../core';
import { asWritten, NO_BREAK_SPACE } from '../../parts/format';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './WhySheet.module.css';
import { words } from './words';

interface WhyProps {
  readonly title: string;
  readonly figure: AskedFigure;
  readonly onClose: () => void;
}

/** Digits after which recomputing a figure from its shown inputs gives the shown figure. */
const DECIMALS = 2;

/** The sheet behind a number. */
export function WhySheet({ title, figure, onClose }: WhyProps): JSX.Element {
  const shown = figureOf(figure);
  return (
    <Sheet title={title || titleOf(figure)} close={words.close} onClose={onClose}>
      {shown && <Reason figure={shown} />}
    </Sheet>
  );
}

/** Opened from the frame, a figure of a runway end comes without a title. */
const titleOf = (asked: AskedFigure): string =>
  'name' in asked ? words.title(asked.name, asked.answer.purpose) : '';

/** The figure asked about, built now if it wasn't yet. */
function figureOf(asked: AskedFigure): Figure<Unit> | null {
  if ('sun' in asked) {
    const place = settled.value.field?.place;
    return place === undefined ? null : sunFigure(asked.sun, place);
  }
  if (!('end' in asked)) return asked;
  return endFigures(asked.end, asked.answer, settled.value)?.[asked.name] ?? null;
}

function Reason({ figure }: { figure: Figure<Unit> }) {
  if (figure.value === null) return <p class={styles.value}>{words.causes[figure.because]}</p>;
  const { formula, inputs, source } = figure.why;
  return (
    <>
      <p class={styles.value}>{written(figure)}</p>
      <dl class={styles.why}>
        <dt>{words.formula}</dt>
        <dd>{words.formulas[formula]}</dd>
        <dt>{words.inputs}</dt>
        <dd>
          <ul>
            {Object.entries(inputs).map(([name, input]) => (
              <li key={name}>
                <b>{typeof input === 'object' ? written(input) : plain(input)}</b>{' '}
                {words.inputNames[name]}
              </li>
            ))}
          </ul>
        </dd>
        <dt>{words.source}</dt>
        <dd>{words.sources[source]}</dd>
      </dl>
    </>
  );
}

function written(figure: Figure<Unit>): string {
  if (figure.value === null) return words.noValue;
  const unit = words.units[figure.unit] ?? `${NO_BREAK_SPACE}${figure.unit}`;
  return plain(figure.value) + unit;
}

/** As many decimals as matter, and no more. */
function plain(value: number | string): string {
  return typeof value === 'string' ? value : asWritten(String(Number(value.toFixed(DECIMALS))));
}
