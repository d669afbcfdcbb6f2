/**
 * The record as a file: `{"lapstrip":"record","version":1,"entries":[…],"documents":[…]}`. Two files
 * merge by the ids of their entries, in either order and as often as one likes.
 */

import type { Entry, Hash } from '../core';
import { isSound } from './sound';

/** The version of the file that is written and read. */
const VERSION = 1;

/** A larger file is refused before it is read, bytes. */
export const LARGEST_RECORD = 50_000_000;

/** A larger record is written as several files, so that each can be read again; characters. */
const LARGEST_WRITTEN = 30_000_000;

/** A document as it stands in a record file. */
export interface FiledDocument {
  readonly hash: Hash;
  readonly kind: string;
  readonly content: unknown;
  readonly own: boolean;
}

/** What a record file holds. */
export interface FiledRecord {
  readonly entries: readonly Entry[];
  readonly documents: readonly FiledDocument[];
}

/** What keeps a file from being read as a record. */
export type RecordProblem =
  | 'too-large'
  /** Cut short, or no JSON at all. */
  | 'not-json'
  | 'not-record'
  | 'other-version'
  /** An entry or a document in it is not what it should be. */
  | 'damaged';

/** A record as read, or why it cannot be. */
export type ReadRecord =
  | { readonly record: FiledRecord; readonly problem: null }
  | { readonly record: null; readonly problem: RecordProblem };

/** A record as files, each as the pieces of its text; one file but for very long records. */
export function writeRecord(
  { entries, documents }: FiledRecord,
  largest = LARGEST_WRITTEN,
): readonly (readonly string[])[] {
  const files: string[][] = [];
  let parts = { entries: [] as string[], documents: [] as string[], length: 0 };
  const finish = () => {
    const { entries, documents } = parts;
    files.push([
      `{"lapstrip":"record","version":${VERSION},"entries":[`,
      ...separated(entries),
      '],"documents":[',
      ...separated(documents),
      ']}\n',
    ]);
    parts = { entries: [], documents: [], length: 0 };
  };
  const put = (part: 'entries' | 'documents', value: unknown) => {
    const text = JSON.stringify(value);
    if (parts.length > 0 && parts.length + text.length > largest) finish();
    parts[part].push(text);
    parts.length += text.length + 2;
  };
  for (const document of documents) put('documents', document);
  for (const entry of entries) put('entries', entry);
  finish();
  return files;
}

const separated = (texts: readonly string[]): readonly string[] =>
  texts.map((text, index) => (index === 0 ? `\n${text}` : `,\n${text}`));

const refused = (problem: RecordProblem): ReadRecord => ({ record: null, problem });

/** Whether a parsed file says that it is a record, of whatever version. */
export const isRecordFile = (value: unknown): value is Readonly<{ [name: string]: unknown }> =>
  typeof value === 'object' && value !== null && 'lapstrip' in value && value.lapstrip === 'record';

/** Reads the text of a record file. Never throws, whatever the text; all of it is read, or nothing. */
export function readRecord(text: string): ReadRecord {
  try {
    return recordIn(JSON.parse(text));
  } catch {
    return refused('not-json');
  }
}

/** The record in a parsed file. */
export function recordIn(value: unknown): ReadRecord {
  if (!isRecordFile(value)) return refused('not-record');
  const { version, entries, documents } = value;
  if (version !== VERSION) return refused('other-version');
  if (!Array.isArray(entries) || !Array.isArray(documents)) return refused('damaged');
  return entries.every(isFiledEntry) && documents.every(isFiledDocument)
    ? { record: { entries, documents }, problem: null }
    : refused('damaged');
}

/** No moment outside these years is one of a sortie, ms since 1970 UTC. */
const FIRST_MS = Date.UTC(1800, 0, 1);
const LAST_MS = Date.UTC(2200, 0, 1);

const isName = (value: unknown): value is string =>
  typeof value === 'string' && value !== '' && value.length <= 64;
const isMoment = (value: unknown): boolean =>
  typeof value === 'number' && value >= FIRST_MS && value <= LAST_MS;

/** Whether it is stamped as every entry is. Kinds that are not known here are kept, and skipped. */
function isFiledEntry(value: unknown): value is Entry {
  if (typeof value !== 'object' || value === null || !isSound(value)) return false;
  const { id, seq, sortie, kind, at, ...event } = value as Partial<Entry>;
  return (
    isName(id) &&
    isName(sortie) &&
    isName(kind) &&
    Number.isSafeInteger(seq) &&
    isMoment(at?.wallMs) &&
    isMoment(at?.sortieMs) &&
    (!('sortieMs' in event) || event.sortieMs === null || isMoment(event.sortieMs))
  );
}

function isFiledDocument(value: unknown): value is FiledDocument {
  if (typeof value !== 'object' || value === null || !isSound(value)) return false;
  const { hash, kind, content, own } = value as Partial<FiledDocument>;
  return (
    isName(hash) &&
    isName(kind) &&
    typeof content === 'object' &&
    content !== null &&
    typeof own === 'boolean'
  );
}
