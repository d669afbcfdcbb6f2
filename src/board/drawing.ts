/** The field being drawn or mended: its draft, which outlives the window, and what it becomes. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import { computed, signal } from '@preact/signals';
import {
  type DocumentProblem,
  type Field,
  type FieldDraft,
  type FieldEdit,
  type Hash,
  languageOf,
  loadDocumentReader,
  loadFieldEditor,
  loadVariation,
  type Place,
  type StoredDraft,
} from '../core';
import { forgetFirstDraft, readFirstDraft } from '../device/drafts';
import { pageLanguage } from '../device/pageLanguage';
import { documentHash } from '../exchange/hash';
import { forgetDraft, readDraft, writeDraft } from '../record/drafts';
import { sortieMinute } from './board';
import { fields } from './documents';
import { langOf } from './language';
import { addOwnDocument } from './ownDocuments';

type Parts = Awaited<ReturnType<typeof loadFieldEditor>>;

const parts = signal<Parts | null>(null);

/** What the screen needs of core beside the signals here; null before the code is there. */
export const editorParts = computed(() => parts.value);

const draft = signal<FieldDraft | null>(null);

/** The draft that was kept as a field: it is not gone on with. */
let done: FieldDraft | null = null;

/** The name its draft is kept under: the field that is mended, or a new one. */
const draftName = signal('new');

/** What `lang` has to say of the texts of the field. */
export const drawnLang = (): string | undefined => langOf(languageOf(drawnField.value ?? {}));

/** Whether the draft will still be there after a reload. */
export const draftStays = signal(true);

/** The field as it stands; null before it is there. */
export const drawnField = computed((): Field | null =>
  parts.value === null || draft.value === null ? null : parts.value.drawn(draft.value),
);

/** Whether there is something to take back, and something taken back. */
export const canTakeBack = computed(() => (draft.value?.at ?? 0) > 0);
export const canDoAgain = computed(
  () => draft.value !== null && draft.value.at < draft.value.steps.length,
);

/** Begins to draw a field, or to mend one, or goes on where that was left. Rejects where it cannot be had. */
export async function openDraft(of: Hash | null): Promise<void> {
  const loaded = await loadFieldEditor();
  const name = of ?? 'new';
  const left = draft.peek();
  if (name !== draftName.peek() || left === null || left === done) {
    const kept = await restoredDraft(loaded, name);
    draft.value = kept ?? loaded.draftOf(await begun(loaded, of));
  }
  draftName.value = name;
  parts.value = loaded;
}

/** The name it is kept under on the device. */
const keptUnder = (name: string) => ` field/${name}`;

async function restoredDraft(loaded: Parts, name: string): Promise<FieldDraft | null> {
  const kept = (await readDraft(keptUnder(name))) ?? readFirstDraft(name);
  if (kept === null) return null;
  try {
    const restored = loaded.restored(kept as StoredDraft);
    // What another version of the app kept may hold what this one cannot draw.
    loaded.routeGaps(loaded.drawn(restored));
    return restored;
  } catch {
    return null;
  }
}

/** A field with nothing in it but the language it will be described in, which is taken to be that of the page. */
const emptyField = (loaded: Parts): Field => ({
  ...loaded.emptyField({ latDeg: 0, lonDeg: 0 }),
  language: pageLanguage(),
});

async function begun(loaded: Parts, of: Hash | null): Promise<Field> {
  if (of === null) return emptyField(loaded);
  const listed = fields.value.find(({ hash }) => hash === of);
  if (listed === undefined) throw new Error('there is no such field');
  return listed.load();
}

function take(next: FieldDraft): void {
  if (parts.value === null || next === draft.value) return;
  draft.value = next;
  keep({ ...parts.value.stored(next), code: keptUnder(draftName.value) });
}

type KeptDraft = StoredDraft & { readonly code: string };

/** The draft as it stands, while the one before it is on its way to the disk. */
let waiting: KeptDraft | null = null;
let isWriting = false;

/** Keeps the draft at once; of what changes faster than the device writes, the last. */
function keep(kept: KeptDraft): void {
  waiting = kept;
  if (!isWriting) void writeWaiting();
}

async function writeWaiting(): Promise<void> {
  isWriting = true;
  for (let next = waiting; next !== null; next = waiting) {
    waiting = null;
    draftStays.value = await writeDraft(next);
  }
  isWriting = false;
}

/** A page that is left may not come back: what waits is asked for at once. */
addEventListener('pagehide', () => {
  if (waiting !== null) void writeDraft(waiting);
  waiting = null;
});

function forget(name: string): void {
  waiting = null;
  void forgetDraft(keptUnder(name));
  forgetFirstDraft(name);
}

/** Makes a change to the field. */
export function change(edit: FieldEdit): void {
  if (parts.value && draft.value) take(parts.value.perform(draft.value, edit));
}

/** Takes the last change back. */
export function takeBack(): void {
  if (parts.value && draft.value) take(parts.value.undo(draft.value));
}

/** Does again what was taken back last. */
export function doAgain(): void {
  if (parts.value && draft.value) take(parts.value.redo(draft.value));
}

/** Begins anew: with nothing, or with the field as it was before it was mended. It can be taken back. */
export function startAnew(): void {
  if (draft.value === null) return;
  const { start } = draft.value;
  const isNew = draftName.value === 'new';
  const empty = isNew && parts.value ? emptyField(parts.value) : start;
  change({ kind: 'anew', field: empty });
}

/** What came of keeping a field. */
export type KeptField =
  | { readonly listed: ListedField; readonly problems: null }
  | { readonly listed: null; readonly problems: readonly DocumentProblem[] };

const NOT_READ: readonly DocumentProblem[] = [{ at: '', what: 'not-read' }];

type Checked = { readonly field: Field } | { readonly problems: readonly DocumentProblem[] };

async function checked(): Promise<Checked> {
  const readDocument = await loadDocumentReader();
  const { document, problems } = readDocument(JSON.stringify(drawnField.value));
  if (document === null) return { problems };
  return document.kind === 'field' ? { field: document.content } : { problems: NOT_READ };
}

/** Keeps the field as one of the pilot's own, beside the one it was made from. Never rejects. */
export async function keepField(): Promise<KeptField> {
  try {
    const result = await checked();
    if ('problems' in result) return { listed: null, problems: result.problems };
    const hash = documentHash(result.field);
    await addOwnDocument({ hash, kind: 'field', content: result.field, own: true });
    forget(draftName.value);
    done = draft.value;
    const listed = fields.value.find((one) => one.hash === hash);
    if (listed !== undefined) return { listed, problems: null };
  } catch {
    // Said below.
  }
  return { listed: null, problems: NOT_READ };
}

/** The field as a file, or what keeps it from being one. Rejects where the code that checks it cannot be had. */
export async function fieldFile(): Promise<File | readonly DocumentProblem[]> {
  const result = await checked();
  if ('problems' in result) return result.problems;
  const text = `${JSON.stringify(result.field, null, 2)}\n`;
  return new File([text], `${result.field.code.toLowerCase()}.json`, { type: 'application/json' });
}

/** Variation at a place on the sortie's day, degrees, east positive; null where no model knows it. */
export async function variationThere(at: Place): Promise<number | null> {
  const when = new Date(sortieMinute.value);
  const table = await loadVariation(when).catch(() => null);
  return table === null ? null : table.variationDeg({ ...at, elevationM: 0 }, when);
}
