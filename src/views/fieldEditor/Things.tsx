/** Everything drawn, as lists: selecting in them selects on the plan. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Field, stretchId } from '../../core';
import styles from './FieldEditor.module.css';
import { chosen, lookAtPlan, type Selection } from './hand';
import { pointName, stretchName, words } from './words';

interface Thing {
  readonly key: string;
  readonly name: string;
  readonly chooses: Selection;
}

/** The lists, each closed until opened. */
export function Things({ field }: { readonly field: Field }): JSX.Element {
  const { nodes, edges, hotSpots = [] } = field.taxi;
  const byId = new Map(nodes.map((node) => [node.id, node]));
  const stretches = edges.map((edge): Thing => {
    const id = stretchId(edge);
    const [from, to] = [pointName(byId.get(edge.from)), pointName(byId.get(edge.to))];
    return {
      key: id,
      name: stretchName(edge.name, from, to),
      chooses: { kind: 'stretch', id },
    };
  });
  const kinds = ['stand', 'hold', 'runway', 'junction'] as const;
  return (
    <section>
      <h3 class={styles.title}>{words.list}</h3>
      {kinds.map((kind) => (
        <List
          key={kind}
          title={words.points[kind]}
          things={nodes
            .filter((node) => node.kind === kind)
            .map((node) => ({
              key: node.id,
              name: pointName(node),
              chooses: { kind: 'node', id: node.id },
            }))}
        />
      ))}
      <List title={words.stretches} things={stretches} />
      <List
        title={words.hotSpots}
        things={hotSpots.map((hot, index) => ({
          key: `${index}`,
          name: hot.name,
          chooses: { kind: 'hot-spot', index },
        }))}
      />
    </section>
  );
}

/** No more are listed at once. */
const MOST = 200;

function List({ title, things }: { readonly title: string; readonly things: readonly Thing[] }) {
  const [open, setOpen] = useState(false);
  if (things.length === 0) return null;
  const what = JSON.stringify(chosen.value);
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary class={styles.summary}>{words.lists(title, things.length)}</summary>
      {open && (
        <ul>
          {things.slice(0, MOST).map(({ key, name, chooses }) => (
            <li key={key}>
              <button
                type="button"
                class={styles.row}
                aria-pressed={JSON.stringify(chooses) === what}
                onClick={() => lookAtPlan(chooses)}
              >
                {name}
              </button>
            </li>
          ))}
          {things.length > MOST && <li>{words.andMore(things.length - MOST)}</li>}
        </ul>
      )}
    </details>
  );
}
