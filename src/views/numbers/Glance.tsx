/** What matters at a glance: a few numbers, huge. */

import type { JSX } from 'preact';
import { ask } from '../../board/places';
import type { Figure, Unit } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { asFigure, shownDigits } from '../../parts/digits';
import { NO_BREAK_SPACE } from '../../parts/format';
import styles from './Numbers.module.css';
import { words } from './words';

interface Cell {
  readonly name: string;
  readonly figure: Figure<Unit>;
  readonly note?: string;
  /** What the note says is a figure too. */
  readonly noteFigure?: Figure<Unit>;
  readonly noteName?: string;
}

/** The cells, side by side as many as fit. */
export function Glance({ cells }: { cells: readonly Cell[] }): JSX.Element {
  return (
    <dl class={styles.glance}>
      {cells.map(({ name, figure, note, noteFigure, noteName = name }) => (
        <div key={name} class={styles.cell}>
          <dt>{name}</dt>
          <dd>
            {figure.value === null ? (
              <span class={styles.absent}>{words.because[figure.because] ?? words.notKnown}</span>
            ) : (
              <Asked className={styles.huge} hint={words.ask} onAsk={() => ask(name, figure)}>
                {shownDigits(asFigure(figure))}
                <small class={styles.unit}>{`${NO_BREAK_SPACE}${asFigure(figure).unit}`}</small>
              </Asked>
            )}
            {note &&
              (noteFigure === undefined ? (
                <span class={styles.note}>{note}</span>
              ) : (
                <Asked
                  className={`${styles.note} ${styles.askedNote}`}
                  hint={words.ask}
                  onAsk={() => ask(noteName, noteFigure)}
                >
                  {note}
                </Asked>
              ))}
          </dd>
        </div>
      ))}
    </dl>
  );
}
