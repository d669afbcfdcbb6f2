/** The taxi plan of a map: lines, runways' entries, holding points, stands. */

import type { Field } from '../airfield/field';
import { NO_LETTER } from '../airfield/noLetter';
import type { Place } from '../earth/place';
import { decimetre, type PlanPoint, planPoint } from '../earth/planPoint';
import { isOn, type RunwayStrip, seenFrom } from '../taxi/runwayStrip';
import { LONG_LEAD_IN_M } from './assumed';
import type { MapObject, Tags } from './mapObjects';
import { type Link, type Look, Network } from './network';
import type { MapNote } from './readMapExtract';

type TaxiNode = Field['taxi']['nodes'][number];
type TaxiEdge = Field['taxi']['edges'][number];

/** What a plan came to. */
export interface MappedPlan {
  readonly taxi: Field['taxi'];
  readonly lines: number;
  readonly stands: number;
  readonly holds: number;
  readonly assumed: readonly MapNote[];
  readonly missing: readonly MapNote[];
}

/**
 * How far from the centreline one holds: 90 m, 75 m, or less for a short runway. ICAO Annex 14
 * vol. I, table 3-2 (from memory).
 */
const holdM = ({ lengthM }: RunwayStrip): number =>
  lengthM >= 1800 ? 90 : lengthM >= 1200 ? 75 : 45;

/** A mapped holding point guards the runway it is nearest to, up to this from its centreline. */
const GUARDS_M = 220;

/** A stand further than this from any taxiway is left out, metres. */
const FARTHEST_STAND_M = 150;

/** How far from a centreline a point counts as on it, and the end of a curve on to it, metres. */
const ON_CENTRELINE_M = 3;
const CURVED_M = 12;

/** `A` of `Taxiway A`, `Tw A1`; null if there is none. */
function letterOf({ ref, name }: Tags): string | null {
  const text = (ref ?? name ?? '').split(';')[0]?.trim() ?? '';
  const letter = text.replace(/^(taxiway|taxilane|twy?|rollbahn)\.?\s+/i, '');
  return letter === '' || letter.length > 12 ? null : letter;
}

const isUsed = ({ disused, abandoned }: Tags) => disused !== 'yes' && abandoned !== 'yes';

/** Makes the plan of what lies around a field's reference point. */
export function planOf(
  objects: readonly MapObject[],
  around: Place,
  strips: readonly RunwayStrip[],
): MappedPlan {
  const network = new Network();
  const [assumed, missing]: [MapNote[], MapNote[]] = [[], []];
  const ground = (place: Place): PlanPoint => planPoint(around, place) ?? { eastM: 0, northM: 0 };
  const lines = objects.filter(
    ({ tags, points }) =>
      (tags.aeroway === 'taxiway' || tags.aeroway === 'taxilane') &&
      points.length > 1 &&
      isUsed(tags),
  );
  for (const { tags, points } of lines) {
    const width = Number.parseFloat(tags.width ?? '');
    const look: Look = {
      name: letterOf(tags) ?? NO_LETTER,
      on: 'taxiway',
      oneWay: tags.oneway === 'yes',
      widthM: width > 5 && width < 80 ? width : null,
    };
    const vertices = points.map((point) => {
      const { eastM, northM } = ground(point);
      return network.at(eastM, northM);
    });
    vertices.slice(1).forEach((to, index) => {
      network.lay(vertices[index] ?? to, to, look);
    });
  }
  network.join();
  const stripAt = (vertex: number): RunwayStrip | null => {
    const { xM, yM } = network.vertex(vertex);
    return strips.find((strip) => isOn(strip, { eastM: xM, northM: yM })) ?? null;
  };
  const rightM = (strip: RunwayStrip, vertex: number) => {
    const { xM, yM } = network.vertex(vertex);
    return Math.abs(seenFrom(strip, strip.ends[0].designator, { eastM: xM, northM: yM }).rightM);
  };
  // A line painted along a runway is the runway.
  network.links = network.links.filter(({ from, to }) => {
    const strip = stripAt(from);
    return (
      strip === null || strip !== stripAt(to) || rightM(strip, from) > 8 || rightM(strip, to) > 8
    );
  });
  meetCentrelines(network, strips);

  const kinds: Kinds = new Map();
  const degrees = network.degrees();
  network.vertices.forEach((_, vertex) => {
    const strip = stripAt(vertex);
    if (strip === null || degrees[vertex] === 0) return;
    // A curve that leads on along the centreline ends beside it, now that what lay along it is gone.
    const reachM = degrees[vertex] === 1 ? CURVED_M : ON_CENTRELINE_M;
    if (rightM(strip, vertex) < reachM) kinds.set(vertex, { kind: 'runway' });
  });

  // Holding points the map has.
  let holds = 0;
  for (const { tags, points } of objects) {
    const [place] = points;
    if (tags.aeroway !== 'holding_position' || place === undefined || points.length > 1) continue;
    const { eastM, northM } = ground(place);
    const vertex = network.tap(eastM, northM, 10);
    if (vertex === null || kinds.has(vertex)) {
      missing.push({ code: 'hold-apart', at: { xM: eastM, yM: northM }, ...called(tags.ref) });
      continue;
    }
    if (tags['holding_position:type'] === 'intermediate') continue;
    holds += 1;
    if (isBesideHold(network, kinds, vertex)) continue;
    kinds.set(vertex, { kind: 'hold', ...(tags.ref && { name: tags.ref.slice(0, 80) }) });
  }
  guard(network, kinds, stripAt, assumed);
  findRunways(network, kinds, stripAt);

  const stands = leadIn(network, kinds, objects, ground, assumed, missing);
  thin(network, kinds);
  const taxi = drawn(network, kinds, strips);
  return { taxi, lines: lines.length, stands, holds, assumed, missing };
}

/** Two holding points this near are one that was drawn twice, metres. */
const TWICE_M = 5;

const isBesideHold = (network: Network, kinds: Kinds, vertex: number): boolean => {
  const { xM, yM } = network.vertex(vertex);
  return [...kinds].some(([other, { kind }]) => {
    const there = network.vertex(other);
    return kind === 'hold' && Math.hypot(there.xM - xM, there.yM - yM) < TWICE_M;
  });
};

const called = (ref: string | undefined) => (ref === undefined ? {} : { what: ref.slice(0, 80) });

/** Where taxiways run over a runway's centreline they get a point on it. */
function meetCentrelines(network: Network, strips: readonly RunwayStrip[]): void {
  for (const strip of strips) {
    const end = strip.ends[0].designator;
    const links = network.links;
    network.links = [];
    for (const link of links) {
      const { from, to, ...look } = link;
      const [a, b] = [network.vertex(from), network.vertex(to)];
      const [p, q] = [a, b].map(({ xM, yM }) => seenFrom(strip, end, { eastM: xM, northM: yM }));
      const share = p && q ? p.rightM / (p.rightM - q.rightM) : Number.NaN;
      const alongM = p && q ? p.alongM + share * (q.alongM - p.alongM) : -1;
      const isCrossing =
        p !== undefined &&
        q !== undefined &&
        p.rightM * q.rightM < 0 &&
        Math.min(Math.abs(p.rightM), Math.abs(q.rightM)) > 3 &&
        alongM >= -5 &&
        alongM <= strip.lengthM + 5;
      if (!isCrossing) {
        network.lay(from, to, look);
        continue;
      }
      const middle = network.at(a.xM + share * (b.xM - a.xM), a.yM + share * (b.yM - a.yM));
      network.lay(from, middle, look);
      network.lay(middle, to, look);
    }
  }
}

type Kinds = Map<number, Partial<TaxiNode> & { kind: TaxiNode['kind'] }>;

/** From every point on a runway outward: the holding point that guards it, assumed where none is. */
function guard(
  network: Network,
  kinds: Kinds,
  stripAt: (vertex: number) => RunwayStrip | null,
  assumed: MapNote[],
): void {
  let [beside, laid] = [neighbours(network), network.laid];
  for (const [start, { kind }] of [...kinds]) {
    const strip = kind === 'runway' ? stripAt(start) : null;
    if (strip === null) continue;
    const end = strip.ends[0].designator;
    const off = (vertex: number) => {
      const { xM, yM } = network.vertex(vertex);
      return Math.abs(seenFrom(strip, end, { eastM: xM, northM: yM }).rightM);
    };
    for (const { to: first, link } of beside.get(start) ?? []) {
      // Along each way out, until a holding point, another runway, or far enough.
      const path = [start, first];
      let hold: number | null = kinds.get(first)?.kind === 'hold' ? first : null;
      let last = link;
      while (hold === null) {
        const at = path.at(-1) ?? first;
        if (off(at) > GUARDS_M || path.length > 60 || kinds.get(at)?.kind === 'runway') break;
        const onward = (beside.get(at) ?? []).filter(({ to }) => !path.includes(to));
        const mapped = onward.find(({ to }) => kinds.get(to)?.kind === 'hold');
        // Outwards, and rather on under the same letter.
        const next =
          mapped ??
          onward
            .filter(({ to }) => off(to) > off(at) - 5)
            .sort(
              (a, b) =>
                Number(b.link.name === last.name) - Number(a.link.name === last.name) ||
                off(b.to) - off(a.to),
            )[0];
        if (next === undefined) break;
        path.push(next.to);
        last = next.link;
        if (kinds.get(next.to)?.kind === 'hold') hold = next.to;
      }
      if (kinds.get(path.at(-1) ?? first)?.kind === 'runway') continue;
      hold ??= assume(network, kinds, path, strip, off, assumed);
      if (hold === null) continue;
      // One stretch from the holding point to the runway, so that its entry is known by it.
      const inside = path.slice(0, path.indexOf(hold) + 1);
      straighten(network, kinds, beside, inside.length > 1 ? inside : path);
      tellEnds(kinds, hold, strip, network.vertex(start));
    }
    if (network.laid > laid) {
      beside = neighbours(network);
      laid = network.laid;
    }
  }
}

/** Further along the taxiways than this, a holding point guards nothing, metres. */
const FARTHEST_RUNWAY_M = 700;

/** From every holding point that no runway's way out led to, the shortest way in to a runway. */
function findRunways(
  network: Network,
  kinds: Kinds,
  stripAt: (vertex: number) => RunwayStrip | null,
): void {
  const beside = neighbours(network);
  for (const [hold, { kind, ends }] of [...kinds]) {
    if (kind !== 'hold' || ends !== undefined) continue;
    const path = wayIn(network, kinds, beside, hold);
    const [start] = path;
    const strip = start === undefined ? null : stripAt(start);
    if (start === undefined || strip === null) continue;
    const { xM, yM } = network.vertex(hold);
    const off = seenFrom(strip, strip.ends[0].designator, { eastM: xM, northM: yM }).rightM;
    if (Math.abs(off) > GUARDS_M) continue;
    straighten(network, kinds, beside, path);
    tellEnds(kinds, hold, strip, network.vertex(start));
  }
}

/** The shortest way from a runway to a holding point, past no other one; empty if there is none. */
function wayIn(network: Network, kinds: Kinds, beside: Neighbours, hold: number): number[] {
  const from = new Map<number, number>();
  const open = new Map<number, number>([[hold, 0]]);
  while (open.size > 0) {
    const [at, goneM] = [...open].reduce((least, one) => (one[1] < least[1] ? one : least));
    open.delete(at);
    if (kinds.get(at)?.kind === 'runway') {
      const path = [at];
      for (let back = from.get(at); back !== undefined; back = from.get(back)) {
        path.push(back);
        if (back === hold) break;
      }
      return path;
    }
    if (at !== hold && kinds.get(at)?.kind === 'hold') continue;
    const here = network.vertex(at);
    for (const { to } of beside.get(at) ?? []) {
      const there = network.vertex(to);
      const toM = goneM + Math.hypot(there.xM - here.xM, there.yM - here.yM);
      const isShut = to === hold || (from.has(to) && !open.has(to));
      if (toM > FARTHEST_RUNWAY_M || isShut || toM >= (open.get(to) ?? Infinity)) continue;
      open.set(to, toM);
      from.set(to, at);
    }
  }
  return [];
}

type Neighbours = ReadonlyMap<number, readonly { readonly to: number; readonly link: Link }[]>;

function neighbours(network: Network): Neighbours {
  const beside = new Map<number, { to: number; link: Link }[]>();
  for (const link of network.links) {
    for (const [from, to] of [
      [link.from, link.to],
      [link.to, link.from],
    ] as const) {
      const there = beside.get(from);
      if (there) there.push({ to, link });
      else beside.set(from, [{ to, link }]);
    }
  }
  return beside;
}

/** Puts a holding point where the way out is far enough from the centreline. */
function assume(
  network: Network,
  kinds: Kinds,
  path: number[],
  strip: RunwayStrip,
  off: (vertex: number) => number,
  assumed: MapNote[],
): number | null {
  const wantedM = holdM(strip);
  const index = path.findIndex((vertex) => off(vertex) >= wantedM);
  const [inner, outer] = [path[index - 1], path[index]];
  if (inner === undefined || outer === undefined) return null;
  const share = (wantedM - off(inner)) / Math.max(off(outer) - off(inner), 1e-6);
  const [a, b] = [network.vertex(inner), network.vertex(outer)];
  const hold = network.at(a.xM + share * (b.xM - a.xM), a.yM + share * (b.yM - a.yM));
  const place = network.links.findIndex(
    ({ from, to }) => (from === inner && to === outer) || (from === outer && to === inner),
  );
  const link = network.links[place];
  if (link === undefined) return null;
  if (hold !== inner && hold !== outer) {
    const { from, to, ...look } = link;
    network.links.splice(place, 1);
    network.lay(from, hold, look);
    network.lay(hold, to, look);
    path.splice(index, 0, hold);
  }
  if (!kinds.has(hold)) {
    kinds.set(hold, { kind: 'hold', assumed: true });
    const { xM, yM } = network.vertex(hold);
    assumed.push({ code: 'hold-assumed', at: { xM, yM }, what: `${link.name} – ${strip.name}` });
  }
  return hold;
}

/** Replaces the way between a runway and its holding point, where nothing else joins it. */
function straighten(
  network: Network,
  kinds: Kinds,
  beside: Neighbours,
  path: readonly number[],
): void {
  const [start, end] = [path[0], path.at(-1)];
  if (start === undefined || end === undefined || path.length < 3) return;
  const isFree = path
    .slice(1, -1)
    .every((vertex) => beside.get(vertex)?.length === 2 && !kinds.has(vertex));
  const pairs = new Set(path.slice(1).map((to, index) => pair(path[index] ?? to, to)));
  const inside = network.links.find(({ from, to }) => pairs.has(pair(from, to)));
  if (inside === undefined) return;
  if (isFree) network.links = network.links.filter(({ from, to }) => !pairs.has(pair(from, to)));
  const { from: _from, to: _to, ...look } = inside;
  network.lay(end, start, { ...look, oneWay: false });
}

const pair = (one: number, other: number) => (one < other ? `${one} ${other}` : `${other} ${one}`);

/** Which ends a holding point gives on to: those with most of the runway ahead. */
function tellEnds(
  kinds: Kinds,
  hold: number,
  strip: RunwayStrip,
  { xM, yM }: { xM: number; yM: number },
): void {
  const ends = strip.ends
    .filter(({ designator }) => {
      const { alongM } = seenFrom(strip, designator, { eastM: xM, northM: yM });
      return alongM <= 0.6 * strip.lengthM;
    })
    .map(({ designator }) => designator);
  const before = kinds.get(hold);
  if (before?.kind !== 'hold') return;
  kinds.set(hold, { ...before, ends: [...new Set([...(before.ends ?? []), ...ends])] });
}

/** Joins the stands. */
function leadIn(
  network: Network,
  kinds: Kinds,
  objects: readonly MapObject[],
  ground: (place: Place) => PlanPoint,
  assumed: MapNote[],
  missing: MapNote[],
): number {
  const look: Look = { name: 'apron', on: 'apron', oneWay: false, widthM: null };
  const stands = objects.filter(({ tags }) => tags.aeroway === 'parking_position');
  for (const { tags, points } of stands) {
    const at = points.map(ground);
    const offM = ({ eastM, northM }: PlanPoint) =>
      network.nearest(eastM, northM, FARTHEST_STAND_M)?.offM ?? Number.POSITIVE_INFINITY;
    const [first, last] = [at[0], at.at(-1)];
    if (first === undefined || last === undefined) continue;
    const [near, stop] = offM(first) <= offM(last) ? [first, last] : [last, first];
    const reachM = offM(near);
    const name = tags.ref ?? tags.name;
    if (reachM > FARTHEST_STAND_M) {
      missing.push({
        code: 'stand-apart',
        at: { xM: stop.eastM, yM: stop.northM },
        ...called(name),
      });
      continue;
    }
    const joint = network.tap(near.eastM, near.northM, reachM + 0.1);
    const stand = network.at(stop.eastM, stop.northM);
    if (joint === null || stand === joint || kinds.has(stand)) continue;
    network.lay(joint, stand, look);
    kinds.set(stand, { kind: 'stand', ...(name && { name: `Stand ${name}`.slice(0, 80) }) });
    if (reachM > LONG_LEAD_IN_M) {
      assumed.push({
        code: 'lead-in-long',
        at: { xM: stop.eastM, yM: stop.northM },
        ...called(name),
      });
    }
  }
  return stands.length;
}

/** A line may leave the map's by this much, metres: a tenth of a taxiway's width. */
const THINNED_M = 1.5;

/** Leaves out the points of a line that hardly turn it. */
function thin(network: Network, kinds: Kinds): void {
  const at = new Map<number, Link[]>();
  for (const link of network.links) {
    for (const end of [link.from, link.to]) at.set(end, [...(at.get(end) ?? []), link]);
  }
  const isOnWay = (vertex: number): boolean => {
    const [one, other, more] = at.get(vertex) ?? [];
    return (
      !kinds.has(vertex) &&
      one !== undefined &&
      other !== undefined &&
      more === undefined &&
      one.name === other.name &&
      one.on === other.on &&
      one.widthM === other.widthM &&
      // A line of one direction keeps its points: which way it leads is that of each stretch.
      !one.oneWay &&
      !other.oneWay
    );
  };
  const done = new Set<Link>();
  const thinned: Link[] = [];
  for (const first of network.links) {
    if (done.has(first)) continue;
    done.add(first);
    const chain = [first.from, first.to];
    for (const isBack of [true, false]) {
      let link = first;
      for (;;) {
        const end = (isBack ? chain[0] : chain.at(-1)) ?? first.from;
        const next = isOnWay(end) ? at.get(end)?.find((one) => one !== link) : undefined;
        if (next === undefined || done.has(next)) break;
        done.add(next);
        const onward = next.from === end ? next.to : next.from;
        if (isBack) chain.unshift(onward);
        else chain.push(onward);
        link = next;
      }
    }
    const { from: _from, to: _to, ...look } = first;
    const kept = turning(network, chain);
    kept.slice(1).forEach((to, index) => {
      thinned.push({ from: kept[index] ?? to, to, ...look });
    });
  }
  network.links = thinned.filter(({ from, to }) => from !== to);
}

/** The points of a chain that turn it. D. H. Douglas and T. K. Peucker, Cartographica 10 (1973). */
function turning(network: Network, chain: readonly number[]): readonly number[] {
  const [from, to] = [chain[0], chain.at(-1)];
  if (from === undefined || to === undefined || chain.length < 3) return chain;
  const inside = chain.slice(1, -1).map((vertex, index) => {
    const { xM, yM } = network.vertex(vertex);
    return { index: index + 1, offM: network.off({ from, to }, xM, yM).offM };
  });
  const farthest = inside.reduce((most, one) => (one.offM > most.offM ? one : most));
  // A loop comes back to its beginning, and must not shrink to a point.
  if (farthest.offM <= THINNED_M && from !== to) return [from, to];
  return [
    ...turning(network, chain.slice(0, farthest.index + 1)),
    ...turning(network, chain.slice(farthest.index)).slice(1),
  ];
}

/** The network as a document has it, with the runways themselves. */
function drawn(network: Network, kinds: Kinds, strips: readonly RunwayStrip[]): Field['taxi'] {
  const links = network.links;
  const used = new Set(links.flatMap(({ from, to }) => [from, to]));
  const nodes: TaxiNode[] = [...used].map((vertex) => {
    const { xM, yM } = network.vertex(vertex);
    const kind = kinds.get(vertex) ?? { kind: 'junction' as const };
    return { id: `n${vertex}`, xM: decimetre(xM), yM: decimetre(yM), ...kind };
  });
  const edges: TaxiEdge[] = links.map(({ from, to, name, on, oneWay, widthM }) => ({
    from: `n${from}`,
    to: `n${to}`,
    name,
    on,
    ...(widthM !== null && { widthM }),
    ...(oneWay && { oneWay }),
  }));
  for (const [number, strip] of strips.entries()) {
    const [one, other] = strip.ends;
    const along = (node: TaxiNode) =>
      seenFrom(strip, one.designator, { eastM: node.xM, northM: node.yM }).alongM;
    const on = nodes
      .filter((node) => node.kind === 'runway' && isOn(strip, { eastM: node.xM, northM: node.yM }))
      .sort((a, b) => along(a) - along(b));
    for (const [end, place] of [
      [one, 0],
      [other, strip.lengthM],
    ] as const) {
      const there = on.find((node) => Math.abs(along(node) - place) < 40);
      if (there !== undefined) {
        nodes[nodes.indexOf(there)] = { ...there, ends: [end.designator] };
        continue;
      }
      const node: TaxiNode = {
        id: `e${number}-${end.designator}`,
        xM: decimetre(end.at.eastM),
        yM: decimetre(end.at.northM),
        kind: 'runway',
        ends: [end.designator],
      };
      nodes.push(node);
      if (place === 0) on.unshift(node);
      else on.push(node);
    }
    on.slice(1).forEach((node, index) => {
      edges.push({ from: on[index]?.id ?? node.id, to: node.id, name: strip.name, on: 'runway' });
    });
  }
  return { nodes, edges };
}
