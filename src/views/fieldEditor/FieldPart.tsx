/** Of a field being drawn: its code and name, where it lies, its frequencies. */

import type { JSX } from 'preact';
import { languageName } from '../../board/language';
import { changeField, drawnLang } from '../../board/writing/field';
import { type Field, isPlaced, languageOf, type Radio } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { anyText, EntryField, numberWithin, plainNumber } from '../../parts/field/EntryField';
import { Hint } from '../../parts/field/Labelled';
import { Key } from '../../parts/key/Key';
import styles from './FieldEditor.module.css';
import { PlaceEntry } from './PlaceEntry';
import { words } from './words';

const readCode = (text: string) =>
  /^[A-Z][A-Z0-9]{2,3}$/.exec(text.trim().toUpperCase())?.[0] ?? null;

const readMhz = (text: string) =>
  /^\d{3}\.\d{1,3}$/.exec(text.trim().replace(',', '.'))?.[0] ?? null;

/** A name that is there. */
const readName = (text: string) => anyText(80)(text) || null;

/** The languages of the app, and the field's if it is another. */
const languagesFor = (written: string) =>
  [...new Set(['en', 'de', written])].map((value) => ({ value, name: languageName(value) }));

/** The part of the form that is about the field as a whole. */
export function FieldPart({ field }: { readonly field: Field }): JSX.Element {
  const ends = field.runways.flatMap((runway) => runway.ends.map(({ designator }) => designator));
  return (
    <div class={styles.form}>
      <div class={styles.pair}>
        <EntryField
          name={words.code}
          text={field.code}
          read={readCode}
          bad={words.codeBad}
          hint={words.codeHint}
          most={4}
          onChange={(code) => changeField({ kind: 'head', set: { code } })}
        />
        <EntryField
          name={words.name}
          text={field.name}
          read={readName}
          bad={words.nameBad}
          onChange={(name) => changeField({ kind: 'head', set: { name } })}
        />
      </div>
      <EntryField
        name={words.about}
        text={field.about}
        lang={drawnLang()}
        read={anyText(600)}
        bad={words.aboutBad}
        most={600}
        lines={3}
        onChange={(about) => changeField({ kind: 'head', set: { about } })}
      />
      <h3 class={styles.title}>{words.language}</h3>
      <Hint>{words.languageHint}</Hint>
      <Choice
        label={words.language}
        options={languagesFor(languageOf(field))}
        chosen={languageOf(field)}
        onChoose={(language) => changeField({ kind: 'head', set: { language } })}
      />
      <h3 class={styles.title}>{words.whereTitle}</h3>
      <Hint>{words.placeHint}</Hint>
      <Hint>{words.placeWays}</Hint>
      <PlaceEntry
        name={words.placeTitle}
        place={isPlaced(field) ? field.place : null}
        onChange={(at) => changeField({ kind: 'place', at })}
      />
      <div class={styles.pair}>
        <EntryField
          name={words.elevation}
          text={plainNumber(field.place.elevationFt)}
          read={numberWithin(-1500, 20_000)}
          bad={words.elevationBad}
          most={8}
          onChange={(elevationFt) => changeField({ kind: 'elevation', elevationFt })}
        />
      </div>
      {ends.length > 0 && (
        <>
          <h3 class={styles.title}>{words.calmWind}</h3>
          <Choice
            label={words.calmWind}
            options={[
              { value: '', name: words.none },
              ...ends.map((end) => ({ value: end, name: end })),
            ]}
            chosen={field.calmWindEnd ?? ''}
            onChoose={(end) => changeField({ kind: 'calm-wind', end: end === '' ? null : end })}
          />
        </>
      )}
      <h3 class={styles.title}>{words.radio}</h3>
      {field.radio.map((radio, index) => (
        <RadioEntry key={index} radio={radio} index={index} />
      ))}
      <Key
        onPress={() =>
          changeField({
            kind: 'radio',
            index: field.radio.length,
            to: { name: field.name || UNNAMED, mhz: '118.0', service: 'traffic' },
          })
        }
      >
        {words.addRadio}
      </Key>
    </div>
  );
}

/**
 * The default name of a field's first station: said on the radio, and so in English on every page.
 */
const UNNAMED = 'Radio';

function RadioEntry({ radio, index }: { readonly radio: Radio; readonly index: number }) {
  const set = (given: Partial<Radio>) =>
    changeField({ kind: 'radio', index, to: { ...radio, ...given } });
  return (
    <fieldset class={styles.group} aria-label={`${words.radio} ${radio.mhz}`}>
      <div class={styles.pair}>
        <EntryField
          name={words.radioName}
          text={radio.name}
          read={readName}
          bad={words.radioNameBad}
          onChange={(name) => set({ name })}
        />
        <EntryField
          name={words.mhz}
          text={radio.mhz}
          read={readMhz}
          bad={words.mhzBad}
          most={7}
          onChange={(mhz) => set({ mhz })}
        />
      </div>
      <Choice
        label={words.service}
        options={choicesOf(words.services)}
        chosen={radio.service}
        onChoose={(service) => set({ service })}
      />
      <Key onPress={() => changeField({ kind: 'radio', index, to: null })}>
        {words.removeRadio(radio.mhz)}
      </Key>
    </fieldset>
  );
}
