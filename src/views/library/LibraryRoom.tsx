/** Library: what the pilot has to choose from, to edit and to give away, and how more comes in. */

import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { Listed } from '../../board/documents/documents';
import {
  appRows,
  compareListed,
  deletedRows,
  type Kind,
  type LibraryRow,
  ownRows,
  today,
  worldRows,
} from '../../board/documents/library';
import { wallNowMs } from '../../board/flight/time';
import { openSheet, sheet } from '../../board/places';
import { openLog } from '../../board/record/log';
import { found } from '../../core';
import { inputClass, Labelled } from '../../parts/field/Labelled';
import { Fold } from '../../parts/fold/Fold';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { SheetPart, SheetParts } from '../../parts/sheet/SheetPart';
import { Bring } from './Bring';
import styles from './Library.module.css';
import { AppRow, GoneRow, OwnRow } from './Row';
import { words } from './words';

/** The room. */
export function LibraryRoom(): JSX.Element {
  const [openedMs] = useState(wallNowMs);
  // The log says what was flown with what; without it a row says nothing of that.
  useEffect(() => void openLog().catch(() => undefined), []);
  return (
    <SheetParts>
      <SheetPart title={words.more}>
        <Bring />
        <Keys>
          <Key onPress={() => openSheet({ kind: 'drawing', of: null, over: sheet.value })}>
            {words.drawField}
          </Key>
          <Key onPress={() => openSheet({ kind: 'making', of: null, over: sheet.value })}>
            {words.makeAircraft}
          </Key>
        </Keys>
      </SheetPart>
      <SheetPart title={words.lesson}>
        <p>{words.lessonHint}</p>
        <Keys>
          <Key onPress={() => openSheet({ kind: 'lesson', over: sheet.value })}>
            {words.makeLesson}
          </Key>
        </Keys>
      </SheetPart>
      <KindPart kind="field" title={words.fields} openedMs={openedMs} />
      <KindPart kind="aircraft" title={words.aircraft} openedMs={openedMs} />
      <KindPart kind="procedure" title={words.procedures} openedMs={openedMs} />
    </SheetParts>
  );
}

interface KindPartProps {
  readonly kind: Kind;
  readonly title: string;
  /** When the room was opened: what was deleted since stands where it stood. */
  readonly openedMs: number;
}

/** A row, and what it is sorted by. */
interface Placed {
  readonly row: LibraryRow;
  readonly isGone: boolean;
}

function KindPart({ kind, title, openedMs }: KindPartProps) {
  const [opened, setOpened] = useState<string | null>(null);
  const [text, setText] = useState('');
  const [isWhole, setWhole] = useState(false);
  const toggle = (name: string) => setOpened((now) => (now === name ? null : name));
  const deleted = deletedRows(kind);
  const isRecent = ({ versions }: LibraryRow) =>
    versions.some(({ deletedMs = 0 }) => deletedMs >= openedMs);
  const rows: readonly Placed[] = [
    ...ownRows(kind).map((row) => ({ row, isGone: false })),
    ...deleted.filter(isRecent).map((row) => ({ row, isGone: true })),
  ].sort((a, b) => before(a.row, b.row));
  const asked = found(text, rows, searchedOf);
  const shown = isWhole ? asked : asked.slice(0, SHOWN);
  const older = deleted.filter((row) => !isRecent(row));
  const isToday = ({ hash }: Listed) => today.value.has(hash);
  const [flown, others] = inTwo(appRows(kind), isToday);
  const [here, world] = inTwo(kind === 'field' ? worldRows() : [], isToday);
  const app = (listed: Listed) => (
    <AppRow
      key={listed.hash}
      of={listed}
      isOpen={opened === listed.hash}
      onToggle={() => toggle(listed.hash)}
    />
  );
  return (
    <SheetPart title={title}>
      {rows.length === 0 && <p class={styles.notes}>{words.none}</p>}
      {rows.length > SHOWN && (
        <Labelled name={words.find(title)}>
          <input
            class={inputClass}
            type="search"
            maxLength={60}
            autocomplete="off"
            spellcheck={false}
            value={text}
            onInput={(event) => setText(event.currentTarget.value)}
          />
        </Labelled>
      )}
      <ul>
        {shown.map(({ row, isGone }) =>
          isGone ? (
            <GoneRow key={`gone ${row.name}`} row={row} isFresh />
          ) : (
            <OwnRow
              key={row.name}
              row={row}
              isOpen={opened === row.name}
              onToggle={() => toggle(row.name)}
            />
          ),
        )}
        {[...flown, ...here].map(app)}
      </ul>
      {shown.length < asked.length && (
        <Keys>
          <Key onPress={() => setWhole(true)}>{words.showMore(asked.length - shown.length)}</Key>
        </Keys>
      )}
      {world.length > 0 && (
        <Fold quiet title={words.world(world.length)}>
          {() => <ul>{world.map(app)}</ul>}
        </Fold>
      )}
      <Fold quiet title={words.demo(others.length)}>
        {() => <ul>{others.map(app)}</ul>}
      </Fold>
      {older.length > 0 && (
        <Fold quiet title={words.deleted(older.length)}>
          {() => (
            <ul>
              {older.map((row) => (
                <GoneRow key={row.name} row={row} />
              ))}
            </ul>
          )}
        </Fold>
      )}
    </SheetPart>
  );
}

/** More than this isn't read at a glance, nor drawn at once. */
const SHOWN = 12;

const searchedOf = ({ row: { newest } }: Placed) => ({ code: newest.code, texts: [newest.name] });

const before = (a: LibraryRow, b: LibraryRow) =>
  compareListed(a.newest, b.newest) || (a.name < b.name ? -1 : 1);

function inTwo<T>(all: readonly T[], isFirst: (one: T) => boolean): [readonly T[], readonly T[]] {
  return [all.filter(isFirst), all.filter((one) => !isFirst(one))];
}
