/**
 * The plan of a field being drawn, as SVG: everything with its name, the selection, and the pen.
 */

import type { JSX } from 'preact';
import {
  type ChangedPlaces,
  type Field,
  type Strip,
  stretchId,
  type TaxiEdge,
  type TaxiNode,
} from '../../core';
import { boxAround, placeWords } from '../../parts/plan/labels';
import { scaleM, toPixel } from '../../parts/plan/projection';
import { Strips } from '../../parts/plan/Strips';
import { pathOf, tickMark, type View } from '../../parts/plan/shapes';
import styles from './Board.module.css';
import { chosen, marks, pen, type Spot } from './hand';
import { handling } from './trace';
import { words } from './words';

interface DrawnProps {
  readonly field: Field;
  readonly strips: readonly Strip[];
  readonly view: View;
  /** Where the selected point is being dragged; null while none is. */
  readonly dragged: Spot | null;
}

const groundOf = ({ xM, yM }: Spot) => ({ eastM: xM, northM: yM });

/** The longest scale bar, px. */
const SCALE_PX = 110;

/** The drawing. Screen readers get the list beside it instead. */
export function Drawn({ field, strips, view, dragged }: DrawnProps): JSX.Element {
  const { sight, size } = view;
  const what = chosen.value;
  const nodes = field.taxi.nodes.map((node) =>
    dragged !== null && what?.kind === 'node' && node.id === what.id
      ? { ...node, ...dragged }
      : node,
  );
  const hotSpots = (field.taxi.hotSpots ?? []).map((hot, index) =>
    dragged !== null && what?.kind === 'hot-spot' && index === what.index
      ? { ...hot, ...dragged }
      : hot,
  );
  const { edges } = field.taxi;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const line = ({ from, to }: TaxiEdge) =>
    pathOf(
      [byId.get(from), byId.get(to)].flatMap((node) => (node ? [groundOf(node)] : [])),
      view,
    );
  const lines = (of: (edge: TaxiEdge) => boolean) => edges.filter(of).map(line).join('');
  const at = (spot: Spot) => toPixel(groundOf(spot), sight, size);
  const isChosen = (edge: TaxiEdge) => what?.kind === 'stretch' && stretchId(edge) === what.id;
  const spot =
    what?.kind === 'node'
      ? byId.get(what.id)
      : what?.kind === 'hot-spot'
        ? hotSpots[what.index]
        : undefined;
  const penAt = pen.value === null ? undefined : byId.get(pen.value);
  return (
    <svg
      class={styles.plan}
      width={size.width}
      height={size.height}
      viewBox={`0 0 ${size.width} ${size.height}`}
      aria-hidden="true"
    >
      <g class={handling.value.kind === 'places' ? styles.aside : undefined}>
        <Strips strips={strips} using={null} view={view} />
        <path class={styles.runway} d={lines(({ on }) => on === 'runway')} />
        <path class={styles.apron} d={lines(({ on }) => on === 'apron')} />
        <path class={styles.taxiway} d={lines(({ on }) => on === 'taxiway')} />
        <path class={styles.crosses} d={lines(({ on, crosses }) => on !== 'runway' && !!crosses)} />
        <path class={styles.chosenLine} d={lines(isChosen)} />
        <path
          class={styles.holds}
          d={nodes
            .filter(({ kind }) => kind === 'hold')
            .map((node) => tickMark(node, edges, byId, view))
            .join('')}
        />
        {nodes.map((node) => (
          <Dot key={node.id} kind={node.kind} {...at(node)} />
        ))}
        {hotSpots.map((hot, index) => (
          <circle key={index} class={styles.hot} cx={at(hot).x} cy={at(hot).y} r={15} />
        ))}
        {penAt && <circle class={styles.pen} cx={at(penAt).x} cy={at(penAt).y} r={9} />}
        {spot && <circle class={styles.chosen} cx={at(spot).x} cy={at(spot).y} r={17} />}
        <Names nodes={nodes} edges={edges} hotSpots={hotSpots} view={view} byId={byId} />
      </g>
      {marks.value && <Marks of={marks.value} view={view} />}
      <Scale view={view} />
      <path
        class={styles.cross}
        d={`M${size.width / 2 - 14} ${size.height / 2}h28M${size.width / 2} ${size.height / 2 - 14}v28`}
      />
    </svg>
  );
}

/** Where something was or is missing: more marks at once would show nothing. */
const MOST_MARKS = 60;

/** Rings and dashes at the places that the plan was turned to. */
function Marks({ of, view }: { of: ChangedPlaces; view: View }) {
  const lines = of.lines.slice(0, MOST_MARKS).map((line) => pathOf(line, view));
  return (
    <>
      <path class={styles.mark} d={lines.join('')} />
      {of.spots.slice(0, MOST_MARKS).map((spot, index) => {
        const { x, y } = toPixel(spot, view.sight, view.size);
        return <circle key={index} class={styles.mark} cx={x} cy={y} r={22} />;
      })}
    </>
  );
}

function Dot({ kind, x, y }: { kind: TaxiNode['kind']; x: number; y: number }) {
  if (kind === 'stand')
    return <rect class={styles.stand} x={x - 5} y={y - 5} width={10} height={10} />;
  if (kind === 'hold') return null;
  return <circle class={styles[kind]} cx={x} cy={y} r={kind === 'runway' ? 4.5 : 3.5} />;
}

interface NamesProps {
  readonly nodes: readonly TaxiNode[];
  readonly edges: readonly TaxiEdge[];
  readonly hotSpots: readonly (Spot & { readonly name: string })[];
  readonly byId: ReadonlyMap<string, TaxiNode>;
  readonly view: View;
}

/** The words of the plan, each where it finds room; a taxiway's letter on its longest stretch. */
function Names({ nodes, edges, hotSpots, byId, view }: NamesProps) {
  const at = (spot: Spot) => toPixel(groundOf(spot), view.sight, view.size);
  const around = (spot: Spot, text: string) => {
    const { x, y } = at(spot);
    const aside = text.length * 5.5 + 18;
    return [
      { x, y: y + 24 },
      { x, y: y - 24 },
      { x: x + aside, y },
      { x: x - aside, y },
    ];
  };
  const longest = new Map<string, { lengthM: number; middle: Spot }>();
  for (const { from, to, name, on } of edges) {
    const [a, b] = [byId.get(from), byId.get(to)];
    if (on !== 'taxiway' || !a || !b) continue;
    const lengthM = Math.hypot(b.xM - a.xM, b.yM - a.yM);
    if (lengthM <= (longest.get(name)?.lengthM ?? 0)) continue;
    longest.set(name, { lengthM, middle: { xM: (a.xM + b.xM) / 2, yM: (a.yM + b.yM) / 2 } });
  }
  const wanted = [
    ...[...longest].map(([name, { middle }]) => ({
      key: `t${name}`,
      text: name,
      kind: 'sign' as const,
      at: [at(middle)],
    })),
    ...hotSpots.map((hot, index) => ({
      key: `h${index}`,
      text: hot.name,
      kind: 'warning' as const,
      at: around(hot, hot.name),
    })),
    ...nodes.flatMap((node) => {
      if (node.name === undefined) return [];
      const text = node.kind === 'stand' ? node.name.replace(/^stand\s+/i, '') : node.name;
      return [{ key: node.id, text, kind: 'stand' as const, at: around(node, text) }];
    }),
  ];
  const dots = nodes.map((node) => boxAround(at(node), 8, 8));
  return (
    <>
      {placeWords(wanted, view.size, dots, []).map(({ key, kind, text, x, y, width, height }) => (
        <g key={key} class={styles[kind === 'sign' ? 'sign' : 'word']}>
          {kind === 'sign' && (
            <rect x={x - width / 2} y={y - height / 2} width={width} height={height} />
          )}
          <text x={x} y={y + 6.5}>
            {text}
          </text>
        </g>
      ))}
    </>
  );
}

function Scale({ view: { sight, size } }: { view: View }) {
  const lengthM = scaleM(sight.pxPerM, SCALE_PX);
  const y = size.height - 8;
  return (
    <>
      <path class={styles.scale} d={`M8 ${y - 8}V${y}H${8 + lengthM * sight.pxPerM}V${y - 8}`} />
      <text class={styles.scaleText} x={12} y={y - 7}>
        {words.metres(lengthM)}
      </text>
      <path class={styles.northArrow} d={`M${size.width - 22} 12l-8 24h16z`} />
      <text class={styles.northText} x={size.width - 22} y={54}>
        {words.north}
      </text>
    </>
  );
}
