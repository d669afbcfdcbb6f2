/** The envelope of the centre of gravity over arm and mass, and what else is drawn into it. */

import type { ComponentChildren, JSX } from 'preact';
import type { Balance, Envelope } from '../../core';
import { decimal, wholeNumber } from '../format';
import { inShown } from '../units';
import styles from './Envelope.module.css';
import { frameOf, type PlotFrame } from './plotFrame';

interface EnvelopeDrawingProps {
  readonly envelope: Envelope;
  /** Other points that must lie within the drawing. */
  readonly others: readonly Balance[];
  readonly label: string;
  /** What is drawn over it: given where a balance lies. */
  readonly children: (
    at: (balance: Balance) => readonly [x: number, y: number],
  ) => ComponentChildren;
}

/** An arm, and its mass in the unit the plot is in, so that its lines stand at round numbers. */
const shown = ([armM, massKg]: Balance): Balance => [armM, inShown(massKg, 'kg')];

/** The drawing. There is at least one point. */
export function EnvelopeDrawing({
  envelope,
  others,
  label,
  children,
}: EnvelopeDrawingProps): JSX.Element {
  const frame = frameOf([...envelope, ...others].map(shown));
  const at = (balance: Balance) => {
    const [armM, mass] = shown(balance);
    return [frame.x(armM), frame.y(mass)] as const;
  };
  return (
    <svg
      class={styles.plot}
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      role="img"
      aria-label={label}
    >
      <Axes frame={frame} />
      <polygon
        class={styles.envelope}
        points={envelope.map((one) => at(one).join(',')).join(' ')}
      />
      {children(at)}
    </svg>
  );
}

function Axes({ frame }: { frame: PlotFrame }) {
  const { left, top, right, bottom, arms, masses } = frame;
  return (
    <>
      {masses.map((mass) => (
        <g key={mass}>
          <line class={styles.grid} x1={left} x2={right} y1={frame.y(mass)} y2={frame.y(mass)} />
          <text class={styles.tick} x={left - 8} y={frame.y(mass) + 6} text-anchor="end">
            {wholeNumber(mass)}
          </text>
        </g>
      ))}
      {arms.map((m) => (
        <g key={m}>
          <line class={styles.grid} x1={frame.x(m)} x2={frame.x(m)} y1={top} y2={bottom} />
          <text class={styles.tick} x={frame.x(m)} y={bottom + 24} text-anchor="middle">
            {decimal(m, frame.armDecimals)}
          </text>
        </g>
      ))}
    </>
  );
}
