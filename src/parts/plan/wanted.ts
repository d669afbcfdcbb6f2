/** The words the plan would like to carry, most important first. */

import type { TaxiEdge } from '../../core';
import type { Wanted } from './labels';
import { groundAt, type PlanProps } from './Plan';
import { type GroundPoint, type Pixel, toPixel } from './projection';
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

/** All words, in the order in which they get their places. */
export function wordsOf(props: PlanProps, { sight, size }: View): readonly Wanted[] {
  const at = (ground: GroundPoint) => toPixel(ground, sight, size);
  const { nodes, from, to, words, crossings } = props;
  const ends = new Set([from, to]);
  const points = nodes
    .filter(({ kind }) => kind === 'stand' || kind === 'hold')
    .map((node) => ({ node, point: at(groundAt(node)) }));
  const named = points.flatMap(({ node, point }): Wanted[] => {
    const { id, kind, name } = node;
    if (name === undefined) return [];
    const isEnd = ends.has(id);
    const short = kind === 'stand' ? name.replace(/^stand\s+/i, '') : name;
    const long = kind === 'stand' ? name : words.hold(name);
    const text = isEnd ? long : short;
    const spots = around(point, text);
    // Nearer to another point, it would be read as that one's name. The start and end of the route
    // must be named, with their full names.
    const own = spots.filter((spot) =>
      points.every((other) => far(spot, other.point) >= far(spot, point)),
    );
    return isEnd
      ? [{ key: id, text, kind: 'place', at: [...own, ...spots] }]
      : [{ key: id, text, kind: 'stand', at: own }];
  });
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
  return [
    ...warnings,
    ...named.filter(({ kind }) => kind === 'place'),
    ...hot,
    ...signsOf(props, at),
    ...named.filter(({ kind }) => kind === 'stand'),
  ];
}

/** A sign for each taxiway: on the route, else on its longest stretch. */
function signsOf(
  { nodes, edges, route }: PlanProps,
  at: (ground: GroundPoint) => Pixel,
): readonly Wanted[] {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const onRoute = new Set(route.map(({ eastM, northM }) => `${eastM} ${northM}`));
  const stretches = new Map<string, { readonly at: Pixel; readonly weight: number }[]>();
  for (const edge of edges.filter(({ on }) => on === 'taxiway')) {
    const found = stretchOf(edge, byId);
    if (found === null) continue;
    const [one, other] = found;
    const isTaken = found.every(({ eastM, northM }) => onRoute.has(`${eastM} ${northM}`));
    const lengthM = Math.hypot(one.eastM - other.eastM, one.northM - other.northM);
    const list = stretches.get(edge.name) ?? [];
    for (const share of [0.5, 0.3, 0.7]) {
      const spot = {
        eastM: one.eastM + share * (other.eastM - one.eastM),
        northM: one.northM + share * (other.northM - one.northM),
      };
      list.push({ at: at(spot), weight: lengthM * (isTaken ? 1000 : 1) });
    }
    stretches.set(edge.name, list);
  }
  return [...stretches]
    .map(([name, list]) => {
      const sorted = list.sort((a, b) => b.weight - a.weight);
      return { name, sorted, weight: sorted[0]?.weight ?? 0 };
    })
    .sort((a, b) => b.weight - a.weight)
    .map(({ name, sorted }) => ({
      key: `t${name}`,
      text: name,
      kind: 'sign' as const,
      at: sorted.map((stretch) => stretch.at),
    }));
}

function stretchOf(
  { from, to }: TaxiEdge,
  byId: ReadonlyMap<string, PlanProps['nodes'][number]>,
): readonly [GroundPoint, GroundPoint] | null {
  const [one, other] = [byId.get(from), byId.get(to)];
  return one && other ? [groundAt(one), groundAt(other)] : null;
}
