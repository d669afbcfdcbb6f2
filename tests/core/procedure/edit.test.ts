/** An edit of a procedure: every change can be taken back and made again, and what is wrong is told. */

import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  editedProcedure,
  type ProcedureEdit,
  procedureChanges,
} from '../../../src/core/procedure/edit';
import { placedFault } from '../../../src/core/procedure/faultPlace';
import { findStep, withAllPhases } from '../../../src/core/procedure/parts';
import type { Procedure } from '../../../src/core/procedure/procedure';
import { documentFaults, readDocument } from '../../../src/core/readDocument.schema';
import * as history from '../../../src/core/writing/history';
import { anyEdit, WRITTEN } from './edits';

const START = withAllPhases(WRITTEN);

type Editing = history.History<Procedure, ProcedureEdit>;

const BEGUN: Editing = history.beginHistory(START);

const edited = (editing: Editing, edit: ProcedureEdit, typing = false): Editing =>
  history.changed(procedureChanges, editing, edit, typing);

const { changeClosed: settled, documentNow: standing, undone } = history;

const manyEdits = fc.array(
  fc.record({ edit: anyEdit(START), typing: fc.boolean(), settle: fc.boolean() }),
  { maxLength: 40 },
);

const make = (made: readonly { edit: ProcedureEdit; typing: boolean; settle: boolean }[]) =>
  made.reduce<Editing>((editing, { edit, typing, settle }) => {
    const next = edited(editing, edit, typing);
    return settle ? settled(next) : next;
  }, BEGUN);

const times = (count: number, step: (editing: Editing) => Editing, editing: Editing) =>
  Array.from({ length: count }).reduce<Editing>(step, editing);
const undoAll = (editing: Editing): Editing => times(editing.at, undone, editing);
const redoAll = (editing: Editing): Editing =>
  times(editing.steps.length - editing.at, history.redone, editing);

describe('undo and redo', () => {
  test('any changes taken back give the start, and made again the end', () => {
    fc.assert(
      fc.property(manyEdits, (made) => {
        const end = make(made);
        const back = undoAll(end);
        expect(standing(back)).toStrictEqual(START);
        expect(standing(redoAll(back))).toStrictEqual(standing(end));
      }),
      { numRuns: 400 },
    );
  });

  test('an edit that was stored in the middle of undoing is the same edit again', () => {
    fc.assert(
      fc.property(manyEdits, fc.nat(10), (made, backs) => {
        const editing = times(backs, undone, make(made));
        const stored = structuredClone(history.storedHistory(editing));
        const again = history.restoredHistory(procedureChanges, stored);
        expect(standing(again)).toEqual(standing(editing));
        expect(standing(redoAll(again))).toEqual(standing(redoAll(editing)));
        expect(standing(undoAll(again))).toEqual(START);
      }),
      { numRuns: 200 },
    );
  });

  test('a change leaves the procedure that it is made to as it is', () => {
    fc.assert(
      fc.property(manyEdits, anyEdit(START), (made, edit) => {
        const document = standing(make(made));
        const before = structuredClone(document);
        editedProcedure(document, edit);
        expect(document).toEqual(before);
      }),
    );
  });

  test('no step is ever there twice', () => {
    fc.assert(
      fc.property(manyEdits, (made) => {
        const { phases, lists } = standing(make(made));
        const ids = [...phases, ...lists].flatMap(({ steps }) => steps.map(({ id }) => id));
        expect(new Set(ids).size).toBe(ids.length);
      }),
    );
  });

  test('a new change after undoing leaves nothing to make again', () => {
    const first = edited(BEGUN, { kind: 'remove', id: 'flaps' });
    const other = edited(undone(first), { kind: 'remove', id: 'oil' });
    expect(other.steps).toHaveLength(1);
    expect(history.redone(other)).toBe(other);
  });
});

describe('typing', () => {
  const type = (editing: Editing, id: string, text: string) =>
    [...text].reduce(
      (typed, _, index) =>
        edited(typed, { kind: 'change', id, to: { item: text.slice(0, index + 1) } }, true),
      editing,
    );
  const itemOf = (editing: Editing, id: string) => findStep(standing(editing), id)?.step.item;

  test('a word that was typed is taken back as a word', () => {
    const typed = type(BEGUN, 'flaps', 'Slats');
    expect(itemOf(typed, 'flaps')).toBe('Slats');
    expect(typed.steps).toHaveLength(1);
    expect(itemOf(undone(typed), 'flaps')).toBe('Flaps');
  });

  test('a letter typed and deleted again is no change, so that undo takes back the one before', () => {
    const before = edited(BEGUN, { kind: 'remove', id: 'oil' });
    const item = (text: string) => ({ kind: 'change', id: 'flaps', to: { item: text } }) as const;
    const typed = edited(edited(before, item('Flapss'), true), item('Flaps'), true);
    expect(standing(typed)).toEqual(standing(before));
    expect(standing(undone(typed))).toEqual(START);
    const after = edited(typed, item('Slats'), true);
    expect(itemOf(undone(after), 'flaps')).toBe('Flaps');
  });

  test('what is typed after a letter was typed and deleted is apart from what was typed before', () => {
    const item = (text: string) => ({ kind: 'change', id: 'flaps', to: { item: text } }) as const;
    const before = settled(type(BEGUN, 'flaps', 'Slats'));
    const typed = edited(edited(before, item('Slatss'), true), item('Slats'), true);
    const after = edited(typed, item('Vanes'), true);
    expect(itemOf(undone(after), 'flaps')).toBe('Slats');
    expect(itemOf(undone(undone(after)), 'flaps')).toBe('Flaps');
  });

  test('the title of a list is taken back as it was typed, and apart from where it leads', () => {
    const title = (editing: Editing, text: string) =>
      edited(editing, { kind: 'change-list', id: 'go-around', to: { title: text } }, true);
    const listOf = (editing: Editing) =>
      standing(editing).lists.find((list) => list.id === 'go-around');
    const typed = title(title(BEGUN, 'O'), 'Overshoot');
    expect(typed.steps).toHaveLength(1);
    const led = edited(typed, { kind: 'change-list', id: 'go-around', to: { phases: ['climb'] } });
    expect(listOf(led)).toMatchObject({ title: 'Overshoot', phases: ['climb'] });
    expect(listOf(undone(led))).not.toHaveProperty('phases');
    expect(listOf(undone(undone(led)))?.title).toBe('Go-around');
  });

  test('what is typed after a pause, or in another step, is a change of its own', () => {
    const paused = type(settled(type(BEGUN, 'flaps', 'Slats')), 'flaps', 'Vanes');
    expect(itemOf(undone(paused), 'flaps')).toBe('Slats');
    const other = type(type(BEGUN, 'flaps', 'Slats'), 'oil', 'Grease');
    expect(itemOf(undone(other), 'oil')).toBe('Oil');
    expect(itemOf(undone(other), 'flaps')).toBe('Slats');
  });
});

describe('what means nothing changes nothing', () => {
  const nothing: readonly (readonly [string, ProcedureEdit])[] = [
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
    expect(edited(BEGUN, edit)).toBe(BEGUN);
  });
});

/** What is wrong in a procedure after a change, as its editor tells it. */
function wrongAfter(edit: ProcedureEdit) {
  const procedure = editedProcedure(START, edit);
  return documentFaults(procedure).map((fault) => placedFault(procedure, fault));
}

describe('what is wrong', () => {
  test('whatever was written passes the reader, or is told', () => {
    fc.assert(
      fc.property(manyEdits, (made) => {
        const document = standing(make(made));
        const isRight = readDocument(JSON.stringify(document)).problems === null;
        expect(documentFaults(document).length === 0).toBe(isRight);
      }),
      { numRuns: 300 },
    );
  });

  const change = (to: Extract<ProcedureEdit, { kind: 'change' }>['to'], id = 'flaps') =>
    ({ kind: 'change', id, to }) as const;
  const title = { kind: 'change-list', id: 'go-around', to: { title: ' ' } } as const;
  const flaps = { step: 'flaps', part: 'taxi' };

  test.each<[string, ProcedureEdit, object]>([
    ['an empty text', change({ item: ' ' }), { ...flaps, name: 'item', code: 'text-missing' }],
    [
      'a long text',
      change({ note: 'x'.repeat(601) }),
      { ...flaps, name: 'note', code: 'text-too-long' },
    ],
    [
      'a text that is not drawn as it is written',
      change({ response: 'up\u202e' }),
      { ...flaps, name: 'response', code: 'text-direction' },
    ],
    [
      'a wait beyond the hour',
      change({ expectS: 3601 }, 'oil'),
      { step: 'oil', part: 'taxi', name: 'expectS', code: 'number-out-of-range' },
    ],
    [
      'a condition of a condition',
      change({ when: { all: [{ windAboveKt: 1501 }] } }),
      { ...flaps, name: 'when', code: 'number-out-of-range' },
    ],
    [
      'a live number that there is not',
      change({ response: 'by {rotateKts}' }, 'lever-again'),
      {
        step: 'lever-again',
        part: 'list/gear-unsafe',
        name: 'response',
        code: 'live-name-unknown',
      },
    ],
    [
      'a list without a title',
      title,
      { step: null, part: 'list/go-around', name: 'title', code: 'text-missing' },
    ],
    [
      'a procedure without a name',
      { kind: 'rename', name: '' },
      { step: null, part: null, name: 'name', code: 'text-missing' },
    ],
    [
      'a step gone that a list builds on',
      { kind: 'remove', id: 'gear' },
      { step: 'lever-again', part: 'list/gear-unsafe', name: 'needs', code: 'needs-unknown' },
    ],
  ])('%s is told by the place it is mended in', (_, edit, fault) => {
    expect(wrongAfter(edit)).toEqual([fault]);
  });

  test('one bound that is broken hides no other fault', () => {
    const procedure = editedProcedure(
      editedProcedure(START, change({ item: ' ', response: 'by {rotateKts}' })),
      change({ tiedTo: 'brakes released' }, 'oil'),
    );
    expect(
      documentFaults(procedure)
        .map(({ code }) => code)
        .sort(),
    ).toEqual(['live-name-unknown', 'text-missing', 'tied-off-roll']);
  });

  test('a part of more steps than a procedure holds is told by the part', () => {
    const many = Array.from({ length: 80 }).reduce<Procedure>(
      (now, _, index) => editedProcedure(now, { kind: 'duplicate', id: 'lever', as: `l-${index}` }),
      START,
    );
    const [fault] = documentFaults(many);
    expect(fault && placedFault(many, fault)).toEqual({
      step: null,
      part: 'roll',
      name: 'steps',
      code: 'too-many',
    });
  });
});
