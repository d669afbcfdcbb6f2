/** A field's plan on paper: whole, north up, with the names that have room. */

import type { JSX } from 'preact';
import type { Field, Strip } from '../../core';
import { groundAt, groundOf } from '../../parts/plan/ground';
import { placeWords } from '../../parts/plan/labels';
import { fitted, matrix } from '../../parts/plan/projection';
import { numberBoxes, Strips } from '../../parts/plan/Strips';
import { signsOf, wordsOf } from '../../parts/plan/wanted';
import styles from './Print.module.css';
import { words } from './words';

/** Drawn this large, and printed as wide as the paper: a word is then 3 mm high. */
const SIZE = { width: 760, height: 640 };

const MARGIN_PX = 40;

interface PaperPlanProps {
  readonly field: Field;
  readonly strips: readonly Strip[];
}

/** The plan. */
export function PaperPlan({ field, strips }: PaperPlanProps): JSX.Element {
  const { nodes, edges, hotSpots = [] } = field.taxi;
  const shown = [...nodes.map(groundAt), ...strips.flatMap(({ ends }) => ends.map(({ at }) => at))];
  const view = { sight: fitted(shown, 0, SIZE, MARGIN_PX), size: SIZE };
  const ground = groundOf(nodes, edges, () => false);
  const signs = signsOf(edges, ground.byId, []);
  const label = words.planLabel(`${field.code} ${field.name}`);
  const wanted = wordsOf(
    { ...NOTHING_SET, strips, nodes, edges, hotSpots, words: { ...PLAIN_WORDS, label } },
    ground,
    signs,
    view,
  );
  const placed = placeWords(wanted, SIZE, numberBoxes(strips, view), []);
  const onGround = { transform: `matrix(${matrix(view.sight, SIZE).join(' ')})` };
  return (
    <svg
      class={styles.plan}
      viewBox={`0 0 ${SIZE.width} ${SIZE.height}`}
      role="img"
      aria-label={label}
    >
      <path class={styles.ways} d={ground.apron + ground.taxiway} {...onGround} />
      <Strips strips={strips} using={null} view={view} />
      <path class={styles.stands} d={ground.stands} {...onGround} />
      {placed.map(({ key, text, x, y, kind }) => (
        <text key={key} x={x} y={y + 7} class={kind === 'sign' ? styles.letter : styles.place}>
          {text}
        </text>
      ))}
    </svg>
  );
}

/** Nobody is on it yet: no route, nothing chosen. */
const NOTHING_SET = {
  isClosed: () => false,
  using: null,
  route: [],
  goneM: 0,
  crossings: [],
  from: null,
  to: null,
  picked: null,
  onPick: () => undefined,
  closer: 0,
  upDeg: null,
  windFromDeg: null,
};

/** What is painted is the same in every language. */
const PLAIN_WORDS = { north: 'N', ahead: String, hold: String, whole: '' };
