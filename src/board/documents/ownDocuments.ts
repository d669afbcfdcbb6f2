/** The documents the pilot added or wrote. */

import type { ListedProcedure } from 'virtual:lapstrip-catalogue';
import { signal } from '@preact/signals';
import { editionsInOrder, type Field, type Hash, languageOf, type Procedure } from '../../core';
import { type DocumentFollowers, followDocuments } from '../../record/followDocuments';
import type { KeptDocument } from '../../record/store';
import { record } from '../board';
import { all, askAgain, hold, type Listed, own, received } from './documents';

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

/** Lists the documents the pilot added or wrote earlier. */
export async function listOwnDocuments(): Promise<void> {
  for (const kept of await record.documents()) if (kept.own) list(kept);
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

/** Takes a document that has passed its schema, stores it, and lists it here. */
export async function addOwnDocument(kept: KeptDocument): Promise<void> {
  hold(kept.hash, kept.content);
  list(kept);
  await record.keepDocument(kept);
}

/** Makes a document from elsewhere the pilot's own, because the pilot chose it. */
export async function takeReceived(hash: Hash): Promise<void> {
  const listed = own.value.find((one) => one.hash === hash);
  if (listed === undefined || !received.value.has(hash)) return;
  await addOwnDocument({ hash, kind: listed.kind, content: await listed.load(), own: true });
  tellOfDocuments();
}

const isVersion = (hash: Hash) => ownVersions.value.some((version) => version.hash === hash);

const isKnown = (hash: Hash) => isVersion(hash) || all.value.some((listed) => listed.hash === hash);

function list(kept: KeptDocument): void {
  const isChosen = !kept.received && received.value.has(kept.hash);
  if (!isChosen && isKnown(kept.hash)) return;
  received.value = new Set(
    kept.received
      ? [...received.value, kept.hash]
      : [...received.value].filter((hash) => hash !== kept.hash),
  );
  own.value = own.value.filter(({ hash }) => hash !== kept.hash);
  // A version by another pilot, or one never chosen here, replaces nothing.
  const version = kept.received ? null : versionIn(kept);
  if (version !== null) {
    ownVersions.value = editionsInOrder([...ownVersions.value, version]);
  }
  const brought = own.value.filter(({ hash }) => !isVersion(hash));
  own.value = [...brought, ...(version === null ? [listed(kept)] : []), ...newest()];
}

/**
 * The newest version of each procedure for each aircraft it was written for; they come last,
 * because they are what is flown.
 */
const newest = (): readonly Listed[] =>
  ownVersions.value
    .filter(
      (version, place, versions) =>
        versions.findLastIndex(
          ({ content }) =>
            content.code === version.content.code && content.aircraft === version.content.aircraft,
        ) === place,
    )
    .map(({ hash, content }) => listed({ hash, kind: 'procedure', content }));

/** What a document is listed with; the document has the same property names. */
function listed({ hash, kind, content }: Omit<KeptDocument, 'own'>): Listed {
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

const aboutOf = ({ about, language, translations }: Field) => ({ about, language, translations });

function versionIn({ hash, kind, content }: KeptDocument): OwnVersion | null {
  if (kind !== 'procedure') return null;
  const procedure = content as Procedure;
  const { edition, basedOn } = procedure;
  return edition === undefined || basedOn === undefined
    ? null
    : { hash, content: procedure, edition };
}
