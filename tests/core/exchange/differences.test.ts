import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Procedure, Step } from '../../../src/core';
import {
  aspectsThatDiffer,
  countSteps,
  partsThatDiffer,
  stepDifferences,
} from '../../../src/exchange/differences';

const step = (id: string, response = 'set'): Step => ({ id, kind: 'do', item: id, response });
const procedure = (taxi: readonly Step[], ramp: readonly Step[] = []): Procedure => ({
  lapstrip: 'procedure',
  version: 1,
  code: 'x-usual',
  name: 'Usual',
  aircraft: 'x',
  about: '',
  phases: [
    { phase: 'ramp', steps: [...ramp] },
    { phase: 'taxi', steps: [...taxi] },
  ],
  lists: [],
});
const ids = (steps: readonly Step[]) => steps.map(({ id }) => id);

test('steps more, steps left out and steps said otherwise are told apart', () => {
  const before = procedure([step('a'), step('b'), step('c')]);
  const after = procedure([step('a'), step('b', 'half'), step('d')]);
  const { added, removed, changed, moved } = stepDifferences(before, after);
  expect(ids(added)).toEqual(['d']);
  expect(ids(removed)).toEqual(['c']);
  expect(changed.map((one) => [one.before.response, one.after.response])).toEqual([
    ['set', 'half'],
  ]);
  expect(moved).toBe(0);
});

test('one step taken from the top to the bottom is one that moved', () => {
  const of = (...names: string[]) => procedure(names.map((name) => step(name)));
  expect(stepDifferences(of('a', 'b', 'c', 'd'), of('b', 'c', 'd', 'a')).moved).toBe(1);
  expect(stepDifferences(of('a', 'b'), of('x', 'a', 'y', 'b')).moved).toBe(0);
});

test('a step in another phase moved', () => {
  const before = procedure([step('a')], [step('b')]);
  const after = procedure([step('a'), step('b')]);
  expect(stepDifferences(before, after)).toMatchObject({ added: [], removed: [], moved: 1 });
});

test('a list that leads elsewhere is named, also where none of its steps is other', () => {
  const list = (title: string, to: 'return' | 'end'): Procedure['lists'][number] => ({
    id: title.toLowerCase(),
    title,
    steps: [step(`${title}-1`)],
    ...(Object.fromEntries([['then', to]]) as { then: 'return' | 'end' }),
  });
  const before = { ...procedure([]), lists: [list('Fire', 'return'), list('Gear', 'return')] };
  const after = { ...procedure([]), lists: [list('Fire', 'end'), list('Gear', 'return')] };
  expect(stepDifferences(before, after)).toMatchObject({ changed: [], moved: 0, lists: ['Fire'] });
  expect(stepDifferences(before, before).lists).toEqual([]);
});

test('a procedure does not differ from itself, and what is more one way is less the other', () => {
  const steps = fc
    .uniqueArray(fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f'))
    .map((names) => procedure(names.map((name) => step(name))));
  fc.assert(
    fc.property(steps, steps, (one, other) => {
      expect(stepDifferences(one, one)).toEqual({
        added: [],
        removed: [],
        changed: [],
        moved: 0,
        lists: [],
      });
      const there = stepDifferences(one, other);
      const back = stepDifferences(other, one);
      expect(ids(there.added)).toEqual(ids(back.removed));
      expect(there.moved).toBe(back.moved);
      expect(countSteps(one) + there.added.length - there.removed.length).toBe(countSteps(other));
    }),
  );
});

test('the parts that differ are named, however their keys are ordered', () => {
  expect(
    partsThatDiffer(
      { $schema: 'x', code: 'XA', place: { a: 1, b: 2 }, runways: [1] },
      { code: 'XA', runways: [1, 2], place: { b: 2, a: 1 }, taxi: {} },
    ),
  ).toEqual(['runways', 'taxi']);
});

test('what decides whether a step is ticked, and how, is told as a difference', () => {
  const plain = step('a');
  expect(aspectsThatDiffer({ ...plain, critical: true }, plain)).toEqual(['critical']);
  expect(aspectsThatDiffer(plain, { ...plain, when: { fact: 'night' } })).toEqual(['when']);
  expect(
    aspectsThatDiffer(
      { ...plain, when: { option: 'x' }, note: 'left' },
      { ...plain, when: { option: 'y' }, until: 'climb', kind: 'check' },
    ),
  ).toEqual(['when', 'kind', 'until', 'note']);
  expect(aspectsThatDiffer({ ...plain, item: 'b' }, plain)).toEqual([]);
});
