/** Under which heading a list is offered. */

import * as v from 'valibot';
import { expect, test } from 'vitest';
import { editedProcedure } from '../../../src/core/procedure/edit';
import { groupOf } from '../../../src/core/procedure/listGroup';
import { procedureSchema } from '../../../src/core/procedure/procedure.schema';
import { demoProcedures } from '../documents/demo';

test('a list that does not say stands with the emergencies, the go-around by itself', () => {
  expect(groupOf({ id: 'hydraulics' })).toBe('emergency');
  expect(groupOf({ id: 'go-around' })).toBe('go-around');
  expect(groupOf({ id: 'hydraulics', group: 'malfunction' })).toBe('malfunction');
  expect(groupOf({ id: 'go-around', group: 'emergency' })).toBe('emergency');
});

test('a procedure from before there were groups is read as it was, without one', () => {
  const [procedure] = demoProcedures;
  if (procedure === undefined) throw new Error('there is none');
  const before = {
    ...procedure,
    lists: procedure.lists.map(({ group: _, ...list }) => list),
  };
  const read = v.parse(procedureSchema, before);
  expect(read).toEqual(before);
  expect(read.lists.some((list) => 'group' in list)).toBe(false);
});

test('a group that is taken back leaves no trace in the document', () => {
  const [procedure] = demoProcedures;
  const list = procedure?.lists.find(({ id }) => id === 'smoke');
  if (procedure === undefined || list === undefined) throw new Error('there is none');
  const to = { group: undefined };
  const after = editedProcedure(procedure, { kind: 'change-list', id: 'smoke', to });
  expect('group' in (after.lists.find(({ id }) => id === 'smoke') ?? {})).toBe(false);
});
