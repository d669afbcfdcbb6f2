/** Sharing documents and the record, and looking at what comes in before any of it is stored. */

import {
  type CheckedDocument,
  type DocumentProblem,
  type LessonHeader,
  lineOf,
  loadDocumentCheck,
  loadLessonCheck,
  shownPlainly,
} from '../../core';
import { countSteps } from '../../exchange/differences';
import { fileName } from '../../exchange/fileName';
import { documentHash } from '../../exchange/hash';
import { type Links, linksTo, partInLink, textInDigits, textInLink } from '../../exchange/link';
import { linesApart, parseApart } from '../../exchange/parseApart';
import {
  type DamagedEntry,
  type FiledRecord,
  isRecordFile,
  LARGEST_RECORD,
  type RecordProblem,
  recordIn,
  writeRecord,
} from '../../exchange/recordFile';
import { type MergedCount, mergeBrought, wholeRecord } from '../../record/past';
import type { KeptDocument } from '../../record/store';
import { record } from '../board';
import { gatherCodes } from './codes';
import { ageAgainst, type Differences, differencesOf } from './comparing';
import { all, type Listed, received } from './documents';
import { addOwnDocument, keptBy, listOwnDocuments, tellOfDocuments } from './ownDocuments';

/** A document to share. */
export interface Shared {
  readonly name: string;
  readonly file: File;
  readonly links: Links;
}

/** A listed document as a file and as links; rejects if it isn't available right now. */
export async function shared({ kind, code, name, load }: Listed): Promise<Shared> {
  const content = await load();
  const edition = 'edition' in content ? content.edition : undefined;
  const version = edition === undefined ? [] : [`v${edition.number}`];
  const called = kind === 'field' ? [code, name] : [name, ...version];
  return packed(name, content, fileName(kind, ...called));
}

/** A lesson to share; or why there is none. */
export type SharedLesson =
  | { readonly shared: Shared; readonly problems: null }
  | { readonly shared: null; readonly problems: readonly DocumentProblem[] };

/** A lesson of listed documents, likewise; with the problems of its texts if it may not be sent. */
export async function sharedLesson(
  { name, note }: LessonHeader,
  documents: readonly Listed[],
): Promise<SharedLesson> {
  const lines = note.filter((line) => line.trim() !== '');
  const written = {
    lapstrip: 'lesson',
    version: 1,
    name: name.trim(),
    ...(lines.length === 0 ? {} : { note: lines }),
    documents: await Promise.all(documents.map(({ load }) => load())),
  };
  const { lesson, problems } = (await loadLessonCheck())(written);
  if (lesson === null) return { shared: null, problems };
  const called = fileName('lesson', lesson.name);
  return { shared: await packed(lesson.name, written, called), problems: null };
}

async function packed(name: string, content: object, called: string): Promise<Shared> {
  const app = `${location.origin}${location.pathname}`;
  const text = `${JSON.stringify(content, null, 2)}\n`;
  const file = new File([text], called, { type: 'application/json' });
  return { name, file, links: await linksTo(app, content, documentHash(content)) };
}

/** The record as files: a single one unless the record is very long. */
export async function recordFiles(): Promise<readonly File[]> {
  const written = writeRecord(await wholeRecord(record));
  return written.map((pieces, index) => {
    const part = written.length === 1 ? '' : `-${index + 1}-of-${written.length}`;
    return new File([...pieces], `lapstrip-log${part}.json`, { type: 'application/json' });
  });
}

/** What an incoming document would change. */
export type AgainstOwn =
  /** The very same is here. */
  | { readonly kind: 'same' }
  /** The very same is here, as an older version of the pilot's. */
  | { readonly kind: 'earlier'; readonly name: string }
  /** Nothing with its code is here. */
  | { readonly kind: 'new' }
  /** Another with its code is here. */
  | {
      readonly kind: 'other';
      readonly listed: Listed;
      /** It is the pilot's, not the app's. */
      readonly isOwn: boolean;
      /** Whether what came is newer or older, as far as the two say. */
      readonly age: 'newer' | 'older' | null;
      readonly differences: Differences;
    };

/** A document of a record, as shown before the record is merged. */
export interface InRecord {
  readonly kind: string;
  readonly content: CheckedDocument['content'];
  readonly against: AgainstOwn;
}

/** A document that came, and what it would change. */
export interface IncomingDocument {
  readonly document: KeptDocument & { readonly content: CheckedDocument['content'] };
  readonly against: AgainstOwn;
  /** Number of steps, for a procedure. */
  readonly steps: number | null;
}

/** What came in, as far as it is usable. */
export type Incoming =
  | (IncomingDocument & { readonly kind: 'document' })
  | (LessonHeader & { readonly kind: 'lesson'; readonly documents: readonly IncomingDocument[] })
  | {
      readonly kind: 'record';
      readonly record: FiledRecord;
      readonly sorties: number;
      /** Those of its documents that aren't here yet. */
      readonly documents: readonly InRecord[];
      /** Documents that aren't what they claim to be, and are left out. */
      readonly leftOut: number;
      /** Entries in whose texts something misleading was replaced. */
      readonly mended: number;
    }
  /** One of several codes; others are still to be read. */
  | {
      readonly kind: 'part';
      readonly part: number;
      readonly of: number;
      readonly missing: readonly number[];
    }
  | { readonly kind: 'refused'; readonly problems: readonly DocumentProblem[] }
  /** A record with a malformed entry: none of it is used. */
  | { readonly kind: 'damaged'; readonly entry: DamagedEntry };

const refused = (what: string): Incoming => ({ kind: 'refused', problems: [{ at: '', what }] });

/** Looks at a file, or at what follows `#` in a link. Never rejects, and stores nothing. */
export async function lookAt(from: File | string): Promise<Incoming> {
  try {
    if (typeof from === 'string') return await lookAtLink(from);
    return from.size > LARGEST_RECORD ? refused('record-too-large') : await look(from);
  } catch {
    return refused('not-read');
  }
}

async function lookAtLink(hash: string): Promise<Incoming> {
  const part = partInLink(hash);
  const gathered = part === null ? null : gatherCodes(part);
  if (part !== null && gathered?.missing) {
    return { kind: 'part', part: part.part, of: part.of, missing: gathered.missing };
  }
  const text = gathered?.digits ? await textInDigits(gathered.digits) : await textInLink(hash);
  return text === null ? refused('link-cut') : look(text);
}

/** A longer text is no document, characters; a lesson of several and a record may be longer. */
const LONGEST_DOCUMENT = 1_000_000;
const LONGEST_LESSON = 8_000_000;

async function look(from: Blob | string): Promise<Incoming> {
  const parsed = await parseApart(from);
  if (parsed.fault !== null) {
    const { code, line, column } = parsed.fault;
    return { kind: 'refused', problems: [{ at: '', what: code, line, column }] };
  }
  if (parsed.problem !== null) return refused(parsed.problem);
  if (isRecordFile(parsed.value)) return lookAtRecord(parsed.value);
  if (isLessonFile(parsed.value)) {
    if (parsed.length > LONGEST_LESSON) return refused('lesson-too-long');
    const { lesson, problems } = (await loadLessonCheck())(parsed.value);
    if (lesson === null) return { kind: 'refused', problems: await placed(problems, from) };
    const origin = { from: 'lesson', fromName: shownPlainly(lesson.name, LONGEST_NAME) } as const;
    const documents = lesson.documents.map((document) => incoming(document, origin));
    return { ...lesson, kind: 'lesson', documents: await Promise.all(documents) };
  }
  if (parsed.length > LONGEST_DOCUMENT) return refused('too-long');
  const { document, problems } = (await loadDocumentCheck())(parsed.value);
  if (document === null) return { kind: 'refused', problems: await placed(problems, from) };
  return { kind: 'document', ...(await incoming(document, cameFrom(from))) };
}

/** What a document that came would change; it is not used before the pilot chooses it. */
async function incoming(
  document: CheckedDocument,
  origin: Pick<KeptDocument, 'from' | 'fromName'>,
): Promise<IncomingDocument> {
  const { kind, content } = document;
  const hash = documentHash(content);
  return {
    document: { hash, kind, content, own: true, received: true, ...origin },
    against: await against(hash, document),
    steps: kind === 'procedure' ? countSteps(content) : null,
  };
}

/** A longer name says no more, characters. */
const LONGEST_NAME = 60;

const isLessonFile = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && 'lapstrip' in value && value.lapstrip === 'lesson';

const cameFrom = (from: Blob | string): Pick<KeptDocument, 'from' | 'fromName'> =>
  from instanceof File
    ? { from: 'file', fromName: shownPlainly(from.name, LONGEST_NAME) }
    : { from: 'link' };

/** The problems of a file, each with its line. A link has no lines that anyone has seen. */
async function placed(
  problems: readonly DocumentProblem[],
  from: Blob | string,
): Promise<readonly DocumentProblem[]> {
  if (typeof from === 'string') return problems;
  const lines = await linesApart(
    from,
    problems.map(({ at }) => at),
  ).catch(() => []);
  return problems.map((problem, index) => ({ ...problem, line: lines[index] ?? undefined }));
}

async function against(hash: string, { kind, content }: CheckedDocument): Promise<AgainstOwn> {
  if (all.value.some((listed) => listed.hash === hash)) return { kind: 'same' };
  const before = keptBy(hash);
  if (before !== undefined && before.deletedMs === undefined) {
    return { kind: 'earlier', name: content.name };
  }
  const listed = nearestOf(kind, content.code);
  const other = await listed?.load().catch(() => null);
  if (listed === undefined || other == null) return { kind: 'new' };
  return {
    kind: 'other',
    listed,
    isOwn: keptBy(listed.hash) !== undefined,
    age: ageAgainst({ hash: listed.hash, content: other }, content, hash),
    differences: differencesOf(kind, other, content),
  };
}

/** What a document of this code is compared with: the pilot's, else one that came, else the app's. */
function nearestOf(kind: string, code: string): Listed | undefined {
  const named = all.value.filter((listed) => listed.kind === kind && listed.code === code);
  const owned = named.filter(({ hash }) => keptBy(hash) !== undefined);
  return owned.findLast(({ hash }) => !received.value.has(hash)) ?? owned.at(-1) ?? named.at(-1);
}

const RECORD_PROBLEMS: Readonly<Record<RecordProblem, string>> = {
  'too-large': 'record-too-large',
  'not-json': 'not-json',
  'not-record': 'not-ours',
  'other-version': 'record-version',
  damaged: 'record-damaged',
};

async function lookAtRecord(parsed: unknown): Promise<Incoming> {
  const read = recordIn(parsed);
  if (read.record === null) {
    return read.entry === undefined
      ? refused(RECORD_PROBLEMS[read.problem])
      : { kind: 'damaged', entry: read.entry };
  }
  const { record: filed, leftOut, mended } = read;
  const documents: KeptDocument[] = [];
  const told: InRecord[] = [];
  for (const document of filed.documents) {
    const checked = await asItSays(document);
    if (checked === null) continue;
    documents.push({ ...documentIn(document), content: checked.content });
    const differs = await against(document.hash, checked);
    if (document.own && differs.kind !== 'same') told.push({ ...checked, against: differs });
  }
  return {
    kind: 'record',
    record: { entries: filed.entries, documents },
    sorties: new Set(filed.entries.map(({ sortie }) => sortie)).size,
    documents: told,
    leftOut: leftOut + filed.documents.length - documents.length,
    mended,
  };
}

/** What a log may say of a document: neither that it is deleted here, nor where it stands. */
const documentIn = ({ hash, kind, content, own }: KeptDocument): KeptDocument => ({
  hash,
  kind,
  content,
  own,
  received: true,
  from: 'log',
});

/** A document of a record; null if it fails its schema, or its content doesn't match its hash. */
async function asItSays({ hash, kind, content }: KeptDocument): Promise<CheckedDocument | null> {
  const checkDocument = await loadDocumentCheck();
  const { document } = checkDocument(content);
  const isIt = document?.kind === kind && documentHash(document.content) === hash;
  return isIt ? document : null;
}

/** Where a document that came is put: by itself, or over another, whose place it takes in every list. */
export type Put = 'beside' | 'over';

/** Where a document that came may be put, the likeliest first; nowhere if the very same is here. */
export function putsOf({ document: { kind }, against }: IncomingDocument): readonly Put[] {
  if (against.kind === 'same') return [];
  if (against.kind === 'earlier') return ['over'];
  // A procedure of one's own never takes the place of the app's: it has a name of its own.
  const mayBeOver = against.kind === 'other' && (against.isOwn || kind !== 'procedure');
  return mayBeOver ? ['beside', 'over'] : ['beside'];
}

/** Stores what the pilot has looked at and chosen, all of it or nothing. */
export async function keepIncoming(
  ...chosen: readonly (readonly [IncomingDocument, Put])[]
): Promise<void> {
  await addOwnDocument(
    ...chosen.map(([incoming, put]) => (put === 'beside' ? incoming.document : over(incoming))),
  );
  tellOfDocuments();
}

/** As the newest version of what it is put over. */
function over({ document, against }: IncomingDocument): KeptDocument {
  const { received: _, ...taken } = document;
  const other = against.kind === 'other' ? keptBy(against.listed.hash) : undefined;
  // What stands beside others of its code keeps standing there.
  const isApart = other?.received === true || other?.line !== undefined;
  return isApart ? { ...taken, line: lineOf(other) } : taken;
}

/** Merges a record the pilot has looked at: all of it or nothing; rejects on failure. */
export async function mergeIncoming(brought: FiledRecord): Promise<MergedCount> {
  const merged = await mergeBrought(record, brought);
  await listOwnDocuments();
  if (merged.documents > 0) tellOfDocuments();
  return merged;
}
