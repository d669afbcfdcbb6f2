/** The runways on the plan: to scale, with their numbers where they are painted. */

import type { JSX } from 'preact';
import type { Strip, StripEnd } from '../../core';
import { boxAround, type LabelBox } from './labels';
import styles from './plan.module.css';
import { type GroundPoint, toPixel } from './projection';
import { pathOf, type View } from './shapes';

/** No narrower than its number, px. */
const NARROWEST_PX = 24;

/** From the threshold to the middle of the number, px. */
const NUMBER_PX = 20;

const along = ({ at, headingTrueDeg }: StripEnd, metres: number, rightM = 0): GroundPoint => {
  const rad = (headingTrueDeg * Math.PI) / 180;
  return {
    eastM: at.eastM + metres * Math.sin(rad) + rightM * Math.cos(rad),
    northM: at.northM + metres * Math.cos(rad) - rightM * Math.sin(rad),
  };
};

/** Where the runways' numbers are painted: a box around each. */
export function numberBoxes(strips: readonly Strip[], { sight, size }: View): readonly LabelBox[] {
  return strips.flatMap(({ ends }) =>
    ends.map((end) => {
      const middle = along(end, end.displacedM + NUMBER_PX / sight.pxPerM);
      return boxAround(toPixel(middle, sight, size), 2 * NUMBER_PX, 2 * NUMBER_PX);
    }),
  );
}

/** All runways; that of the end in use is solid. */
export function Strips({
  strips,
  using,
  view,
}: {
  readonly strips: readonly Strip[];
  readonly using: string | null;
  readonly view: View;
}): JSX.Element {
  const isUsed = ({ ends }: Strip) => ends.some(({ designator }) => designator === using);
  // All edges first, then all surfaces, so that crossing runways open into each other.
  const ordered = [...strips].sort((a, b) => Number(isUsed(a)) - Number(isUsed(b)));
  const outlines = ordered.map((strip) => `${outlineOf(strip, view)}`);
  return (
    <>
      <path class={styles.edge} d={outlines.join('')} />
      <path class={styles.ground} d={outlines.join('')} />
      <path
        class={styles.solid}
        d={ordered
          .filter(isUsed)
          .map((s) => outlineOf(s, view))
          .join('')}
      />
      {ordered.map((strip) => (
        <Marks key={strip.name} strip={strip} solid={isUsed(strip)} view={view} />
      ))}
    </>
  );
}

const widthM = (strip: Strip, { sight }: View): number =>
  Math.max(strip.widthM, NARROWEST_PX / sight.pxPerM);

function outlineOf(strip: Strip, view: View): string {
  const [one] = strip.ends;
  const half = widthM(strip, view) / 2;
  const corners = [
    along(one, 0, -half),
    along(one, strip.lengthM, -half),
    along(one, strip.lengthM, half),
    along(one, 0, half),
  ];
  return `${pathOf(corners, view)}Z`;
}

function Marks({ strip, solid, view }: { strip: Strip; solid: boolean; view: View }) {
  const { sight, size } = view;
  const half = (widthM(strip, view) / 2) * 0.8;
  const room = strip.lengthM * sight.pxPerM;
  const pxM = 1 / sight.pxPerM;
  const clear = 2.2 * NUMBER_PX * pxM;
  const [one, other] = strip.ends;
  const line = pathOf(
    [along(one, one.displacedM + clear), along(other, other.displacedM + clear)],
    view,
  );
  return (
    <g class={solid ? styles.onSolid : styles.onGround}>
      {room > 5 * NUMBER_PX && <path class={styles.centreline} d={line} />}
      {strip.ends.map((end) => {
        const { x, y } = toPixel(along(end, end.displacedM + NUMBER_PX * pxM), sight, size);
        const turn = end.headingTrueDeg - sight.upDeg;
        const isWhole =
          x > NUMBER_PX &&
          y > NUMBER_PX &&
          x < size.width - NUMBER_PX &&
          y < size.height - NUMBER_PX;
        const isDisplaced = end.displacedM * sight.pxPerM > 3;
        const threshold = pathOf(
          [along(end, end.displacedM, -half), along(end, end.displacedM, half)],
          view,
        );
        return (
          <g key={end.designator}>
            {isDisplaced && (
              <>
                <path class={styles.threshold} d={threshold} />
                <path class={styles.threshold} d={arrowOf(end, half, view)} />
              </>
            )}
            {isWhole && (
              <text
                class={styles.number}
                transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${turn.toFixed(1)})`}
                y={6}
              >
                {end.designator}
              </text>
            )}
          </g>
        );
      })}
    </g>
  );
}

/** An arrow to a displaced threshold. ICAO Annex 14, vol. I, 5.2.4.10. */
function arrowOf(end: StripEnd, halfM: number, view: View): string {
  const tip = along(end, end.displacedM * 0.9);
  const back = end.displacedM * 0.9 - halfM;
  return (
    pathOf([along(end, end.displacedM * 0.1), tip], view) +
    pathOf([along(end, back, -halfM * 0.7), tip, along(end, back, halfM * 0.7)], view)
  );
}
