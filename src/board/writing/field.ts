/**
 * The field being drawn or corrected: its draft, which outlives the window, and what it becomes.
 */

import { computed, signal } from '@preact/signals';
import {
  type DocumentProblem,
  emptyField,
  type Field,
  type FieldEdit,
  fieldChanges,
  type Hash,
  type History,
  languageOf,
  loadDocumentReader,
  loadVariation,
  type Place,
} from '../../core';
import { forgetFirstDraft, readFirstDraft } from '../../device/drafts';
import { pageLanguage } from '../../device/pageLanguage';
import { fileName } from '../../exchange/fileName';
import { sortieMinute } from '../board';
import { listedBy } from '../documents/documents';
import { type KeptField, keepFieldAs, NOT_KEPT, NOT_READ } from '../documents/keptField';
import { keptBy } from '../documents/ownDocuments';
import { langOf } from '../language';
import { draftOf, faultsOf, loadCheck } from './draft';

/** The draft that was saved as a field: it isn't continued. */
let done: History<Field, FieldEdit> | null = null;

/** The name of the draft: the field being corrected, or a new one. */
const draftName = signal<Hash | 'new'>('new');

/** The name the device stores it under. */
const keptUnder = (name: string) => ` field/${name}`;

const draft = draftOf<Field, FieldEdit>({
  changes: fieldChanges,
  name: () => keptUnder(draftName.peek()),
  isDone: (history) => history === done,
});

/**
 * The field as it stands, null before it is loaded; whether there is something to undo or redo, and
 * what undo or redo did last; whether the draft will survive a reload.
 */
export const { document: drawnField, canUndo, canRedo, stepped, stays, undo, redo } = draft;

/** What keeps it from being saved. */
export const drawnFaults = computed(() => faultsOf(drawnField.value));

/** The `lang` of the field's texts. */
export const drawnLang = (): string | undefined => langOf(languageOf(drawnField.value ?? {}));

/**
 * Starts drawing a field or correcting one, or continues where that was left. Rejects if it isn't
 * available.
 */
export async function openDraft(of: Hash | null): Promise<void> {
  await loadCheck();
  const name = of ?? 'new';
  const now = draft.history.peek();
  if (name === draftName.peek() && now !== null && now !== done) return;
  draft.close();
  draftName.value = name;
  const left = await draft.left(keptUnder(name), readFirstDraft(name));
  draft.open(left?.history ?? (await asBegun(of)));
}

/** An empty field in the language of the page, in which it will presumably be described. */
const nothingDrawn = (): Field => ({
  ...emptyField({ latDeg: 0, lonDeg: 0 }),
  language: pageLanguage(),
});

async function asBegun(of: Hash | null): Promise<Field> {
  if (of === null) return nothingDrawn();
  const listed = listedBy(of);
  if (listed?.kind !== 'field') throw new Error('there is no such field');
  return listed.load();
}

/**
 * Changes the field. Setting the same thing again, letter by letter or by dragging, is one change.
 */
export const changeField = (edit: FieldEdit): void => draft.edit(edit, true);

/** Starts afresh: empty, or with the field before it was corrected. Can be undone. */
export function startAnew(): void {
  const start = draftName.value === 'new' ? nothingDrawn() : draft.history.value?.start;
  if (start !== undefined) changeField({ kind: 'anew', field: start });
}

type Checked = { readonly field: Field } | { readonly problems: readonly DocumentProblem[] };

async function checked(): Promise<Checked> {
  const readDocument = await loadDocumentReader();
  const { document, problems } = readDocument(JSON.stringify(drawnField.value));
  if (document === null) return { problems };
  return document.kind === 'field' ? { field: document.content } : { problems: NOT_READ };
}

/** Saves the field as one of the pilot's own, beside the one it was made from. Never rejects. */
export async function keepField(): Promise<KeptField> {
  try {
    const drawn = draft.history.value;
    const result = await checked();
    if ('problems' in result) return { listed: null, problems: result.problems };
    // What was put beside others of its code stays there.
    const line = keptBy(draftName.value)?.line;
    const kept = await keepFieldAs(result.field, { from: 'drawn', line });
    done = drawn;
    forgetFirstDraft(draftName.value);
    void draft.keeper.now();
    return kept;
  } catch {
    return NOT_KEPT;
  }
}

/**
 * The field as a file, or what keeps it from being one. Rejects if the code that checks it isn't
 * available.
 */
export async function fieldFile(): Promise<File | readonly DocumentProblem[]> {
  const result = await checked();
  if ('problems' in result) return result.problems;
  const text = `${JSON.stringify(result.field, null, 2)}\n`;
  const { code, name } = result.field;
  return new File([text], fileName('field', code, name), { type: 'application/json' });
}

/** Variation at a place on the sortie's day, degrees, east positive; null if no model covers it. */
export async function variationThere(at: Place): Promise<number | null> {
  const when = new Date(sortieMinute.value);
  const table = await loadVariation(when).catch(() => null);
  return table === null ? null : table.variationDeg({ ...at, elevationM: 0 }, when);
}
