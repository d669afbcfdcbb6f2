/** Where a number comes from: its inputs, its formula in one line, its source. */

import type { JSX } from 'preact';
import { day } from '../../board/board';
import type { AskedFigure } from '../../board/places';
import { endFigures, type Figure, sunFigure, type Unit } from '../../core';
import { asInput, asInputFigure, inMetric, shownFigure, shownText } from '../../parts/digits';
import { NO_BREAK_SPACE, utcDate, zulu } from '../../parts/format';
import { Sheet } from '../../parts/sheet/Sheet';
import styles from './WhySheet.module.css';
import { words } from './words';

interface WhyProps {
  readonly title: string;
  readonly figure: AskedFigure;
  readonly onClose: () => void;
}

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
    const place = day.settled().field?.place;
    return place === undefined ? null : sunFigure(asked.sun, place);
  }
  if (!('end' in asked)) return asked;
  return endFigures(asked.end, asked.answer, day.settled())?.[asked.name] ?? null;
}

function Reason({ figure }: { figure: Figure<Unit> }) {
  if (figure.value === null) return <p class={styles.value}>{words.causes[figure.because]}</p>;
  const { formula, inputs, source } = figure.why;
  const metric = inMetric(figure);
  return (
    <>
      <p class={styles.value}>
        {shownFigure(figure)}
        {metric !== null && ` (${shownText(metric)})`}
      </p>
      <dl class={styles.why}>
        <dt>{words.formula}</dt>
        <dd>{words.formulas[formula]}</dd>
        <dt>{words.inputs}</dt>
        <dd>
          <ul>
            {Object.entries(inputs).map(([name, input]) => (
              <li key={name}>
                <b>{written(name, input, figure)}</b> {words.inputNames[name]}
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

type Known = Extract<Figure<Unit>, { readonly unit: Unit }>;

/** An input, with as many digits as it is known to. */
function written(name: string, input: Figure<Unit> | number | string, of: Known): string {
  if (typeof input === 'number') return shownText(asInput(name, input, of));
  if (typeof input === 'string') return name === 'time' ? moment(Date.parse(input)) : input;
  return input.value === null ? words.noValue : shownText(asInputFigure(input, of.why.formula));
}

/** The sun moves a degree in four minutes: seconds would say nothing. */
const moment = (ms: number): string => `${utcDate(ms)}${NO_BREAK_SPACE}${zulu(ms)}`;
