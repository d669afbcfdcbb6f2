/** Writing one's own version of a procedure: the edit, its undo, and what is kept of it. */

import { batch, computed, signal } from '@preact/signals';
import {
  type ChosenSides,
  type DocumentProblem,
  type Hash,
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
  standing,
  withAllPhases,
  withoutEmptyPhases,
} from '../../core';
import { documentHash } from '../../exchange/hash';
import { newId } from '../../record/record';
import { record, sortie, steady } from '../board';
import { all, received } from '../documents/documents';
import { chosenProcedure } from '../documents/inUse';
import {
  addOwnDocument,
  listOwnDocuments,
  type OwnVersion,
  ownVersions,
  tellOfDocuments,
} from '../documents/ownDocuments';
import { wallNowMs } from '../flight/time';
import { setInputs } from '../record/choices';
import { atPause } from '../wind/atPause';
import { draftOf, faultsOf, loadCheck } from './draft';

/** A procedure by its name and its content. */
interface Named {
  readonly hash: Hash;
  readonly content: Procedure;
}

/** What is being written. */
export interface Writing {
  readonly code: string;
  /** The original as it is now. */
  readonly original: Named;
  /** What versions were made from, as far as it is kept here. */
  readonly bases: ReadonlyMap<Hash, Procedure>;
  /** As it was kept last, or the original under its own name: nothing is to be kept while it is that. */
  readonly kept: Procedure;
  /** The versions that what is written has taken in, or was kept over. */
  readonly known: ReadonlySet<Hash>;
}

/** What is being written; null while it is opened, `failed` where it cannot be had. */
export const writing = signal<Writing | 'failed' | null>(null);

const open = () => (writing.value === 'failed' ? null : writing.value);

const draft = draftOf<Procedure, ProcedureEdit>({
  changes: procedureChanges,
  name: () => open()?.code ?? '',
  isDone: (history) => sameDocument(open()?.kept, standing(history)),
  more: () => ({ known: [...(open()?.known ?? [])] }),
});

/** The procedure as it stands; whether there is a change to take back, and one to make again. */
export const { document: written, canUndo, canRedo, settle, undo, redo } = draft;

/** Makes a change; while `typing`, it is one with the last where that is of the same text. */
export const edit: (made: ProcedureEdit, typing?: boolean) => void = draft.edit;

/** Whether it is there to be written. */
export const stage = computed(() => {
  const now = writing.value;
  return now === null ? 'opening' : now === 'failed' ? 'failed' : 'open';
});

/**
 * The procedure as it stood when typing last paused: what stands around the text that is typed in
 * follows by words, not by letters.
 */
export const atRest = atPause(written, () => draft.history.peek()?.goesOn === true);

/** What keeps it from being kept; the same list for as long as the same is wrong, so that nothing is drawn for it. */
export const faults = steady(() => {
  const procedure = atRest.value;
  return procedure === null
    ? []
    : faultsOf(procedure).map((fault) => placedFault(procedure, fault));
});

/** Whether something was written that is not kept. */
export const isUnkept = computed(() => {
  const now = open();
  return now !== null && !sameDocument(now.kept, written.value);
});

/** The versions kept of what is being written, newest first. */
export const versions = computed((): readonly OwnVersion[] => {
  const code = open()?.code;
  return ownVersions.value.filter(({ content }) => content.code === code).toReversed();
});

/** The newest version where it was kept elsewhere, as in another window, since this edit began; null: none. */
export const overtaken = computed((): OwnVersion | null => {
  const newest = versions.value[0];
  const known = open()?.known;
  return newest === undefined || known === undefined || known.has(newest.hash) ? null : newest;
});

/** What was taken in last, and what stood here then. */
const taken = signal<{ readonly number: number; readonly as: unknown } | null>(null);

/** The number of the version that took the place of one that nothing was written in; null: none did. */
export const takenIn = computed(() =>
  taken.value?.as === draft.history.value ? (taken.value?.number ?? null) : null,
);

ownVersions.subscribe(takeInOther);

/**
 * Where nothing was written, what another window kept stands here at once. What was written stays:
 * the pilot says which of the two goes on.
 */
function takeInOther(): void {
  const now = open();
  const other = overtaken.value;
  if (now === null || other === null) return;
  const kept = editable(other.content);
  const known = knownVersions(now.code);
  if (sameDocument(kept, written.value)) change({ kept, known });
  else if (draft.history.value?.steps.length === 0) {
    batch(() => {
      change({ kept, known });
      draft.open(kept);
      taken.value = { number: other.edition.number, as: draft.history.value };
    });
  }
  // The window that kept its own forgot what was not kept, which is this one's still.
  else draft.keeper.soon();
}

const knownVersions = (code: string): ReadonlySet<Hash> =>
  new Set(ownVersions.value.filter(({ content }) => content.code === code).map(({ hash }) => hash));

/** Goes on from the version that was kept elsewhere: one change, which undo takes back. */
export function goOnFromOther(): void {
  const now = open();
  const other = overtaken.value;
  if (now === null || other === null) return;
  const by = editable(other.content);
  change({ kept: by, known: knownVersions(now.code) });
  edit({ kind: 'replace', by });
}

/** A version as it is edited: without its number, and with all phases. */
function editable({ edition: _, ...content }: Procedure): Procedure {
  return withAllPhases(content);
}

/** Opens a procedure to be written, where it was left; `ownName` names a version from the original's name. */
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
  // What the record holds has passed its schema where it entered.
  const bases = new Map(
    documents
      .filter(({ kind }) => kind === 'procedure')
      .map((kept) => [kept.hash, kept.content as Procedure]),
  );
  const asked = all.value.find((one) => one.kind === 'procedure' && one.hash === hash);
  const content = asked?.kind === 'procedure' ? await asked.load() : bases.get(hash);
  if (content === undefined) throw new Error('there is no such procedure');
  const { code } = content;
  const newest = ownVersions.value.findLast((version) => version.content.code === code);
  // A version of one's own is compared with an original that came, and takes from it what the pilot
  // says; a new one is not begun from it before it was chosen.
  const original = (await originalOf(code, newest !== undefined)) ?? { hash, content };
  bases.set(original.hash, original.content);
  const fresh: Procedure = {
    ...original.content,
    name: ownName(original.content.name),
    basedOn: { code, hash: original.hash },
  };
  const kept = editable(newest?.content ?? fresh);
  const left = await draft.left(code);
  const known = Array.isArray(left?.known) ? new Set<Hash>(left.known) : knownVersions(code);
  batch(() => {
    writing.value = { code, original, bases, kept, known };
    draft.open(left?.history ?? kept);
  });
}

/**
 * The original of a code: what came with the app, or was brought in its place since; what came and
 * was not chosen yet only where it is asked for.
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

/** A name for a new step: no other step has had it, here or in the original. */
export const newStepId = (): StepId => `own-${newId().slice(0, 12)}`;

/** What came of keeping. */
export type Kept =
  | { readonly kind: 'kept'; readonly number: number; readonly flown: 'now' | 'next' | 'not' }
  | { readonly kind: 'refused'; readonly problems: readonly DocumentProblem[] }
  /** Another version was kept elsewhere, and stands in {@link overtaken} to be decided on. */
  | { readonly kind: 'overtaken' }
  /** What checks it could not be loaded. */
  | { readonly kind: 'failed' };

/**
 * Keeps what is written as the next version, unless another was kept elsewhere meanwhile that is not
 * the one it is kept `over`. Those before it stay. Never rejects.
 */
export async function keepOwn(over: OwnVersion | null = null): Promise<Kept> {
  try {
    return await alone(() => keepNow(over));
  } catch {
    return { kind: 'failed' };
  }
}

/** Does something while no other window does, so that of two that keep at once the second sees the first. */
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
  change({ known: new Set([...knownVersions(now.code), hash]) });
  await addOwnDocument({ hash, kind: 'procedure', content, own: true });
  change({ kept: document });
  settle();
  // Only then: the others store again what they have not kept.
  await draft.keeper.now();
  tellOfDocuments();
  return { kind: 'kept', number, flown: fly(hash, now.code) };
}

/** Changes what is known of what is written; whatever was typed meanwhile stays. */
function change(to: Partial<Pick<Writing, 'kept' | 'known'>>): void {
  const now = open();
  if (now !== null) writing.value = { ...now, ...to };
}

/** What the version was made from is kept with it, so that it can follow when the app brings another. */
async function keepOriginal({ hash, content }: Named): Promise<void> {
  const isKept = (await record.documents()).some((kept) => kept.hash === hash);
  if (!isKept) await record.keepDocument({ hash, kind: 'procedure', content, own: false });
}

/** Takes the version for the next run, where the procedure is the one in use. A run that is begun keeps its own. */
function fly(hash: Hash, code: string): 'now' | 'next' | 'not' {
  const chosen = chosenProcedure.value;
  const isInUse =
    versions.value.some((version) => version.hash === chosen) ||
    all.value.some((one) => one.kind === 'procedure' && one.hash === chosen && one.code === code) ||
    open()?.bases.get(chosen ?? '')?.code === code;
  if (!isInUse) return 'not';
  setInputs({ procedure: hash });
  return sortie.value.run === null ? 'now' : 'next';
}

/** Takes a version up again, or the original: a change like any other, which undo takes back. */
export function takeUp(content: Procedure): void {
  const now = open();
  if (now === null) return;
  const { name, basedOn } = written.value ?? now.kept;
  const by = editable(content);
  edit({
    kind: 'replace',
    // The original taken up again is a version of one's own still.
    by: by.basedOn === undefined ? { ...by, name, basedOn: basedOnOf(now, basedOn) } : by,
  });
}

const basedOnOf = ({ code, original }: Writing, before: Procedure['basedOn']) => ({
  ...before,
  code,
  hash: original.hash,
});

/** The original changed since the version was made from it. */
export interface News {
  readonly theirs: Procedure;
  /** Null where what it was made from is not kept here, and so cannot be told apart. */
  readonly base: Procedure | null;
}

/** What the original brought since; null where it is as it was. */
export const news = computed((): News | null => {
  const now = open();
  const hash = written.value?.basedOn?.hash;
  if (now === null || hash === undefined || hash === now.original.hash) return null;
  const base = now.bases.get(hash);
  return {
    theirs: withAllPhases(now.original.content),
    base: base === undefined ? null : withAllPhases(base),
  };
});

/** What the version was made from, to see what is one's own; the original where that is not kept here. */
export const comparedWith = computed((): Procedure | null => {
  const now = open();
  if (now === null) return null;
  const base = now.bases.get(written.value?.basedOn?.hash ?? '');
  return withAllPhases(base ?? now.original.content);
});

/** The version with what the original brought; null where there is nothing to follow. */
export function following(chosen: ChosenSides): Merged | null {
  const brought = news.value;
  const mine = written.value;
  return brought === null || brought.base === null || mine === null
    ? null
    : mergeOwn({ base: brought.base, theirs: brought.theirs, mine }, chosen);
}

/** Follows the original, as `chosen` says where both changed a step: one change, which undo takes back. */
export function follow(chosen: ChosenSides): void {
  const now = open();
  const merged = following(chosen);
  if (now === null || merged === null) return;
  const basedOn = { code: now.code, hash: now.original.hash };
  edit({ kind: 'replace', by: { ...withAllPhases(merged.document), basedOn } });
}
