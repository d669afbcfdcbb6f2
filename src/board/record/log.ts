/** The log: a light line for every sortie, the whole of one when it is opened, and what is written into it. */

import { computed, signal } from '@preact/signals';
import {
  type Entry,
  type Hash,
  type Id,
  type LoggedSortie,
  type LogMoment,
  type LogSummary,
  loadLogbook,
  type Procedure,
} from '../../core';
import { entriesOf, sortieNames } from '../../record/past';
import { canBeGoneOnWith } from '../../record/record';
import { record, sortie, sorties } from '../board';
import { all, type Listed } from '../documents/documents';
import { interrupt } from '../steps/interruption';
import { addTo, undoable } from './adding';

type Logbook = Awaited<ReturnType<typeof loadLogbook>>;

const logbook = signal<Logbook | null>(null);

/** Lines of sorties that are not in memory, as they were worked out. */
const past = signal<ReadonlyMap<Id, LogSummary>>(new Map());

/** What stands in the store of sorties that are in memory only in part, or were added to elsewhere. */
const stored = signal<ReadonlyMap<Id, readonly Entry[]>>(new Map());

/** How many sorties are still to be read for their line. */
export const stillReading = signal(0);

/** Documents that are not listed any more, by their names: what was flown with them says so. */
const flownDocuments = signal<ReadonlyMap<Hash, NamedDocument>>(new Map());

/** What the log calls a document by. */
export interface NamedDocument {
  readonly code: string;
  readonly name: string;
}

/** Procedures that were flown, as far as they could be had. */
const procedures = new Map<Hash, Procedure | null>();

/** A document's code and name; null where it is not at hand any more. */
export function nameOf(hash: Hash | null): NamedDocument | null {
  if (hash === null) return null;
  return all.value.find((listed) => listed.hash === hash) ?? flownDocuments.value.get(hash) ?? null;
}

/** The lines of the sorties in memory, as they stand just now. */
const recent = computed((): readonly LogSummary[] => {
  const book = logbook.value;
  if (book === null) return [];
  return [...sorties.value].flatMap(([id, entries]) => {
    const told = book.logOf([...(stored.value.get(id) ?? []), ...entries], procedureOf);
    return told === null ? [] : [book.summaryOf(told)];
  });
});

/** Every sortie that was flown, begun last first; null until the log was read. */
export const lines = computed((): readonly LogSummary[] | null => {
  const book = logbook.value;
  if (book === null) return null;
  const merged = new Map(past.value);
  for (const line of recent.value) merged.set(line.sortie, line);
  return [...merged.values()].filter(({ flown }) => flown).sort(book.compareLines);
});

/** Sorties, time and landings of them all. */
export const totals = computed(() => logbook.value?.totalsOf(lines.value ?? []) ?? null);

const procedureOf = (hash: Hash): Procedure | null => procedures.get(hash) ?? null;

/** So many sorties are read in one go, so that the screen never waits for the log. */
const AT_ONCE = 50;

let opening: Promise<void> | null = null;

/** Reads the log, once; read again it looks for what has come since. */
export function openLog(): Promise<void> {
  opening ??= readLog().finally(() => {
    opening = null;
  });
  return opening;
}

async function readLog(): Promise<void> {
  const book = await loadLogbook();
  await readDocuments();
  const { store } = record;
  if (store === null) {
    await readProcedures([...sorties.peek().values()].flat());
    logbook.value = book;
    return;
  }
  const kept = (await store.read('summaries')) as readonly LogSummary[];
  const inMemory = new Set(sorties.peek().keys());
  await readProcedures([...sorties.peek().values()].flat());
  stored.value = await entriesOf(record, [...inMemory]);
  past.value = new Map(
    kept
      .filter(({ make, sortie }) => make === book.SUMMARY_MAKE && !inMemory.has(sortie))
      .map((line) => [line.sortie, line]),
  );
  logbook.value = book;
  const names = await sortieNames(store);
  await readLines(
    book,
    [...names].filter((name) => !inMemory.has(name) && !past.peek().has(name)),
  );
}

/** Works out the lines that are missing, a few at a time, and keeps them. */
async function readLines(book: Logbook, missing: readonly Id[]): Promise<void> {
  for (let from = 0; from < missing.length; from += AT_ONCE) {
    stillReading.value = missing.length - from;
    const read = await entriesOf(record, missing.slice(from, from + AT_ONCE));
    await readProcedures([...read.values()].flat());
    const fresh = [...read.values()].flatMap((entries) => {
      const told = book.logOf(entries, procedureOf);
      return told === null ? [] : [book.summaryOf(told)];
    });
    await record.store?.write({ summaries: fresh });
    past.value = new Map([...past.peek(), ...fresh.map((line) => [line.sortie, line] as const)]);
    // The screen gets its turn.
    await new Promise((resume) => setTimeout(resume));
  }
  stillReading.value = 0;
}

async function readDocuments(): Promise<void> {
  const kept = await record.documents();
  flownDocuments.value = new Map(
    kept.map(({ hash, content }) => [hash, content as NamedDocument] as const),
  );
  for (const { hash, kind, content } of kept) {
    if (kind === 'procedure') procedures.set(hash, content as Procedure);
  }
}

/** Takes the procedures in hand that these entries were flown with. */
async function readProcedures(entries: readonly Entry[]): Promise<void> {
  for (const entry of entries) {
    if (entry.kind !== 'open' || procedures.has(entry.procedure)) continue;
    const listed = all.peek().find((one: Listed) => one.hash === entry.procedure);
    const content = listed?.kind === 'procedure' ? await listed.load().catch(() => null) : null;
    procedures.set(entry.procedure, content);
  }
}

/** Takes a sortie in hand to be read in whole; it follows what is written into it. */
export async function openLogged(sortie: Id): Promise<void> {
  await openLog();
  const read = await entriesOf(record, [sortie]);
  await readProcedures([...read.values()].flat());
  // What is written into it counts over what was written elsewhere.
  for (const entries of read.values()) record.numberAfter(entries);
  stored.value = new Map([...stored.peek(), ...read]);
}

/** A sortie in whole, once it was opened; null before, and where nothing is kept of it. */
export function loggedSortie(sortie: Id): LoggedSortie | null {
  return logbook.value?.logOf(entriesAtHand(sortie), procedureOf) ?? null;
}

/** The whole of some sorties, in the order of their names; those that tell nothing are left out. */
export async function readSorties(names: readonly Id[]): Promise<readonly LoggedSortie[]> {
  const book = logbook.value ?? (await loadLogbook());
  const read = await entriesOf(record, names);
  await readProcedures([...read.values()].flat());
  return names.flatMap((name) => book.logOf(read.get(name) ?? [], procedureOf) ?? []);
}

const entriesAtHand = (id: Id): readonly Entry[] => [
  ...(stored.value.get(id) ?? []),
  ...(sorties.value.get(id) ?? []),
];

/** Whether a sortie of the log, once it was opened, can be flown again: not the one that is being flown. */
export const canTakeUp = (id: Id): boolean =>
  id !== sortie.value.id &&
  !record.newerSorties.has(id) &&
  entriesAtHand(id).length > 0 &&
  canBeGoneOnWith(entriesAtHand(id));

/** Takes a sortie up again where it was left; it becomes the one that is flown. */
export function takeUpAgain(id: Id): void {
  if (!canTakeUp(id)) return;
  const entries = entriesAtHand(id);
  record.recall(entries);
  const leftMs = Math.max(...entries.map(({ at }) => at.wallMs));
  undoable.value = { what: 'taken up', entries: addTo(id, { kind: 'taken up' }) };
  interrupt(leftMs);
}

/** Writes a note into a sortie. */
export function note(sortie: Id, text: string): void {
  if (text.trim() !== '') addTo(sortie, { kind: 'noted', text: text.trim() });
}

/** Writes when a moment really was; null: it never was. What was stamped stays in the record. */
export function correct(sortie: Id, what: LogMoment, sortieMs: number | null): void {
  addTo(sortie, { kind: 'corrected', what, sortieMs });
}

/** Takes a note or a correction back. */
export function takeBack(sortie: Id, entry: Id): void {
  addTo(sortie, { kind: 'undo', target: entry });
}

/** What works times out; null until the log was read. */
export const logTools = computed(() => logbook.value);
