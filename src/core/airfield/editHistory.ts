/** A field being drawn, with every change that was made to it: taken back one by one, and done again. */

import { edited, type FieldEdit } from './edit';
import type { Field } from './field';

/** A field being drawn. Each change keeps the field that came of it, so that taking it back is exact. */
export interface FieldDraft {
  /** As it was begun. */
  readonly start: Field;
  readonly steps: readonly { readonly edit: FieldEdit; readonly field: Field }[];
  /** How many of the steps hold; those after were taken back, and can be done again. */
  readonly at: number;
}

/** A draft as it is stored: the changes alone, which give the same field again. */
export interface StoredDraft {
  readonly start: Field;
  readonly edits: readonly FieldEdit[];
  readonly at: number;
}

/** A draft of a field, before any change. */
export const draftOf = (start: Field): FieldDraft => ({ start, steps: [], at: 0 });

/** The field as it stands. */
export const drawn = ({ start, steps, at }: FieldDraft): Field => steps[at - 1]?.field ?? start;

/**
 * Makes a change. What was taken back can no longer be done again. A change of the very same thing
 * as the last one takes its place, so that what was typed letter by letter is taken back at once.
 */
export function perform(draft: FieldDraft, edit: FieldEdit): FieldDraft {
  const last = draft.at === draft.steps.length ? draft.steps.at(-1) : undefined;
  const at = last !== undefined && isSame(last.edit, edit) ? draft.at - 1 : draft.at;
  const field = edited(drawn({ ...draft, at }), edit);
  if (JSON.stringify(field) === JSON.stringify(drawn(draft))) return draft;
  const steps = [...draft.steps.slice(0, at), { edit, field }];
  return { start: draft.start, steps, at: steps.length };
}

/** Takes the last change back; the same where there is none. */
export const undo = (draft: FieldDraft): FieldDraft =>
  draft.at === 0 ? draft : { ...draft, at: draft.at - 1 };

/** Does again what was taken back last; the same where there is none. */
export const redo = (draft: FieldDraft): FieldDraft =>
  draft.at === draft.steps.length ? draft : { ...draft, at: draft.at + 1 };

/** What an edit sets of what, where doing it twice is as doing it once; null for all others. */
function touched(edit: FieldEdit): string | null {
  switch (edit.kind) {
    case 'head':
      return JSON.stringify([edit.kind, Object.keys(edit.set)]);
    case 'elevation':
      return edit.kind;
    case 'runway':
    case 'end':
      return JSON.stringify([edit.kind, edit.index, 'side' in edit, Object.keys(edit.set)]);
    case 'node':
    case 'stretch':
      return JSON.stringify([edit.kind, edit.id, Object.keys(edit.set)]);
    default:
      return null;
  }
}

const isSame = (last: FieldEdit, next: FieldEdit): boolean => {
  const [one, other] = [touched(last), touched(next)];
  if (one === null || one !== other) return false;
  if (last.kind === 'end' && next.kind === 'end') return last.side === next.side;
  // Turned about, a stretch runs from its other point, and is set anew from there.
  return !(next.kind === 'stretch' && 'onlyFrom' in next.set);
};

/** So many changes are stored; the field as it was before them is where the draft then begins. */
const MOST_STORED = 400;

/** The draft as it is stored. */
export function stored({ start, steps, at }: FieldDraft): StoredDraft {
  const dropped = Math.max(0, Math.min(at, steps.length - MOST_STORED));
  return {
    start: steps[dropped - 1]?.field ?? start,
    edits: steps.slice(dropped).map(({ edit }) => edit),
    at: at - dropped,
  };
}

/** The draft that was stored: every change done again. */
export function restored({ start, edits, at }: StoredDraft): FieldDraft {
  let field = start;
  const steps = edits.map((edit) => {
    field = edited(field, edit);
    return { edit, field };
  });
  return { start, steps, at: Math.min(Math.max(0, at), steps.length) };
}
