/** An edit of a procedure: every change can be taken back and made again, and what is wrong is told. */

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { applyEdit, type Edit } from '../../../src/core/procedure/edit';
import { editFaults } from '../../../src/core/procedure/editFaults';
import {
  beginEditing,
  type Editing,
  edited,
  editsOf,
  redone,
  replayed,
  settled,
  undone,
} from '../../../src/core/procedure/editing';
import { findStep, withAllPhases } from '../../../src/core/procedure/parts';
import { readDocument } from '../../../src/core/readDocument.schema';
import { anyEdit, WRITTEN } from './edits';

const START = withAllPhases(WRITTEN);

const manyEdits = fc.array(
  fc.record({ edit: anyEdit(START), typing: fc.boolean(), settle: fc.boolean() }),
  { maxLength: 40 },
);

const make = (
  made: readonly { edit: Parameters<typeof edited>[1]; typing: boolean; settle: boolean }[],
) =>
  made.reduce<Editing>((editing, { edit, typing, settle }) => {
    const next = edited(editing, edit, typing);
    return settle ? settled(next) : next;
  }, beginEditing(START));

const undoAll = (editing: Editing): Editing =>
  editing.made.length === 0 ? editing : undoAll(undone(editing));
const redoAll = (editing: Editing): Editing =>
  editing.undone.length === 0 ? editing : redoAll(redone(editing));

describe('undo and redo', () => {
  test('any changes taken back give the start, and made again the end', () => {
    fc.assert(
      fc.property(manyEdits, (made) => {
        const end = make(made);
        const back = undoAll(end);
        expect(back.document).toStrictEqual(START);
        expect(redoAll(back).document).toStrictEqual(end.document);
      }),
      { numRuns: 400 },
    );
  });

  test('every change alone is taken back exactly by its inverse', () => {
    fc.assert(
      fc.property(manyEdits, anyEdit(START), (made, edit) => {
        const { document } = make(made);
        const applied = applyEdit(document, edit);
        fc.pre(applied !== null);
        const back = applyEdit(applied.document, applied.inverse);
        expect(back?.document).toStrictEqual(document);
      }),
      { numRuns: 400 },
    );
  });

  test('an edit that was kept in the middle of undoing is the same edit again', () => {
    fc.assert(
      fc.property(manyEdits, fc.nat(10), (made, backs) => {
        let editing = make(made);
        for (let left = backs; left > 0; left--) editing = undone(editing);
        const again = replayed(START, editsOf(editing), editing.made.length);
        expect(again.document).toStrictEqual(editing.document);
        expect(redoAll(again).document).toStrictEqual(redoAll(editing).document);
        expect(undoAll(again).document).toStrictEqual(START);
      }),
      { numRuns: 200 },
    );
  });

  test('no step is ever there twice', () => {
    fc.assert(
      fc.property(manyEdits, (made) => {
        const { document } = make(made);
        const ids = [...document.phases, ...document.lists].flatMap(({ steps }) =>
          steps.map(({ id }) => id),
        );
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });

  test('a new change after undoing leaves nothing to make again', () => {
    const first = edited(beginEditing(START), { kind: 'remove', id: 'flaps' });
    const other = edited(undone(first), { kind: 'remove', id: 'oil' });
    expect(other.undone).toEqual([]);
    expect(redone(other)).toBe(other);
  });
});

describe('typing', () => {
  const type = (editing: Editing, id: string, text: string) =>
    [...text].reduce(
      (typed, _, index) =>
        edited(typed, { kind: 'change', id, to: { item: text.slice(0, index + 1) } }, true),
      editing,
    );
  const itemOf = ({ document }: Editing, id: string) => findStep(document, id)?.step.item;

  test('a word that was typed is taken back as a word', () => {
    const typed = type(beginEditing(START), 'flaps', 'Slats');
    expect(itemOf(typed, 'flaps')).toBe('Slats');
    expect(typed.made).toHaveLength(1);
    expect(itemOf(undone(typed), 'flaps')).toBe('Flaps');
  });

  test('a letter typed and deleted again is no change, so that undo takes back the one before', () => {
    const before = edited(beginEditing(START), { kind: 'remove', id: 'oil' });
    const item = (text: string) => ({ kind: 'change', id: 'flaps', to: { item: text } }) as const;
    const typed = edited(edited(before, item('Flapss'), true), item('Flaps'), true);
    expect(typed.document).toEqual(before.document);
    expect(undone(typed).document).toEqual(START);
    const after = edited(typed, item('Slats'), true);
    expect(replayed(START, editsOf(after), after.made.length).document).toEqual(after.document);
    expect(itemOf(undone(after), 'flaps')).toBe('Flaps');
  });

  test('the title of a list is taken back as it was typed, and apart from where it leads', () => {
    const title = (editing: Editing, text: string) =>
      edited(editing, { kind: 'change-list', id: 'go-around', to: { title: text } }, true);
    const listOf = ({ document }: Editing) =>
      document.lists.find((list) => list.id === 'go-around');
    const typed = title(title(beginEditing(START), 'O'), 'Overshoot');
    expect(typed.made).toHaveLength(1);
    const led = edited(typed, { kind: 'change-list', id: 'go-around', to: { phases: ['climb'] } });
    expect(listOf(led)).toMatchObject({ title: 'Overshoot', phases: ['climb'] });
    expect(listOf(undone(led))).not.toHaveProperty('phases');
    expect(listOf(undone(undone(led)))?.title).toBe('Go-around');
  });

  test('what is typed after a pause, or in another step, is a change of its own', () => {
    const paused = type(settled(type(beginEditing(START), 'flaps', 'Slats')), 'flaps', 'Vanes');
    expect(itemOf(undone(paused), 'flaps')).toBe('Slats');
    const other = type(type(beginEditing(START), 'flaps', 'Slats'), 'oil', 'Grease');
    expect(itemOf(undone(other), 'oil')).toBe('Oil');
    expect(itemOf(undone(other), 'flaps')).toBe('Slats');
  });
});

describe('what means nothing changes nothing', () => {
  const editing = beginEditing(START);
  const nothing: readonly (readonly [string, Edit])[] = [
    ['a step that is not there', { kind: 'remove', id: 'no-such' }],
    ['to where it stands', { kind: 'move', id: 'flaps', to: { part: 'taxi', index: 0 } }],
    ['behind the end', { kind: 'move', id: 'flaps', to: { part: 'taxi', index: 3 } }],
    [
      'to a list that is not there',
      { kind: 'move', id: 'flaps', to: { part: 'list/x', index: 0 } },
    ],
    ['under a name that is taken', { kind: 'duplicate', id: 'flaps', as: 'oil' }],
    ['the same words', { kind: 'change', id: 'flaps', to: { item: 'Flaps' } }],
    ['the same name', { kind: 'rename', name: 'Invented' }],
    ['a list that is not there', { kind: 'change-list', id: 'x', to: { title: 'Fire' } }],
    ['the same title', { kind: 'change-list', id: 'go-around', to: { title: 'Go-around' } }],
    [
      'leading where it leads',
      {
        kind: 'change-list',
        id: 'go-around',
        // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
        to: { then: { phase: 'climb', reopen: ['climb', 'recovery'] } },
      },
    ],
    ['nowhere in particular', { kind: 'change-list', id: 'go-around', to: { phases: undefined } }],
  ];
  test.each(nothing)('%s', (_, edit) => {
    expect(edited(editing, edit)).toBe(editing);
  });
});

describe('what is wrong', () => {
  test('whatever was written passes the schema, or is told', () => {
    fc.assert(
      fc.property(manyEdits, (made) => {
        const { document } = make(made);
        const isRight = readDocument(JSON.stringify(document)).problems === null;
        expect(editFaults(document).length === 0).toBe(isRight);
      }),
      { numRuns: 600 },
    );
  });

  test('it is told by the step and the property it stands in', () => {
    const { document } = edited(beginEditing(START), {
      kind: 'change',
      id: 'lever-again',
      to: { response: 'by {rotateKts}' },
    });
    expect(editFaults(document)).toEqual([
      {
        step: 'lever-again',
        part: 'list/gear-unsafe',
        name: 'response',
        code: 'live-name-unknown',
      },
    ]);
  });

  test('a list without a title is told by the list', () => {
    const { document } = edited(beginEditing(START), {
      kind: 'change-list',
      id: 'go-around',
      to: { title: ' ' },
    });
    expect(editFaults(document)).toEqual([
      { step: null, part: 'list/go-around', name: 'title', code: 'text-missing' },
    ]);
  });

  test('a step that a list builds on cannot be gone', () => {
    const { document } = edited(beginEditing(START), { kind: 'remove', id: 'gear' });
    expect(editFaults(document)).toEqual([
      { step: 'lever-again', part: 'list/gear-unsafe', name: 'needs', code: 'needs-unknown' },
    ]);
  });
});
