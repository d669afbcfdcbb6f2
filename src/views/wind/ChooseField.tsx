/** What Wind shows before a field is chosen: the fields. One tap and the wind can be typed. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day } from '../../board/board';
import { listedAircraft } from '../../board/documents/documents';
import { demoLast, fieldsFor, markOf } from '../../board/documents/fieldChoice';
import { shownText } from '../../board/language';
import { typing } from '../../board/places';
import { chooseAircraft, chooseField } from '../../board/record/choices';
import { flownLast } from '../../board/record/flownLast';
import { withWords } from '../../parts/catalogues';
import { Choice } from '../../parts/choice/Choice';
import { aboutField } from '../../parts/fieldSearch/aboutField';
import { FieldSearch } from '../../parts/fieldSearch/FieldSearch';
import { words as searchWords } from '../../parts/fieldSearch/words';
import { Key } from '../../parts/key/Key';
import { QuotedWords } from '../../parts/quoted/Quoted';
import styles from './ChooseField.module.css';
import { words } from './words';

/** The fields to choose from, and above them the aircraft. */
export function ChooseField(): JSX.Element {
  const [flown] = useState(flownLast);
  const [text, setText] = useState('');
  const [world, setWorld] = useState<typeof import('./chooseWorld') | null>(null);
  const wantWorld = () => {
    if (world === null)
      withWords(() => import('./chooseWorld')).then(
        (loaded) => setWorld(loaded),
        // Not available right now: the next letter or tap asks again.
        () => undefined,
      );
  };
  const { mine, demo } = demoLast(fieldsFor(text, flown), flown);
  return (
    <div class={styles.choose}>
      <section>
        <h2 class={styles.title}>{words.chooseAircraft}</h2>
        <Choice
          options={listedAircraft.value.map(({ hash, name }) => ({ value: hash, name }))}
          chosen={day.inputs().aircraft}
          onChoose={(hash) => {
            const taken = listedAircraft.value.find((listed) => listed.hash === hash);
            if (taken) chooseAircraft(taken);
          }}
        />
      </section>
      <h2 class={styles.title}>{words.chooseField}</h2>
      <FieldSearch
        heading="h3"
        text={text}
        onText={(typed) => {
          setText(typed);
          wantWorld();
        }}
        groups={[
          { rows: mine.map(rowOf) },
          world?.worldGroup(text, choose) ?? {
            head: <Key onPress={wantWorld}>{searchWords.world}</Key>,
            rows: [],
          },
          { title: world === null ? undefined : searchWords.demo, rows: demo.map(rowOf) },
        ]}
      />
    </div>
  );
}

const rowOf = (field: ListedField) => ({
  key: field.hash,
  code: field.code,
  name: field.name,
  about: (
    <>
      <About of={field} /> <span>{aboutField(field, markOf(field))}</span>
    </>
  ),
  onChoose: () => choose(field),
});

function choose(field: ListedField): void {
  chooseField(field);
  typing.value = true;
}

/** What the field's document says about the field. */
function About({ of: field }: { of: ListedField }) {
  const { text, lang } = shownText(field, field.about);
  return text === '' ? null : <QuotedWords class={styles.about} lang={lang} text={text} />;
}
