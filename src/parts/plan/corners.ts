/** Which corner of the plan is free for north and the wind. */

import type { LabelBox } from './labels';
import type { PlanProps } from './Plan';
import { type GroundPoint, type Pixel, type Size, toPixel } from './projection';
import type { View } from './shapes';

/** The size of north and wind together, px. */
const CORNER: Size = { width: 108, height: 90 };

/** The keys over the plan: at the upper left and the lower right, px. */
const KEY: Size = { width: 132, height: 60 };

/** Where the keys over the plan lie. */
export const keysOn = (size: Size): readonly LabelBox[] => [
  { x: 0, y: 0, ...KEY, width: 96 },
  { x: size.width - KEY.width, y: size.height - KEY.height, ...KEY },
];

/** Points along everything that should stay uncovered: the route and the runways. */
export const busyPixels = ({ route, strips }: PlanProps, view: View): readonly Pixel[] =>
  [route, ...strips.map(centreline)].flatMap((line) => alongLine(line, view));

/** Points along what is drawn too heavily for words on top: the route and the runway in use. */
export const solidPixels = ({ route, strips, using }: PlanProps, view: View): readonly Pixel[] =>
  [
    route,
    ...strips
      .filter(({ ends }) => ends.some(({ designator }) => designator === using))
      .map(centreline),
  ].flatMap((line) => alongLine(line, view));

const centreline = ({ ends }: PlanProps['strips'][number]): readonly GroundPoint[] =>
  ends.map(({ at }) => at);

/** The spacing of points along a line, px. */
const STEP_PX = 12;

function alongLine(line: readonly GroundPoint[], { sight, size }: View): readonly Pixel[] {
  return line.slice(1).flatMap((to, index) => {
    const from = line[index] ?? to;
    const [a, b] = [toPixel(from, sight, size), toPixel(to, sight, size)];
    const steps = Math.min(400, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / STEP_PX)) || 1;
    return Array.from({ length: steps + 1 }, (_, i) => ({
      x: a.x + ((b.x - a.x) * i) / steps,
      y: a.y + ((b.y - a.y) * i) / steps,
    }));
  });
}

/** The emptiest corner; in a tie, the upper right. */
export function freeCorner(busy: readonly Pixel[], { width, height }: Size): LabelBox {
  const right = width - CORNER.width;
  const corners: readonly LabelBox[] = [
    { x: right, y: 0, ...CORNER },
    { x: 0, y: KEY.height, ...CORNER },
    { x: right, y: height - KEY.height - CORNER.height, ...CORNER },
    { x: 0, y: height - 36 - CORNER.height, ...CORNER },
    { x: (width - CORNER.width) / 2, y: 0, ...CORNER },
    { x: (width - CORNER.width) / 2, y: height - CORNER.height, ...CORNER },
  ];
  const inside = (box: LabelBox) =>
    busy.filter(
      ({ x, y }) =>
        x > box.x - 12 &&
        x < box.x + box.width + 12 &&
        y > box.y - 12 &&
        y < box.y + box.height + 12,
    ).length;
  return corners.reduce((best, box) => (inside(box) < inside(best) ? box : best));
}
