/** A document being written or drawn, with every change made to it, for undo and redo. */

import { sameDocument } from '../same';

/**
 * What a kind of document defines about its changes. A change is plain data, so that a list of them
 * can be stored.
 */
export interface Changes<Document, Edit> {
  /** The document after a change; the same object if the change has no effect. */
  readonly edited: (document: Document, edit: Edit) => Document;
  /**
   * Names what a change sets, so that typing letter by letter is undone at once; null for a change
   * that stands alone. A later change with the same name must override everything an earlier one
   * did.
   */
  readonly sets: (edit: Edit) => string | null;
}

/** A document with its changes. Each keeps the resulting document, so that undo is exact. */
export interface History<Document, Edit> {
  /** The document at the start. */
  readonly start: Document;
  readonly steps: readonly { readonly edit: Edit; readonly document: Document }[];
  /** How many of the steps are in effect; those after were undone, and can be redone. */
  readonly at: number;
  /** Whether the last change is still open: the next one of the same name replaces it. */
  readonly goesOn: boolean;
}

/** A history as stored: only its changes, which reproduce the documents. */
export interface StoredHistory<Document, Edit> {
  readonly start: Document;
  readonly edits: readonly Edit[];
  readonly at: number;
}

/** A document without changes. */
export const beginHistory = <D, E>(start: D): History<D, E> => ({
  start,
  steps: [],
  at: 0,
  goesOn: false,
});

/** The document as it stands. */
export const documentNow = <D>({ start, steps, at }: History<D, unknown>): D =>
  steps[at - 1]?.document ?? start;

/**
 * Makes a change; returns the same history if it has no effect. Undone changes can then no longer
 * be redone. If the last change is open and this one `goesOn` setting the same thing, they count as
 * one; and as none, if they restore what was there before.
 */
export function changed<D, E>(
  { edited, sets }: Changes<D, E>,
  history: History<D, E>,
  edit: E,
  goesOn = false,
): History<D, E> {
  const { start, at } = history;
  const last = history.goesOn && goesOn ? history.steps[at - 1] : undefined;
  const isOne = last !== undefined && sets(edit) !== null && sets(edit) === sets(last.edit);
  const held = isOne ? at - 1 : at;
  const before = documentNow({ ...history, at: held });
  const document = edited(before, edit);
  if (sameDocument(document, documentNow(history))) return history;
  const steps = history.steps.slice(0, held);
  return sameDocument(document, before)
    ? { start, steps, at: held, goesOn: false }
    : { start, steps: [...steps, { edit, document }], at: held + 1, goesOn };
}

/** Closes the last change: what comes next is a change of its own. */
export const changeClosed = <D, E>(history: History<D, E>): History<D, E> =>
  history.goesOn ? { ...history, goesOn: false } : history;

/** Undoes the last change; returns the same history if there is none. */
export const undone = <D, E>(history: History<D, E>): History<D, E> => movedTo(history, -1);

/** Redoes the last change undone; returns the same history if there is none. */
export const redone = <D, E>(history: History<D, E>): History<D, E> => movedTo(history, 1);

function movedTo<D, E>(history: History<D, E>, by: -1 | 1): History<D, E> {
  const at = history.at + by;
  return at < 0 || at > history.steps.length ? history : { ...history, at, goesOn: false };
}

/** How many changes are stored; the history then starts from the document before them. */
const MOST_STORED = 400;

export function storedHistory<D, E>({ start, steps, at }: History<D, E>): StoredHistory<D, E> {
  const dropped = Math.max(0, Math.min(at, steps.length - MOST_STORED));
  return {
    start: steps[dropped - 1]?.document ?? start,
    edits: steps.slice(dropped).map(({ edit }) => edit),
    at: at - dropped,
  };
}

/** Replays a stored history. Changes without effect are left out. */
export function restoredHistory<D, E>(
  changes: Changes<D, E>,
  { start, edits, at }: StoredHistory<D, E>,
): History<D, E> {
  let history = beginHistory<D, E>(start);
  let holding = 0;
  for (const [index, edit] of edits.entries()) {
    history = changed(changes, history, edit);
    if (index < at) holding = history.at;
  }
  return { ...history, at: holding };
}
