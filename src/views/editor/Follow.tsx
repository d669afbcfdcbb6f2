/** The original changed: its changes, conflicts, and following it. */

import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { follow, following, news, written } from '../../board/writing/procedure';
import {
  type ChosenSides,
  type Conflict,
  type ListConflict,
  listPart,
  ownDifference,
  type PlacedStep,
  type Side,
} from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { Key } from '../../parts/key/Key';
import { marked, markedText } from '../../parts/marked';
import { AllDifferences, fullListOf, fullTextOf } from './Differences';
import styles from './Editor.module.css';
import { partLang, partName, writtenLang } from './said';
import { spokenOfEdit } from './state';
import { words } from './words';

/** Says that the original has changed, if it has. */
export function News({ onLook }: { onLook: () => void }): JSX.Element | null {
  const brought = news.value;
  if (brought === null) return null;
  return (
    <div class={styles.news}>
      <p>{words.news}</p>
      {brought.base === null ? <p>{words.noBase}</p> : <Key onPress={onLook}>{words.look}</Key>}
    </div>
  );
}

/** The original's changes, and the key that takes them. */
export function Follow({ onDone }: { onDone: () => void }): JSX.Element | null {
  const [chosen, setChosen] = useState<ChosenSides>(new Map());
  const brought = news.value;
  const merged = following(chosen);
  if (brought === null || brought.base === null || merged === null) return null;
  const { conflicts, listConflicts } = merged;
  return (
    <>
      <h3 class={styles.partName}>{marked(writtenLang(), words.theirs, brought.theirs.name)}</h3>
      <AllDifferences
        found={ownDifference(brought.base, brought.theirs)}
        procedure={brought.theirs}
        before={words.beforeThat}
        after={words.now}
      />
      {conflicts.length + listConflicts.length === 0 && (
        <p class={styles.count}>{words.noConflicts}</p>
      )}
      {conflicts.length > 0 && <p class={styles.count}>{words.conflicts(conflicts.length)}</p>}
      {conflicts.map((conflict) => (
        <Both
          key={conflict.id}
          {...textsOf(conflict)}
          side={chosen.get(conflict.id) ?? 'mine'}
          onChoose={(side) => setChosen(new Map(chosen).set(conflict.id, side))}
        />
      ))}
      {listConflicts.length > 0 && (
        <p class={styles.count}>{words.listConflicts(listConflicts.length)}</p>
      )}
      {listConflicts.map((conflict) => (
        <Both
          key={listPart(conflict.id)}
          {...listTextsOf(conflict)}
          side={chosen.get(listPart(conflict.id)) ?? 'mine'}
          onChoose={(side) => setChosen(new Map(chosen).set(listPart(conflict.id), side))}
        />
      ))}
      <div class={styles.keys}>
        <Key
          look="pick"
          onPress={() => {
            follow(chosen);
            spokenOfEdit.value = words.followed;
            onDone();
          }}
        >
          {words.followKey}
        </Key>
        <Key onPress={onDone}>{words.leave}</Key>
      </div>
    </>
  );
}

/** What both changed, as each has it. */
interface Texts {
  readonly name: string;
  readonly mine: ComponentChildren;
  readonly theirs: ComponentChildren;
}

const textsOf = ({ base, mine, theirs }: Conflict): Texts => ({
  name: (mine ?? theirs ?? base)?.step.item ?? '',
  mine: placedText(mine),
  theirs: placedText(theirs),
});

const listTextsOf = ({ mine, theirs }: ListConflict): Texts => ({
  name: mine.title,
  mine: fullListOf(mine).drawn,
  theirs: fullListOf(theirs).drawn,
});

interface BothProps extends Texts {
  readonly side: Side;
  readonly onChoose: (side: Side) => void;
}

/** What both changed: side by side, and which one stays. */
function Both({ name, mine, theirs, side, onChoose }: BothProps) {
  const id = useId();
  return (
    <section class={styles.conflict} aria-labelledby={id}>
      <h4 id={id} class="spoken" lang={writtenLang()}>
        {name}
      </h4>
      <p class={side === 'mine' ? styles.is : styles.was}>
        {words.mine}: {mine}
      </p>
      <p class={side === 'theirs' ? styles.is : styles.was}>
        {words.theirStep}: {theirs}
      </p>
      <Choice
        options={[
          { value: 'mine', name: words.mine },
          { value: 'theirs', name: words.theirStep },
        ]}
        chosen={side}
        onChoose={onChoose}
      />
    </section>
  );
}

function placedText(placed: PlacedStep | null): ComponentChildren {
  const procedure = written.value;
  if (placed === null || procedure === null) return words.gone;
  return (
    <>
      {fullTextOf(placed.step, procedure).drawn} (
      {markedText(partLang(placed.part), partName(placed.part))})
    </>
  );
}
