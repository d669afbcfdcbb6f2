/** The runways inside the dial, with their numbers where they are painted on the ground. */

import type { DialEnd } from './Dial';
import styles from './dial.module.css';
import { outline } from './plane';
import { isClear, PAINTED, type Painted, paintedLength, type Strip } from './strips';

/** A cross, as closed pavement is marked. ICAO Annex 14, vol. I, 7.1. */
const CROSS = 'M-6 -6L6 6M6 -6L-6 6';

/** From a number to what follows it along the strip. */
const CLEARANCE = 6;

/** Puts what is drawn around 0, 0, upright, where a number is painted and as its reader sees it. */
const turned = ({ x, y, turnDeg }: Painted): string =>
  `translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turnDeg})`;

/** The line from one number to the other, seen by the reader of the first; an arrow if it is in use. */
function centreline(from: Painted, to: Painted, used: boolean): string {
  const start = -paintedLength(from.designator) / 2 - CLEARANCE;
  const stop =
    paintedLength(to.designator) / 2 + CLEARANCE - Math.hypot(to.x - from.x, to.y - from.y);
  if (start - stop < 2 * CLEARANCE) return '';
  return `M0 ${start}V${stop}${used ? 'm-6 8l6 -8l6 8' : ''}`;
}

/** All strips; the one in use, or else the best, is solid. */
export function Runways({ strips, ends }: { strips: readonly Strip[]; ends: readonly DialEnd[] }) {
  const used = ends.find((end) => end.inUse);
  const best = ends.find((end) => end.state === 'best');
  const stripOf = (end: DialEnd | undefined): Strip | undefined =>
    strips.find((strip) => strip.ends.some(({ designator }) => designator === end?.designator));
  const bestStrip = stripOf(best);
  const solid = stripOf(used) ?? bestStrip;
  const others = strips.filter((strip) => strip !== solid);
  const plain = others.map((strip) => outline(strip.corners)).join('');

  const paint = (number: Painted) => {
    const { designator } = number;
    const half = paintedLength(designator) / 2;
    const isClosed = ends.some((end) => end.designator === designator && end.state === 'closed');
    return (
      <g key={designator} transform={turned(number)}>
        <text class={styles.painted} y={PAINTED.size / 3 + PAINTED.line / 2 - half}>
          {designator.slice(0, 2)}
          <tspan x={0} dy={PAINTED.line}>
            {designator.slice(2)}
          </tspan>
        </text>
        {isClosed && (
          <path class={styles.closed} d={CROSS} transform={`translate(0 ${-half - 10})`} />
        )}
      </g>
    );
  };

  const [from, to] =
    solid?.painted.toSorted(
      (a, b) =>
        Number(b.designator === used?.designator) - Number(a.designator === used?.designator),
    ) ?? [];
  return (
    <>
      {/* Every edge first, then every surface, so that strips that cross are open to each other. */}
      <path class={styles.edges} d={plain} />
      {bestStrip && bestStrip !== solid && (
        <path class={styles.bestEdge} d={outline(bestStrip.corners)} />
      )}
      <path class={styles.ground} d={plain} />
      {others.flatMap((strip) =>
        strip.painted.filter((number) => !solid || isClear(number, solid)).map(paint),
      )}
      {solid && (
        <g class={styles.solid}>
          <path class={styles.ground} d={outline(solid.corners)} />
          <path class={styles.solidStrip} d={outline(solid.corners)} />
          {from && to && (
            <path
              class={used ? styles.usedLine : styles.centreline}
              transform={turned(from)}
              d={centreline(from, to, used !== undefined)}
            />
          )}
          {solid.painted.map(paint)}
        </g>
      )}
    </>
  );
}
