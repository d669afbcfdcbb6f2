/** A field drawn to scale: runways, taxiways, stands, and the route. */

import type { JSX, RefObject } from 'preact';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Crossing, Field, NodeId, Strip, TaxiEdge, TaxiNode } from '../../core';
import { PlanCorner } from './Corner';
import { busyPixels, freeCorner, keysOn, solidPixels } from './corners';
import { useGestures } from './gestures';
import { type Ground, groundAt, groundOf } from './ground';
import { boxAround, type LabelBox, type PlacedLabel, placeWords } from './labels';
import styles from './plan.module.css';
import {
  fitted,
  type GroundPoint,
  matrix,
  moved,
  type Pixel,
  projection,
  type Size,
  toGround,
  toPixel,
} from './projection';
import { numberBoxes, Strips } from './Strips';
import { crossings as crossingShapes, holdBar, pathOf, type View } from './shapes';
import { useSight } from './sight';
import { type Sign, signsOf, wordsOf } from './wanted';

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
  /** A place to look at: ringed, and brought to the middle when it becomes another one. */
  readonly place?: GroundPoint | null;
  readonly onPick: (picked: Picked | null) => void;
  /** How often the pilot asked to zoom in on the selection: what two fingers do, with one. */
  readonly closer: number;
  /** Which heading points up, degrees true; null for north, letters and all. */
  readonly upDeg: number | null;
  /** How much of its top is covered by keys, px. */
  readonly coveredPx?: number;
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
  const layer = useRef<HTMLDivElement>(null);
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
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
  const { picked, closer, strips, nodes, edges, route, using, from, to, isClosed } = props;
  const { coveredPx = 0 } = props;
  // Turned another way, or with another route, the plan is laid out afresh.
  const layout = useMemo(() => ({}), [upDeg, strips, from, to]);
  const whole = useMemo(
    () => fitted(toBeSeen(props), upDeg, size, MARGIN_PX, coveredPx),
    [upDeg, size, strips, nodes, route, using, coveredPx],
  );
  const { sight, isOwn, now, look, reset } = useSight(whole, layout, size, layer);
  const ground = useMemo(() => groundOf(nodes, edges, isClosed), [nodes, edges, isClosed]);
  const signs = useMemo(() => signsOf(edges, ground.byId, route), [edges, ground, route]);
  const middle = { x: size.width / 2, y: size.height / 2 };

  useEffect(() => {
    const at = closer > 0 && picked !== null ? middleOf(picked, nodes) : null;
    if (at === null) return;
    look(moved(now(), size, toPixel(at, now(), size), middle, CLOSER), true);
  }, [closer]);

  const shown = props.place ?? null;
  useEffect(() => {
    if (shown === null || size.width === 0) return;
    const pxPerM = Math.max(now().pxPerM, PLACE_PX_PER_M);
    look({ ...now(), middle: shown, pxPerM }, true);
  }, [shown, size.width === 0]);

  const gestures = useGestures({
    onMove: (at, onto, growth) => look(moved(now(), size, at, onto, growth)),
    onTap: (at) => props.onPick(nearest(props, toGround(at, now(), size), now().pxPerM)),
  });

  const onKeyDown = (event: KeyboardEvent) => {
    const step = KEY_STEPS[event.key];
    if (step === undefined) return;
    event.preventDefault();
    const onto = { x: middle.x + (step.x ?? 0), y: middle.y + (step.y ?? 0) };
    look(moved(now(), size, middle, onto, step.growth ?? 1));
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
        {size.width > 0 && size.height > 0 && (
          <Drawing {...props} ground={ground} signs={signs} view={{ sight, size }} layer={layer} />
        )}
      </section>
      {isOwn && (
        <button type="button" class={styles.whole} onClick={reset}>
          {props.words.whole}
        </button>
      )}
    </div>
  );
}

/** How close a place is looked at, at least, px a metre: 400 m on a tablet. */
const PLACE_PX_PER_M = 1;

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

interface DrawingProps extends PlanProps {
  readonly ground: Ground;
  readonly signs: readonly Sign[];
  readonly view: View;
  /** What is shifted while the plan moves. */
  readonly layer: RefObject<HTMLDivElement | null>;
}

function Drawing(props: DrawingProps) {
  const { view, ground, strips, using, route, goneM, crossings, words, place = null } = props;
  const { sight, size } = view;
  const pixel = useMemo(() => projection(sight, size), [sight, size]);
  const corner = useMemo(
    () => freeCorner(busyPixels(props, view), numberBoxes(strips, view), size),
    [route, strips, sight, size],
  );
  const placed = useMemo(
    () => placedWords(props, corner, pixel),
    [
      props.nodes,
      strips,
      props.signs,
      crossings,
      props.hotSpots,
      props.from,
      props.to,
      using,
      sight,
      size,
    ],
  );
  const dot = (id: NodeId | null) => {
    const node = id === null ? undefined : ground.byId.get(id);
    return node && pixel(groundAt(node));
  };
  const hot = props.hotSpots.map((one) => pixel(groundAt(one)));
  const hatched = crossingShapes(crossings, view);
  const { picked } = props;
  const ends = picked?.kind === 'edge' ? [picked.edge.from, picked.edge.to] : [];
  const [start, finish, ringed] = [
    dot(props.from),
    dot(props.to),
    picked?.kind === 'node' ? dot(picked.node.id) : place === null ? undefined : pixel(place),
  ];
  const onGround = { transform: `matrix(${matrix(sight, size).join(' ')})` };
  const isDense = ground.standsApartM * sight.pxPerM < DENSE_PX;
  const drawing = {
    class: styles.plan,
    width: size.width,
    height: size.height,
    viewBox: `0 0 ${size.width} ${size.height}`,
  };
  return (
    <>
      <div class={styles.layer} ref={props.layer}>
        <svg {...drawing} aria-hidden="true">
          <path class={styles.apron} d={ground.apron} {...onGround} />
          <path class={styles.taxiway} d={ground.taxiway} {...onGround} />
          <Strips strips={strips} using={using} view={view} />
          <path class={styles.closed} d={ground.closed} {...onGround} />
          {ends.length > 0 && (
            <path
              class={styles.pickedEdge}
              d={pathOf(
                ends.flatMap((id) => {
                  const node = ground.byId.get(id);
                  return node ? [groundAt(node)] : [];
                }),
                view,
              )}
            />
          )}
          <path class={styles.route} d={pathOf(route, view)} />
          <path class={styles.gone} d={pathOf(route, view, goneM)} />
          {[false, true].map((assumed) => (
            <path
              key={String(assumed)}
              class={`${styles.holds} ${assumed ? styles.assumed : ''}`}
              d={ground.holds
                .filter((hold) => hold.assumed === assumed)
                .map((hold) => holdBar(hold, view))
                .join('')}
            />
          ))}
          {hatched.map(({ outline, lines }) => (
            <g key={outline}>
              <path class={styles.crossing} d={outline} />
              <path class={styles.hatch} d={lines} />
            </g>
          ))}
          {hot.map(({ x, y }) => (
            <circle key={`${x} ${y}`} class={styles.hot} cx={x} cy={y} r={15} />
          ))}
          <g class={isDense ? styles.dense : styles.spots}>
            <path class={styles.spotEdge} d={ground.stands} {...onGround} />
            <path class={styles.spot} d={ground.stands} {...onGround} />
          </g>
          {finish && <circle class={styles.finish} cx={finish.x} cy={finish.y} r={9} />}
          {start && <circle class={styles.start} cx={start.x} cy={start.y} r={9} />}
          {ringed && <circle class={styles.picked} cx={ringed.x} cy={ringed.y} r={16} />}
          {placed.map(({ key, kind, text, x, y, width, height }) => (
            <g key={key} class={styles[kind]}>
              <rect x={x - width / 2} y={y - height / 2} width={width} height={height} />
              <text x={x} y={y + 6.5}>
                {text}
              </text>
            </g>
          ))}
        </svg>
      </div>
      <svg {...drawing} aria-hidden="true" class={`${styles.plan} ${styles.over}`}>
        <PlanCorner
          at={corner}
          size={size}
          pxPerM={sight.pxPerM}
          upDeg={sight.upDeg}
          windFromDeg={props.windFromDeg}
          words={words}
        />
      </svg>
    </>
  );
}

/** Stands closer together than this, px, are drawn as smaller dots. */
const DENSE_PX = 14;

/** The words of the plan in their places. */
function placedWords(
  props: DrawingProps,
  corner: LabelBox,
  pixel: (point: GroundPoint) => Pixel,
): readonly PlacedLabel[] {
  const { ground, strips, view } = props;
  const { size } = view;
  const lines = solidPixels(props, view).map((at) => boxAround(at, 14, 14));
  const scale: LabelBox = { x: 0, y: size.height - 34, width: 130, height: 34 };
  const ends = [props.from, props.to].flatMap((id) => {
    const node = id === null ? undefined : ground.byId.get(id);
    return node ? [boxAround(pixel(groundAt(node)), 22, 22)] : [];
  });
  const taken = [
    corner,
    scale,
    ...keysOn(size),
    ...numberBoxes(strips, view),
    ...ground.named
      .filter(({ kind }) => kind === 'stand')
      .map((node) => boxAround(pixel(groundAt(node)), 10, 10)),
    ...props.crossings.map(({ at }) => boxAround(pixel(at), 36, 36)),
    ...ends,
  ];
  return placeWords(wordsOf(props, ground, props.signs, view), size, taken, lines);
}
