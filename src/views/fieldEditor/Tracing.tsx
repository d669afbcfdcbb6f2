/** Laying a picture under the plan to trace it: choosing it, placing it, hiding it. */

import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { draftStrips, type Field } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Hint, Wrong } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { Key } from '../../parts/key/Key';
import styles from './FieldEditor.module.css';
import { beginPlacing, handling, layPicture, picture, strength, takeAway, trouble } from './trace';
import { words } from './words';

/** The picture's own keys. */
export function Tracing({ field }: { readonly field: Field }): JSX.Element {
  const { value: shown } = picture;
  const { value: bad } = trouble;
  return (
    <section class={styles.group}>
      <h3 class={styles.title}>{words.trace}</h3>
      <Hint>{words.traceKept}</Hint>
      <div role="status">{bad !== null && <Wrong>{words.noPicture[bad]}</Wrong>}</div>
      {shown !== null && <Laid name={shown.name} field={field} />}
      <div class={styles.choice}>
        <ChooseFile name={shown === null ? words.choosePicture : words.otherPicture} />
        {shown !== null && <Key onPress={takeAway}>{words.takeAway}</Key>}
      </div>
    </section>
  );
}

function ChooseFile({ name }: { readonly name: string }) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <input
        ref={input}
        type="file"
        accept="image/png,image/jpeg,image/webp,image/avif"
        hidden
        aria-label={name}
        onChange={({ currentTarget }) => {
          const file = currentTarget.files?.[0];
          // The same file may be chosen again.
          currentTarget.value = '';
          if (file) void layPicture(file);
        }}
      />
      <Key onPress={() => input.current?.click()}>{name}</Key>
    </>
  );
}

function Laid({ name, field }: { readonly name: string; readonly field: Field }) {
  const strips = draftStrips(field);
  const [chosen, setChosen] = useState('');
  const by = strips.find((strip) => strip.name === chosen) ?? strips[0];
  const { value: how } = handling;
  const rest = () => {
    handling.value = { kind: 'none' };
  };
  return (
    <>
      <p class={styles.label}>{name}</p>
      <Choice
        label={words.strength}
        options={choicesOf(words.strengths)}
        chosen={strength.value}
        onChoose={(next) => {
          strength.value = next;
        }}
      />
      {by === undefined && <Hint>{words.placeWithout}</Hint>}
      {strips.length > 1 && (
        <Pick
          name={words.placeBy}
          options={strips.map((strip) => ({ value: strip.name, name: strip.name }))}
          chosen={by?.name ?? ''}
          onChoose={setChosen}
        />
      )}
      <div class={styles.choice}>
        {by && (
          <Key
            pressed={how.kind === 'places'}
            onPress={() => {
              if (how.kind === 'places') return rest();
              const [one, other] = by.ends;
              beginPlacing([
                { name: one.designator, at: one.at },
                { name: other.designator, at: other.at },
              ]);
            }}
          >
            {words.place(by.name)}
          </Key>
        )}
        <Key
          pressed={how.kind === 'moves'}
          onPress={() => {
            if (how.kind === 'moves') rest();
            else handling.value = { kind: 'moves' };
          }}
        >
          {words.movePicture}
        </Key>
      </div>
    </>
  );
}

/** What a tap on the board does to the picture now; null if nothing. */
export function handlingHint(): string | null {
  const { value: how } = handling;
  if (how.kind === 'moves') return words.movingHint;
  if (how.kind === 'none') return null;
  const [one, other] = how.points;
  return words.tapWhere((how.first === null ? one : other).name);
}
