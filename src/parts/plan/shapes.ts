/** The lines of the plan, as paths. */

import type { Crossing, TaxiEdge, TaxiNode } from '../../core';
import { groundAt, type Hold } from './ground';
import {
  type GroundPoint,
  type Pixel,
  projection,
  type Sight,
  type Size,
  toPixel,
} from './projection';

/** What part of the ground is drawn, and how large the drawing is. */
export interface View {
  readonly sight: Sight;
  readonly size: Size;
}

const write = ({ x, y }: Pixel): string => `${x.toFixed(1)} ${y.toFixed(1)}`;

/** A line through points of the ground; only its first `mostM` metres, if given. */
export function pathOf(points: readonly GroundPoint[], view: View, mostM?: number): string {
  const kept = mostM === undefined ? points : beginning(points, mostM);
  if (kept.length < 2) return '';
  const pixel = projection(view.sight, view.size);
  return `M${kept.map((point) => write(pixel(point))).join('L')}`;
}

function beginning(points: readonly GroundPoint[], mostM: number): readonly GroundPoint[] {
  const kept: GroundPoint[] = [];
  let left = mostM;
  for (const [index, point] of points.entries()) {
    const before = points[index - 1];
    if (before === undefined) {
      kept.push(point);
      continue;
    }
    const lengthM = Math.hypot(point.eastM - before.eastM, point.northM - before.northM);
    const share = lengthM === 0 ? 1 : Math.min(1, left / lengthM);
    if (share <= 0) break;
    kept.push({
      eastM: before.eastM + share * (point.eastM - before.eastM),
      northM: before.northM + share * (point.northM - before.northM),
    });
    left -= lengthM;
  }
  return kept;
}

/** Half of a holding point's bar, px. */
const BAR_PX = 9;

/** A bar across the taxiway at a holding point. */
export function holdBar(
  { at, towards }: Pick<Hold, 'at' | 'towards'>,
  { sight, size }: View,
): string {
  const [from, to] = [toPixel(at, sight, size), toPixel(towards, sight, size)];
  const length = Math.max(Math.hypot(to.x - from.x, to.y - from.y), 1e-6);
  const across = {
    x: (-(to.y - from.y) / length) * BAR_PX,
    y: ((to.x - from.x) / length) * BAR_PX,
  };
  const [left, right] = [
    { x: from.x - across.x, y: from.y - across.y },
    { x: from.x + across.x, y: from.y + across.y },
  ];
  return `M${write(left)}L${write(right)}`;
}

/** The same for one point of a plan being drawn. */
export function tickMark(
  node: TaxiNode,
  edges: readonly TaxiEdge[],
  byId: ReadonlyMap<string, TaxiNode>,
  view: View,
): string {
  const edge = edges.find(({ from, to }) => from === node.id || to === node.id);
  const other = edge && byId.get(edge.from === node.id ? edge.to : edge.from);
  return other === undefined ? '' : holdBar({ at: groundAt(node), towards: groundAt(other) }, view);
}

/** Half of a crossing's square, px. */
const SQUARE_PX = 17;

/** Hatched squares over the runways that are crossed. */
export function crossings(crossed: readonly Crossing[], { sight, size }: View) {
  return crossed.map(({ at, headingTrueDeg }) => {
    const { x, y } = toPixel(at, sight, size);
    const turn = ((headingTrueDeg - sight.upDeg) * Math.PI) / 180;
    const corner = (right: number, up: number) =>
      write({
        x: x + SQUARE_PX * (right * Math.cos(turn) + up * Math.sin(turn)),
        y: y + SQUARE_PX * (right * Math.sin(turn) - up * Math.cos(turn)),
      });
    const outline = `M${corner(-1, -1)}L${corner(1, -1)}L${corner(1, 1)}L${corner(-1, 1)}Z`;
    const lines = [
      [-1, 0, 0, 1],
      [-1, -1, 1, 1],
      [0, -1, 1, 0],
    ]
      .map(([a = 0, b = 0, c = 0, d = 0]) => `M${corner(a, b)}L${corner(c, d)}`)
      .join('');
    return { outline, lines };
  });
}
