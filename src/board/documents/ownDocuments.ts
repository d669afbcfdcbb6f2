/** The documents the pilot added or wrote. */

import { catalogue, type ListedField, type ListedProcedure } from 'virtual:lapstrip-catalogue';
import { batch, computed, signal } from '@preact/signals';
import {
  besideLine,
  documentLines,
  editionsInOrder,
  type Field,
  type Hash,
  languageOf,
  lineOf,
  nextPlace,
  type Procedure,
  takenOn,
  whereabouts,
} from '../../core';
import { documentHash } from '../../exchange/hash';
import { type DocumentFollowers, followDocuments } from '../../record/followDocuments';
import type { KeptDocument } from '../../record/store';
import { record } from '../board';
import { wallNowMs } from '../flight/time';
import { askAgain, earlier, hold, type Listed, newer, own, received, visited } from './documents';

/** A version of a procedure that the pilot wrote. */
export interface OwnVersion {
  readonly hash: Hash;
  readonly content: Procedure;
  readonly edition: NonNullable<Procedure['edition']>;
}

/**
 * Every version the pilot wrote, oldest first. Only the newest of each procedure is listed to be
 * flown.
 */
export const ownVersions = signal<readonly OwnVersion[]>([]);

/** All of them by hash, deleted ones too: what was flown stays readable. */
const kept = signal<ReadonlyMap<Hash, KeptDocument>>(new Map());

/** Without those that are the app's to the letter. */
const differing = computed(() =>
  [...kept.value.values()].filter(({ hash }) => !catalogue.some((listed) => listed.hash === hash)),
);

/** What the pilot owns, every version. */
export const ownDocuments = computed(() =>
  differing.value.filter(({ deletedMs }) => deletedMs === undefined),
);

/** What the pilot deleted. */
export const deletedDocuments = computed(() =>
  differing.value.filter(({ deletedMs }) => deletedMs !== undefined),
);

/** What is known of a document of the pilot's; undefined if it is none. */
export const keptBy = (hash: Hash): KeptDocument | undefined => kept.value.get(hash);

/** Counts what happens here, so that what was read before something was written doesn't undo it. */
let happened = 0;
const writtenAt = new Map<Hash, number>();

/** Lists the documents the pilot added earlier, here or in another window. */
export async function listOwnDocuments(): Promise<void> {
  happened += 1;
  const began = happened;
  const stored = await record.documents();
  const read = stored.filter(({ own, hash }) => own && (writtenAt.get(hash) ?? 0) < began);
  listVisited(stored);
  if (read.length > 0) list(read);
  askAgain();
}

let followers: DocumentFollowers | null = null;

/** Lists them, and from now on also what other windows store. */
export function followOwnDocuments(): Promise<void> {
  followers ??= followDocuments(() => void listOwnDocuments());
  return listOwnDocuments();
}

/** Tells the other windows that there is more to list. */
export const tellOfDocuments = (): void => followers?.tell();

/** Lists documents at once, and stores them. */
async function keep(documents: readonly KeptDocument[]): Promise<void> {
  for (const { hash } of documents) writtenAt.set(hash, Number.POSITIVE_INFINITY);
  list(documents);
  await record.keepDocument(...documents);
  happened += 1;
  for (const { hash } of documents) writtenAt.set(hash, happened);
}

const versionsIn = (line: string): readonly KeptDocument[] =>
  [...kept.value.values()].filter((document) => lineOf(document) === line);

/** The versions of the document that this one is of, oldest first, without deleted ones. */
export function versionsOf(hash: Hash): readonly KeptDocument[] {
  const document = kept.value.get(hash);
  if (document === undefined) return [];
  const line = lineOf(document);
  return documentLines(ownDocuments.value.filter((one) => lineOf(one) === line)).flatMap(
    ({ versions }) => versions,
  );
}

/** Which version of a document it is. */
export interface VersionOf {
  /** As its author numbered it, else its place among those here; null for the only one. */
  readonly number: number | null;
  /** When this device stored it, ms UTC; null for what comes with the app. */
  readonly keptMs: number | null;
}

/** Which version of its document this is. */
export function versionOf(hash: Hash): VersionOf {
  const document = kept.value.get(hash);
  const { edition } = Object(document?.content) as Partial<Procedure>;
  const versions = versionsOf(hash);
  const place = versions.findIndex((version) => version.hash === hash) + 1;
  const isOneOfSeveral = versions.length > 1 && place > 0;
  return {
    number: edition?.number ?? (isOneOfSeveral ? place : null),
    keptMs: document?.keptMs ?? null,
  };
}

/**
 * Takes documents that have passed their schemas, stores all of them or none, and lists each here
 * as the newest version of its line. What is only `received` is listed by itself.
 */
export async function addOwnDocument(...documents: readonly KeptDocument[]): Promise<void> {
  const added: KeptDocument[] = [];
  for (const document of documents) {
    const { hash, content } = document;
    hold(hash, content);
    const before = kept.value.get(hash);
    const isOwn = before !== undefined && !before.received && before.deletedMs === undefined;
    // What the pilot owns doesn't become a stranger's because someone sent it too.
    if (isOwn && document.received) continue;
    const { title } = before ?? {};
    const here = { keptMs: wallNowMs(), ...(title === undefined ? {} : { title }), ...document };
    const line = lineOf(here);
    const others = [...versionsIn(line), ...added.filter((one) => lineOf(one) === line)];
    added.push({ ...here, place: nextPlace(others.filter((one) => one.hash !== hash)) });
  }
  if (added.length > 0) await keep(added);
}

/** Keeps what the pilot made as the newest version of its line, here and in the other windows. */
export async function keepOwn(
  made: Pick<KeptDocument, 'kind' | 'from' | 'line'> & { readonly content: object },
): Promise<Hash> {
  const hash = documentHash(made.content);
  await addOwnDocument({ ...made, hash, own: true });
  tellOfDocuments();
  return hash;
}

/** Makes a document from elsewhere the pilot's own, because the pilot chose it. */
export async function takeReceived(hash: Hash): Promise<void> {
  const document = kept.value.get(hash);
  if (document?.received !== true) return;
  const { received: _, ...taken } = document;
  // It stays where the pilot put it, beside others of its code.
  await addOwnDocument({ ...taken, line: besideLine(document) });
  tellOfDocuments();
}

/** Takes documents out of every list; what was flown with them stays readable. */
export async function deleteOwn(hashes: readonly Hash[]): Promise<void> {
  const deletedMs = wallNowMs();
  await change(hashes, (document) => ({ ...document, deletedMs }));
}

/** Lists them again, where they stood. */
export async function bringBack(hashes: readonly Hash[]): Promise<void> {
  await change(hashes, ({ deletedMs: _, ...document }) => document);
}

/** Names a version; an empty name is none. */
export async function nameVersion(hash: Hash, title: string): Promise<void> {
  await change([hash], ({ title: _, ...document }) =>
    title.trim() === '' ? document : { ...document, title: title.trim() },
  );
}

async function change(
  hashes: readonly Hash[],
  to: (document: KeptDocument) => KeptDocument,
): Promise<void> {
  await keep(hashes.flatMap((hash) => kept.value.get(hash) ?? []).map(to));
  tellOfDocuments();
}

/** Lists what was added or changed. */
function list(changed: readonly KeptDocument[]): void {
  batch(() => {
    kept.value = new Map([
      ...kept.value,
      ...changed.map((document) => [document.hash, document] as const),
    ]);
    const lines = documentLines(differing.value);
    const present = lines.flatMap(({ versions }) => versions);
    received.value = new Set(present.filter((one) => one.received).map(({ hash }) => hash));
    // A version by another pilot, or one never chosen here, replaces nothing.
    ownVersions.value = editionsInOrder(
      present.flatMap((document) => (document.received ? [] : (versionIn(document) ?? []))),
    );
    const newest = lines.flatMap(({ versions }) => versions.at(-1) ?? []);
    // What the pilot wrote comes last, because it is what is flown.
    const flown = ownVersions.value.flatMap(({ hash }) =>
      newest.filter((document) => document.hash === hash),
    );
    const brought = newest.filter((document) => !flown.includes(document));
    own.value = [...brought, ...flown].map(listedOnce);
    earlier.value = [
      ...lines.flatMap(({ versions }) => versions.slice(0, -1)),
      ...deletedDocuments.value,
    ].map(listedOnce);
    newer.value = new Map(lines.flatMap(({ versions }) => replacedBy(versions)));
  });
}

/** What the newest of these versions is offered instead of. */
function replacedBy(versions: readonly KeptDocument[]): readonly (readonly [Hash, Hash])[] {
  const newest = versions.at(-1);
  if (newest === undefined) return [];
  const older = versions.slice(0, -1).map(({ hash }) => hash);
  // A procedure of one's own has its own name and stands beside the app's.
  const isBeside = newest.kind === 'procedure' || newest.received || newest.line !== undefined;
  const { code } = Object(newest.content) as { readonly code?: unknown };
  const ofApp = [...catalogue, ...visited.value].filter(
    (one) => one.kind === newest.kind && one.code === code,
  );
  return [...older, ...(isBeside ? [] : ofApp.map(({ hash }) => hash))].map(
    (hash) => [hash, newest.hash] as const,
  );
}

/** Lists the fields of the world among what was flown; of two of one code, the newer set's. */
function listVisited(stored: readonly KeptDocument[]): void {
  const dated = stored.flatMap(({ own, kind, hash, content }) => {
    const date = own || kind !== 'field' ? null : takenOn(content as Field);
    return date === null ? [] : [{ date, field: listedField(hash, content as Field) }];
  });
  const newest = dated
    .sort((a, b) => (a.date < b.date ? -1 : 1))
    .map(({ field }) => [field.code, field] as const);
  const chosenNow = visited.peek().map((field) => [field.code, field] as const);
  if (newest.length > 0) visited.value = [...new Map([...newest, ...chosenNow]).values()];
}

/** A document never changes under its hash, and what a list says of it neither. */
const lists = new Map<Hash, Listed>();

function listedOnce(document: KeptDocument): Listed {
  const known = lists.get(document.hash) ?? listed(document);
  lists.set(document.hash, known);
  return known;
}

/** What a document is listed with; the document has the same property names. */
function listed({ hash, kind, content }: KeptDocument): Listed {
  const { code, name, aircraft } = content as ListedProcedure;
  const load = async () => content;
  const ofKind =
    kind === 'procedure'
      ? { aircraft, language: languageOf(content as Procedure) }
      : kind === 'field'
        ? aboutOf(content as Field)
        : {};
  return { kind, hash, code, name, load, ...ofKind } as Listed;
}

/** A field as it is listed. */
export const listedField = (hash: Hash, content: Field): ListedField => ({
  kind: 'field',
  hash,
  code: content.code,
  name: content.name,
  load: async () => content,
  ...aboutOf(content),
});

const aboutOf = (field: Field) => {
  const { about, language, translations } = field;
  return { about, language, translations, ...whereabouts(field) };
};

/** The same object for the same version, so that whoever holds one knows it again. */
const written = new Map<Hash, OwnVersion>();

function versionIn({ hash, kind, content }: KeptDocument): OwnVersion | null {
  if (kind !== 'procedure') return null;
  const procedure = content as Procedure;
  const { edition, basedOn } = procedure;
  if (edition === undefined || basedOn === undefined) return null;
  const version = written.get(hash) ?? { hash, content: procedure, edition };
  written.set(hash, version);
  return version;
}
