/** In the plan's corners: north, the wind, and the scale. */

import type { JSX } from 'preact';
import { fromShown, length } from '../units';
import type { PlanWords } from './Plan';
import styles from './plan.module.css';
import { type Pixel, type Size, scaleM } from './projection';

/** The longest scale bar, px. */
const SCALE_PX = 110;

interface CornerProps {
  /** Where north and wind have room. */
  readonly at: Pixel;
  readonly size: Size;
  readonly pxPerM: number;
  readonly upDeg: number;
  readonly windFromDeg: number | null;
  readonly words: PlanWords;
}

/** North and wind where they have room, the scale at the lower left. */
export function PlanCorner({
  at,
  size,
  pxPerM,
  upDeg,
  windFromDeg,
  words,
}: CornerProps): JSX.Element {
  // A round number of the unit that lengths are shown in.
  const unitM = fromShown(1, 'm');
  const scaleLengthM = scaleM(pxPerM * unitM, SCALE_PX) * unitM;
  const y = size.height - 8;
  return (
    <>
      <g transform={`translate(${at.x + 78} ${at.y + 42})`}>
        <g transform={`rotate(${-upDeg})`}>
          <path class={styles.north} d="M0 -24L-9 2H9Z" />
          <text class={styles.letter} y={22}>
            {words.north}
          </text>
        </g>
      </g>
      {windFromDeg !== null && (
        <g transform={`translate(${at.x + 32} ${at.y + 42}) rotate(${windFromDeg - upDeg + 180})`}>
          <path class={styles.wind} d="M-4 26V-6H-11L0 -28L11 -6H4V26Z" />
        </g>
      )}
      <path class={styles.scale} d={`M8 ${y - 8}V${y}H${8 + scaleLengthM * pxPerM}V${y - 8}`} />
      <text class={styles.scaleText} x={12} y={y - 7}>
        {length(scaleLengthM)}
      </text>
    </>
  );
}
