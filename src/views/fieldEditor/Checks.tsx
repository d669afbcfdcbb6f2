/** What is missing in a field being drawn, as sentences; each leads to its place. */

import type { JSX } from 'preact';
import { drawnFaults } from '../../board/writing/field';
import {
  type ChangedPlaces,
  type DocumentFault,
  draftStrips,
  type Field,
  isPlaced,
  type RouteGap,
  routeGaps,
  stretchId,
} from '../../core';
import styles from './FieldEditor.module.css';
import { words as faultWords } from './faultWords';
import { lookAtPlaces, lookAtPlan, type PartName, partShown, type Selection } from './hand';
import { gapWords, needs, pointName, stretchName, words } from './words';

interface Lack {
  readonly text: string;
  readonly part: PartName;
  readonly chooses?: Selection;
  /** What the plan shows where nothing can be chosen. */
  readonly marks?: ChangedPlaces;
}

/** What keeps the field from being a document. */
export function lacksOf(field: Field): readonly Lack[] {
  const lacks = drawnFaults.value.map((fault) => lackOf(field, fault));
  return [
    ...lacks.filter(({ part }) => part === 'field'),
    ...(isPlaced(field) ? [] : [{ text: needs.place, part: 'runways' as const }]),
    ...lacks.filter(({ part }) => part !== 'field'),
  ];
}

function lackOf(field: Field, { code, path }: DocumentFault): Lack {
  const [of, at] = path;
  const index = Number(at);
  switch (of) {
    case 'code':
      return { text: needs.code, part: 'field' };
    case 'name':
      return {
        text: code === 'text-missing' ? needs.name : faultWords.of('', code),
        part: 'field',
      };
    case 'runways': {
      const ends = field.runways[index]?.ends ?? [];
      const name = ends.map(({ designator }) => designator).join('/');
      const text = code === 'too-few' ? needs.runway : faultWords.of(name, code);
      return { text, part: 'runways' };
    }
    default:
      return { text: faultWords.of('', code), part: of === 'taxi' ? 'plan' : 'field' };
  }
}

/** What is missing for a route, each item with what to look at. */
function gapsOf(field: Field): readonly Lack[] {
  const { nodes, edges } = field.taxi;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const name = (id: string): string => {
    const node = byId.get(id);
    if (node) return pointName(node);
    const edge = edges.find((one) => stretchId(one) === id);
    return edge
      ? stretchName(edge.name, pointName(byId.get(edge.from)), pointName(byId.get(edge.to)))
      : id;
  };
  return routeGaps(field).map((gap) => {
    const chooses = placeOf(gap);
    const marks = runwayOf(field, gap);
    return {
      text: gapWords(gap, name),
      part: 'plan',
      ...(chooses ? { chooses } : {}),
      ...(marks ? { marks } : {}),
    };
  });
}

function placeOf(gap: RouteGap): Selection | null {
  switch (gap.code) {
    case 'in-pieces':
      return gap.nodes[0] === undefined ? null : { kind: 'node', id: gap.nodes[0] };
    case 'no-way':
      return { kind: 'node', id: gap.stand };
    case 'crosses-unsaid':
    case 'crosses-not':
    case 'runway-unguarded':
      return { kind: 'stretch', id: gap.stretch };
    default:
      return null;
  }
}

/** The end, or the runway, that something is missing at. */
function runwayOf(field: Field, gap: RouteGap): ChangedPlaces | null {
  if (gap.code === 'end-without-hold') {
    const ends = draftStrips(field).flatMap((strip) => strip.ends);
    const spots = ends.filter(({ designator }) => designator === gap.end).map(({ at }) => at);
    return { spots, lines: [] };
  }
  if (gap.code !== 'runway-without-exit') return null;
  const strips = draftStrips(field).filter((strip) => strip.name === gap.runway);
  return { spots: [], lines: strips.map(({ ends: [one, other] }) => [one.at, other.at] as const) };
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

/** No more are listed at once. */
const MOST = 12;

function List({ title, lacks }: { readonly title: string; readonly lacks: readonly Lack[] }) {
  return (
    <>
      <h3 class={styles.title}>{title}</h3>
      <ul>
        {lacks.slice(0, MOST).map(({ text, part, chooses, marks }) => (
          <li key={text}>
            <button
              type="button"
              class={styles.row}
              onClick={() => {
                partShown.value = part;
                if (chooses) lookAtPlan(chooses);
                else if (marks) lookAtPlaces(marks);
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
