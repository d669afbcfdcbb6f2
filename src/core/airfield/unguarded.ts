/**
 * Where one rolls on to a runway past no holding point. There has to be one on every taxiway that
 * meets a runway: ICAO Annex 14 Vol. I, 3.12.2.
 */

import type { NodeId, TaxiEdge, TaxiNode } from '../taxi/graph';
import { type StretchId, stretchId } from '../taxi/rules';
import { crossedAt, isOn, type RunwayStrip, seenFrom } from '../taxi/runwayStrip';
import { GUARDS_M } from './editNames';
import { groundOf } from './editStrips';
import type { Field } from './field';

/**
 * A stretch that ends nearer to the centreline than this, metres, is a turn pad: no holding point
 * lies so near. Annex 14 Vol. I, table 3-2, the least of its distances (value from memory).
 */
const PAD_M = 30;

/** A way away from the runway: the first point beside it, and the stretch that leads there. */
interface Mouth {
  readonly stretch: TaxiEdge;
  readonly start: TaxiNode;
}

/** The stretches by which a runway is reached past no holding point, each once. */
export function unguarded(field: Field, strip: RunwayStrip): readonly StretchId[] {
  const { nodes, edges } = field.taxi;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const away = edges.filter(({ on }) => on !== 'runway');
  const mouths = away.flatMap((edge) => mouthsOf(strip, edge, byId));
  const own = new Set(mouths.map(({ stretch }) => stretch));
  const leadingTo = sources(away.filter((edge) => !own.has(edge)));
  const open = mouths.filter(({ start }) => isReached(strip, start, byId, leadingTo));
  return [...new Set(open.map(({ stretch }) => stretchId(stretch)))];
}

/** None for a stretch that neither meets the runway nor crosses it, or leads only away from it. */
function mouthsOf(
  strip: RunwayStrip,
  stretch: TaxiEdge,
  byId: ReadonlyMap<NodeId, TaxiNode>,
): readonly Mouth[] {
  const [from, to] = [byId.get(stretch.from), byId.get(stretch.to)];
  if (!from || !to) return [];
  const [fromOn, toOn] = [from, to].map(
    (node) => node.kind === 'runway' && isOn(strip, groundOf(node)),
  );
  const isAcross = !fromOn && !toOn && crossedAt(strip, groundOf(from), groundOf(to)) !== null;
  const forth = isAcross || (toOn && !fromOn) ? [{ stretch, start: from }] : [];
  const back = isAcross || (fromOn && !toOn) ? [{ stretch, start: to }] : [];
  return stretch.oneWay ? forth : [...forth, ...back];
}

/** From which points one can roll to each. */
function sources(edges: readonly TaxiEdge[]): ReadonlyMap<NodeId, readonly NodeId[]> {
  const found = new Map<NodeId, NodeId[]>();
  const add = (to: NodeId, from: NodeId) => found.set(to, [...(found.get(to) ?? []), from]);
  for (const { from, to, oneWay } of edges) {
    add(to, from);
    if (!oneWay) add(from, to);
  }
  return found;
}

/**
 * Whether one gets to a point beside a runway past no holding point that guards it: from a stand,
 * from further off than such a point lies, or on a plan so unfinished that no way meets one.
 */
function isReached(
  strip: RunwayStrip,
  start: TaxiNode,
  byId: ReadonlyMap<NodeId, TaxiNode>,
  leadingTo: ReadonlyMap<NodeId, readonly NodeId[]>,
): boolean {
  const seen = new Set([start.id]);
  let [isGuarded, farthestM] = [false, 0];
  // Points added during the iteration are visited too.
  for (const id of seen) {
    const node = byId.get(id);
    if (!node) continue;
    const offM = distanceM(strip, node);
    if (node.kind === 'hold' && offM <= GUARDS_M) {
      isGuarded = true;
      continue;
    }
    if (node.kind === 'stand' || offM > GUARDS_M) return true;
    farthestM = Math.max(farthestM, offM);
    for (const one of leadingTo.get(id) ?? []) seen.add(one);
  }
  return !isGuarded && farthestM > PAD_M;
}

/** From the runway's centreline, metres. */
function distanceM(strip: RunwayStrip, node: TaxiNode): number {
  const { alongM, rightM } = seenFrom(strip, strip.ends[0].designator, groundOf(node));
  return Math.hypot(rightM, Math.max(-alongM, alongM - strip.lengthM, 0));
}
