/** A field drawn to scale: runways, taxiways, stands, and the route. */

import type { JSX } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Crossing, Field, NodeId, Strip, TaxiEdge, TaxiNode } from '../../core';
import { PlanCorner } from './Corner';
import { busyPixels, freeCorner, keysOn, solidPixels } from './corners';
import { useGestures } from './gestures';
import { boxAround, type LabelBox, placeWords } from './labels';
import styles from './plan.module.css';
import {
  fitted,
  type GroundPoint,
  moved,
  type Sight,
  type Size,
  toGround,
  toPixel,
} from './projection';
import { Strips } from './Strips';
import { crossings as crossingShapes, pathOf, tickMark, type View } from './shapes';
import { wordsOf } from './wanted';

/** What was tapped on the plan. */
export type Picked =
  | { readonly kind: 'node'; readonly node: TaxiNode }
  | { readonly kind: 'edge'; readonly edge: TaxiEdge };

/** A hot spot named by the field's document. */
type HotSpot = NonNullable<Field['taxi']['hotSpots']>[number];

/** What the plan draws. */
export interface PlanProps {
  readonly strips: readonly Strip[];
  readonly nodes: readonly TaxiNode[];
  readonly edges: readonly TaxiEdge[];
  readonly isClosed: (edge: TaxiEdge) => boolean;
  /** The end in use; its runway is solid. */
  readonly using: string | null;
  readonly route: readonly GroundPoint[];
  /** How many metres of the route lie behind the aircraft. */
  readonly goneM: number;
  readonly crossings: readonly Crossing[];
  /** Where others have gone wrong before. */
  readonly hotSpots: readonly HotSpot[];
  /** Where the route begins and ends. */
  readonly from: NodeId | null;
  readonly to: NodeId | null;
  readonly picked: Picked | null;
  readonly onPick: (picked: Picked | null) => void;
  /** How often the pilot asked to zoom in on the selection: what two fingers do, with one. */
  readonly closer: number;
  /** Which heading points up, degrees true; null for north, letters and all. */
  readonly upDeg: number | null;
  /** Where the wind comes from, degrees true; null if it has no direction. */
  readonly windFromDeg: number | null;
  readonly words: PlanWords;
}

export interface PlanWords {
  /** What it shows, for those who can't see it. */
  readonly label: string;
  readonly north: string;
  readonly ahead: (runway: string) => string;
  readonly hold: (name: string) => string;
  readonly whole: string;
}

/** The width of a finger: anything nearer to the tap may be meant, px. */
const FINGER_PX = 28;

/** Minimum margin at the edges, px. */
const MARGIN_PX = 34;

/** The plan; it fills what it is given. */
export function Plan(props: PlanProps): JSX.Element {
  const holder = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  const [moving, setMoving] = useState<{ readonly sight: Sight; readonly layout: object } | null>(
    null,
  );
  useEffect(() => {
    const element = holder.current;
    if (element === null) return;
    const observer = new ResizeObserver(() => {
      setSize({ width: element.clientWidth, height: element.clientHeight });
    });
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  const upDeg = props.upDeg ?? 0;
  // Turned another way, or with another route, the plan is laid out afresh.
  const layout = useMemo(() => ({}), [upDeg, props.strips, props.from, props.to]);
  const own = moving?.layout === layout ? moving.sight : null;
  const setOwn = (to: Sight) => setMoving({ sight: to, layout });
  const sight = own ?? fitted(toBeSeen(props), upDeg, size, MARGIN_PX);

  const { picked, closer } = props;
  useEffect(() => {
    const at = closer > 0 && picked !== null ? middleOf(picked, props.nodes) : null;
    if (at === null) return;
    const middle = { x: size.width / 2, y: size.height / 2 };
    setOwn(moved(sight, size, toPixel(at, sight, size), middle, CLOSER));
  }, [closer]);

  const gestures = useGestures({
    onMove: (from, to, growth) => setOwn(moved(sight, size, from, to, growth)),
    onTap: (at) => props.onPick(nearest(props, toGround(at, sight, size), sight.pxPerM)),
  });

  const onKeyDown = (event: KeyboardEvent) => {
    const step = KEY_STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const middle = { x: size.width / 2, y: size.height / 2 };
    const to = { x: middle.x + (step.x ?? 0), y: middle.y + (step.y ?? 0) };
    setOwn(moved(sight, size, middle, to, step.growth ?? 1));
  };

  return (
    <div class={styles.holder} ref={holder}>
      <section
        class={styles.surface}
        // biome-ignore lint/a11y/noNoninteractiveTabindex: moved with the arrow keys, larger and smaller with + and −.
        tabIndex={0}
        onKeyDown={onKeyDown}
        {...gestures}
        aria-label={props.words.label}
      >
        {size.width > 0 && size.height > 0 && <Drawing {...props} view={{ sight, size }} />}
      </section>
      {own !== null && (
        <button type="button" class={styles.whole} onClick={() => setMoving(null)}>
          {props.words.whole}
        </button>
      )}
    </div>
  );
}

/** The zoom factor of each request. */
const CLOSER = 1.8;

/** Where the selection lies; null if the plan doesn't draw it. */
function middleOf(picked: Picked, nodes: readonly TaxiNode[]): GroundPoint | null {
  if (picked.kind === 'node') return groundAt(picked.node);
  const { from, to } = picked.edge;
  const ends = nodes.filter(({ id }) => id === from || id === to).map(groundAt);
  const [one, other] = ends;
  if (one === undefined || other === undefined) return null;
  return {
    eastM: (one.eastM + other.eastM) / 2,
    northM: (one.northM + other.northM) / 2,
  };
}

const KEY_STEPS: Readonly<
  Partial<Record<string, { readonly x?: number; readonly y?: number; readonly growth?: number }>>
> = {
  ArrowLeft: { x: 60 },
  ArrowRight: { x: -60 },
  ArrowUp: { y: 60 },
  ArrowDown: { y: -60 },
  '+': { growth: 1.25 },
  '=': { growth: 1.25 },
  '-': { growth: 0.8 },
};

/** What to show: the route and the beginning of the run; without a route, everything. */
function toBeSeen({ route, strips, nodes, using }: PlanProps): readonly GroundPoint[] {
  const ends = strips.flatMap((strip) => strip.ends);
  const run = ends.filter(({ designator }) => designator === using).map(({ at }) => at);
  if (route.length > 1) return [...route, ...run];
  return [...ends.map(({ at }) => at), ...nodes.map(groundAt)];
}

export const groundAt = ({ xM, yM }: Pick<TaxiNode, 'xM' | 'yM'>): GroundPoint => ({
  eastM: xM,
  northM: yM,
});

/** The point nearest to a tap, else the stretch; null if neither is within a finger. */
function nearest({ nodes, edges }: PlanProps, at: GroundPoint, pxPerM: number): Picked | null {
  const reachM = FINGER_PX / pxPerM;
  const far = (node: TaxiNode) => Math.hypot(node.xM - at.eastM, node.yM - at.northM);
  let node: TaxiNode | null = null;
  for (const one of nodes) {
    if (far(one) <= reachM && (node === null || far(one) < far(node))) node = one;
  }
  const isJunctionBeside = node !== null && node.kind === 'junction' && far(node) > reachM / 2;
  if (node !== null && !isJunctionBeside) return { kind: 'node', node };
  const byId = new Map(nodes.map((one) => [one.id, one]));
  let edge: TaxiEdge | null = null;
  let least = reachM;
  for (const one of edges) {
    const [from, to] = [byId.get(one.from), byId.get(one.to)];
    const offM = from && to ? offStretchM(at, groundAt(from), groundAt(to)) : least;
    if (offM < least) [edge, least] = [one, offM];
  }
  if (edge !== null) return { kind: 'edge', edge };
  return node === null ? null : { kind: 'node', node };
}

function offStretchM(at: GroundPoint, from: GroundPoint, to: GroundPoint): number {
  const [east, north] = [to.eastM - from.eastM, to.northM - from.northM];
  const lengthM2 = Math.max(east * east + north * north, 1e-9);
  const along = ((at.eastM - from.eastM) * east + (at.northM - from.northM) * north) / lengthM2;
  const share = Math.min(1, Math.max(0, along));
  return Math.hypot(at.eastM - from.eastM - share * east, at.northM - from.northM - share * north);
}

function Drawing(props: PlanProps & { readonly view: View }) {
  const { view, strips, nodes, edges, isClosed, using, route, goneM, crossings, words } = props;
  const { sight, size } = view;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const stretch = ({ from, to }: TaxiEdge) => {
    const ends = [byId.get(from), byId.get(to)].flatMap((node) => (node ? [groundAt(node)] : []));
    return pathOf(ends, view);
  };
  const open = edges.filter((edge) => edge.on !== 'runway' && !isClosed(edge));
  const dot = (id: NodeId | null) => {
    const node = id === null ? undefined : byId.get(id);
    return node && toPixel(groundAt(node), sight, size);
  };
  const corner = freeCorner(busyPixels(props, view), size);
  const lines = solidPixels(props, view).map((pixel) => boxAround(pixel, 14, 14));
  const scale: LabelBox = { x: 0, y: size.height - 34, width: 130, height: 34 };
  const spots = nodes
    .filter(({ kind }) => kind === 'stand')
    .map((node) => toPixel(groundAt(node), sight, size));
  const taken = [
    corner,
    scale,
    ...keysOn(size),
    ...spots.map((spot) => boxAround(spot, 10, 10)),
    ...crossings.map(({ at }) => boxAround(toPixel(at, sight, size), 36, 36)),
    ...[props.from, props.to].flatMap((id) => {
      const end = dot(id);
      return end ? [boxAround(end, 22, 22)] : [];
    }),
  ];
  const hot = props.hotSpots.map((one) => toPixel(groundAt(one), sight, size));
  const placed = placeWords(wordsOf(props, view), size, taken, lines);
  const hatched = crossingShapes(crossings, view);
  const [start, finish, picked] = [
    dot(props.from),
    dot(props.to),
    props.picked?.kind === 'node' ? dot(props.picked.node.id) : undefined,
  ];
  return (
    <svg
      class={styles.plan}
      width={size.width}
      height={size.height}
      viewBox={`0 0 ${size.width} ${size.height}`}
      aria-hidden="true"
    >
      <path
        class={styles.apron}
        d={open
          .filter(({ on }) => on === 'apron')
          .map(stretch)
          .join('')}
      />
      <path
        class={styles.taxiway}
        d={open
          .filter(({ on }) => on === 'taxiway')
          .map(stretch)
          .join('')}
      />
      <Strips strips={strips} using={using} view={view} />
      <path class={styles.closed} d={edges.filter(isClosed).map(stretch).join('')} />
      {props.picked?.kind === 'edge' && (
        <path class={styles.pickedEdge} d={stretch(props.picked.edge)} />
      )}
      <path class={styles.route} d={pathOf(route, view)} />
      <path class={styles.gone} d={pathOf(route, view, goneM)} />
      <path
        class={styles.holds}
        d={nodes
          .filter(({ kind }) => kind === 'hold')
          .map((node) => tickMark(node, edges, byId, view))
          .join('')}
      />
      {hatched.map(({ outline, lines }) => (
        <g key={outline}>
          <path class={styles.crossing} d={outline} />
          <path class={styles.hatch} d={lines} />
        </g>
      ))}
      {hot.map(({ x, y }) => (
        <circle key={`${x} ${y}`} class={styles.hot} cx={x} cy={y} r={15} />
      ))}
      {spots.map(({ x, y }) => (
        <circle key={`${x} ${y}`} class={styles.spot} cx={x} cy={y} r={4} />
      ))}
      {finish && <circle class={styles.finish} cx={finish.x} cy={finish.y} r={9} />}
      {start && <circle class={styles.start} cx={start.x} cy={start.y} r={9} />}
      {picked && <circle class={styles.picked} cx={picked.x} cy={picked.y} r={16} />}
      {placed.map(({ key, kind, text, x, y, width, height }) => (
        <g key={key} class={styles[kind]}>
          <rect x={x - width / 2} y={y - height / 2} width={width} height={height} />
          <text x={x} y={y + 6.5}>
            {text}
          </text>
        </g>
      ))}
      <PlanCorner
        at={corner}
        size={size}
        pxPerM={sight.pxPerM}
        upDeg={sight.upDeg}
        windFromDeg={props.windFromDeg}
        words={words}
      />
    </svg>
  );
}
