/** Which part of the procedure is open, and what is said about the last action. */

import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import {
  edit,
  newListId,
  newStepId,
  redo,
  stepped,
  undo,
  written,
} from '../../board/writing/procedure';
import {
  findStep,
  type ListId,
  type PartId,
  partsOf,
  procedureChange,
  type StepId,
  type StepPlace,
} from '../../core';
import { marked } from '../../parts/marked';
import { partLang, partName, textNow, writtenLang } from './said';
import { words } from './words';

/** The step open for editing; null if none. */
export const editedStep = signal<StepId | null>(null);

/** The list open for editing, apart from its steps; null if none. */
export const editedList = signal<ListId | null>(null);

/** The last action, for screen readers and for the eye. */
export const spokenOfEdit = signal<ComponentChildren>('');

/**
 * Where the focus goes when the list is next drawn: a step that moved, or was closed. `sight` only
 * brings it into view.
 */
export const returnTo = signal<
  | { readonly id: StepId; readonly to: 'handle' | 'row' | 'sight' }
  | { readonly id: ListId; readonly to: 'list' | 'list-sight' }
  | null
>(null);

export function open(id: StepId): void {
  editedStep.value = id;
  editedList.value = null;
}

/** Opens a list: its title, and where it leads. */
export function openListHead(id: ListId): void {
  editedList.value = id;
  editedStep.value = null;
}

/** Closes what is open. */
export function closeForm(): void {
  editedStep.value = null;
  editedList.value = null;
}

/** Returns to the list, to what was open. */
export function backToList(): void {
  const [step, list] = [editedStep.value, editedList.value];
  closeForm();
  if (step !== null) returnTo.value = { id: step, to: 'row' };
  else if (list !== null) returnTo.value = { id: list, to: 'list' };
}

/** Moves a step to a place, and says where it is. */
export function moveTo(id: StepId, to: StepPlace): void {
  edit({ kind: 'move', id, to });
  const document = written.value;
  const found = document && findStep(document, id);
  if (!found) return;
  const count = partsOf(document).find(({ part }) => part === found.part)?.steps.length ?? 0;
  const name = partName(found.part);
  const sentence = (item: string, part = name) => words.movedTo(item, found.index + 1, count, part);
  const foreign = partLang(found.part) === undefined ? [] : [name];
  spokenOfEdit.value = marked(writtenLang(), sentence, textNow(found.step.item), ...foreign);
}

/** The place one further up or down, in the next part if its own ends; null at either end. */
export function placeBeside(id: StepId, by: -1 | 1): StepPlace | null {
  const document = written.value;
  const found = document && findStep(document, id);
  if (!found) return null;
  const parts = partsOf(document);
  const at = parts.findIndex(({ part }) => part === found.part);
  const steps = parts[at]?.steps ?? [];
  const index = found.index + by;
  if (index >= 0 && index < steps.length) return { part: found.part, index };
  const next = parts[at + by];
  return next === undefined ? null : { part: next.part, index: by === -1 ? next.steps.length : 0 };
}

/** Moves a step by one. */
export function moveBy(id: StepId, by: -1 | 1): void {
  const to = placeBeside(id, by);
  if (to !== null) moveTo(id, to);
}

/** Adds a step at the end of a part, before the barrier that closes it, and opens it. */
export function addStep(part: PartId): void {
  const document = written.value;
  const steps = document && partsOf(document).find((one) => one.part === part)?.steps;
  if (!steps) return;
  const index = steps.at(-1)?.kind === 'barrier' ? steps.length - 1 : steps.length;
  const id = newStepId();
  const step = { id, kind: 'do', item: words.newItem, response: words.newResponse } as const;
  edit({ kind: 'insert', step, at: { part, index } });
  open(id);
}

/** Adds a list behind the others, with a first step to be written, and opens it. */
export function addList(): void {
  const id = newListId();
  const step = {
    id: newStepId(),
    kind: 'do',
    item: words.newItem,
    response: words.newResponse,
  } as const;
  // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
  edit({ kind: 'add-list', list: { id, title: words.newList, steps: [step], then: 'return' } });
  openListHead(id);
  returnTo.value = { id, to: 'list-sight' };
}

/** Removes a list with its steps; undo brings it back. */
export function removeList(id: ListId): void {
  const list = written.value?.lists.find((one) => one.id === id);
  if (list === undefined) return;
  edit({ kind: 'remove-list', id });
  editedList.value = null;
  spokenOfEdit.value = marked(writtenLang(), words.removed, list.title);
}

/** Duplicates a step right after it, and opens the copy. */
export function duplicateStep(id: StepId): void {
  const as = newStepId();
  edit({ kind: 'duplicate', id, as });
  open(as);
}

/** Removes a step; undo brings it back. */
export function removeStep(id: StepId): void {
  const document = written.value;
  const found = document && findStep(document, id);
  if (!found) return;
  const near = placeBeside(id, 1);
  const beside = partsOf(document)
    .find(({ part }) => part === near?.part)
    ?.steps.find((step) => step.id !== id);
  const next =
    near?.part === found.part
      ? partsOf(document).find(({ part }) => part === near.part)?.steps[near.index]
      : beside;
  edit({ kind: 'remove', id });
  editedStep.value = null;
  if (next !== undefined) returnTo.value = { id: next.id, to: 'row' };
  spokenOfEdit.value = marked(writtenLang(), words.removed, textNow(found.step.item));
}

/** Undoes the last change, says what it was, and shows it. */
export function takeBack(): void {
  undo();
  tellStep();
}

/** Redoes what was undone, says what it was, and shows it. */
export function makeAgain(): void {
  redo();
  tellStep();
}

/** What undo or redo did last, in words, and where it is on the screen. */
function tellStep(): void {
  const step = stepped.value;
  if (step === null) return;
  const { what, verb } = procedureChange(step.edit, step.without, step.made);
  const said = (name: string) => words.stepped[step.way](words.change[verb](name));
  if (what.kind === 'head' || what.kind === 'all') {
    spokenOfEdit.value = said(words.changedWhole[what.kind]);
  } else {
    const name = what.kind === 'step' ? textNow(what.step.item) : what.list.title;
    spokenOfEdit.value = marked(writtenLang(), said, name);
  }
  closeGone();
  // Seen where it stands; the focus stays on the key, for the next one.
  if (what.kind === 'step') returnTo.value = { id: what.step.id, to: 'sight' };
  if (what.kind === 'list') returnTo.value = { id: what.list.id, to: 'list-sight' };
}

/** What no longer exists can't stay open. */
export function closeGone(): void {
  const id = editedStep.value;
  if (id !== null && written.value !== null && findStep(written.value, id) === null) {
    editedStep.value = null;
  }
  const list = editedList.value;
  if (list !== null && written.value?.lists.some((one) => one.id === list) === false) {
    editedList.value = null;
  }
}
