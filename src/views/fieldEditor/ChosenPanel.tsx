/** The selection on the plan, with everything that can be set about it. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { changeField, drawnLang } from '../../board/writing/field';
import { type Field, stretchId, type TaxiEdge, type TaxiNode } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { anyText, EntryField, numberWithin, plainNumber } from '../../parts/field/EntryField';
import { Hint } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { Key } from '../../parts/key/Key';
import styles from './FieldEditor.module.css';
import { chosen, letter, removeChosen } from './hand';
import { pointName, stretchName, words } from './words';

/** The panel; says so if nothing is selected. */
export function ChosenPanel({ field }: { readonly field: Field }): JSX.Element {
  const what = chosen.value;
  const { nodes, edges, hotSpots = [] } = field.taxi;
  const node = what?.kind === 'node' ? nodes.find(({ id }) => id === what.id) : undefined;
  const edge =
    what?.kind === 'stretch' ? edges.find((one) => stretchId(one) === what.id) : undefined;
  const hot = what?.kind === 'hot-spot' ? hotSpots[what.index] : undefined;
  if (node) return <NodePanel key={node.id} node={node} field={field} />;
  if (edge) return <StretchPanel key={`${edge.from} ${edge.to}`} edge={edge} field={field} />;
  if (hot && what?.kind === 'hot-spot') return <HotSpotPanel hot={hot} index={what.index} />;
  return <Hint>{words.nothingChosen}</Hint>;
}

const metres = numberWithin(-50_000, 50_000);

function NodePanel({ node, field }: { readonly node: TaxiNode; readonly field: Field }) {
  const { id, kind, xM, yM, ends = [] } = node;
  const set = (given: Parameters<typeof nodeEdit>[1]) => changeField(nodeEdit(id, given));
  const all = field.runways.flatMap((runway) => runway.ends.map(({ designator }) => designator));
  return (
    <section class={styles.group}>
      <h3 class={styles.title}>{words.chosen(pointName(node))}</h3>
      <Choice
        label={words.kind}
        options={choicesOf(words.kinds)}
        chosen={kind}
        onChoose={(to) => set({ kind: to })}
      />
      <EntryField
        name={words.painted}
        text={node.name ?? ''}
        lang={drawnLang()}
        read={anyText(80)}
        bad={words.nameBad}
        onChange={(name) => set({ name: name || null })}
      />
      {(kind === 'hold' || kind === 'runway') && (
        <fieldset class={styles.choice}>
          <legend class={styles.label}>{words.gives}</legend>
          {all.map((end) => (
            <Key
              key={end}
              pressed={ends.includes(end)}
              onPress={() =>
                set({
                  ends: ends.includes(end) ? ends.filter((one) => one !== end) : [...ends, end],
                })
              }
            >
              {end}
            </Key>
          ))}
        </fieldset>
      )}
      <div class={styles.pair}>
        <EntryField
          name={words.east}
          text={plainNumber(xM, 1)}
          read={metres}
          bad={words.spotBad}
          most={9}
          onChange={(to) => set({ at: { xM: to, yM } })}
        />
        <EntryField
          name={words.northOf}
          text={plainNumber(yM, 1)}
          read={metres}
          bad={words.spotBad}
          most={9}
          onChange={(to) => set({ at: { xM, yM: to } })}
        />
      </div>
      <Join node={node} field={field} />
      <Key onPress={removeChosen}>{words.remove}</Key>
    </section>
  );
}

const nodeEdit = (
  id: TaxiNode['id'],
  set: Extract<Parameters<typeof changeField>[0], { readonly kind: 'node' }>['set'],
) => ({ kind: 'node', id, set }) as const;

/** Joining to another point without the plan: by its name. */
function Join({ node, field }: { readonly node: TaxiNode; readonly field: Field }) {
  const others = field.taxi.nodes.filter(({ id }) => id !== node.id);
  const [to, setTo] = useState('');
  const other = others.find(({ id }) => id === to);
  if (others.length === 0) return null;
  const isApron = node.kind === 'stand' || other?.kind === 'stand';
  return (
    <div class={styles.join}>
      <Pick
        name={words.joinTo}
        options={[
          { value: '', name: '' },
          ...others.map((one) => ({ value: one.id, name: pointName(one) })),
        ]}
        chosen={to}
        onChoose={setTo}
      />
      <Key
        disabled={other === undefined}
        onPress={() => {
          if (other === undefined) return;
          const at = { on: 'node', id: other.id, xM: other.xM, yM: other.yM } as const;
          const on = isApron ? 'apron' : 'taxiway';
          const name = isApron ? 'apron' : letter.value;
          changeField({ kind: 'laid', from: node.id, at, on, name });
          setTo('');
        }}
      >
        {words.join}
      </Key>
    </div>
  );
}

function StretchPanel({ edge, field }: { readonly edge: TaxiEdge; readonly field: Field }) {
  const id = stretchId(edge);
  const nameOf = (of: string) => pointName(field.taxi.nodes.find((node) => node.id === of));
  const [from, to] = [edge.from, edge.to].sort();
  const set = (given: Parameters<typeof stretchEdit>[1]) => changeField(stretchEdit(id, given));
  const runways = field.runways.map(({ ends }) =>
    ends
      .map(({ designator }) => designator)
      .sort()
      .join('/'),
  );
  return (
    <section class={styles.group}>
      <h3 class={styles.title}>
        {words.chosen(stretchName(edge.name, nameOf(edge.from), nameOf(edge.to)))}
      </h3>
      <div class={styles.pair}>
        <EntryField
          name={words.letter}
          text={edge.name}
          read={(text) => anyText(80)(text) || null}
          bad={words.letterBad}
          onChange={(name) => set({ name })}
        />
        <EntryField
          name={words.stretchWidth}
          text={edge.widthM === undefined ? '' : plainNumber(edge.widthM, 1)}
          read={(text) => (text.trim() === '' ? 'none' : numberWithin(0, 10_000)(text))}
          bad={words.widthBad}
          hint={words.unknown}
          most={6}
          onChange={(width) => set({ widthM: width === 'none' ? null : width })}
        />
      </div>
      <Choice
        label={words.led}
        options={choicesOf(words.leds)}
        chosen={edge.on}
        onChoose={(on) => set({ on })}
      />
      <Choice
        label={words.oneWay}
        options={[
          { value: '', name: words.bothWays },
          ...[from ?? '', to ?? ''].map((end) => ({
            value: end,
            name: words.onlyFrom(nameOf(end)),
          })),
        ]}
        chosen={edge.oneWay ? edge.from : ''}
        onChoose={(end) => set({ onlyFrom: end === '' ? null : end })}
      />
      <fieldset class={styles.choice}>
        <legend class={styles.label}>{words.crosses}</legend>
        {['', ...runways].map((runway) => (
          <Key
            key={runway}
            pressed={(edge.crosses ?? '') === runway}
            onPress={() => set({ crosses: runway || null })}
          >
            {runway || words.none}
          </Key>
        ))}
      </fieldset>
      <Key onPress={removeChosen}>{words.remove}</Key>
    </section>
  );
}

const stretchEdit = (
  id: string,
  set: Extract<Parameters<typeof changeField>[0], { readonly kind: 'stretch' }>['set'],
) => ({ kind: 'stretch', id, set }) as const;

type HotSpot = NonNullable<Field['taxi']['hotSpots']>[number];

function HotSpotPanel({ hot, index }: { readonly hot: HotSpot; readonly index: number }) {
  const set = (given: Partial<HotSpot>) =>
    changeField({ kind: 'hot-spot', index, to: { ...hot, ...given } });
  const present = (text: string) => anyText(80)(text) || null;
  return (
    <section class={styles.group}>
      <h3 class={styles.title}>{words.chosen(hot.name)}</h3>
      <EntryField
        name={words.hotSpotName}
        text={hot.name}
        read={present}
        bad={words.nameBad}
        onChange={(name) => set({ name })}
      />
      <EntryField
        name={words.hotSpotAbout}
        text={hot.about}
        lang={drawnLang()}
        read={present}
        bad={words.nameBad}
        onChange={(about) => set({ about })}
      />
      <Key onPress={removeChosen}>{words.remove}</Key>
    </section>
  );
}
