/** The names of the ends around the runway ring, each outside its arc, none on top of another. */

import { outline, overlap, type TextBox, towards } from './plane';
import { middleDeg, RING, type RingArc } from './ring';

/** Size of a name, and the width of one of its characters, in units of the dial. */
export const LABEL = { size: 21, advance: 13.3 } as const;

/** Room on each side of a name, for the frame that marks the end in use. */
const PAD = 2.5;

/** An end is named again at an arc of this length or more. */
const LONG_DEG = 40;

/** How far a name may slip past the edge of its end's longest arc before it is left off. */
const SLIP_DEG = 24;

/** An end's name on the dial. */
export interface Label extends TextBox {
  readonly end: string;
}

/** SVG path data of the frame around a name. */
export const frame = ({ x, y, halfWidth, halfHeight }: Label): string =>
  outline([
    { x: x - halfWidth, y: y - halfHeight },
    { x: x + halfWidth, y: y - halfHeight },
    { x: x + halfWidth, y: y + halfHeight },
    { x: x - halfWidth, y: y + halfHeight },
  ]);

/** A name just outside the ring in a direction. */
function nameAt(end: string, deg: number): Label {
  const halfWidth = (end.length * LABEL.advance) / 2 + PAD;
  const halfHeight = LABEL.size * 0.36 + PAD;
  const { x, y } = towards(deg, 1);
  const radius = RING.outer + 3 + Math.abs(x) * halfWidth + Math.abs(y) * halfHeight;
  return { end, ...towards(deg, radius), halfWidth, halfHeight };
}

/**
 * Where the names of the ends go. Each end that owns an arc is named at its longest, and again at
 * other long ones. A name stands at the middle of its arc, or as near to it as the names placed
 * before allow.
 *
 * @param first ends placed before all others, the most important last
 * @param headings true headings of the ends: where a name stands if its arc is the whole ring
 */
export function placeLabels(
  arcs: readonly RingArc[],
  first: readonly (string | undefined)[],
  headings: ReadonlyMap<string, number>,
): readonly Label[] {
  const rank = ({ end }: RingArc): number => (end === null ? -1 : first.indexOf(end));
  const placed: Label[] = [];
  const named = new Set<string>();
  for (const arc of arcs.toSorted((a, b) => rank(b) - rank(a) || b.lengthDeg - a.lengthDeg)) {
    const { end, lengthDeg } = arc;
    if (end === null || (named.has(end) && lengthDeg < LONG_DEG)) continue;
    const reach = lengthDeg / 2 + (named.has(end) ? 0 : SLIP_DEG);
    named.add(end);
    const middle = lengthDeg < 360 ? middleDeg(arc) : (headings.get(end) ?? 0);
    for (let slip = 0; slip <= reach; slip = slip > 0 ? -slip : 1 - slip) {
      const label = nameAt(end, middle + slip);
      if (placed.some((other) => overlap(label, other))) continue;
      placed.push(label);
      break;
    }
  }
  return placed;
}
