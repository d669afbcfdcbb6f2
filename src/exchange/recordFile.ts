/**
 * The record as a file: `{"lapstrip":"record","version":1,"entries":[…],"documents":[…]}`. Files
 * merge by the ids of their entries, in any order and any number of times.
 */

import { type Entry, entryMisfit, type Hash, type Misfit } from '../core';
import { plainEntry } from './plainEntry';
import { isSound } from './sound';

/** The version of the file format. */
const VERSION = 1;

/** A larger file is refused before it is read, bytes. */
export const LARGEST_RECORD = 50_000_000;

/** A larger record is split into several files, so that each can be read back; characters. */
const LARGEST_WRITTEN = 30_000_000;

export interface FiledDocument {
  readonly hash: Hash;
  readonly kind: string;
  readonly content: unknown;
  readonly own: boolean;
}

export interface FiledRecord {
  readonly entries: readonly Entry[];
  readonly documents: readonly FiledDocument[];
}

/** Why a file can't be read as a record. */
export type RecordProblem =
  | 'too-large'
  /** Cut short, or not JSON. */
  | 'not-json'
  | 'not-record'
  | 'other-version'
  /** It has no list of entries or documents, or an entry is malformed. */
  | 'damaged';

/** The first malformed entry of a file. */
export interface DamagedEntry {
  /** Its position, from 1. */
  readonly number: number;
  /** Its kind; empty if it doesn't say. */
  readonly kind: string;
  /** What is wrong in it; null if it is no entry at all, or larger or deeper than any. */
  readonly misfit: Misfit | null;
}

/** A record as read, or why it can't be. */
export type ReadRecord =
  | {
      readonly record: FiledRecord;
      /** Documents left out because they aren't any. */
      readonly leftOut: number;
      /** Entries in whose texts something misleading was replaced. */
      readonly mended: number;
      readonly problem: null;
    }
  | {
      readonly record: null;
      readonly problem: RecordProblem;
      /** If an entry is malformed: which, and why. */
      readonly entry?: DamagedEntry;
    };

/**
 * A record as files, each as the pieces of its text; a single file unless the record is very long.
 */
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

/** Whether a parsed file claims to be a record, of whatever version. */
export const isRecordFile = (value: unknown): value is Readonly<{ [name: string]: unknown }> =>
  typeof value === 'object' && value !== null && 'lapstrip' in value && value.lapstrip === 'record';

/** Reads the text of a record file: all of it or nothing. Never throws, whatever the text. */
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
  for (const [index, entry] of entries.entries()) {
    const damaged = damageOf(entry);
    if (damaged !== null)
      return { record: null, problem: 'damaged', entry: { number: index + 1, ...damaged } };
  }
  const sound = documents.filter(isFiledDocument);
  const plain = entries.map(plainEntry);
  return {
    record: { entries: plain, documents: sound },
    leftOut: documents.length - sound.length,
    mended: plain.filter((entry, index) => entry !== entries[index]).length,
    problem: null,
  };
}

/** What is wrong with an entry; null if nothing. Unknown kinds are kept and skipped. */
function damageOf(value: unknown): Omit<DamagedEntry, 'number'> | null {
  const isEntry = typeof value === 'object' && value !== null && isSound(value);
  const misfit = isEntry ? entryMisfit(value) : null;
  if (isEntry && misfit === null) return null;
  const kind = isEntry && 'kind' in value && typeof value.kind === 'string' ? value.kind : '';
  return { kind, misfit };
}

const isName = (value: unknown): value is string =>
  typeof value === 'string' && value !== '' && value.length <= 64;

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
