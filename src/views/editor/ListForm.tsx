/**
 * A list for when something is wrong, apart from its steps: its title, the heading it stands under,
 * where it is looked for, where it leads.
 */

import type { JSX } from 'preact';
import { edit, faults, settle, written } from '../../board/writing/procedure';
import {
  type AbnormalList,
  groupOf,
  LIST_GROUPS,
  type ListChange,
  listPart,
  PHASES,
  type Phase,
  type Procedure,
} from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { Hint, inputClass, Labelled, Wrong } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { marked } from '../../parts/marked';
import styles from './Editor.module.css';
import { FormHead } from './FormHead';
import { Several } from './Several';
import { leadsSaid, writtenLang } from './said';
import { backToList, removeList } from './state';
import { words } from './words';

/** The schema's maximum, characters. */
const LONGEST_TITLE = 80;

/** The form of a list; nothing if the list is gone. */
export function ListForm({ id }: { id: AbnormalList['id'] }): JSX.Element | null {
  const list = written.value?.lists.find((one) => one.id === id);
  if (list === undefined) return null;
  const wrong = faults.value.filter(({ part, step }) => part === listPart(id) && step === null);
  return (
    <>
      <div class={styles.toList}>
        <Key onPress={backToList}>{words.back}</Key>
      </div>
      <FormHead>{marked(writtenLang(), words.changeListOf, list.title)}</FormHead>
      {wrong.map(({ name, code }) => (
        <Wrong key={name + code}>{words.fault(code)}</Wrong>
      ))}
      <Labelled name={words.listTitle}>
        <input
          class={inputClass}
          maxLength={LONGEST_TITLE}
          lang={writtenLang()}
          value={list.title}
          aria-invalid={wrong.some(({ name }) => name === 'title')}
          onInput={(event) => change(list, { title: event.currentTarget.value }, true)}
          onBlur={settle}
        />
      </Labelled>
      <section class={styles.formPart}>
        <h4 class={styles.partName}>{words.listGroup}</h4>
        <Choice
          label={words.listGroup}
          options={LIST_GROUPS.map((value) => ({ value, name: words.listGroups[value] }))}
          chosen={groupOf(list)}
          onChoose={(group) => change(list, { group })}
        />
      </section>
      <section class={styles.formPart}>
        <h4 class={styles.partName}>{words.lookedForIn}</h4>
        <Several
          label={words.lookedForIn}
          options={phaseNames(PHASES)}
          chosen={list.phases ?? []}
          onChoose={(phases) => change(list, { phases: phases.length === 0 ? undefined : phases })}
        />
        <Hint>{words.lookedForHint}</Hint>
      </section>
      <Leads list={list} />
      <Keys>
        <Key look="stop" onPress={() => removeList(id)}>
          {words.removeList}
        </Key>
      </Keys>
    </>
  );
}

const change = ({ id }: AbnormalList, to: ListChange, typing = false): void =>
  edit({ kind: 'change-list', id, to }, typing);

const phaseNames = (phases: readonly Phase[]) =>
  phases.map((value) => ({ value, name: words.phases[value] }));

type Then = Procedure['lists'][number]['then'];

const lead = (list: AbnormalList, then: Then): void => change(list, { then });

/** A phase for a list that is to lead to one: one in which it is looked for. */
const firstPhase = ({ phases }: AbnormalList): Phase => phases?.[0] ?? 'recovery';

/** Where it leads when all of it is done. */
function Leads({ list }: { list: AbnormalList }) {
  const { then } = list;
  const to = typeof then === 'object' ? then : null;
  return (
    <section class={styles.formPart}>
      <h4 class={styles.partName}>{words.leads}</h4>
      <Choice
        label={words.leads}
        options={(['return', 'end', 'phase'] as const).map((value) => ({
          value,
          name: words.leadsTo[value],
        }))}
        chosen={typeof then === 'object' ? 'phase' : then}
        onChoose={(value) => {
          if (value !== 'phase') return lead(list, value);
          const phase = firstPhase(list);
          if (to === null) lead(list, { phase, reopen: [phase] });
        }}
      />
      {to !== null && <ToPhase list={list} to={to} />}
      <Hint>{leadsSaid(then)}</Hint>
    </section>
  );
}

interface ToPhaseProps {
  readonly list: AbnormalList;
  readonly to: Exclude<Then, string>;
}

function ToPhase({ list, to: { phase, reopen } }: ToPhaseProps) {
  // An earlier phase due again would come before the one it leads to.
  const offered = (from: Phase, also: readonly Phase[]) =>
    PHASES.filter((one) => PHASES.indexOf(one) >= PHASES.indexOf(from) || also.includes(one));
  const move = (next: Phase) => {
    const isAgain = (one: Phase) =>
      one === next ? reopen.includes(phase) || reopen.includes(one) : reopen.includes(one);
    lead(list, { phase: next, reopen: offered(next, []).filter(isAgain) });
  };
  return (
    <>
      <Pick
        name={words.phase}
        options={phaseNames(PHASES)}
        chosen={phase}
        onChoose={(value) => {
          const next = PHASES.find((one) => one === value);
          if (next !== undefined) move(next);
        }}
      />
      <p>{words.dueAgain}</p>
      <Several
        label={words.dueAgain}
        options={phaseNames(offered(phase, reopen))}
        chosen={reopen}
        onChoose={(phases) => lead(list, { phase, reopen: phases })}
      />
    </>
  );
}
