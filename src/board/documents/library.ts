/** What the Library shows: what the pilot owns by kind, what comes with the app, what was deleted. */

import { catalogue } from 'virtual:lapstrip-catalogue';
import { computed } from '@preact/signals';
import {
  type DocumentProblem,
  documentLines,
  type Hash,
  isReservedName,
  loadDocumentReader,
} from '../../core';
import type { KeptDocument } from '../../record/store';
import { sortie } from '../board';
import { lines } from '../record/log';
import { all, type Listed, listedBy, visited } from './documents';
import { chosenProcedure } from './inUse';
import {
  addOwnDocument,
  bringBack,
  deletedDocuments,
  deleteOwn,
  keepOwn,
  keptBy,
  ownDocuments,
  tellOfDocuments,
} from './ownDocuments';

/** The kinds of documents, in the order of the Library. */
export const KINDS = ['field', 'aircraft', 'procedure'] as const;

export type Kind = (typeof KINDS)[number];

/** A document of the pilot's own with its versions, oldest first. */
export interface LibraryRow {
  /** Stays the same while versions come and go. */
  readonly name: string;
  readonly newest: Listed;
  readonly versions: readonly KeptDocument[];
}

/** What the pilot owns of a kind, by code and name. */
export const ownRows = (kind: Kind): readonly LibraryRow[] =>
  rowsOf(ownDocuments.value.filter((document) => document.kind === kind));

/** What was deleted of a kind, whole documents and single versions, by code and name. */
export const deletedRows = (kind: Kind): readonly LibraryRow[] =>
  rowsOf(
    deletedDocuments.value
      .filter((document) => document.kind === kind)
      .map(({ deletedMs: _, ...document }) => document),
  ).map((row) => ({ ...row, versions: row.versions.flatMap(({ hash }) => keptBy(hash) ?? []) }));

const rowsOf = (documents: readonly KeptDocument[]): readonly LibraryRow[] =>
  documentLines(documents)
    .flatMap(({ name, versions }) => {
      const newest = listedBy(versions.at(-1)?.hash ?? '');
      return newest === undefined ? [] : [{ name, newest, versions }];
    })
    .sort((a, b) => compareListed(a.newest, b.newest));

/** The order of the Library: fields by code, the others by name. */
export const compareListed = (a: Listed, b: Listed): number =>
  (a.kind === 'field' ? a.code.localeCompare(b.code) : 0) || a.name.localeCompare(b.name);

/** What comes with the app of a kind. */
export const appRows = (kind: Kind): readonly Listed[] =>
  catalogue.filter((listed) => listed.kind === kind);

/** The fields of the world that were chosen on this device, by code. */
export const worldRows = (): readonly Listed[] => [...visited.value].sort(compareListed);

/** The documents flown today. */
export const today = computed((): ReadonlySet<Hash> => {
  const { field, aircraft } = sortie.value.inputs;
  const procedure = sortie.value.run?.procedure ?? chosenProcedure.value;
  return new Set([field, aircraft, procedure].flatMap((hash) => hash ?? []));
});

/** What the log says of a document: in how many sorties it was flown, and when last, ms UTC. */
export interface Flown {
  readonly sorties: number;
  readonly lastMs: number;
}

/** By document; empty until the log was read. */
const flights = computed((): ReadonlyMap<Hash, Flown> => {
  const flown = new Map<Hash, Flown>();
  for (const { field, aircraft, procedure, sortieMs } of lines.value ?? []) {
    for (const hash of [field, aircraft, procedure]) {
      if (hash !== null)
        flown.set(hash, together(flown.get(hash), { sorties: 1, lastMs: sortieMs }));
    }
  }
  return flown;
});

const together = (one: Flown | undefined, other: Flown): Flown =>
  one === undefined
    ? other
    : { sorties: one.sorties + other.sorties, lastMs: Math.max(one.lastMs, other.lastMs) };

/** What the log says of any of these; null if nothing, or before it was read. */
export const flownIn = (hashes: readonly Hash[]): Flown | null =>
  hashes
    .flatMap((hash) => flights.value.get(hash) ?? [])
    .reduce<Flown | null>((sum, one) => together(sum ?? undefined, one), null);

const isApart = ({ received, line }: KeptDocument) => received === true || line !== undefined;

/** What a document stands beside and could replace: another of the pilot's, the app's, or nothing. */
export function standsBeside(document: KeptDocument): 'over' | 'overDemo' | null {
  if (!isApart(document)) return null;
  const { kind } = document;
  const code: unknown = Object(document.content).code;
  const isMine = ownDocuments.value.some(
    (one) => one.kind === kind && Object(one.content).code === code && !isApart(one),
  );
  if (isMine) return 'over';
  // A procedure of one's own has a name of its own, and replaces none of the app's.
  const isOfApp = catalogue.some((one) => one.kind === kind && one.code === code);
  return isOfApp && kind !== 'procedure' ? 'overDemo' : null;
}

/** Puts an older version, or one from elsewhere, over all others of its code. */
export async function makeNewest({
  line: _l,
  received: _r,
  ...document
}: KeptDocument): Promise<void> {
  await addOwnDocument(document);
  tellOfDocuments();
}

/** What a copy is called. */
export interface CopyName {
  /** For a field; the others get one by themselves. */
  readonly code: string;
  readonly name: string;
}

/** What keeps a copy from being made: its code is another's, or the schema refuses it. */
export type CopyProblem = 'code-taken' | readonly DocumentProblem[];

/** Whether another document of the kind has this code. */
const isTaken = (kind: string, code: string) =>
  // A field of the world may be made one's own under its code.
  all.value.some(
    (one) =>
      one.kind === kind && one.code === code && !visited.value.some((field) => field === one),
  ) ||
  ownDocuments.value.some(
    ({ kind: other, content }) => other === kind && Object(content).code === code,
  );

/** The longest code of an aircraft or a procedure, characters. */
const LONGEST_CODE = 24;

/** A code like this one that nothing else of the kind has; of a field, four letters and figures. */
export function freeCode({ kind, code }: Pick<Listed, 'kind' | 'code'>): string {
  for (let number = 2; ; number++) {
    const end = kind === 'field' ? String(number) : `-${number}`;
    const most = kind === 'field' ? 4 : LONGEST_CODE;
    const free = `${code.slice(0, most - end.length)}${end}`;
    if (!isTaken(kind, free) && !isReservedName(free)) return free;
  }
}

/** Copies a document under another name, as one of the pilot's own; null if that is done. */
export async function copyDocument(
  listed: Listed,
  { code, name }: CopyName,
): Promise<CopyProblem | null> {
  const named = listed.kind === 'field' ? code.trim().toUpperCase() : freeCode(listed);
  if (isTaken(listed.kind, named)) return 'code-taken';
  const copy = { ...(await listed.load()), code: named, name: name.trim() };
  const { document, problems } = (await loadDocumentReader())(
    JSON.stringify({ ...copy, edition: undefined, basedOn: undefined }),
  );
  if (document === null) return problems;
  const { kind, content } = document;
  await keepOwn({ kind, content, from: 'copied' });
  return null;
}

export { bringBack, deleteOwn };
