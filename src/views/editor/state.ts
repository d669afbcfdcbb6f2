/** Which part of the procedure is open, and what is said about the last action. */

import { signal } from '@preact/signals';
import type { ComponentChildren } from 'preact';
import { edit, newStepId, redo, undo, written } from '../../board/writing/procedure';
import {
  findStep,
  type ListId,
  type PartId,
  partsOf,
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

/** Where the focus goes when the list is next drawn: a step that moved, or was closed. */
export const returnTo = signal<
  | { readonly id: StepId; readonly to: 'handle' | 'row' }
  | { readonly id: ListId; readonly to: 'list' }
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

/** Undoes the last change, and says so. */
export function takeBack(): void {
  undo();
  spokenOfEdit.value = words.undone;
  closeGone();
}

/** Redoes what was undone, and says so. */
export function makeAgain(): void {
  redo();
  spokenOfEdit.value = words.redone;
  closeGone();
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
