/** Lengths to one scale, as they lie along the runway from where its length counts. */

import type { ComponentChildren, JSX } from 'preact';
import { inShown, unitFor } from '../units';
import styles from './LengthBars.module.css';

/** A length compared with what is available. */
export interface LengthBar {
  readonly name: string;
  /** Where it begins and ends, m: planned. */
  readonly fromM: number;
  readonly toM: number;
  /** Where it is expected to end, m; null if unknown. */
  readonly expectedToM: number | null;
  /** What is available, m, and how it is written. */
  readonly availableM: number;
  readonly available: ComponentChildren;
  /** What the bar shows, in words. */
  readonly label: string;
}

const WIDTH = 1000;
const HEIGHT = 30;

/** The spacing of the marks, in the unit they are in: the smallest that leaves room for their digits. */
const STEPS = [50, 100, 250, 500, 1000, 2000, 5000] as const;

/** Feet have a digit more, so fewer of them fit beside each other on a phone. */
const mostMarks = (): number => (unitFor('m') === 'm' ? 10 : 6);

const stepFor = (most: number): number =>
  STEPS.find((step) => most / step <= mostMarks()) ?? 10_000;

/** Bars below each other to one scale: planned solid, expected a notch, available a post. */
export function LengthBars({ bars }: { bars: readonly LengthBar[] }): JSX.Element {
  const mostM = Math.max(1, ...bars.flatMap(({ toM, availableM }) => [toM, availableM])) * 1.02;
  const x = (m: number) => (Math.max(0, m) / mostM) * WIDTH;
  const most = inShown(mostM, 'm');
  const step = stepFor(most);
  const marks = Array.from({ length: Math.floor(most / step) + 1 }, (_, i) => i * step);
  return (
    <div class={styles.bars}>
      {bars.map((bar) => (
        <div key={bar.name} class={styles.row}>
          <p class={styles.name}>
            <span>{bar.name}</span>
            <span class={styles.available}>{bar.available}</span>
          </p>
          <svg
            class={styles.bar}
            viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
            preserveAspectRatio="none"
            role="img"
            aria-label={bar.label}
          >
            <rect class={styles.room} x="0" y="6" width={x(bar.availableM)} height="18" />
            <rect
              class={bar.toM > bar.availableM ? styles.over : styles.planned}
              x={x(bar.fromM)}
              y="6"
              width={Math.max(0, x(bar.toM) - x(bar.fromM))}
              height="18"
            />
            {bar.expectedToM !== null && (
              <rect
                class={styles.expected}
                x={x(bar.expectedToM) - 3}
                y="6"
                width="6"
                height="18"
              />
            )}
            <rect class={styles.post} x={x(bar.availableM) - 3} y="0" width="6" height={HEIGHT} />
          </svg>
        </div>
      ))}
      <div class={styles.scale} aria-hidden="true">
        {marks.map((mark) => (
          <span key={mark} style={{ left: `${(100 * mark) / most}%` }}>
            {mark}
          </span>
        ))}
      </div>
    </div>
  );
}
