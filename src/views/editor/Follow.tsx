/** The original changed: what it brought, what both changed, and following it. */

import type { ComponentChildren, JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import { follow, following, news, written } from '../../board/writing';
import { type Conflict, ownDifference, type PlacedStep, type Side, type StepId } from '../../core';
import { Choice } from '../../parts/choice/Choice';
import { Key } from '../../parts/key/Key';
import { markedText } from '../../parts/marked';
import { fullTextOf, PartDifferences } from './Differences';
import styles from './Editor.module.css';
import { partLang, partName, writtenLang } from './said';
import { said } from './state';
import { words } from './words.en';

/** Says that the original changed, where it did. */
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

/** What the original brought, and the key that takes it. */
export function Follow({ onDone }: { onDone: () => void }): JSX.Element | null {
  const [chosen, setChosen] = useState<ReadonlyMap<StepId, Side>>(new Map());
  const brought = news.value;
  const merged = following(chosen);
  if (brought === null || brought.base === null || merged === null) return null;
  const { conflicts } = merged;
  return (
    <>
      <h3 class={styles.partName}>{words.theirs}</h3>
      <PartDifferences
        parts={ownDifference(brought.base, brought.theirs)}
        procedure={brought.theirs}
        before={words.beforeThat}
        after={words.now}
      />
      <p class={styles.count}>
        {conflicts.length === 0 ? words.noConflicts : words.conflicts(conflicts.length)}
      </p>
      {conflicts.map((conflict) => (
        <Both
          key={conflict.id}
          conflict={conflict}
          side={chosen.get(conflict.id) ?? 'mine'}
          onChoose={(side) => setChosen(new Map(chosen).set(conflict.id, side))}
        />
      ))}
      <div class={styles.keys}>
        <Key
          look="pick"
          onPress={() => {
            follow(chosen);
            said.value = words.followed;
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

interface BothProps {
  readonly conflict: Conflict;
  readonly side: Side;
  readonly onChoose: (side: Side) => void;
}

/** A step that both changed: the one beside the other, and which stays. */
function Both({ conflict, side, onChoose }: BothProps) {
  const { base, mine, theirs } = conflict;
  const item = (mine ?? theirs ?? base)?.step.item ?? '';
  const id = useId();
  return (
    <section class={styles.conflict} aria-labelledby={id}>
      <h4 id={id} class="spoken" lang={writtenLang()}>
        {item}
      </h4>
      <p class={side === 'mine' ? styles.is : styles.was}>
        {words.mine}: {placedText(mine)}
      </p>
      <p class={side === 'theirs' ? styles.is : styles.was}>
        {words.theirStep}: {placedText(theirs)}
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
