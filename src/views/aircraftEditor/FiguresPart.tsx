/** What an aircraft is started from, its name, and its figures: those that are needed first. */

import type { ComponentChildren, JSX } from 'preact';
import { listedAircraft } from '../../board/documents/documents';
import { langOf, shownText } from '../../board/language';
import {
  changeAircraft,
  changeOnce,
  isNew,
  nameAircraft,
  startFromAircraft,
  startFromClass,
} from '../../board/writing/aircraft';
import { type Aircraft, type FigureName, isNeeded, languageOf, type TextName } from '../../core';
import { Choice, choicesOf } from '../../parts/choice/Choice';
import { anyText, EntryField } from '../../parts/field/EntryField';
import { Hint } from '../../parts/field/Labelled';
import { Pick } from '../../parts/field/Pick';
import { Fold } from '../../parts/fold/Fold';
import styles from './AircraftEditor.module.css';
import { FigureEntry, powerUnitOf } from './FigureEntry';
import { BOOK, GROUPS, type GroupName, groupShown } from './shown';
import { words } from './words';

interface PartProps {
  readonly aircraft: Aircraft;
}

/** The part. */
export function FiguresPart({ aircraft }: PartProps): JSX.Element {
  return (
    <div class={styles.form}>
      {isNew.value && <Start aircraft={aircraft} />}
      <EntryField
        name={words.name}
        text={aircraft.name}
        read={anyText(80)}
        bad={words.nameBad}
        hint={words.nameHint}
        onChange={nameAircraft}
      />
      <h3 class={styles.title}>{words.bookTitle}</h3>
      <Hint>{words.bookHint}</Hint>
      <Figures aircraft={aircraft} names={BOOK} />
      <Group name="masses">
        <Figures aircraft={aircraft} names={GROUPS.masses} />
      </Group>
      <Group name="wind">
        <Figures aircraft={aircraft} names={GROUPS.wind} />
      </Group>
      <Group name="limits">
        <Figures aircraft={aircraft} names={GROUPS.limits} />
      </Group>
      <Group name="climb">
        <Figures aircraft={aircraft} names={GROUPS.climb} />
      </Group>
      <Group name="taxi">
        <Figures aircraft={aircraft} names={GROUPS.taxi} />
        <PowerUnit aircraft={aircraft} />
        <TextEntry aircraft={aircraft} name="afterBreakaway" text={aircraft.taxi.afterBreakaway} />
        <TextEntry aircraft={aircraft} name="steering" text={aircraft.taxi.steering} />
      </Group>
      <Group name="words">
        <TextEntry aircraft={aircraft} name="rotateTo" text={aircraft.takeoff.rotateTo} />
        <Stop aircraft={aircraft} />
        <EntryField
          name={words.about}
          text={aircraft.about}
          lang={langOf(languageOf(aircraft))}
          read={anyText(600)}
          bad={words.aboutBad}
          most={600}
          lines={3}
          onChange={(about) => changeAircraft({ kind: 'head', set: { about } })}
        />
      </Group>
    </div>
  );
}

/** A class, or an aircraft at hand. */
function Start({ aircraft }: PartProps) {
  return (
    <>
      <h3 class={styles.title}>{words.startTitle}</h3>
      <Hint>{words.startHint}</Hint>
      <Choice
        label={words.startTitle}
        options={choicesOf(words.classes)}
        chosen={aircraft.madeFrom?.class ?? null}
        onChoose={(of) => startFromClass(of, words.stopAtFirst)}
      />
      <Pick
        name={words.atHand}
        options={[
          { value: '', name: words.noneAtHand },
          ...listedAircraft.value.map(({ hash, name }) => ({ value: hash, name })),
        ]}
        chosen=""
        onChoose={(hash) => {
          const listed = listedAircraft.value.find((one) => one.hash === hash);
          if (listed !== undefined) void startFromAircraft(listed.hash).catch(() => undefined);
        }}
      />
    </>
  );
}

interface FiguresProps extends PartProps {
  readonly names: readonly FigureName[];
}

/** Boxes side by side where there is room. What this aircraft cannot have is left out. */
export function Figures({ aircraft, names }: FiguresProps): JSX.Element {
  return (
    <div class={styles.figures}>
      {names
        .filter((name) => canHave(aircraft, name))
        .map((name) => (
          <FigureEntry key={name} aircraft={aircraft} name={name} />
        ))}
    </div>
  );
}

function canHave(aircraft: Aircraft, name: FigureName): boolean {
  const { engine, madeFrom, performance } = aircraft;
  const isPropeller = engine === 'piston' || engine === 'turboprop';
  switch (name) {
    case 'climb.reheatOffKt':
    case 'climb.gearUpByKt':
      return isNeeded(aircraft, name);
    case 'handbook.powerKw':
      return isPropeller;
    case 'handbook.thrustKn':
      return !isPropeller;
    case 'handbook.reheatKn':
      return engine === 'jet with reheat';
    case 'handbook.minimumControlKt':
      return madeFrom === undefined
        ? performance?.oneEngineOut !== undefined
        : madeFrom.class === 'piston-twin' || madeFrom.class === 'twin-jet';
    default:
      return true;
  }
}

interface GroupProps {
  readonly name: GroupName;
  readonly children: ComponentChildren;
}

/** Folded until it is wanted. */
function Group({ name, children }: GroupProps) {
  const isWanted = groupShown.value === name;
  return (
    <Fold key={`${name} ${isWanted}`} quiet title={words.groups[name]} opened={isWanted}>
      {() => <div class={styles.group}>{children}</div>}
    </Fold>
  );
}

/** Whether power is read in percent or in revolutions. */
function PowerUnit({ aircraft }: PartProps) {
  if (aircraft.taxi.power === undefined) return null;
  return (
    <div>
      <p>{words.powerUnit}</p>
      <Choice
        label={words.powerUnit}
        options={choicesOf(words.powerUnits)}
        chosen={powerUnitOf(aircraft)}
        onChoose={(unit) => changeOnce({ kind: 'power-unit', unit })}
      />
    </div>
  );
}

interface TextEntryProps extends PartProps {
  readonly name: TextName;
  readonly text: string | undefined;
}

function TextEntry({ aircraft, name, text = '' }: TextEntryProps) {
  return (
    <EntryField
      name={words.texts[name].name}
      text={text}
      lang={langOf(languageOf(aircraft))}
      read={anyText(80)}
      bad={words.textBad}
      hint={words.texts[name].hint}
      onChange={(to) => changeAircraft({ kind: 'text', name, to })}
    />
  );
}

const MOST_LINES = 6;

/** What to do to stop, a line each. */
function readStop(text: string): readonly string[] | null {
  const lines = text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
  const isFit = lines.length > 0 && lines.length <= MOST_LINES;
  return isFit && lines.every((line) => line.length <= 80) ? lines : null;
}

function Stop({ aircraft }: PartProps) {
  return (
    <EntryField
      name={words.stop}
      text={aircraft.stop.join('\n')}
      lang={shownText(aircraft, aircraft.stop[0] ?? '').lang}
      read={readStop}
      bad={words.stopBad}
      most={500}
      lines={3}
      onChange={(to) => changeAircraft({ kind: 'stop', to })}
    />
  );
}
