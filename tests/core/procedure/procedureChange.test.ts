/** What undo says that it took back. */

import { expect, test } from 'vitest';
import { editedProcedure, type ProcedureEdit } from '../../../src/core/procedure/edit';
import { findStep, partsOf, withAllPhases } from '../../../src/core/procedure/parts';
import type { AbnormalList } from '../../../src/core/procedure/procedure';
import { procedureChange } from '../../../src/core/procedure/procedureChange';
import { WRITTEN } from './edits';

const START = withAllPhases(WRITTEN);
const [part] = partsOf(START).filter(({ steps }) => steps.length > 1);
const [first] = part?.steps ?? [];
if (part === undefined || first === undefined) throw new Error('no steps');

const told = (edit: ProcedureEdit) => {
  const { what, verb } = procedureChange(edit, START, editedProcedure(START, edit));
  return [verb, what.kind === 'step' ? what.step.item : what.kind];
};

test('a step is told by its name: as it was if it was removed, as it is otherwise', () => {
  const step = { id: 'own-1', kind: 'do', item: 'Window', response: 'shut' } as const;
  expect(told({ kind: 'insert', step, at: { part: part.part, index: 0 } })).toEqual([
    'added',
    'Window',
  ]);
  expect(told({ kind: 'remove', id: first.id })).toEqual(['removed', first.item]);
  expect(findStep(editedProcedure(START, { kind: 'remove', id: first.id }), first.id)).toBeNull();
  expect(told({ kind: 'duplicate', id: first.id, as: 'own-2' })).toEqual(['added', first.item]);
  expect(told({ kind: 'move', id: first.id, to: { part: part.part, index: 1 } })).toEqual([
    'moved',
    first.item,
  ]);
  expect(told({ kind: 'change', id: first.id, to: { item: 'Latch' } })).toEqual([
    'changed',
    'Latch',
  ]);
});

test('a list, the name and the whole are told as such', () => {
  const [list] = START.lists;
  expect(told({ kind: 'change-list', id: list?.id ?? '', to: { title: 'Other' } })).toEqual([
    'changed',
    'list',
  ]);
  const added = { ...list, id: 'own-list', title: 'Bird', steps: [{ ...first, id: 'own-3' }] };
  expect(told({ kind: 'add-list', list: added as AbnormalList })).toEqual(['added', 'list']);
  expect(told({ kind: 'remove-list', id: list?.id ?? '' })).toEqual(['removed', 'list']);
  expect(told({ kind: 'rename', name: 'Mine' })).toEqual(['changed', 'head']);
  expect(told({ kind: 'replace', by: WRITTEN })).toEqual(['changed', 'all']);
});
