/** What is missing in a field being drawn, as sentences; each leads to its place. */

import type { JSX } from 'preact';
import { editorParts } from '../../board/drawing';
import type { Fault, Field, RouteGap } from '../../core';
import styles from './FieldEditor.module.css';
import { words as faultWords } from './faultWords';
import { type Chosen, lookAt, type PartName, partShown } from './hand';
import { gapWords, needs, pointName, stretchName, words } from './words';

interface Lack {
  readonly text: string;
  readonly part: PartName;
  readonly chooses?: Chosen;
}

/** What keeps the field from being a document. */
export function lacksOf(field: Field): readonly Lack[] {
  const { latDeg, lonDeg } = field.place;
  const faults = editorParts.value?.fieldFaults(field) ?? [];
  return [
    ...(field.code === '' ? [{ text: needs.code, part: 'field' as const }] : []),
    ...(field.name === '' ? [{ text: needs.name, part: 'field' as const }] : []),
    ...(latDeg === 0 && lonDeg === 0 ? [{ text: needs.place, part: 'field' as const }] : []),
    ...(field.runways.length === 0 ? [{ text: needs.runway, part: 'runways' as const }] : []),
    ...faults.map((fault) => lackOf(field, fault)),
  ];
}

function lackOf(field: Field, { code, path }: Fault): Lack {
  const [of, at] = path;
  const index = Number(at);
  const isRunway = of === 'runways';
  const ends = isRunway ? (field.runways[index]?.ends ?? []) : [];
  const name = ends.map(({ designator }) => designator).join('/');
  const text = faultWords.of(name, faultWords.faults[code] ?? code);
  return { text, part: isRunway ? 'runways' : of === 'taxi' ? 'plan' : 'field' };
}

/** What is missing for a way, each with what is to be looked at. */
function gapsOf(field: Field): readonly Lack[] {
  const { nodes, edges } = field.taxi;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const core = editorParts.value;
  const name = (id: string): string => {
    const node = byId.get(id);
    if (node) return pointName(node);
    const edge = edges.find((one) => core?.stretchId(one) === id);
    return edge
      ? stretchName(edge.name, pointName(byId.get(edge.from)), pointName(byId.get(edge.to)))
      : id;
  };
  return (core?.routeGaps(field) ?? []).map((gap) => {
    const chooses = placeOf(gap);
    return { text: gapWords(gap, name), part: 'plan', ...(chooses ? { chooses } : {}) };
  });
}

function placeOf(gap: RouteGap): Chosen | null {
  switch (gap.code) {
    case 'in-pieces':
      return gap.nodes[0] === undefined ? null : { kind: 'node', id: gap.nodes[0] };
    case 'no-way':
      return { kind: 'node', id: gap.stand };
    case 'crosses-unsaid':
    case 'crosses-not':
      return { kind: 'stretch', id: gap.stretch };
    default:
      return null;
  }
}

/** The lists of what is missing. */
export function Checks({ field }: { readonly field: Field }): JSX.Element {
  const lacks = lacksOf(field);
  const gaps = field.runways.length === 0 ? [] : gapsOf(field);
  return (
    <section class={styles.checks} aria-live="polite">
      {lacks.length > 0 && <List title={words.must} lacks={lacks} />}
      {gaps.length > 0 && <List title={words.gaps} lacks={gaps} />}
      {lacks.length + gaps.length === 0 && <p>{words.nothingMissing}</p>}
    </section>
  );
}

/** More are not said at once. */
const MOST = 12;

function List({ title, lacks }: { readonly title: string; readonly lacks: readonly Lack[] }) {
  return (
    <>
      <h3 class={styles.title}>{title}</h3>
      <ul>
        {lacks.slice(0, MOST).map(({ text, part, chooses }) => (
          <li key={text}>
            <button
              type="button"
              class={styles.row}
              onClick={() => {
                partShown.value = part;
                if (chooses) lookAt(chooses);
              }}
            >
              {text}
            </button>
          </li>
        ))}
        {lacks.length > MOST && <li>{words.andMore(lacks.length - MOST)}</li>}
      </ul>
    </>
  );
}
