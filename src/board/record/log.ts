/**
 * The log: a light line for every sortie, a whole sortie when it is opened, and what is written
 * into it.
 */

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

/** Stored lines of sorties that aren't in memory. */
const past = signal<ReadonlyMap<Id, LogSummary>>(new Map());

/** Stored entries of sorties that are only partly in memory, or were added to elsewhere. */
const stored = signal<ReadonlyMap<Id, readonly Entry[]>>(new Map());

/** How many sorties still have to be read for their line. */
export const stillReading = signal(0);

/** Documents no longer listed, by hash: their entries still say what was flown. */
const flownDocuments = signal<ReadonlyMap<Hash, NamedDocument>>(new Map());

/** What the log calls a document. */
export interface NamedDocument {
  readonly code: string;
  readonly name: string;
}

/** Procedures that were flown, as far as they could be loaded. */
const procedures = new Map<Hash, Procedure | null>();

/** A document's code and name; null if it is no longer here. */
export function nameOf(hash: Hash | null): NamedDocument | null {
  if (hash === null) return null;
  return all.value.find((listed) => listed.hash === hash) ?? flownDocuments.value.get(hash) ?? null;
}

/** The lines of the sorties in memory, as of now. */
const recent = computed((): readonly LogSummary[] => {
  const book = logbook.value;
  if (book === null) return [];
  return [...sorties.value].flatMap(([id, entries]) => {
    const told = book.logOf([...(stored.value.get(id) ?? []), ...entries], procedureOf);
    return told === null ? [] : [book.summaryOf(told)];
  });
});

/** Every sortie flown, latest first; null until the log was read. */
export const lines = computed((): readonly LogSummary[] | null => {
  const book = logbook.value;
  if (book === null) return null;
  const merged = new Map(past.value);
  for (const line of recent.value) merged.set(line.sortie, line);
  return [...merged.values()].filter(({ flown }) => flown).sort(book.compareLines);
});

/** Sorties, time and landings in total. */
export const totals = computed(() => logbook.value?.totalsOf(lines.value ?? []) ?? null);

const procedureOf = (hash: Hash): Procedure | null => procedures.get(hash) ?? null;

/** How many sorties are read at a time, so that the screen never waits for the log. */
const AT_ONCE = 50;

let opening: Promise<void> | null = null;

/** Reads the log once; another call looks for what has been added since. */
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

/** Computes the missing lines, a few at a time, and stores them. */
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
    // Let the screen have its turn.
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

/** Loads the procedures these entries were flown with. */
async function readProcedures(entries: readonly Entry[]): Promise<void> {
  for (const entry of entries) {
    if (entry.kind !== 'open' || procedures.has(entry.procedure)) continue;
    const listed = all.peek().find((one: Listed) => one.hash === entry.procedure);
    const content = listed?.kind === 'procedure' ? await listed.load().catch(() => null) : null;
    procedures.set(entry.procedure, content);
  }
}

/** Opens a sortie to be read whole; it follows what is written into it. */
export async function openLogged(sortie: Id): Promise<void> {
  await openLog();
  const read = await entriesOf(record, [sortie]);
  await readProcedures([...read.values()].flat());
  // What is written here counts over what was written elsewhere.
  for (const entries of read.values()) record.numberAfter(entries);
  stored.value = new Map([...stored.peek(), ...read]);
}

/** A whole sortie, once opened; null before, and if nothing is stored of it. */
export function loggedSortie(sortie: Id): LoggedSortie | null {
  return logbook.value?.logOf(entriesAtHand(sortie), procedureOf) ?? null;
}

/** Several whole sorties, in the order of their ids; those with nothing to tell are left out. */
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

/** Whether an opened sortie of the log can be resumed: not the one in progress. */
export const canTakeUp = (id: Id): boolean =>
  id !== sortie.value.id &&
  !record.newerSorties.has(id) &&
  entriesAtHand(id).length > 0 &&
  canBeGoneOnWith(entriesAtHand(id));

/** Resumes a sortie where it was left; it becomes the sortie in progress. */
export function takeUpAgain(id: Id): void {
  if (!canTakeUp(id)) return;
  const entries = entriesAtHand(id);
  record.recall(entries);
  const leftMs = Math.max(...entries.map(({ at }) => at.wallMs));
  undoable.value = { what: 'taken up', entries: addTo(id, { kind: 'taken up' }) };
  interrupt(leftMs);
}

export function note(sortie: Id, text: string): void {
  if (text.trim() !== '') addTo(sortie, { kind: 'noted', text: text.trim() });
}

/**
 * Writes when a moment really was; null if it never was. The original stamp stays in the record.
 */
export function correct(sortie: Id, what: LogMoment, sortieMs: number | null): void {
  addTo(sortie, { kind: 'corrected', what, sortieMs });
}

/** Takes a note or a correction back. */
export function takeBackEntry(sortie: Id, entry: Id): void {
  addTo(sortie, { kind: 'undo', target: entry });
}

/** The code that computes times; null until the log was read. */
export const logTools = computed(() => logbook.value);
