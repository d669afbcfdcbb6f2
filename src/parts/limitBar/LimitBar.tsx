/** A bar against a limit: the steady part solid, what gusts add hatched, the limit as a mark. */

import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import styles from './LimitBar.module.css';

interface LimitBarProps {
  readonly steady: number;
  readonly worst: number;
  readonly limit: number;
  /** What it shows, in words. */
  readonly label: string;
}

const WIDTH = 300;
const HEIGHT = 16;

/** How far along the bar the limit stands, leaving room beyond it. */
const LIMIT_AT = 0.75;

export function LimitBar({ steady, worst, limit, label }: LimitBarProps): JSX.Element {
  const hatch = useId();
  const x = (value: number) => Math.min(1, (value / limit) * LIMIT_AT) * WIDTH;
  return (
    <svg
      class={styles.bar}
      viewBox={`0 0 ${WIDTH} ${HEIGHT + 8}`}
      preserveAspectRatio="none"
      role="img"
      aria-label={label}
    >
      <pattern
        id={hatch}
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <rect class={styles.paper} width="7" height="7" />
        <rect class={styles.ink} width="3.5" height="7" />
      </pattern>
      <rect class={styles.room} y="4" width={WIDTH} height={HEIGHT} />
      <rect fill={`url(#${hatch})`} y="4" width={x(worst)} height={HEIGHT} />
      <rect class={styles.ink} y="4" width={x(steady)} height={HEIGHT} />
      <rect class={styles.limit} x={LIMIT_AT * WIDTH - 2} y="0" width="4" height={HEIGHT + 8} />
    </svg>
  );
}
