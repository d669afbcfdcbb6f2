/** A route as a controller gave it, laid over the plan and checked against it. */

import type { Designator, Field } from '../airfield/field';
import { pointOf, type RunwayEntry, runwayEntriesOf, stripWith } from './entries';
import { exitsOf } from './exits';
import {
  type DirectedEdge,
  distanceM,
  edgeOf,
  graphFrom,
  type NodeId,
  type TaxiEdge,
  type TaxiGraph,
  type TaxiNode,
  taxiGraph,
} from './graph';
import { readInstruction, type ToldItem, type UnreadItem } from './instruction';
import { type Crossing, type Route, routeAlong, sameRunway } from './route';
import { RUNWAY_WEIGHT, type TaxiRules, weightsOf } from './rules';
import { crossedAt, isOn, type RunwayStrip, stripsOf } from './runwayStrip';
import { APRON, type Layer, pointsOn, searchAsSaid } from './saidSearch';
import { edgesTo, searchFrom } from './search';

/** What is asked of a route as told. */
export interface ToldQuestion {
  readonly field: Field;
  /** Where the aircraft is; null after a landing, while it is on the runway, or if unknown. */
  readonly from: NodeId | null;
  readonly end: Designator | null;
  /** The stand to go to; null for a take-off, or if the pilot hasn't said. */
  readonly to: NodeId | null;
  readonly purpose: 'take-off' | 'landing';
  /** Where today's landing is likely to leave the runway; null if unknown, or for a take-off. */
  readonly likelyExit: NodeId | null;
  readonly rules: TaxiRules;
}

/** What keeps a route as told from being followed. */
export type ToldProblem =
  | UnreadItem
  | { readonly code: 'nothing-said' }
  /** Nobody knows where it begins. */
  | { readonly code: 'no-start' }
  /** Two names that follow each other don't meet; `by` lies between them. */
  | {
      readonly code: 'not-joined';
      readonly one: string;
      readonly other: string;
      readonly by: readonly string[];
    }
  | { readonly code: 'closed' | 'too-narrow' | 'one-way'; readonly name: string }
  /** The last taxiway leads to no holding point of the end in use; `by` would lead on. */
  | {
      readonly code: 'ends-short';
      readonly last: string;
      readonly end: Designator;
      readonly by: readonly string[];
    }
  | { readonly code: 'other-end'; readonly said: Designator; readonly end: Designator }
  /** The route comes to no such runway, to hold short of, cross or backtrack. */
  | {
      readonly code: 'not-met';
      readonly what: 'hold-short' | 'cross' | 'backtrack';
      readonly runway: string;
    }
  | { readonly code: 'no-stand-at-end'; readonly last: string };

/** A route as told. */
export interface AsTold {
  readonly items: readonly ToldItem[];
  /** Empty if the route can be followed. */
  readonly problems: readonly ToldProblem[];
  /** Taxiways from the stand to the first one said, or from the last one to the stand. */
  readonly byTheWay: readonly string[];
  /** Null if there is a problem. */
  readonly route: Route | null;
  /** The holding point it ends at gives on to the end in use; null if it ends before. */
  readonly entry: RunwayEntry | null;
  /** Where it leaves the runway after a landing; null for a take-off, or once that lies behind. */
  readonly exit: NodeId | null;
}

/** Lays a route as told over the plan. */
export function layAsTold(text: string, question: ToldQuestion): AsTold {
  const { items, unread } = readInstruction(text, question.field);
  const nothing = { items, byTheWay: [], route: null, entry: null, exit: null };
  if (unread.length > 0) return { ...nothing, problems: unread };
  if (items.length === 0) return { ...nothing, problems: [{ code: 'nothing-said' }] };
  const laid = new Laying(items, question).lay();
  return 'code' in laid ? { ...nothing, problems: [laid] } : { ...laid, items, problems: [] };
}

type Laid = Omit<AsTold, 'items' | 'problems'>;

class Laying {
  readonly #items: readonly ToldItem[];
  readonly #question: ToldQuestion;
  readonly #field: Field;
  readonly #graph: TaxiGraph;

  constructor(items: readonly ToldItem[], question: ToldQuestion) {
    this.#items = items;
    this.#question = question;
    this.#field = question.field;
    this.#graph = taxiGraph(question.field);
  }

  lay(): Laid | ToldProblem {
    const { end } = this.#question;
    const said = this.#items.find((item) => item.code === 'runway');
    if (said !== undefined && end !== null && said.end !== end) {
      return { code: 'other-end', said: said.end, end };
    }
    const layers = this.#layers();
    const start = this.#start(layers);
    if (start === null) return { code: 'no-start' };
    const targets = this.#targets(layers);
    // What lies between the stand and the first taxiway said is not always said.
    const strict = this.#search(layers, start, this.#question.rules, false);
    const found =
      strict.to(targets) ?? this.#search(layers, start, this.#question.rules, true).to(targets);
    if (found === null) return this.#whyNot(layers, start, targets);
    return this.#checked(layers, found.arcs, found.target);
  }

  /** The names in order, the apron before them and, for a landing, behind them. */
  #layers(): readonly Layer[] {
    const layers: Layer[] = [APRON];
    let gate: NodeId | null = null;
    for (const item of this.#items) {
      if (item.code === 'taxiway') {
        layers.push({ name: item.name, on: 'taxiway', gate });
        gate = null;
      } else if (item.code === 'backtrack' && !this.#isLast(item)) {
        layers.push({ name: item.runway, on: 'runway', gate });
        gate = null;
      } else if (item.code === 'point' || item.code === 'hold-at') {
        const name = this.#taxiwayAt(item.node, layers.at(-1)?.name ?? null);
        if (name !== null && name !== layers.at(-1)?.name) {
          layers.push({ name, on: 'taxiway', gate });
        }
        gate = item.node;
        // It is passed on its own taxiway, which goes on behind it.
        if (name !== null && !this.#isLast(item)) {
          layers.push({ name, on: 'taxiway', gate });
          gate = null;
        }
      }
    }
    return this.#question.purpose === 'landing' ? [...layers, APRON] : layers;
  }

  /** Whether only what is no part of the way follows. */
  #isLast(item: ToldItem): boolean {
    const rest = this.#items.slice(this.#items.indexOf(item) + 1);
    return rest.every(({ code }) => code !== 'taxiway' && code !== 'point' && code !== 'stand');
  }

  #taxiwayAt(node: NodeId, last: string | null): string | null {
    const names = this.#field.taxi.edges
      .filter(({ from, to, on }) => on === 'taxiway' && (from === node || to === node))
      .map(({ name }) => name);
    return names.find((name) => name === last) ?? names[0] ?? null;
  }

  /** Where the route begins: where the aircraft is, or the exit by which a landing leaves. */
  #start(layers: readonly Layer[]): NodeId | null {
    const { from, end, purpose, rules, likelyExit } = this.#question;
    if (from !== null) return this.#graph.indexOf.has(from) ? from : null;
    if (purpose === 'take-off' || end === null) return null;
    const exits = exitsOf(this.#field, end, rules);
    const first = layers.find(({ name }) => name !== null)?.name;
    return exits.find(({ name }) => name === first)?.node ?? likelyExit;
  }

  /** Where the route may end, by how it was said. */
  #targets(layers: readonly Layer[]): readonly NodeId[] {
    const { end, to, purpose } = this.#question;
    const last = this.#items.at(-1);
    if (last?.code === 'hold-at' || last?.code === 'point') return [last.node];
    const stand = this.#items.findLast((item) => item.code === 'stand');
    const limits = last?.code === 'hold-short' ? this.#holdsBefore(last.runway, layers) : [];
    if (purpose === 'landing') {
      const destination = stand?.node ?? to;
      return destination === null ? limits : [destination, ...limits];
    }
    const backtracks = last?.code === 'backtrack';
    const entered = end === null ? [] : this.#entries(end, backtracks).map(({ hold }) => hold);
    const onLast = entered.filter((hold) => this.#isOn(hold, layers.at(-1)));
    return [...new Set(onLast.length > 0 ? onLast : limits)];
  }

  readonly #entries = (end: Designator, beside: boolean) =>
    runwayEntriesOf(this.#field, end, beside);

  readonly #isOn = (node: NodeId, layer: Layer | undefined) =>
    layer !== undefined && pointsOn(this.#graph, layer).has(node);

  /** The holding points on the last taxiway from which a runway is crossed or entered. */
  #holdsBefore(runway: string, layers: readonly Layer[]): readonly NodeId[] {
    const strip = stripsOf(this.#field).find(({ name }) => name === runway);
    if (strip === undefined) return [];
    return this.#graph.nodes
      .filter(({ id, kind }) => kind === 'hold' && this.#isOn(id, layers.at(-1)))
      .filter((hold) => this.#beyond(hold, strip) !== null)
      .map(({ id }) => id);
  }

  /** Where the runway lies behind a holding point that guards it; null if it doesn't. */
  #beyond(hold: TaxiNode, strip: RunwayStrip) {
    for (const edge of this.#field.taxi.edges) {
      if (edge.from !== hold.id && edge.to !== hold.id) continue;
      const far = this.#node(edge.from === hold.id ? edge.to : edge.from);
      if (far === undefined) continue;
      const share = crossedAt(strip, pointOf(hold), pointOf(far));
      const crosses = share !== null || sameRunway(edge.crosses) === strip.name;
      if (!crosses && !(far.kind === 'runway' && isOn(strip, pointOf(far)))) continue;
      return { far, share: crosses ? (share ?? 0.5) : 1, on: edge.name };
    }
    return null;
  }

  #node(id: NodeId): TaxiNode | undefined {
    return this.#graph.nodes[this.#graph.indexOf.get(id) ?? -1];
  }

  readonly #search = (layers: readonly Layer[], start: NodeId, rules: TaxiRules, unsaid: boolean) =>
    searchAsSaid(this.#graph, layers, start, rules, unsaid, this.#question.from !== null);

  /** What a path is once it was found: the route, or what was said of it that it doesn't do. */
  #checked(
    layers: readonly Layer[],
    arcs: readonly DirectedEdge[],
    target: NodeId,
  ): Laid | ToldProblem {
    const { end, purpose, from } = this.#question;
    const along = routeAlong(this.#field, arcs);
    const backtracks = this.#items.at(-1)?.code === 'backtrack';
    const entries = purpose === 'landing' || end === null ? [] : this.#entries(end, backtracks);
    const entry =
      entries.find(({ hold, rollsFromM }) => hold === target && rollsFromM === 0) ??
      entries.find(({ hold }) => hold === target) ??
      null;
    const limit = entry === null && along !== null ? this.#limitAt(target, along) : null;
    const crossings = [...(along?.crossings ?? []), ...(limit === null ? [] : [limit])];
    const intoM = entry === null ? null : stripWith(this.#field, entry.end)?.[0].name;
    for (const item of this.#items) {
      if (item.code !== 'hold-short' && item.code !== 'cross' && item.code !== 'backtrack')
        continue;
      const isEntered = item.code !== 'cross' && item.runway === intoM;
      if (!isEntered && !crossings.some(({ runway }) => runway === item.runway)) {
        return { code: 'not-met', what: item.code, runway: item.runway };
      }
    }
    const crossed = new Set(
      this.#items.flatMap((item) => (item.code === 'cross' ? [item.runway] : [])),
    );
    const route = along && {
      ...along,
      crossings: crossings.map((one) => ({ ...one, told: crossed.has(one.runway) })),
    };
    const said = new Set(layers.map(({ name }) => name));
    const byTheWay = (along?.legs ?? []).filter(
      ({ on, name }) => on === 'taxiway' && !said.has(name),
    );
    return {
      route,
      entry,
      byTheWay: byTheWay.map(({ name }) => name),
      exit: purpose === 'landing' && from === null ? (along?.nodes[0] ?? null) : null,
    };
  }

  /** The runway behind the holding point a route ends at, as its next crossing; null for none. */
  #limitAt(target: NodeId, { lengthM, legs }: Route): Crossing | null {
    const hold = this.#node(target);
    if (hold?.kind !== 'hold') return null;
    for (const strip of stripsOf(this.#field)) {
      const beyond = this.#beyond(hold, strip);
      if (beyond === null || legs.at(-1)?.name !== beyond.on) continue;
      const { far, share } = beyond;
      const at = {
        eastM: hold.xM + share * (far.xM - hold.xM),
        northM: hold.yM + share * (far.yM - hold.yM),
      };
      return {
        ...{ runway: strip.name, alongM: 0, told: false, hold: hold.id, at },
        atM: lengthM + share * distanceM(hold, far),
        headingTrueDeg:
          ((Math.atan2(far.xM - hold.xM, far.yM - hold.yM) * 180) / Math.PI + 360) % 360,
        leg: legs.length - 1,
      };
    }
    return null;
  }

  /** Which part of the route can't be reached, and why. */
  #whyNot(layers: readonly Layer[], start: NodeId, targets: readonly NodeId[]): ToldProblem {
    const { rules, end, purpose } = this.#question;
    const bare = this.#search(layers, start, rules, true);
    const stuck = layers.findIndex((_, at) => !bare.reaches(at));
    const named = layers.flatMap(({ name }, at) => (name === null ? [] : [{ name, at }]));
    const last = named.at(-1)?.name ?? '';
    const before = stuck < 0 ? last : (named.findLast(({ at }) => at < stuck)?.name ?? null);
    const reaches = (relaxed: TaxiRules) => {
      const search = this.#search(layers, start, relaxed, true);
      return stuck < 0 ? search.to(targets) !== null : search.reaches(stuck);
    };
    const name = layers[stuck]?.name ?? null;
    const blocked = before ?? name ?? last;
    if (rules.closed.length > 0 && reaches({ ...rules, closed: [] })) {
      return { code: 'closed', name: blocked };
    }
    if (rules.neededWidthM !== null && reaches({ closed: [], neededWidthM: null })) {
      return { code: 'too-narrow', name: blocked };
    }
    if (name !== null) {
      if (before !== null && this.#meet(before, name)) return { code: 'one-way', name };
      const by = before === null ? [] : this.#onwards(start, before, this.#pointsOf(name));
      const one = before ?? this.#node(start)?.name ?? '';
      return { code: 'not-joined', one, other: name, by: by.filter((led) => led !== name) };
    }
    if (purpose === 'landing') return { code: 'no-stand-at-end', last };
    if (end === null) return { code: 'no-start' };
    const entries = this.#entries(end, false);
    const straight = entries.filter(({ rollsFromM, backtrackM }) => rollsFromM + backtrackM === 0);
    const by = [straight, entries].map((some) =>
      this.#onwards(
        start,
        last,
        some.map(({ hold }) => hold),
      ),
    );
    return { code: 'ends-short', last, end, by: by.find(({ length }) => length > 0) ?? [] };
  }

  #pointsOf(name: string): readonly NodeId[] {
    const { edges } = this.#field.taxi;
    return edges.filter((edge) => edge.name === name).flatMap(({ from, to }) => [from, to]);
  }

  /** Whether two names share a point. */
  #meet(one: string, other: string): boolean {
    const points = new Set(this.#pointsOf(one));
    return this.#pointsOf(other).some((point) => points.has(point));
  }

  /**
   * The taxiways that lead on from one to the nearest of some points, for an aircraft that comes
   * from its own place; empty if none does.
   */
  #onwards(start: NodeId, name: string, targets: readonly NodeId[]): readonly string[] {
    const { nodes, edges, indexOf } = this.#graph;
    const weights = weightsOf(this.#graph, this.#question.rules);
    const { cost } = searchFrom(this.#graph, indexOf.get(start) ?? 0, weights);
    // One point more, from which every point of the taxiway is as far as the aircraft is from it.
    const origin: TaxiNode = { id: '', xM: 0, yM: 0, kind: 'junction' };
    const points = [...new Set(this.#pointsOf(name))];
    const begun = points.map(
      (to): TaxiEdge => ({ from: '', to, name, on: 'taxiway', oneWay: true }),
    );
    const graph = graphFrom({ nodes: [...nodes, origin], edges: [...edges, ...begun] });
    const away = points.map((point) => cost[indexOf.get(point) ?? -1] ?? Number.POSITIVE_INFINITY);
    const search = searchFrom(graph, nodes.length, Float64Array.from([...weights, ...away]));
    const costOf = (node: NodeId) =>
      search.cost[graph.indexOf.get(node) ?? -1] ?? Number.POSITIVE_INFINITY;
    const nearest = targets
      .filter((node) => costOf(node) < RUNWAY_WEIGHT)
      .sort((a, b) => costOf(a) - costOf(b))[0];
    if (nearest === undefined) return [];
    const led = (edgesTo(search, graph.indexOf.get(nearest) ?? 0) ?? []).flatMap((arc) => {
      const edge = graph.edges[edgeOf(arc)];
      return edge?.on === 'taxiway' && edge.name !== name ? [edge.name] : [];
    });
    return [...new Set(led)];
  }
}
