/** Sortie: what is flown today. Field, aircraft, procedure, load, surface, own limits, norths, callsign. */

import type { ListedField, ListedProcedure } from 'virtual:lapstrip-catalogue';
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { day, sortie } from '../../board/board';
import { listedAircraft, listedBy } from '../../board/documents/documents';
import { editListed } from '../../board/documents/editing';
import { demoLast, fieldsFor, markOf } from '../../board/documents/fieldChoice';
import { chosenProcedure } from '../../board/documents/inUse';
import { nearbyFields } from '../../board/documents/nearbyFields';
import { takeReceived } from '../../board/documents/ownDocuments';
import { proceduresFor } from '../../board/documents/procedures';
import { world } from '../../board/documents/worldFields';
import { fieldText, langOf, languageName } from '../../board/language';
import { openSheet, sheet } from '../../board/places';
import { chooseAircraft, chooseField, setInputs, takeUp } from '../../board/record/choices';
import { flownLast } from '../../board/record/flownLast';
import { endSortie } from '../../board/record/nextSortie';
import { isFlownWithout, unproceduredAircraft } from '../../board/writing/firstProcedure';
import { type Hash, takenOn } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { Hint, inputClass, Wrong } from '../../parts/field/Labelled';
import { NumberField } from '../../parts/field/NumberField';
import { aboutField } from '../../parts/fieldSearch/aboutField';
import { FieldSearch, SHOWN } from '../../parts/fieldSearch/FieldSearch';
import { words as searchWords } from '../../parts/fieldSearch/words';
import { type WorldRow, worldGroup, worldRow } from '../../parts/fieldSearch/worldGroup';
import { decimal, wholeNumber } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { marked } from '../../parts/marked';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { mass } from '../../parts/units';
import { Planned } from './Planned';
import styles from './Sortie.module.css';
import { words } from './words';

/** The room behind the field. */
export function SortieRoom({ onClose }: { onClose: () => void }): JSX.Element {
  const chosen = day.inputs();
  return (
    <SheetParts>
      <SheetPart title={words.field}>
        <Fields />
        <Keys>
          <EditChosen hash={chosen.field} />
        </Keys>
      </SheetPart>
      <SheetPart title={words.aircraft}>
        <Choice
          label={words.aircraft}
          options={listedAircraft.value.map(({ hash, name }) => ({ value: hash, name }))}
          chosen={chosen.aircraft}
          onChoose={(hash) => {
            const taken = listedAircraft.value.find((listed) => listed.hash === hash);
            if (taken) chooseAircraft(taken);
          }}
        />
        <Keys>
          <EditChosen hash={chosen.aircraft} />
          <Key onPress={() => openSheet({ kind: 'making', of: null, over: sheet.value })}>
            {words.makeAircraft}
          </Key>
        </Keys>
      </SheetPart>
      <Procedures />
      <Planned />
      <LoadPart />
      <SheetPart title={words.surface}>
        <Choice
          label={words.surface}
          options={choicesOf(words.surfaces)}
          chosen={chosen.surface}
          onChoose={(surface) => setInputs({ surface })}
        />
      </SheetPart>
      <SheetPart title={words.limits}>
        <Limits />
      </SheetPart>
      <Preference />
      <SheetPart title={words.north}>
        <Choice
          label={words.north}
          options={choicesOf(words.norths)}
          chosen={chosen.typedNorth}
          onChoose={(typedNorth) => setInputs({ typedNorth })}
        />
        <Hint>{words.northHint}</Hint>
        <NumberField
          name={words.variation}
          value={chosen.variationDeg}
          least={-180}
          most={180}
          bad={words.variationBad}
          hint={modelHint()}
          onChange={(variationDeg) => setInputs({ variationDeg })}
        />
      </SheetPart>
      <SheetPart title={words.callsign}>
        <input
          class={inputClass}
          aria-label={words.callsign}
          maxLength={40}
          placeholder={words.callsignHint}
          value={chosen.callsign}
          onChange={(event) => setInputs({ callsign: event.currentTarget.value.trim() })}
        />
      </SheetPart>
      <SheetPart title={words.end}>
        <Hint>{words.endHint}</Hint>
        <Keys>
          <Key
            disabled={sortie.value.run === null}
            onPress={() => {
              endSortie();
              onClose();
            }}
          >
            {words.end}
          </Key>
        </Keys>
      </SheetPart>
    </SheetParts>
  );
}

/** The key that edits what is chosen; nothing while nothing is. */
function EditChosen({ hash }: { readonly hash: Hash | null }) {
  const listed = hash === null ? undefined : listedBy(hash);
  if (listed === undefined) return null;
  return <Key onPress={() => editListed(listed)}>{words.edits[listed.kind]}</Key>;
}

/** Which field is flown from: one search over one's own, those flown lately, the world's and the demo's. */
function Fields() {
  const [flown] = useState(flownLast);
  const [text, setText] = useState('');
  useEffect(() => void world.look(), []);
  const { field: chosen } = day.inputs();
  const rowOf = (field: ListedField, awayNm: number | null = null) => ({
    key: field.hash,
    code: field.code,
    name: field.name,
    about: aboutField(field, markOf(field), awayNm),
    isChosen: field.hash === chosen,
    onChoose: () => chooseField(field),
  });
  const fields = fieldsFor(text, flown);
  const { mine, demo } = demoLast(fields, flown);
  const here = chosen === null ? undefined : listedBy(chosen);
  const take = ({ index }: WorldRow) => void takeWorldField(index);
  const near =
    text.trim() === '' && here?.kind === 'field'
      ? nearestTo(here).map(({ of, awayNm }) =>
          'hash' in of ? rowOf(of, awayNm) : worldRow(of, take),
        )
      : [];
  // Where all of them are shown, the nearest need no list of their own.
  const isShort = world.state().kind !== 'ready' && fields.length <= SHOWN;
  return (
    <>
      <Source />
      <FieldSearch
        heading="h4"
        text={text}
        onText={setText}
        groups={[
          { rows: mine.map((field) => rowOf(field)) },
          { title: searchWords.nearest(here?.code ?? ''), rows: isShort ? [] : near },
          worldGroup(world, text, take),
          { title: searchWords.demo, rows: demo.map((field) => rowOf(field)) },
        ]}
      />
    </>
  );
}

/** Where the field comes from and what it is not for, if it is one of the world's. */
function Source() {
  const { field } = day.settled();
  if (field === null || takenOn(field) === null) return null;
  const { text, lang } = fieldText(field.about);
  return (
    <p class={styles.said} lang={lang}>
      {text}
    </p>
  );
}

/** How many fields nearby are offered: where one would go if this one closed. */
const NEAREST = 4;

/** What lies nearest to a field, listed here or in the set of the world's. */
const nearestTo = (here: ListedField) =>
  [
    ...nearbyFields(here, NEAREST).map(({ field, awayNm }) => ({ of: field, awayNm })),
    ...world.near(here.place, here.code, NEAREST).map((row) => ({ of: row, awayNm: row.awayNm })),
  ]
    .sort((a, b) => (a.awayNm ?? 0) - (b.awayNm ?? 0))
    .slice(0, NEAREST);

async function takeWorldField(index: number): Promise<void> {
  const field = await world.take(index);
  if (field !== null) chooseField(field);
}

/** What the aircraft weighs, and the key to the load sheet. */
function LoadPart() {
  const loaded = day.load();
  if (loaded === null) return null;
  const { takeoffMassKg, exceeded } = loaded;
  return (
    <SheetPart title={words.load}>
      <p class={styles.said}>
        {takeoffMassKg.value === null ? words.noMass : words.loaded(mass(takeoffMassKg.value))}
      </p>
      {exceeded.length > 0 && <Wrong>{words.loadOver}</Wrong>}
      <Keys>
        <Key onPress={() => openSheet({ kind: 'load', over: sheet.value })}>{words.openLoad}</Key>
      </Keys>
    </SheetPart>
  );
}

/** Which procedure, if the aircraft has more than one; it is shared and printed here. */
function Procedures() {
  const flown = day.settled().aircraft;
  const offered = flown === null ? [] : proceduresFor(flown.code);
  const procedure = chosenProcedure.value;
  if (offered.length === 0) return <Without />;
  return (
    <SheetPart title={words.procedure}>
      {offered.length === 1 ? (
        <p class={styles.said}>{offered.map(nameOf)}</p>
      ) : (
        <Choice
          label={words.procedure}
          options={offered.map((listed) => ({ value: listed.hash, name: nameOf(listed) }))}
          chosen={procedure}
          onChoose={(hash) => {
            const taken = offered.find((listed) => listed.hash === hash);
            if (taken === undefined || taken.hash === procedure) return;
            takeUp({ procedure: taken.hash });
            void takeReceived(taken.hash);
          }}
        />
      )}
      <Keys>
        <EditChosen hash={procedure} />
      </Keys>
    </SheetPart>
  );
}

/** For an aircraft without a procedure: what can be done about it. */
function Without() {
  const without = unproceduredAircraft.value;
  if (without === null) return null;
  return (
    <SheetPart title={words.procedure}>
      <p class={styles.said}>
        {isFlownWithout.value ? words.flownWithout : words.noProcedure(without.name)}
      </p>
      <Keys>
        <Key onPress={() => openSheet({ kind: 'procedure', over: sheet.value })}>
          {isFlownWithout.value ? words.writeOrCopy : words.writeCopyOrWithout}
        </Key>
      </Keys>
    </SheetPart>
  );
}

/** A procedure by its name, with its language if that isn't the page's. */
function nameOf({ name, language }: ListedProcedure): ComponentChildren {
  const lang = langOf(language);
  if (lang === undefined) return name;
  // One piece, because the key would drop the space between two.
  return (
    <span>{marked(lang, (itself) => words.inLanguage(itself, languageName(lang)), name)}</span>
  );
}

/** Whether the field's preferred ends come first; only if the field has any. */
function Preference() {
  const ends = day.settled().field?.preferredEnds ?? [];
  if (ends.length === 0) return null;
  const { preferred } = day.inputs();
  return (
    <SheetPart title={words.preference}>
      <Hint>{words.preferenceHint(ends.join(', '))}</Hint>
      <Choice
        label={words.preference}
        options={choicesOf(words.preferences)}
        chosen={preferred ? 'follow' : 'wind'}
        onChoose={(chosen) => setInputs({ preferred: chosen === 'follow' })}
      />
    </SheetPart>
  );
}

function Limits() {
  const { aircraft: flown, surface } = day.settled();
  const limit = (kt: number | undefined) =>
    kt === undefined ? '' : words.aircraftLimit(wholeNumber(kt));
  const own = [
    ['ownCrosswindKt', words.crosswind, limit(flown?.limits.crosswindKt[surface])],
    ['ownTailwindKt', words.tailwind, limit(flown?.limits.tailwindKt[surface])],
    ['ownWetCrosswindKt', words.wetCrosswind, words.asDry],
    ['ownGustSpreadKt', words.gustSpread, words.anyGust],
  ] as const;
  const minima = [
    ['ownVisibilityM', words.visibility, 10_000, words.visibilityBad],
    ['ownCeilingFt', words.ceiling, 20_000, words.ceilingBad],
  ] as const;
  return (
    <>
      <div class={styles.pair}>
        {own.map(([which, name, hint]) => (
          <NumberField
            key={which}
            name={name}
            value={day.inputs()[which]}
            least={0}
            most={99}
            bad={words.limitBad}
            hint={hint}
            onChange={(kt) => setInputs({ [which]: kt })}
          />
        ))}
        {minima.map(([which, name, most, bad]) => (
          <NumberField
            key={which}
            name={name}
            value={day.inputs()[which]}
            least={0}
            most={most}
            bad={bad}
            hint={words.anyWeather}
            onChange={(least) => setInputs({ [which]: least })}
          />
        ))}
      </div>
      <Hint>{words.limitsHint}</Hint>
    </>
  );
}

function modelHint(): string {
  const { variation } = day.settled();
  return variation.value === null
    ? words.variationUnknown
    : words.variationHint(decimal(variation.value, 1));
}
