/** When a step applies: facts, each holding or not, of which all or any count. */

import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { edit } from '../../board/writing/procedure';
import {
  type AskedFact,
  type AskedPart,
  CONDITION_FACTS,
  MOST_ASKED,
  type Procedure,
  pickedCondition,
  type SimpleCondition,
  type Step,
  simpleCondition,
} from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { NumberField } from '../../parts/field/NumberField';
import { Pick } from '../../parts/field/Pick';
import { Key } from '../../parts/key/Key';
import { seenAndSaid } from '../../parts/marked';
import { conditionSaid, leafSaid } from '../../parts/stepText';
import styles from './Editor.module.css';
import { withOptions } from './said';
import { words } from './words';

interface WhenProps {
  readonly id: Step['id'];
  readonly when: Step['when'];
  readonly options: Procedure['options'];
}

/** Default of a wind condition, kt. */
const FIRST_WIND_KT = 15;

/** The condition picker. */
export function When({ id, when, options = [] }: WhenProps): JSX.Element {
  const picked = simpleCondition(when);
  const set = (condition: SimpleCondition, typing = false) =>
    edit({ kind: 'change', id, to: { when: pickedCondition(condition) } }, typing);
  return (
    <section class={styles.formPart}>
      <h4 class={styles.partName}>{words.condition}</h4>
      {picked === null && when !== undefined && (
        <>
          <p>{withOptions(options, (named) => words.deep(conditionSaid(when, named))).drawn}</p>
          <Key onPress={() => set({ join: 'all', parts: [] })}>{words.startAnew}</Key>
        </>
      )}
      {picked?.parts.length === 0 && <p>{words.always}</p>}
      {picked !== null && picked.parts.length > 1 && (
        <Choice
          label={words.joinLabel}
          options={(['all', 'any'] as const).map((value) => ({ value, name: words.join[value] }))}
          chosen={picked.join}
          onChoose={(join) => set({ ...picked, join })}
        />
      )}
      {picked !== null && picked.parts.length > 0 && (
        <ul>
          {picked.parts.map((part, index) => (
            <Asked
              key={index}
              part={part}
              options={options}
              onChange={(to, typing) =>
                set({ ...picked, parts: picked.parts.with(index, to) }, typing)
              }
              onLeaveOut={() => set({ ...picked, parts: picked.parts.toSpliced(index, 1) })}
            />
          ))}
        </ul>
      )}
      {picked !== null && picked.parts.length < MOST_ASKED && (
        <Another
          options={options}
          onAdd={(asked) => set({ ...picked, parts: [...picked.parts, { asked, not: false }] })}
        />
      )}
    </section>
  );
}

interface AskedProps {
  readonly part: AskedPart;
  readonly options: Procedure['options'];
  readonly onChange: (to: AskedPart, typing: boolean) => void;
  readonly onLeaveOut: () => void;
}

/** One line: a condition, to negate or remove. */
function Asked({ part, options, onChange, onLeaveOut }: AskedProps) {
  const { asked, not } = part;
  const said = (sentence: (condition: string) => string = (condition) => condition) =>
    withOptions(options, (named) => sentence(leafSaid(asked, named)[not ? 1 : 0])).drawn;
  return (
    <li class={styles.asked}>
      <p class={styles.askedText}>{said()}</p>
      {'windAboveKt' in asked && (
        <NumberField
          name={words.windKt}
          value={asked.windAboveKt}
          least={0}
          most={1500}
          bad={words.windBad}
          hint={words.windHint}
          onChange={(windAboveKt) =>
            windAboveKt !== null && onChange({ asked: { windAboveKt }, not }, true)
          }
        />
      )}
      <div class={styles.keys}>
        <Key onPress={() => onChange({ asked, not: !not }, false)}>
          {seenAndSaid(words.turn, said(words.turnOf))}
        </Key>
        <Key onPress={onLeaveOut}>{seenAndSaid(words.leaveOut, said(words.leaveOutOf))}</Key>
      </div>
    </li>
  );
}

interface AnotherProps {
  readonly options: NonNullable<Procedure['options']>;
  readonly onAdd: (asked: AskedFact) => void;
}

/** Adds a line. Selecting alone adds nothing, because the arrow keys select in passing. */
function Another({ options, onAdd }: AnotherProps) {
  const offered: readonly { readonly name: string; readonly asked: AskedFact }[] = [
    ...CONDITION_FACTS.map((fact) => ({ name: words.facts[fact][0], asked: { fact } })),
    { name: words.windAbove, asked: { windAboveKt: FIRST_WIND_KT } },
    ...options.map(({ id }) => ({
      name: leafSaid({ option: id }, options)[0],
      asked: { option: id },
    })),
  ];
  const [place, setPlace] = useState(0);
  return (
    <div class={styles.inserting}>
      <Pick
        name={words.addCondition}
        options={offered.map(({ name }, index) => ({ value: String(index), name }))}
        chosen={String(place)}
        onChoose={(value) => setPlace(Number(value))}
      />
      <Key
        onPress={() => {
          const asked = offered[place]?.asked;
          if (asked !== undefined) onAdd(asked);
        }}
      >
        {words.add}
      </Key>
    </div>
  );
}
