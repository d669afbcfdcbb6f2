/**
 * Which of the pilot's own documents are versions of one document, and which of them is the newest:
 * every list shows that one, with the others under it.
 */

import { editionsInOrder } from './procedure/editions';
import type { Procedure } from './procedure/procedure';
import type { Hash } from './sortie/entry';

/** What is known of a document of one's own, apart from what it says. */
export interface OwnedDocument {
  readonly hash: Hash;
  /** `field`, `aircraft` or `procedure`. */
  readonly kind: string;
  readonly content: unknown;
  /** It came from elsewhere, and the pilot hasn't chosen it yet. */
  readonly received?: true | undefined;
  /** The pilot put it beside others of its code: the name of the line it began. */
  readonly line?: string | undefined;
  /** Its place among the versions of its line; those kept without one come first. */
  readonly place?: number | undefined;
  /** When this device stored it, ms since 1970; to be shown, as a clock may be wrong. */
  readonly keptMs?: number | undefined;
  /** When the pilot deleted it, ms since 1970. */
  readonly deletedMs?: number | undefined;
}

/** The versions of one document, oldest first. */
export interface DocumentLine<D extends OwnedDocument> {
  readonly name: string;
  readonly versions: readonly D[];
}

interface Header {
  readonly code?: unknown;
  readonly aircraft?: unknown;
  readonly language?: unknown;
}

const headerOf = ({ content }: OwnedDocument): Header => Object(content) as Header;

/**
 * The name shared by all versions of a document: its kind and code, for a procedure with its
 * aircraft and language, because one code serves its twin in another language. What came from
 * elsewhere is a document by itself until the pilot has chosen it, and stays one where the pilot
 * put it beside the others.
 */
export function lineOf(document: OwnedDocument): string {
  if (document.line !== undefined) return document.line;
  if (document.received === true) return besideLine(document);
  const { code, aircraft, language } = headerOf(document);
  const named = document.kind === 'procedure' ? [code, aircraft, language ?? 'en'] : [code];
  return [document.kind, ...named].map(String).join(' ');
}

/** The line that a document begins when it is put beside others of its code. */
export const besideLine = ({ kind, hash }: Pick<OwnedDocument, 'kind' | 'hash'>): string =>
  `${kind} ${hash}`;

/**
 * Versions of one document, oldest first: by the place they were given when they were kept. Those
 * of earlier releases have none, and are ordered by what is written in them.
 */
export function inOrder<D extends OwnedDocument>(versions: readonly D[]): readonly D[] {
  const written = editionsInOrder(
    versions.map((version) => ({
      hash: version.hash,
      content: Object(version.content) as Procedure,
      version,
    })),
  );
  return written.map(({ version }) => version).sort((a, b) => (a.place ?? 0) - (b.place ?? 0));
}

/** The place of what comes next among these, which are of one line and may include deleted ones. */
export const nextPlace = (versions: readonly OwnedDocument[]): number =>
  1 + Math.max(0, ...versions.map(({ place = 0 }) => place));

/** Sorts documents into lines of versions; what was deleted is left out, and counts in the order. */
export function documentLines<D extends OwnedDocument>(
  documents: readonly D[],
): readonly DocumentLine<D>[] {
  const lines = new Map<string, D[]>();
  for (const document of documents) {
    const name = lineOf(document);
    const versions = lines.get(name);
    if (versions === undefined) lines.set(name, [document]);
    else versions.push(document);
  }
  return [...lines].flatMap(([name, all]) => {
    const versions = inOrder(all).filter(({ deletedMs }) => deletedMs === undefined);
    return versions.length === 0 ? [] : [{ name, versions }];
  });
}
