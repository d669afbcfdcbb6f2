/** Writing one's own version of a procedure: the edit, its undo, and its saved versions. */

import { batch, computed, signal } from '@preact/signals';
import {
  type ChosenSides,
  type DocumentProblem,
  documentNow,
  type Hash,
  type ListId,
  loadDocumentReader,
  type Merged,
  mergeOwn,
  nextEdition,
  type Procedure,
  type ProcedureEdit,
  placedFault,
  procedureChanges,
  type StepId,
  sameDocument,
  withAllPhases,
  withoutEmptyPhases,
} from '../../core';
import { documentHash } from '../../exchange/hash';
import { newId } from '../../record/record';
import { record, sortie, steady } from '../board';
import { all, received } from '../documents/documents';
import { aircraft, chosenProcedure } from '../documents/inUse';
import {
  addOwnDocument,
  keptBy,
  listOwnDocuments,
  type OwnVersion,
  ownVersions,
  tellOfDocuments,
} from '../documents/ownDocuments';
import { wallNowMs } from '../flight/time';
import { setInputs } from '../record/choices';
import { atPause } from '../wind/atPause';
import { draftOf, faultsOf, loadCheck } from './draft';

/** A procedure by hash and content. */
interface Named {
  readonly hash: Hash;
  readonly content: Procedure;
}

/** What is being written. */
export interface Writing {
  readonly code: string;
  /** Where it stands beside others of its code: the name of its line. */
  readonly line: string | undefined;
  /** The original as it is now. */
  readonly original: Named;
  /** What versions were made from, as far as stored here. */
  readonly bases: ReadonlyMap<Hash, Procedure>;
  /**
   * As last saved, or the original under its own name: while it is that, there is nothing to save.
   */
  readonly kept: Procedure;
  /** The versions this edit has taken in, or was saved over. */
  readonly known: ReadonlySet<Hash>;
}

/** What is being written; null while opening, `failed` if it isn't available. */
export const writing = signal<Writing | 'failed' | null>(null);

const open = () => (writing.value === 'failed' ? null : writing.value);

const draft = draftOf<Procedure, ProcedureEdit>({
  changes: procedureChanges,
  name: () => open()?.line ?? open()?.code ?? '',
  isDone: (history) => sameDocument(open()?.kept, documentNow(history)),
  more: () => ({ known: [...(open()?.known ?? [])] }),
});

/** The procedure as it stands; whether there is a change to undo or redo. */
export const { document: written, canUndo, canRedo, stepped, settle, undo, redo } = draft;

/** Makes a change; while `typing`, merges it with the last one of the same text. */
export const edit: (made: ProcedureEdit, typing?: boolean) => void = draft.edit;

/** Whether it is loaded and can be written. */
export const stage = computed(() => {
  const now = writing.value;
  return now === null ? 'opening' : now === 'failed' ? 'failed' : 'open';
});

/**
 * The procedure at the last pause in typing: what surrounds the text being typed follows by words,
 * not by letters.
 */
export const writtenAtRest = atPause(written, () => draft.history.peek()?.goesOn === true);

/**
 * What keeps it from being saved; the same list while the same is wrong, so that nothing is
 * redrawn.
 */
export const faults = steady(() => {
  const procedure = writtenAtRest.value;
  return procedure === null
    ? []
    : faultsOf(procedure).map((fault) => placedFault(procedure, fault));
});

/** Whether anything written isn't saved. */
export const isUnkept = computed(() => {
  const now = open();
  return now !== null && !sameDocument(now.kept, written.value);
});

/** The saved versions of what is being written, newest first. */
export const versions = computed((): readonly OwnVersion[] => {
  const now = open();
  return now === null ? [] : versionsOf(now).toReversed();
});

/**
 * The newest version if it was saved elsewhere, such as in another window, since this edit began;
 * else null.
 */
export const overtaken = computed((): OwnVersion | null => {
  const newest = versions.value[0];
  const known = open()?.known;
  return newest === undefined || known === undefined || known.has(newest.hash) ? null : newest;
});

/** What was last taken in, and what stood here before. */
const taken = signal<{ readonly number: number; readonly as: unknown } | null>(null);

/** The number of the version that replaced one in which nothing was written; null if none did. */
export const takenIn = computed(() =>
  taken.value?.as === draft.history.value ? (taken.value?.number ?? null) : null,
);

ownVersions.subscribe(takeInOther);

/**
 * If nothing was written here, shows at once what another window saved. What was written stays: the
 * pilot decides which of the two to continue.
 */
function takeInOther(): void {
  const now = open();
  const other = overtaken.value;
  if (now === null || other === null) return;
  const kept = editable(other.content);
  const known = knownVersions(now);
  if (sameDocument(kept, written.value)) change({ kept, known });
  else if (draft.history.value?.steps.length === 0) {
    batch(() => {
      change({ kept, known });
      draft.open(kept);
      taken.value = { number: other.edition.number, as: draft.history.value };
    });
  }
  // The other window, on saving, deleted the unsaved draft, which is still this window's.
  else draft.keeper.soon();
}

type InLine = Pick<Writing, 'code' | 'line'>;

/** The versions of a procedure, oldest first, without those that stand beside it. */
const versionsOf = ({ code, line }: InLine): readonly OwnVersion[] =>
  ownVersions.value.filter(
    ({ hash, content }) => content.code === code && keptBy(hash)?.line === line,
  );

const knownVersions = (of: InLine): ReadonlySet<Hash> =>
  new Set(versionsOf(of).map(({ hash }) => hash));

/** Continues from the version saved elsewhere: one change, which undo reverts. */
export function goOnFromOther(): void {
  const now = open();
  const other = overtaken.value;
  if (now === null || other === null) return;
  const by = editable(other.content);
  change({ kept: by, known: knownVersions(now) });
  edit({ kind: 'replace', by });
}

/** A version as it is edited: without its number, and with all phases. */
function editable({ edition: _, ...content }: Procedure): Procedure {
  return withAllPhases(content);
}

/**
 * Opens a procedure for writing, where it was left; `ownName` turns the original's name into the
 * version's.
 */
export async function openWriting(
  hash: Hash,
  ownName: (original: string) => string,
): Promise<void> {
  draft.close();
  writing.value = null;
  try {
    await loadCheck();
    await takeInHand(hash, ownName);
  } catch {
    writing.value = 'failed';
  }
}

async function takeInHand(hash: Hash, ownName: (original: string) => string): Promise<void> {
  await listOwnDocuments();
  const documents = await record.documents();
  // The record's documents have already passed their schema.
  const bases = new Map(
    documents
      .filter(({ kind }) => kind === 'procedure')
      .map((kept) => [kept.hash, kept.content as Procedure]),
  );
  const asked = all.value.find((one) => one.kind === 'procedure' && one.hash === hash);
  const content = asked?.kind === 'procedure' ? await asked.load() : bases.get(hash);
  if (content === undefined) throw new Error('there is no such procedure');
  const { code } = content;
  const { line } = keptBy(hash) ?? {};
  const newest = versionsOf({ code, line }).at(-1);
  // The pilot's own version is compared with an original from elsewhere and takes from it what the
  // pilot chooses; a new version isn't started from one before it was chosen.
  const original = (await originalOf(code, newest !== undefined)) ?? { hash, content };
  bases.set(original.hash, original.content);
  const fresh: Procedure = {
    ...original.content,
    name: ownName(original.content.name),
    basedOn: { code, hash: original.hash },
  };
  const kept = editable(newest?.content ?? fresh);
  const left = await draft.left(line ?? code);
  const known = Array.isArray(left?.known)
    ? new Set<Hash>(left.known)
    : knownVersions({ code, line });
  batch(() => {
    writing.value = { code, line, original, bases, kept, known };
    draft.open(left?.history ?? kept);
  });
}

/**
 * The original of a code: from the app, or what the pilot added in its place; one from elsewhere
 * that wasn't chosen yet only if asked for.
 */
async function originalOf(code: string, orReceived: boolean): Promise<Named | null> {
  const isOwn = (hash: Hash) => ownVersions.value.some((version) => version.hash === hash);
  const listed = all.value.findLast(
    (one) =>
      one.kind === 'procedure' &&
      one.code === code &&
      !isOwn(one.hash) &&
      (orReceived || !received.value.has(one.hash)),
  );
  return listed?.kind === 'procedure' ? { hash: listed.hash, content: await listed.load() } : null;
}

/** An id for a new step: no other step has had it, here or in the original. */
export const newStepId = (): StepId => `own-${newId().slice(0, 12)}`;

/** An id for a new list. */
export const newListId = (): ListId => `own-${newId().slice(0, 12)}`;

/** The outcome of saving. */
export type Kept =
  | { readonly kind: 'kept'; readonly number: number; readonly flown: 'now' | 'next' | 'not' }
  | { readonly kind: 'refused'; readonly problems: readonly DocumentProblem[] }
  /** Another version was saved elsewhere, and awaits a decision in {@link overtaken}. */
  | { readonly kind: 'overtaken' }
  /** The code that checks it couldn't be loaded. */
  | { readonly kind: 'failed' };

/**
 * Saves what is written as the next version, unless another was saved elsewhere meanwhile that
 * isn't the one it is saved `over`. Earlier versions stay. Never rejects.
 */
export async function keepOwn(over: OwnVersion | null = null): Promise<Kept> {
  try {
    return await alone(() => keepNow(over));
  } catch {
    return { kind: 'failed' };
  }
}

/**
 * Runs something while no other window does, so that of two that save at once the second sees the
 * first.
 */
const alone = <T>(work: () => Promise<T>): Promise<T> =>
  navigator.locks === undefined ? work() : navigator.locks.request('lapstrip-own', work);

async function keepNow(over: OwnVersion | null): Promise<Kept> {
  await listOwnDocuments();
  const now = open();
  if (now === null) return { kind: 'failed' };
  if (overtaken.value !== null && overtaken.value !== over) return { kind: 'overtaken' };
  const document = written.value ?? now.kept;
  const number = nextEdition(versions.value);
  const edition = { number, keptAt: new Date(wallNowMs()).toISOString() };
  const readDocument = await loadDocumentReader();
  const read = readDocument(JSON.stringify({ ...withoutEmptyPhases(document), edition }));
  if (read.document?.kind !== 'procedure') {
    return { kind: 'refused', problems: read.problems ?? [] };
  }
  const { content } = read.document;
  const hash = documentHash(content);
  await keepOriginal(now.original);
  change({ known: new Set([...knownVersions(now), hash]) });
  const { line } = now;
  await addOwnDocument({ hash, kind: 'procedure', content, own: true, from: 'written', line });
  change({ kept: document });
  settle();
  // Only then: the others store their unsaved work again.
  await draft.keeper.now();
  tellOfDocuments();
  return { kind: 'kept', number, flown: fly(hash, now, document) };
}

/** Updates what we know about the edit; whatever was typed meanwhile stays. */
function change(to: Partial<Pick<Writing, 'kept' | 'known'>>): void {
  const now = open();
  if (now !== null) writing.value = { ...now, ...to };
}

/**
 * Stores what the version was made from with it, so that it can follow when the app brings another.
 */
async function keepOriginal({ hash, content }: Named): Promise<void> {
  const isKept = (await record.documents()).some((kept) => kept.hash === hash);
  if (!isKept) await record.keepDocument({ hash, kind: 'procedure', content, own: false });
}

/**
 * Uses the version for the next run, if its procedure is the one in use. A run in progress keeps
 * its own.
 */
function fly(hash: Hash, { code, line }: InLine, document: Procedure): 'now' | 'next' | 'not' {
  const chosen = chosenProcedure.value;
  const isBeside = keptBy(chosen ?? '')?.line !== line;
  const isInUse =
    !isBeside &&
    (versions.value.some((version) => version.hash === chosen) ||
      all.value.some(
        (one) => one.kind === 'procedure' && one.hash === chosen && one.code === code,
      ) ||
      open()?.bases.get(chosen ?? '')?.code === code);
  // For another aircraft from now on: this one is flown with what it has.
  if (!isInUse || document.aircraft !== aircraft.value?.code) return 'not';
  setInputs({ procedure: hash });
  return sortie.value.run === null ? 'now' : 'next';
}

/** Goes back to a version, or to the original: a change like any other, which undo reverts. */
export function takeUpWriting(content: Procedure): void {
  const now = open();
  if (now === null) return;
  const { name, basedOn } = written.value ?? now.kept;
  const by = editable(content);
  edit({
    kind: 'replace',
    // The original, edited again, is still a version of one's own.
    by: by.basedOn === undefined ? { ...by, name, basedOn: basedOnOf(now, basedOn) } : by,
  });
}

const basedOnOf = ({ code, original }: Writing, before: Procedure['basedOn']) => ({
  ...before,
  code,
  hash: original.hash,
});

/** Whether the original has changed since the version was made from it. */
export interface OriginalNews {
  readonly theirs: Procedure;
  /** Null if what it was made from isn't stored here, so that we can't tell. */
  readonly base: Procedure | null;
}

/** What the original has changed since; null if nothing. */
export const news = computed((): OriginalNews | null => {
  const now = open();
  const hash = written.value?.basedOn?.hash;
  if (now === null || hash === undefined || hash === now.original.hash) return null;
  const base = now.bases.get(hash);
  return {
    theirs: withAllPhases(now.original.content),
    base: base === undefined ? null : withAllPhases(base),
  };
});

/**
 * What the version was made from, to see what is one's own; the original if that isn't stored here.
 */
export const comparedWith = computed((): Procedure | null => {
  const now = open();
  if (now === null) return null;
  const base = now.bases.get(written.value?.basedOn?.hash ?? '');
  return withAllPhases(base ?? now.original.content);
});

/** The version merged with the original's changes; null if there is nothing to follow. */
export function following(chosen: ChosenSides): Merged | null {
  const brought = news.value;
  const mine = written.value;
  return brought === null || brought.base === null || mine === null
    ? null
    : mergeOwn({ base: brought.base, theirs: brought.theirs, mine }, chosen);
}

/**
 * Follows the original, as `chosen` says where both changed a step: one change, which undo reverts.
 */
export function follow(chosen: ChosenSides): void {
  const now = open();
  const merged = following(chosen);
  if (now === null || merged === null) return;
  const basedOn = { code: now.code, hash: now.original.hash };
  edit({ kind: 'replace', by: { ...withAllPhases(merged.document), basedOn } });
}
