/** A document being written or drawn, with every change made to it: taken back one by one, and made again. */

import { sameDocument } from '../same';

/** What a kind of document says of its changes. A change is plain data, so that a list of them can be stored. */
export interface Changes<Document, Edit> {
  /** The document after a change; the same where the change means nothing. */
  readonly edited: (document: Document, edit: Edit) => Document;
  /**
   * Names what a change sets, so that what is typed letter by letter is taken back at once; null for
   * a change that stands alone. A later change of the same makes up for all that an earlier one did.
   */
  readonly sets: (edit: Edit) => string | null;
}

/** A document with its changes. Each keeps the document that came of it, so that taking it back is exact. */
export interface History<Document, Edit> {
  /** As it was begun. */
  readonly start: Document;
  readonly steps: readonly { readonly edit: Edit; readonly document: Document }[];
  /** How many of the steps hold; those after were taken back, and can be made again. */
  readonly at: number;
  /** Whether the last change goes on: the next of the same takes its place. */
  readonly goesOn: boolean;
}

/** A history as it is stored: its changes alone, which give the same documents again. */
export interface StoredHistory<Document, Edit> {
  readonly start: Document;
  readonly edits: readonly Edit[];
  readonly at: number;
}

/** A document to which nothing is done yet. */
export const beginHistory = <D, E>(start: D): History<D, E> => ({
  start,
  steps: [],
  at: 0,
  goesOn: false,
});

/** The document as it stands. */
export const standing = <D>({ start, steps, at }: History<D, unknown>): D =>
  steps[at - 1]?.document ?? start;

/**
 * Makes a change; the very same history where it means nothing. What was taken back can then no
 * longer be made again. Where the last change goes on and this one `goesOn` setting the same, the
 * two are one; and none where they come to what was there before.
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
  const before = standing({ ...history, at: held });
  const document = edited(before, edit);
  if (sameDocument(document, standing(history))) return history;
  const steps = history.steps.slice(0, held);
  return sameDocument(document, before)
    ? { start, steps, at: held, goesOn: false }
    : { start, steps: [...steps, { edit, document }], at: held + 1, goesOn };
}

/** What comes next is a change of its own. */
export const settled = <D, E>(history: History<D, E>): History<D, E> =>
  history.goesOn ? { ...history, goesOn: false } : history;

/** Takes the last change back; the same where there is none. */
export const undone = <D, E>(history: History<D, E>): History<D, E> => movedTo(history, -1);

/** Makes again what was taken back last; the same where nothing was. */
export const redone = <D, E>(history: History<D, E>): History<D, E> => movedTo(history, 1);

function movedTo<D, E>(history: History<D, E>, by: -1 | 1): History<D, E> {
  const at = history.at + by;
  return at < 0 || at > history.steps.length ? history : { ...history, at, goesOn: false };
}

/** So many changes are stored; the document as it was before them is where it then begins. */
const MOST_STORED = 400;

/** The history as it is stored. */
export function storedHistory<D, E>({ start, steps, at }: History<D, E>): StoredHistory<D, E> {
  const dropped = Math.max(0, Math.min(at, steps.length - MOST_STORED));
  return {
    start: steps[dropped - 1]?.document ?? start,
    edits: steps.slice(dropped).map(({ edit }) => edit),
    at: at - dropped,
  };
}

/** The history that was stored: every change made again. What means nothing is left out. */
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
