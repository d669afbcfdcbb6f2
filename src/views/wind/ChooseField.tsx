/** What Wind shows before a field is chosen: the fields. One tap and the wind can be typed. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { day } from '../../board/board';
import { listedAircraft, listedFields } from '../../board/documents/documents';
import { shownText } from '../../board/language';
import { typing } from '../../board/places';
import { chooseAircraft, chooseField } from '../../board/record/choices';
import { flownLast, offeredFields } from '../../board/record/flownLast';
import { Choice } from '../../parts/choice/Choice';
import { QuotedWords } from '../../parts/quoted/Quoted';
import styles from './ChooseField.module.css';
import { words } from './words';

/** The fields to choose from, and above them the aircraft. */
export function ChooseField(): JSX.Element {
  const [flown] = useState(flownLast);
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
      <ul class={styles.fields}>
        {offeredFields(listedFields.value, flown).map((field) => (
          <li key={field.hash}>
            <button
              type="button"
              class={styles.field}
              onClick={() => {
                chooseField(field);
                typing.value = true;
              }}
            >
              <b class={styles.code}>{field.code}</b>
              <span>
                <b>{field.name}</b>
                <About of={field} />
              </span>
            </button>
          </li>
        ))}
      </ul>
    </div>
  );
}

/** What the field's document says about the field. */
function About({ of: field }: { of: ListedField }) {
  const { text, lang } = shownText(field, field.about);
  return text === '' ? null : <QuotedWords class={styles.about} lang={lang} text={text} />;
}
