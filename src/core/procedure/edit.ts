/** Changes to a procedure as its pilot writes it, each with the one that takes it back. */

import type { ListId } from '../sortie/entry';
import { findStep, type Place, stepsIn, withSteps } from './parts';
import type { AbnormalList, Procedure, Step, StepId } from './procedure';
import { isSame } from './same';

/** What of a step is said otherwise. What is undefined is left out from then on. */
export type StepChange = Partial<Omit<Step, 'id'>>;

/** What of a list is said otherwise beside its steps. What is undefined is left out from then on. */
export type ListChange = Partial<Omit<AbnormalList, 'id' | 'steps'>>;

/** One change. A place counts the other steps alone: that of a moved step, without the step. */
export type Edit =
  | { readonly kind: 'insert'; readonly step: Step; readonly at: Place }
  | { readonly kind: 'remove'; readonly id: StepId }
  | { readonly kind: 'move'; readonly id: StepId; readonly to: Place }
  /** The same once more under another name, right behind it. */
  | { readonly kind: 'duplicate'; readonly id: StepId; readonly as: StepId }
  /** Reworded, of another kind, under another condition. */
  | { readonly kind: 'change'; readonly id: StepId; readonly to: StepChange }
  | { readonly kind: 'rename'; readonly name: string }
  /** A list under another title, looked for first elsewhere, or leading elsewhere. */
  | { readonly kind: 'change-list'; readonly id: ListId; readonly to: ListChange }
  /** All of it: an earlier version taken up again, or what the original brought. */
  | { readonly kind: 'replace'; readonly by: Procedure };

/** A change made, and the change that takes it back. */
export interface Applied {
  readonly document: Procedure;
  readonly inverse: Edit;
}

/**
 * Makes a change; null where it means nothing: no such step or place, a name that is taken already,
 * or nothing that would be other than before.
 */
export function applyEdit(document: Procedure, edit: Edit): Applied | null {
  switch (edit.kind) {
    case 'insert':
      return insert(document, edit.step, edit.at);
    case 'remove':
      return remove(document, edit.id);
    case 'move':
      return move(document, edit.id, edit.to);
    case 'duplicate': {
      const found = findStep(document, edit.id);
      if (found === null) return null;
      const { step, part, index } = found;
      return insert(document, { ...step, id: edit.as }, { part, index: index + 1 });
    }
    case 'change':
      return change(document, edit.id, edit.to);
    case 'rename':
      if (edit.name === document.name) return null;
      return {
        document: { ...document, name: edit.name },
        inverse: { kind: 'rename', name: document.name },
      };
    case 'change-list':
      return changeList(document, edit.id, edit.to);
    case 'replace':
      return { document: edit.by, inverse: { kind: 'replace', by: document } };
  }
}

function insert(document: Procedure, step: Step, { part, index }: Place): Applied | null {
  const steps = stepsIn(document, part);
  if (steps === null || index < 0 || index > steps.length) return null;
  if (findStep(document, step.id) !== null) return null;
  return {
    document: withSteps(document, part, steps.toSpliced(index, 0, step)),
    inverse: { kind: 'remove', id: step.id },
  };
}

function remove(document: Procedure, id: StepId): Applied | null {
  const found = findStep(document, id);
  if (found === null) return null;
  const { step, part, index } = found;
  const steps = stepsIn(document, part) ?? [];
  return {
    document: withSteps(document, part, steps.toSpliced(index, 1)),
    inverse: { kind: 'insert', step, at: { part, index } },
  };
}

function move(document: Procedure, id: StepId, to: Place): Applied | null {
  const found = findStep(document, id);
  const taken = remove(document, id);
  if (found === null || taken === null) return null;
  const { part, index } = found;
  if (part === to.part && index === to.index) return null;
  const put = insert(taken.document, found.step, to);
  return put && { document: put.document, inverse: { kind: 'move', id, to: { part, index } } };
}

/** What a step can be without. */
const OPTIONAL = [
  'note',
  'call',
  'critical',
  'expectS',
  'gate',
  'gateFt',
  'tiedTo',
  'needs',
  'when',
  'until',
] as const satisfies readonly (keyof Step)[];

function change(document: Procedure, id: StepId, to: StepChange): Applied | null {
  const found = findStep(document, id);
  if (found === null) return null;
  const { step, part, index } = found;
  const names = namesIn(to).filter((name) => step[name] !== to[name]);
  if (names.length === 0) return null;
  const after: Step = { ...step, ...to };
  for (const name of OPTIONAL) if (after[name] === undefined) delete after[name];
  const back: StepChange = Object.fromEntries(names.map((name) => [name, step[name]]));
  const steps = stepsIn(document, part) ?? [];
  return {
    document: withSteps(document, part, steps.with(index, after)),
    inverse: { kind: 'change', id, to: back },
  };
}

const NAMES = ['kind', 'item', 'response', ...OPTIONAL] as const satisfies (keyof StepChange)[];

/** What of a step a change says otherwise. */
export const namesIn = (to: StepChange): readonly (keyof StepChange)[] =>
  NAMES.filter((name) => Object.hasOwn(to, name));

function changeList(document: Procedure, id: ListId, to: ListChange): Applied | null {
  const index = document.lists.findIndex((list) => list.id === id);
  const list = document.lists[index];
  if (list === undefined) return null;
  const names = listNamesIn(to).filter((name) => !isSame(list[name], to[name]));
  if (names.length === 0) return null;
  const after: AbnormalList = { ...list, ...to };
  if (after.phases === undefined) delete after.phases;
  const back: ListChange = Object.fromEntries(names.map((name) => [name, list[name]]));
  return {
    document: { ...document, lists: document.lists.with(index, after) },
    inverse: { kind: 'change-list', id, to: back },
  };
}

/** What a list says beside its steps. */
export const LIST_NAMES = ['title', 'phases', 'then'] as const satisfies (keyof ListChange)[];

/** What of a list a change says otherwise. */
export const listNamesIn = (to: ListChange): readonly (keyof ListChange)[] =>
  LIST_NAMES.filter((name) => Object.hasOwn(to, name));
