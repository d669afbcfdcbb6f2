/** Which corner of the plan is free for north and the wind. */

import type { LabelBox } from './labels';
import type { PlanProps } from './Plan';
import { type GroundPoint, type Pixel, projection, type Size } from './projection';
import type { View } from './shapes';

/** The size of north and wind together, px. */
const CORNER: Size = { width: 108, height: 90 };

/** The keys over the plan: at the upper left and the lower right, px. */
const KEY: Size = { width: 196, height: 76 };

const LOWER_PX = 60;

/** Where the keys over the plan lie. */
export const keysOn = (size: Size): readonly LabelBox[] => [
  { x: 0, y: 0, ...KEY },
  { x: size.width - KEY.width, y: size.height - LOWER_PX, width: KEY.width, height: LOWER_PX },
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
  const pixels = line.map(projection(sight, size));
  return pixels.slice(1).flatMap((to, index) => {
    const from = pixels[index] ?? to;
    const steps = Math.min(400, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / STEP_PX)) || 1;
    return Array.from({ length: steps + 1 }, (_, i) => ({
      x: from.x + ((to.x - from.x) * i) / steps,
      y: from.y + ((to.y - from.y) * i) / steps,
    }));
  });
}

/** How far apart the places are that are tried where every corner is taken, px. */
const TRY_PX = 24;

/**
 * Where north and the wind cover least: a runway's number never where anywhere is free of one, then
 * as little as can be of the route and the runways. The corners come first; in a tie, the upper
 * right.
 */
export function freeCorner(
  busy: readonly Pixel[],
  numbers: readonly LabelBox[],
  size: Size,
): LabelBox {
  const { width, height } = size;
  const [right, bottom] = [width - CORNER.width, height - CORNER.height];
  const corners: readonly Pixel[] = [
    { x: right, y: 0 },
    { x: 0, y: KEY.height },
    { x: right, y: bottom - LOWER_PX },
    { x: 0, y: bottom - 36 },
    { x: right / 2, y: 0 },
    { x: right / 2, y: bottom },
  ];
  const cost = (box: LabelBox) => {
    const isInside = ({ x, y }: Pixel, by: number) =>
      x > box.x - by && x < box.x + box.width + by && y > box.y - by && y < box.y + box.height + by;
    const covered = numbers.filter((number) =>
      isInside(
        { x: number.x + number.width / 2, y: number.y + number.height / 2 },
        number.width / 2,
      ),
    );
    return covered.length * 10_000 + busy.filter((pixel) => isInside(pixel, 12)).length;
  };
  const best = (places: readonly Pixel[]) =>
    places
      .map((at) => ({ ...at, ...CORNER }))
      .map((box) => ({ box, cost: cost(box) }))
      .reduce((least, one) => (one.cost < least.cost ? one : least));
  const corner = best(corners);
  if (corner.cost < 10_000) return corner.box;
  const keys = keysOn(size);
  const elsewhere: Pixel[] = [];
  for (let y = 0; y <= bottom; y += TRY_PX) {
    for (let x = right; x >= 0; x -= TRY_PX) {
      const isUnderKey = keys.some(
        (key) =>
          x < key.x + key.width &&
          key.x < x + CORNER.width &&
          y < key.y + key.height &&
          key.y < y + CORNER.height,
      );
      if (!isUnderKey) elsewhere.push({ x, y });
    }
  }
  const other = elsewhere.length === 0 ? corner : best(elsewhere);
  return (other.cost < corner.cost ? other : corner).box;
}
