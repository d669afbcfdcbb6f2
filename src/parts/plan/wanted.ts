/** The words that the plan would like to bear, the most important first. */

import type { TaxiEdge } from '../../core';
import type { Wanted } from './labels';
import { groundOf, type PlanProps } from './Plan';
import { type Ground, type Pixel, toPixel } from './projection';
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

/** Half a word of so many letters and the gap beside it, px. */
const asideOf = (text: string) => text.length * 5.5 + 18;

const around = ({ x, y }: Pixel, text: string): readonly Pixel[] =>
  AROUND.map(([side, down]) => ({ x: x + side * asideOf(text), y: y + down }));

/** All words, in the order in which they get their places. */
export function wordsOf(props: PlanProps, { sight, size }: View): readonly Wanted[] {
  const at = (ground: Ground) => toPixel(ground, sight, size);
  const { nodes, from, to, words, crossings } = props;
  const ends = new Set([from, to]);
  const named = nodes.flatMap((node): Wanted[] => {
    if (node.name === undefined) return [];
    const isEnd = ends.has(node.id);
    const point = at(groundOf(node));
    if (node.kind === 'stand') {
      const text = isEnd ? node.name : node.name.replace(/^stand\s+/i, '');
      return [{ key: node.id, text, kind: isEnd ? 'place' : 'stand', at: around(point, text) }];
    }
    if (node.kind !== 'hold') return [];
    const text = isEnd ? words.hold(node.name) : node.name;
    return [{ key: node.id, text, kind: isEnd ? 'place' : 'stand', at: around(point, text) }];
  });
  const warnings = crossings.map(({ runway, at: where }, index): Wanted => {
    const text = words.ahead(runway);
    const { x, y } = at(where);
    const sides = [40, -40, 62, -62].map((down) => ({ x, y: y + down }));
    return { key: `x${index}`, text, kind: 'warning', at: [...sides, ...around({ x, y }, text)] };
  });
  const hot = props.hotSpots.map((one, index): Wanted => {
    const { name } = one;
    return { key: `h${index}`, text: name, kind: 'warning', at: around(at(groundOf(one)), name) };
  });
  return [
    ...warnings,
    ...named.filter(({ kind }) => kind === 'place'),
    ...hot,
    ...signsOf(props, at),
    ...named.filter(({ kind }) => kind === 'stand'),
  ];
}

/** A sign for each taxiway: on the way that is taken, else on its longest stretch. */
function signsOf(
  { nodes, edges, route }: PlanProps,
  at: (ground: Ground) => Pixel,
): readonly Wanted[] {
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const onWay = new Set(route.map(({ eastM, northM }) => `${eastM} ${northM}`));
  const stretches = new Map<string, { readonly at: Pixel; readonly weight: number }[]>();
  for (const edge of edges.filter(({ on }) => on === 'taxiway')) {
    const found = stretchOf(edge, byId);
    if (found === null) continue;
    const [one, other] = found;
    const isTaken = found.every(({ eastM, northM }) => onWay.has(`${eastM} ${northM}`));
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
): readonly [Ground, Ground] | null {
  const [one, other] = [byId.get(from), byId.get(to)];
  return one && other ? [groundOf(one), groundOf(other)] : null;
}
