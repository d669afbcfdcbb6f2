/** The runways inside the dial, with their numbers where they are painted on the ground. */

import type { DialEnd } from './Dial';
import styles from './dial.module.css';
import { outline } from './plane';
import { type DrawnRunway, isClear, PAINTED, type Painted, paintedLength } from './strips';

/** A cross, as closed pavement is marked. ICAO Annex 14, vol. I, 7.1. */
const CROSS = 'M-6 -6L6 6M6 -6L-6 6';

/** From a number to what follows it along the strip. */
const CLEARANCE = 6;

/** Puts what is drawn upright around 0, 0 where a number is painted, oriented for its reader. */
const turned = ({ x, y, turnDeg }: Painted): string =>
  `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turnDeg})`;

/**
 * The line from one number to the other, as the reader of the first sees it; an arrow if it is in
 * use.
 */
function centreline(from: Painted, to: Painted, used: boolean): string {
  const start = -paintedLength(from.designator) / 2 - CLEARANCE;
  const stop =
    paintedLength(to.designator) / 2 + CLEARANCE - Math.hypot(to.x - from.x, to.y - from.y);
  if (start - stop < 2 * CLEARANCE) return '';
  return `M0 ${start}V${stop}${used ? 'm-6 8l6 -8l6 8' : ''}`;
}

interface NumberProps {
  readonly number: Painted;
  readonly onSolid: boolean;
  readonly isClosed: boolean;
  /** It lies under the solid strip. */
  readonly isCovered: boolean;
}

/** A painted number, crossed out if its end is closed. */
function PaintedNumber({ number, onSolid, isClosed, isCovered }: NumberProps) {
  const half = paintedLength(number.designator) / 2;
  const letter = number.designator.slice(2);
  return (
    <g transform={turned(number)} visibility={isCovered ? 'hidden' : 'visible'}>
      <text
        class={onSolid ? styles.paintedSolid : styles.painted}
        y={PAINTED.size / 3 + PAINTED.line / 2 - half}
      >
        {number.designator.slice(0, 2)}
        {letter !== '' && (
          <tspan x={0} dy={PAINTED.line}>
            {letter}
          </tspan>
        )}
      </text>
      {isClosed && (
        <path
          class={onSolid ? styles.closedSolid : styles.closed}
          d={CROSS}
          transform={`translate(0 ${-half - 10})`}
        />
      )}
    </g>
  );
}

/** All strips; the one in use, or else the best, is solid. */
export function Runways({
  strips,
  ends,
}: {
  strips: readonly DrawnRunway[];
  ends: readonly DialEnd[];
}) {
  const used = ends.find((end) => end.inUse);
  const best = ends.find((end) => end.state === 'best');
  const stripOf = (end: DialEnd | undefined): DrawnRunway | undefined =>
    strips.find((strip) => strip.ends.some(({ designator }) => designator === end?.designator));
  const bestStrip = stripOf(best);
  const solid = stripOf(used) ?? bestStrip;
  const plain = strips
    .filter((strip) => strip !== solid)
    .map(({ corners }) => outline(corners))
    .join('');
  const around = solid ? outline(solid.corners) : '';
  const closed = new Set(
    ends.filter(({ state }) => state === 'closed').map((end) => end.designator),
  );

  const [from, to] =
    solid?.painted.toSorted(
      (a, b) =>
        Number(b.designator === used?.designator) - Number(a.designator === used?.designator),
    ) ?? [];
  return (
    <>
      {/* All edges first, then all surfaces, so that crossing strips open into each other. */}
      <path class={styles.edges} d={plain} />
      <path
        class={styles.bestEdge}
        d={bestStrip && bestStrip !== solid ? outline(bestStrip.corners) : ''}
      />
      <path class={styles.ground} d={plain + around} />
      <path class={styles.solidStrip} d={around} />
      <path
        class={used ? styles.usedLine : styles.centreline}
        transform={from && turned(from)}
        d={from && to ? centreline(from, to, used !== undefined) : ''}
      />
      {strips.map((strip) =>
        strip.painted.map((number) => (
          <PaintedNumber
            key={number.designator}
            number={number}
            onSolid={strip === solid}
            isClosed={closed.has(number.designator)}
            isCovered={solid !== undefined && strip !== solid && !isClear(number, solid)}
          />
        )),
      )}
    </>
  );
}
