/** The words the plan would like to carry, most important first. */

import { NO_LETTER, type TaxiEdge } from '../../core';
import { type Ground, groundAt } from './ground';
import { LABEL_PX, type Wanted } from './labels';
import type { PlanProps } from './Plan';
import { type GroundPoint, type Pixel, projection, type Size } from './projection';
import { onRunwayAt } from './Strips';
import type { View } from './shapes';

/** Around a point, px: below, above, right, left, and at the corners. */
const AROUND: readonly (readonly [number, number])[] = [
  [0, 26],
  [0, -26],
  [1, 0],
  [-1, 0],
  [1, 22],
  [-1, 22],
  [1, -22],
  [-1, -22],
  [0, 44],
  [0, -44],
  [-1, 46],
  [1, 46],
  [-1, -62],
  [1, -62],
];

/** Half the width of a word of so many letters plus its gap, px. */
const asideOf = (text: string) => text.length * 5.5 + 18;

const around = ({ x, y }: Pixel, text: string): readonly Pixel[] =>
  AROUND.map(([side, down]) => ({ x: x + side * asideOf(text), y: y + down }));

const far = (a: Pixel, b: Pixel): number => Math.hypot(a.x - b.x, a.y - b.y);

/** Beyond the edge of the drawing by this much, px, a point's name no longer shows. */
const BEYOND_PX = 80;

/**
 * All words, in the order in which they get their places: what must not be missed, the way's
 * beginning and end, the letters of taxiways (those of the route and the longest first), holding
 * points (those of the end in use first), stands. Stands that lie closer together than a word is
 * high go without.
 */
export function wordsOf(
  props: PlanProps,
  ground: Ground,
  signs: readonly Sign[],
  { sight, size }: View,
): readonly Wanted[] {
  const at = projection(sight, size);
  const { from, to, using, words, crossings } = props;
  const ends = new Set([from, to]);
  const standsHaveRoom = ground.standsApartM * sight.pxPerM >= LABEL_PX.stand;
  const points = ground.named
    .map((node) => ({ node, point: at(groundAt(node)) }))
    .filter(({ point }) => isNear(point, size));
  const isCloser = nearestOf(points.map(({ point }) => point));
  const isOnRunway = onRunwayAt(props.strips, { sight, size });
  const wordAt = ({ node, point }: (typeof points)[number]): readonly Wanted[] => {
    const { id, kind, name } = node;
    if (name === undefined) return [];
    const isEnd = ends.has(id);
    if (kind === 'stand' && !isEnd && !standsHaveRoom) return [];
    const short = kind === 'stand' ? name.replace(/^stand\s+/i, '') : name;
    const long = kind === 'stand' ? name : words.hold(name);
    const text = isEnd ? long : short;
    const spots = around(point, text);
    // Nearer to another point, it would be read as that one's name. The start and end of the route
    // must be named, with their full names.
    const own = spots.filter((spot) => !isCloser(spot, point));
    return isEnd
      ? [{ key: id, text, kind: 'place', at: [...own, ...spots] }]
      : [{ key: id, text, kind: 'stand', at: own }];
  };
  const named = (of: (node: Ground['named'][number]) => boolean) =>
    points.filter(({ node }) => of(node)).flatMap(wordAt);
  const warnings = crossings.map(({ runway, at: where }, index): Wanted => {
    const text = words.ahead(runway);
    const { x, y } = at(where);
    const sides = [40, -40, 62, -62].map((down) => ({ x, y: y + down }));
    return { key: `x${index}`, text, kind: 'warning', at: [...sides, ...around({ x, y }, text)] };
  });
  const hot = props.hotSpots.map((one, index): Wanted => {
    const { name } = one;
    return { key: `h${index}`, text: name, kind: 'warning', at: around(at(groundAt(one)), name) };
  });
  const isEnd = ({ id }: Ground['named'][number]) => ends.has(id);
  const isUsed = (node: Ground['named'][number]) =>
    node.kind === 'hold' && using !== null && (node.ends?.includes(using) ?? false);
  return [
    ...warnings,
    ...named(isEnd),
    ...hot,
    ...signs.map(({ name, at: spots }): Wanted => {
      // On a runway, a taxiway's letter would be read as something of the runway's.
      const [on, off] = [spots.filter(isOnRunway), spots.filter((spot) => !isOnRunway(spot))];
      return { key: `t${name}`, text: name, kind: 'sign', at: [...off, ...on].map(at) };
    }),
    ...named((node) => !isEnd(node) && isUsed(node)),
    ...named((node) => !isEnd(node) && !isUsed(node) && node.kind === 'hold'),
    ...named((node) => !isEnd(node) && node.kind === 'stand'),
  ];
}

const isNear = ({ x, y }: Pixel, { width, height }: Size): boolean =>
  x > -BEYOND_PX && y > -BEYOND_PX && x < width + BEYOND_PX && y < height + BEYOND_PX;

/** The side of the squares in which points are looked up, px. */
const CELL_PX = 60;

/** Whether any of the points lies nearer to a spot than one of them does. */
function nearestOf(points: readonly Pixel[]): (spot: Pixel, than: Pixel) => boolean {
  const cells = new Map<string, Pixel[]>();
  for (const point of points) {
    const key = `${Math.floor(point.x / CELL_PX)} ${Math.floor(point.y / CELL_PX)}`;
    const inCell = cells.get(key);
    if (inCell) inCell.push(point);
    else cells.set(key, [point]);
  }
  return (spot, than) => {
    const reach = far(spot, than);
    const span = (middle: number) => [
      Math.floor((middle - reach) / CELL_PX),
      Math.floor((middle + reach) / CELL_PX),
    ];
    const [[left = 0, right = 0], [top = 0, bottom = 0]] = [span(spot.x), span(spot.y)];
    for (let column = left; column <= right; column++) {
      for (let row = top; row <= bottom; row++) {
        if (cells.get(`${column} ${row}`)?.some((other) => far(spot, other) < reach)) return true;
      }
    }
    return false;
  };
}

/** A taxiway's letter and where it may stand, best first. */
export interface Sign {
  readonly name: string;
  readonly at: readonly GroundPoint[];
}

/** A sign for each taxiway: on the route, else on its longest stretch. */
export function signsOf(
  edges: readonly TaxiEdge[],
  byId: Ground['byId'],
  route: readonly GroundPoint[],
): readonly Sign[] {
  const onRoute = new Set(route.map(({ eastM, northM }) => `${eastM} ${northM}`));
  const stretches = new Map<string, { readonly at: GroundPoint; readonly weight: number }[]>();
  for (const edge of edges) {
    const hasLetter = edge.on === 'taxiway' && edge.name !== NO_LETTER;
    const found = hasLetter ? stretchOf(edge, byId) : null;
    if (found === null) continue;
    const [one, other] = found;
    const isTaken = found.every(({ eastM, northM }) => onRoute.has(`${eastM} ${northM}`));
    const lengthM = Math.hypot(one.eastM - other.eastM, one.northM - other.northM);
    const list = stretches.get(edge.name) ?? [];
    for (const share of [0.5, 0.3, 0.7]) {
      const at = {
        eastM: one.eastM + share * (other.eastM - one.eastM),
        northM: one.northM + share * (other.northM - one.northM),
      };
      list.push({ at, weight: lengthM * (isTaken ? 1000 : 1) });
    }
    stretches.set(edge.name, list);
  }
  return [...stretches]
    .map(([name, list]) => {
      const sorted = list.sort((a, b) => b.weight - a.weight);
      return { name, at: sorted.map(({ at }) => at), weight: sorted[0]?.weight ?? 0 };
    })
    .sort((a, b) => b.weight - a.weight);
}

function stretchOf(
  { from, to }: TaxiEdge,
  byId: Ground['byId'],
): readonly [GroundPoint, GroundPoint] | null {
  const [one, other] = [byId.get(from), byId.get(to)];
  return one && other ? [groundAt(one), groundAt(other)] : null;
}
