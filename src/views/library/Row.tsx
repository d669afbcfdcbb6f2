/** A row of the Library: what a document is, and, once tapped, what can be done with it. */

import type { ListedProcedure } from 'virtual:lapstrip-catalogue';
import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { type Listed, listedAircraft, listedBy, visited } from '../../board/documents/documents';
import { editListed } from '../../board/documents/editing';
import {
  bringBack,
  deleteOwn,
  flownIn,
  type LibraryRow,
  makeNewest,
  standsBeside,
  today,
} from '../../board/documents/library';
import { nameVersion } from '../../board/documents/ownDocuments';
import { langOf, languageName, nameLang } from '../../board/language';
import { openSheet, sheet } from '../../board/places';
import type { Hash } from '../../core';
import { inputClass, Labelled } from '../../parts/field/Labelled';
import { utcDate } from '../../parts/format';
import { Key } from '../../parts/key/Key';
import { Keys } from '../../parts/key/Keys';
import { marked, markedText, seenAndSaid } from '../../parts/marked';
import type { KeptDocument } from '../../record/store';
import { CopyForm } from './CopyForm';
import styles from './Library.module.css';
import { words } from './words';

interface FoldedProps {
  readonly of: Listed;
  /** What there is to know of it, piece by piece. */
  readonly notes: readonly string[];
  readonly isOpen: boolean;
  readonly onToggle: () => void;
  /** What can be done with it. */
  readonly children: ComponentChildren;
}

/** A row that a tap opens. */
function Folded({ of, notes, isOpen, onToggle, children }: FoldedProps) {
  const id = useId();
  return (
    <li class={styles.row}>
      <button
        type="button"
        class={styles.head}
        aria-expanded={isOpen}
        aria-controls={isOpen ? id : undefined}
        onClick={onToggle}
      >
        <span class={styles.name}>
          {of.kind === 'field' && <b class={styles.code}>{of.code}</b>}{' '}
          {markedText(nameLang(of), of.name)}
        </span>
        {notes.length > 0 && ' '}
        {notes.length > 0 && <span class={styles.notes}>{notes.join(' · ')}</span>}
      </button>
      {isOpen && (
        <div id={id} class={styles.actions}>
          {children}
        </div>
      )}
    </li>
  );
}

type Does = keyof typeof words.does;

/** What a document is called in the labels of its keys. */
const calledBy = ({ kind, code, name }: Listed) => (kind === 'field' ? code : name);

interface DoProps {
  readonly does: Does;
  readonly to: Listed;
  readonly pressed?: boolean;
  readonly onPress: () => void;
}

/** A key that does something to a document; the label read out says to which. */
const Do = ({ does, to, pressed, onPress }: DoProps) => (
  <Key {...(pressed === undefined ? {} : { pressed })} onPress={onPress}>
    {seenAndSaid(words.does[does], marked(nameLang(to), words.doesTo[does], calledBy(to)))}
  </Key>
);

/** What can be done with any version of any document. */
function Usual({ of }: { readonly of: Listed }) {
  const { hash, kind } = of;
  return (
    <>
      <Do does="edit" to={of} onPress={() => editListed(of)} />
      <Do
        does="compare"
        to={of}
        onPress={() => openSheet({ kind: 'compare', hash, over: sheet.value })}
      />
      <Do
        does="share"
        to={of}
        onPress={() => openSheet({ kind: 'share', hash, over: sheet.value })}
      />
      {kind === 'procedure' && (
        <Do
          does="print"
          to={of}
          onPress={() => openSheet({ kind: 'print', hash, over: sheet.value })}
        />
      )}
    </>
  );
}

interface OpenableProps {
  readonly isOpen: boolean;
  readonly onToggle: () => void;
}

/** Where what the pilot didn't add comes from. */
const fromApp = ({ hash }: Listed): string =>
  visited.value.some((field) => field.hash === hash) ? words.fromWorld : words.fromDemo;

/** A document that comes with the app, or a field of the world. */
export function AppRow({
  of,
  isOpen,
  onToggle,
}: OpenableProps & { readonly of: Listed }): JSX.Element {
  const [copying, setCopying] = useState(false);
  return (
    <Folded
      of={of}
      notes={[...forWhat(of), fromApp(of), ...usedBy([of.hash]), ...flownToday(of.hash)]}
      isOpen={isOpen}
      onToggle={onToggle}
    >
      <Keys>
        <Usual of={of} />
        <Do does="copy" to={of} pressed={copying} onPress={() => setCopying(!copying)} />
      </Keys>
      {copying && <CopyForm of={of} onDone={() => setCopying(false)} />}
    </Folded>
  );
}

type Form = 'copy' | 'name' | 'versions';

/** A document of the pilot's own, with its older versions. */
export function OwnRow({
  row,
  isOpen,
  onToggle,
}: OpenableProps & { readonly row: LibraryRow }): JSX.Element {
  const [form, setForm] = useState<Form | null>(null);
  const { newest, versions } = row;
  const shown = versions.at(-1);
  const older = versions.slice(0, -1);
  const hashes = versions.map(({ hash }) => hash);
  const over = shown === undefined ? null : standsBeside(shown);
  const toggle = (which: Form) => setForm(form === which ? null : which);
  const notes = [
    ...forWhat(newest),
    ...aboutVersion(row, versions.length - 1),
    ...usedBy(hashes),
    ...(hashes.some((hash) => today.value.has(hash)) ? [words.today] : []),
  ];
  return (
    <Folded of={newest} notes={notes} isOpen={isOpen} onToggle={onToggle}>
      <Keys>
        <Usual of={newest} />
        <Do does="copy" to={newest} pressed={form === 'copy'} onPress={() => toggle('copy')} />
        <Do does="name" to={newest} pressed={form === 'name'} onPress={() => toggle('name')} />
        {shown !== undefined && over !== null && (
          <Do does={over} to={newest} onPress={() => void makeNewest(shown)} />
        )}
        {older.length > 0 && (
          <Key pressed={form === 'versions'} onPress={() => toggle('versions')}>
            {words.earlier(older.length)}
          </Key>
        )}
        <Do does="delete" to={newest} onPress={() => void deleteOwn(hashes)} />
      </Keys>
      {form === 'copy' && <CopyForm of={newest} onDone={() => setForm(null)} />}
      {form === 'name' && shown !== undefined && (
        <NameForm of={shown} onDone={() => setForm(null)} />
      )}
      {form === 'versions' && older.length > 0 && <Versions row={row} />}
    </Folded>
  );
}

/** The older versions, newest first. */
function Versions({ row }: { readonly row: LibraryRow }) {
  const [opened, setOpened] = useState<Hash | null>(null);
  const older = row.versions.slice(0, -1).map((version, place) => ({ version, place }));
  return (
    <ul class={styles.versions}>
      {older.toReversed().map(({ version, place }) => {
        const of = listedBy(version.hash);
        if (of === undefined) return null;
        return (
          <Folded
            key={version.hash}
            of={of}
            notes={[
              ...aboutVersion(row, place),
              ...usedBy([version.hash]),
              ...flownToday(version.hash),
            ]}
            isOpen={opened === version.hash}
            onToggle={() => setOpened((now) => (now === version.hash ? null : version.hash))}
          >
            <Keys>
              <Usual of={of} />
              <Do does="newest" to={of} onPress={() => void makeNewest(version)} />
              <Do does="delete" to={of} onPress={() => void deleteOwn([version.hash])} />
            </Keys>
          </Folded>
        );
      })}
    </ul>
  );
}

/** What was deleted, and the key that brings it back. */
export function GoneRow({
  row: { newest, versions },
  isFresh = false,
}: {
  readonly row: LibraryRow;
  /** It was deleted just now: the focus that stood on it goes to the key. */
  readonly isFresh?: boolean;
}): JSX.Element {
  const item = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isFresh && document.activeElement === document.body)
      item.current?.querySelector('button')?.focus();
  }, []);
  const hashes = versions.map(({ hash }) => hash);
  const isKept = flownIn(hashes) !== null || hashes.some((hash) => today.value.has(hash));
  return (
    <li ref={item} class={`${styles.row} ${styles.gone}`}>
      <p role="status">
        {marked(nameLang(newest), words.gone, calledBy(newest))}
        {isKept && ` ${words.keptForLog}`}
      </p>
      <Key onPress={() => void bringBack(hashes)}>
        {marked(nameLang(newest), words.undo, calledBy(newest))}
      </Key>
    </li>
  );
}

/** What the pilot calls a version. */
function NameForm({ of, onDone }: { readonly of: KeptDocument; readonly onDone: () => void }) {
  const [title, setTitle] = useState(of.title ?? '');
  const name = () => {
    void nameVersion(of.hash, title);
    onDone();
  };
  return (
    <form
      class={styles.form}
      onSubmit={(event) => {
        event.preventDefault();
        name();
      }}
    >
      <Labelled name={words.versionName}>
        <input
          class={inputClass}
          maxLength={60}
          placeholder={words.versionNameHint}
          value={title}
          onInput={(event) => setTitle(event.currentTarget.value)}
        />
      </Labelled>
      <Keys>
        <Key look="pick" onPress={name}>
          {words.nameIt}
        </Key>
      </Keys>
    </form>
  );
}

/** Which version it is, when it was kept, and where it came from. */
function aboutVersion({ versions }: LibraryRow, place: number): readonly string[] {
  const version = versions[place];
  if (version === undefined) return [];
  const { title, keptMs, received } = version;
  const { edition } = Object(version.content) as { readonly edition?: { number?: unknown } };
  const number = typeof edition?.number === 'number' ? edition.number : place + 1;
  const isNumbered = edition !== undefined || versions.length > 1;
  return [
    ...(title === undefined ? [] : [words.titled(title)]),
    ...(isNumbered ? [words.version(number)] : []),
    ...(keptMs === undefined ? [] : [utcDate(keptMs)]),
    originSaid(version),
    ...(received ? [words.notUsed] : []),
  ];
}

function originSaid({ from, fromName }: KeptDocument): string {
  if (fromName === undefined) return words.origins[from ?? 'unknown'];
  return from === 'lesson' ? words.fromLesson(fromName) : words.fromFile(fromName);
}

/** In how many sorties of the log it was flown; nothing before the log was read. */
function usedBy(hashes: readonly Hash[]): readonly string[] {
  const flown = flownIn(hashes);
  return flown === null ? [] : [words.flownIn(flown.sorties, utcDate(flown.lastMs))];
}

const flownToday = (hash: Hash) => (today.value.has(hash) ? [words.today] : []);

const forWhat = (of: Listed) => (of.kind === 'procedure' ? [forAircraft(of)] : []);

/** The aircraft a procedure is for, by name or else by code, and its language if not the page's. */
function forAircraft({ aircraft, language }: ListedProcedure): string {
  const name = listedAircraft.value.find(({ code }) => code === aircraft)?.name ?? aircraft;
  const lang = langOf(language);
  return words.forAircraft(name, lang === undefined ? null : languageName(lang));
}
