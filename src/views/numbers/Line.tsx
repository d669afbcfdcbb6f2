/** A named number, or two of them: each opens its reason, or says why there is none. */

import type { ComponentChildren, JSX } from 'preact';
import { ask } from '../../board/places';
import type { Figure, Unit } from '../../core';
import { Asked } from '../../parts/asked/Asked';
import { shownFigure } from '../../parts/digits';
import styles from './Numbers.module.css';
import { words } from './words';

/** A group of numbers under a title. */
export function Group({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <section>
      <h3 class={styles.group}>{title}</h3>
      <dl>{children}</dl>
    </section>
  );
}

/** Which way a limit is rounded. */
type Round = 'down' | 'up';

const ROUND = { down: Math.floor, up: Math.ceil };

interface ValueProps {
  readonly name: string;
  readonly figure: Figure<Unit>;
  /**
   * A limit not to exceed, which rounding must not raise; or one to reach, which it must not lower.
   */
  readonly round?: Round | undefined;
}

/** A number that opens its reason, or the words for why there is none. */
export function Value({ name, figure, round }: ValueProps): JSX.Element {
  return figure.value === null ? (
    <span class={styles.absent}>{words.because[figure.because] ?? words.notKnown}</span>
  ) : (
    <Asked hint={words.ask} onAsk={() => ask(name, figure)}>
      {shownFigure(round === undefined ? figure : { ...figure, value: ROUND[round](figure.value) })}
    </Asked>
  );
}

/** A named number. */
export function Line({ name, figure, round }: ValueProps): JSX.Element {
  return (
    <div class={styles.line}>
      <dt>{name}</dt>
      <dd>
        <Value name={name} figure={figure} round={round} />
      </dd>
    </div>
  );
}

interface PairProps {
  readonly name: string;
  readonly planned: Figure<Unit>;
  readonly expected: Figure<Unit>;
  readonly round?: Round;
}

export function Pair({ name, planned, expected, round }: PairProps): JSX.Element {
  const [p, e] = [`${name}, ${words.planned}`, `${name}, ${words.expected}`];
  return (
    <div class={styles.pair}>
      <dt>{name}</dt>
      <dd>
        <Value name={p} figure={planned} round={round} />
      </dd>
      <dd>
        <Value name={e} figure={expected} round={round} />
      </dd>
    </div>
  );
}

/** The headings of the two columns. */
export function PairHead(): JSX.Element {
  return (
    <div class={styles.pairHead} aria-hidden="true">
      <span />
      <span>{words.planned}</span>
      <span>{words.expected}</span>
    </div>
  );
}
