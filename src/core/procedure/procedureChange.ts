/** What a change to a procedure did, and to what: for telling what undo took back. */

import type { ProcedureEdit } from './edit';
import { findStep } from './parts';
import type { AbnormalList, Procedure, Step } from './procedure';

/** The thing that was changed. */
export type ChangedPart =
  | { readonly kind: 'step'; readonly step: Step }
  | { readonly kind: 'list'; readonly list: AbnormalList }
  /** The procedure's name, or the aircraft it is for. */
  | { readonly kind: 'head' }
  | { readonly kind: 'all' };

export interface ProcedureChange {
  readonly what: ChangedPart;
  readonly verb: 'added' | 'removed' | 'moved' | 'changed';
}

/** What a change did; a step or list is told as it was with the change, or before it was removed. */
export function procedureChange(
  edit: ProcedureEdit,
  before: Procedure,
  after: Procedure,
): ProcedureChange {
  switch (edit.kind) {
    case 'insert':
      return ofStep(after, edit.step.id, 'added');
    case 'duplicate':
      return ofStep(after, edit.as, 'added');
    case 'remove':
      return ofStep(before, edit.id, 'removed');
    case 'move':
      return ofStep(after, edit.id, 'moved');
    case 'change':
      return ofStep(after, edit.id, 'changed');
    case 'change-list':
      return ofList(after, edit.id, 'changed');
    case 'add-list':
      return ofList(after, edit.list.id, 'added');
    case 'remove-list':
      return ofList(before, edit.id, 'removed');
    case 'rename':
    case 'for':
      return { what: { kind: 'head' }, verb: 'changed' };
    case 'replace':
      return { what: { kind: 'all' }, verb: 'changed' };
  }
}

function ofStep(
  document: Procedure,
  id: Step['id'],
  verb: ProcedureChange['verb'],
): ProcedureChange {
  const step = findStep(document, id)?.step;
  return { what: step === undefined ? { kind: 'all' } : { kind: 'step', step }, verb };
}

function ofList(
  { lists }: Procedure,
  of: AbnormalList['id'],
  verb: ProcedureChange['verb'],
): ProcedureChange {
  const list = lists.find(({ id }) => id === of);
  return { what: list === undefined ? { kind: 'all' } : { kind: 'list', list }, verb };
}
