/** Changes to a procedure as its pilot writes it. */

import type { ListId } from '../sortie/entry';
import type { Changes } from '../writing/history';
import { findStep, type StepPlace, stepsIn, withSteps } from './parts';
import type { AbnormalList, Procedure, Step, StepId } from './procedure';
import { MOST_LISTS } from './stepKinds';

/** New values for properties of a step. An undefined property is removed. */
export type StepChange = Partial<Omit<Step, 'id'>>;

/** New values for properties of a list, apart from its steps. An undefined property is removed. */
export type ListChange = Partial<Omit<AbnormalList, 'id' | 'steps'>>;

/** One change. An index counts the other steps only: for a moved step, without itself. */
export type ProcedureEdit =
  | { readonly kind: 'insert'; readonly step: Step; readonly at: StepPlace }
  | { readonly kind: 'remove'; readonly id: StepId }
  | { readonly kind: 'move'; readonly id: StepId; readonly to: StepPlace }
  /** A copy with another id, right after it. */
  | { readonly kind: 'duplicate'; readonly id: StepId; readonly as: StepId }
  /** Reworded, of another kind, under another condition. */
  | { readonly kind: 'change'; readonly id: StepId; readonly to: StepChange }
  | { readonly kind: 'rename'; readonly name: string }
  /** For another aircraft, by its code. */
  | { readonly kind: 'for'; readonly aircraft: string }
  /** A list with another title, looked for first elsewhere, or leading elsewhere. */
  | { readonly kind: 'change-list'; readonly id: ListId; readonly to: ListChange }
  /** A list behind the others. */
  | { readonly kind: 'add-list'; readonly list: AbnormalList }
  | { readonly kind: 'remove-list'; readonly id: ListId }
  /** Everything: an earlier version restored, or what the original brought. */
  | { readonly kind: 'replace'; readonly by: Procedure };

/**
 * The procedure after a change; the same object if the change is void: no such step or place, or an
 * id already taken.
 */
export function editedProcedure(document: Procedure, edit: ProcedureEdit): Procedure {
  switch (edit.kind) {
    case 'insert':
      return insert(document, edit.step, edit.at) ?? document;
    case 'remove':
      return remove(document, edit.id) ?? document;
    case 'move':
      return move(document, edit.id, edit.to) ?? document;
    case 'duplicate': {
      const found = findStep(document, edit.id);
      if (found === null) return document;
      const { step, part, index } = found;
      return insert(document, { ...step, id: edit.as }, { part, index: index + 1 }) ?? document;
    }
    case 'change':
      return change(document, edit.id, edit.to);
    case 'rename':
      return { ...document, name: edit.name };
    case 'for':
      return edit.aircraft === document.aircraft
        ? document
        : { ...document, aircraft: edit.aircraft };
    case 'change-list':
      return changeList(document, edit.id, edit.to);
    case 'add-list':
      return addList(document, edit.list);
    case 'remove-list': {
      const lists = document.lists.filter(({ id }) => id !== edit.id);
      return lists.length === document.lists.length ? document : { ...document, lists };
    }
    case 'replace':
      return edit.by;
  }
}

/** No more lists than the schema allows, and none of an id that is taken, nor its steps'. */
function addList(document: Procedure, list: AbnormalList): Procedure {
  const isTaken =
    document.lists.some(({ id }) => id === list.id) ||
    list.steps.some(({ id }) => findStep(document, id) !== null);
  return isTaken || document.lists.length >= MOST_LISTS
    ? document
    : { ...document, lists: [...document.lists, list] };
}

function insert(document: Procedure, step: Step, { part, index }: StepPlace): Procedure | null {
  const steps = stepsIn(document, part);
  if (steps === null || index < 0 || index > steps.length) return null;
  if (findStep(document, step.id) !== null) return null;
  return withSteps(document, part, steps.toSpliced(index, 0, step));
}

function remove(document: Procedure, id: StepId): Procedure | null {
  const found = findStep(document, id);
  if (found === null) return null;
  const { part, index } = found;
  return withSteps(document, part, (stepsIn(document, part) ?? []).toSpliced(index, 1));
}

function move(document: Procedure, id: StepId, to: StepPlace): Procedure | null {
  const found = findStep(document, id);
  const taken = remove(document, id);
  return found === null || taken === null ? null : insert(taken, found.step, to);
}

/** A step's optional properties. */
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

function change(document: Procedure, id: StepId, to: StepChange): Procedure {
  const found = findStep(document, id);
  if (found === null) return document;
  const { step, part, index } = found;
  const after: Step = { ...step, ...to };
  for (const name of OPTIONAL) if (after[name] === undefined) delete after[name];
  return withSteps(document, part, (stepsIn(document, part) ?? []).with(index, after));
}

function changeList(document: Procedure, id: ListId, to: ListChange): Procedure {
  const index = document.lists.findIndex((list) => list.id === id);
  const list = document.lists[index];
  if (list === undefined) return document;
  const after: AbnormalList = { ...list, ...to };
  for (const name of OPTIONAL_OF_LIST) if (after[name] === undefined) delete after[name];
  return { ...document, lists: document.lists.with(index, after) };
}

/** A list's optional properties. */
export const OPTIONAL_OF_LIST = ['group', 'phases'] as const satisfies (keyof ListChange)[];

/** What a list has apart from its steps. */
export const LIST_NAMES = [
  'title',
  'group',
  'phases',
  'then',
] as const satisfies (keyof ListChange)[];

/**
 * What a change sets: properties of one step or list, or the name of the whole; null if it stands
 * alone.
 */
function sets(edit: ProcedureEdit): string | null {
  switch (edit.kind) {
    case 'rename':
      return edit.kind;
    case 'change':
    case 'change-list':
      return JSON.stringify([edit.kind, edit.id, Object.keys(edit.to)]);
    default:
      return null;
  }
}

/** What a history of a procedure needs to know about its changes. */
export const procedureChanges: Changes<Procedure, ProcedureEdit> = {
  edited: editedProcedure,
  sets,
};
