/** The runways on the plan: to scale, with their numbers where they are painted. */

import type { JSX } from 'preact';
import type { Strip, StripEnd } from '../../core';
import { boxAround, type LabelBox } from './labels';
import styles from './plan.module.css';
import { type GroundPoint, toPixel } from './projection';
import { pathOf, type View } from './shapes';

/** No narrower than its number, px, unless that stands outside. */
const NARROWEST_PX = { roomy: 24, tight: 12 };

/** From the threshold to the middle of the number, px. */
const NUMBER_PX = 20;

/** From the end of the pavement outwards to the middle of a number outside, px. */
const OUTSIDE_PX = 14;

/**
 * Whether the numbers stand outside: those of parallels have a letter too, and are wider than their
 * runways until these are seen from close by.
 */
const isTight = (strips: readonly Strip[], { sight }: View): boolean =>
  strips.some(
    ({ ends: [{ designator }], widthM }) =>
      designator.length > 2 && widthM * sight.pxPerM < LETTERED_PX,
  );

/** The width of a number with a letter, px. */
const LETTERED_PX = 36;

/** Where an end's number is painted. */
const numberAt = (end: StripEnd, tight: boolean, { sight }: View): GroundPoint =>
  along(end, tight ? -OUTSIDE_PX / sight.pxPerM : end.displacedM + NUMBER_PX / sight.pxPerM);

const along = ({ at, headingTrueDeg }: StripEnd, metres: number, rightM = 0): GroundPoint => {
  const rad = (headingTrueDeg * Math.PI) / 180;
  return {
    eastM: at.eastM + metres * Math.sin(rad) + rightM * Math.cos(rad),
    northM: at.northM + metres * Math.cos(rad) - rightM * Math.sin(rad),
  };
};

/** Where the runways' numbers are painted: a box around each. */
export function numberBoxes(strips: readonly Strip[], view: View): readonly LabelBox[] {
  const tight = isTight(strips, view);
  return strips.flatMap(({ ends }) =>
    ends.map((end) => {
      const middle = toPixel(numberAt(end, tight, view), view.sight, view.size);
      return boxAround(middle, 2 * NUMBER_PX, 2 * NUMBER_PX);
    }),
  );
}

/** Whether a point lies on a runway as it is drawn. */
export function onRunwayAt(strips: readonly Strip[], view: View): (point: GroundPoint) => boolean {
  const tight = isTight(strips, view);
  return ({ eastM, northM }) =>
    strips.some((strip) => {
      const { at, headingTrueDeg } = strip.ends[0];
      const rad = (headingTrueDeg * Math.PI) / 180;
      const [e, n] = [eastM - at.eastM, northM - at.northM];
      const alongM = e * Math.sin(rad) + n * Math.cos(rad);
      const rightM = e * Math.cos(rad) - n * Math.sin(rad);
      return (
        Math.abs(rightM) < widthM(strip, tight, view) / 2 && alongM > 0 && alongM < strip.lengthM
      );
    });
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
  const tight = isTight(strips, view);
  const outlines = ordered.map((strip) => `${outlineOf(strip, tight, view)}`);
  return (
    <>
      <path class={styles.edge} d={outlines.join('')} />
      <path class={styles.ground} d={outlines.join('')} />
      <path
        class={styles.solid}
        d={ordered
          .filter(isUsed)
          .map((s) => outlineOf(s, tight, view))
          .join('')}
      />
      {ordered.map((strip) => (
        <Marks key={strip.name} strip={strip} solid={isUsed(strip)} tight={tight} view={view} />
      ))}
    </>
  );
}

const widthM = (strip: Strip, tight: boolean, { sight }: View): number =>
  Math.max(strip.widthM, NARROWEST_PX[tight ? 'tight' : 'roomy'] / sight.pxPerM);

function outlineOf(strip: Strip, tight: boolean, view: View): string {
  const [one] = strip.ends;
  const half = widthM(strip, tight, view) / 2;
  const corners = [
    along(one, 0, -half),
    along(one, strip.lengthM, -half),
    along(one, strip.lengthM, half),
    along(one, 0, half),
  ];
  return `${pathOf(corners, view)}Z`;
}

interface MarksProps {
  readonly strip: Strip;
  readonly solid: boolean;
  readonly tight: boolean;
  readonly view: View;
}

function Marks({ strip, solid, tight, view }: MarksProps) {
  const { sight, size } = view;
  const half = (widthM(strip, tight, view) / 2) * 0.8;
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
        const { x, y } = toPixel(numberAt(end, tight, view), sight, size);
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
                class={tight ? styles.numberOutside : styles.number}
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
