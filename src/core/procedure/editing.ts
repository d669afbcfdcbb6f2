/** An edit of a procedure: what was changed since its start, all of it to be taken back and made again. */

import { type Applied, applyEdit, type Edit, listNamesIn, namesIn } from './edit';
import type { Procedure } from './procedure';

/** A change as it was made, and what takes it back. */
export interface Made {
  readonly edit: Edit;
  readonly inverse: Edit;
}

/** An edit as it stands. */
export interface Editing {
  readonly start: Procedure;
  readonly document: Procedure;
  /** What was made and not taken back, in order. */
  readonly made: readonly Made[];
  /** What was taken back, the last first in line to be made again. */
  readonly undone: readonly Edit[];
  /** The last change is being typed: the next of its kind belongs to it. */
  readonly typing: boolean;
}

/** An edit of which nothing is made yet. */
export const beginEditing = (start: Procedure): Editing => ({
  start,
  document: start,
  made: [],
  undone: [],
  typing: false,
});

/**
 * Makes a change; the very same edit where the change means nothing. While `typing`, changes of the
 * same text of the same step or list are one, so that undo takes back words and not letters.
 */
export function edited(editing: Editing, edit: Edit, typing = false): Editing {
  const applied = applyEdit(editing.document, edit);
  if (applied === null) return editing;
  return { ...editing, undone: [], typing, ...add(editing, edit, applied, typing) };
}

function add(editing: Editing, edit: Edit, { document, inverse }: Applied, typing: boolean) {
  const last = editing.made.at(-1);
  const goesOn = typing && editing.typing && last !== undefined && isSameText(last.edit, edit);
  if (!goesOn) return { document, made: [...editing.made, { edit, inverse }] };
  // What was typed and deleted again is no change: nothing could take it back, nor make it again.
  return applyEdit(document, last.inverse) === null
    ? { document, made: editing.made.slice(0, -1), typing: false }
    : { document, made: editing.made.with(-1, { edit, inverse: last.inverse }) };
}

function isSameText(a: Edit, b: Edit): boolean {
  if (a.kind === 'rename') return b.kind === 'rename';
  if (a.kind === 'change-list')
    return (
      b.kind === 'change-list' &&
      a.id === b.id &&
      listNamesIn(a.to).join() === listNamesIn(b.to).join()
    );
  if (a.kind !== 'change' || b.kind !== 'change' || a.id !== b.id) return false;
  return namesIn(a.to).join() === namesIn(b.to).join();
}

/** What is typed next is a change of its own. */
export const settled = (editing: Editing): Editing =>
  editing.typing ? { ...editing, typing: false } : editing;

/** Takes the last change back; the same where there is none. */
export function undone(editing: Editing): Editing {
  const last = editing.made.at(-1);
  const applied = last === undefined ? null : applyEdit(editing.document, last.inverse);
  if (last === undefined || applied === null) return editing;
  return {
    ...editing,
    document: applied.document,
    made: editing.made.slice(0, -1),
    undone: [...editing.undone, last.edit],
    typing: false,
  };
}

/** Makes again what was taken back last; the same where nothing was. */
export function redone(editing: Editing): Editing {
  const edit = editing.undone.at(-1);
  if (edit === undefined) return editing;
  return { ...edited(editing, edit), undone: editing.undone.slice(0, -1) };
}

/** All changes of an edit, those taken back last; with how many of them are made it is the whole edit. */
export const editsOf = ({ made, undone }: Editing): readonly Edit[] => [
  ...made.map(({ edit }) => edit),
  ...undone.toReversed(),
];

/** An edit from its start and its changes, as it was kept; what cannot be made ends it there. */
export function replayed(start: Procedure, edits: readonly Edit[], made: number): Editing {
  let editing = beginEditing(start);
  for (const edit of edits) {
    const next = edited(editing, edit);
    if (next === editing) break;
    editing = next;
  }
  while (editing.made.length > made) editing = undone(editing);
  return editing;
}
