/** What the sorties kept say of a pilot's habits. */

import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  habitsIn,
  habitsOf,
  procedureFlown,
  sortiesTogether,
} from '../../../src/core/procedure/memory';
import type { Entry } from '../../../src/core/sortie/entry';
import { anyRecord, OPEN, OPEN_LIST, tick, written } from '../sortie/recorder';
import { Pilot, SMALL } from './invented';

const kinds = (pilot: Pilot) => Object.fromEntries(habitsOf(pilot.entries, SMALL).otherwise);

test('done as they come, no step goes otherwise', () => {
  const pilot = new Pilot();
  pilot.goToTheEnd();
  const { handled, otherwise } = habitsOf(pilot.entries, SMALL);
  expect(otherwise.size).toBe(0);
  expect(handled.has('pins')).toBe(true);
  // By day the lamps were never asked for.
  expect(handled.has('lamps')).toBe(false);
});

test('a step held back and done later was held back', () => {
  const pilot = new Pilot();
  pilot.tick('held', 'pins');
  pilot.goToTheEnd();
  expect(kinds(pilot)).toEqual({ pins: 'held' });
});

test('held back by mistake and taken back at once it was not', () => {
  const pilot = new Pilot();
  pilot.undo(pilot.tick('held', 'pins'));
  pilot.goToTheEnd();
  expect(kinds(pilot)).toEqual({});
});

test('a step done after one that follows it was taken out of order', () => {
  const pilot = new Pilot();
  pilot.tick('done', 'brief');
  pilot.tick('done', 'pins');
  pilot.goToTheEnd();
  expect(kinds(pilot)).toEqual({ pins: 'out-of-order' });
});

test('a step done when a later phase had begun was added late', () => {
  const pilot = new Pilot();
  pilot.tick('done', 'pins');
  pilot.tick('done', 'flaps');
  pilot.tick('done', 'brief');
  expect(kinds(pilot)).toEqual({ brief: 'late' });
});

test('done again for another runway is not done late, and neither is a second take-off', () => {
  const pilot = new Pilot();
  pilot.goTo('heading');
  pilot.now = { ...pilot.now, runway: '01', runwayMagnetic: 10 };
  pilot.tick('done', 'brief');
  pilot.goTo('landed');
  pilot.stamp('landed');
  pilot.flyAgain('take-off');
  pilot.goToTheEnd();
  expect(kinds(pilot)).toEqual({});
});

test('which procedure was flown is told by its opening, not by that of a list', () => {
  expect(procedureFlown(written(OPEN_LIST, OPEN))).toBe('hash-p');
  expect(procedureFlown(written(tick('done', 'pins')))).toBeNull();
  const [first, second] = written(OPEN, { ...OPEN, procedure: 'hash-later' });
  expect(procedureFlown([second, first] as Entry[])).toBe('hash-p');
});

const hoursLater = (hours: number, entries: readonly Entry[]): readonly Entry[] =>
  entries.map((entry) => {
    const wallMs = entry.at.wallMs + hours * 3_600_000;
    return { ...entry, at: { ...entry.at, wallMs } };
  });

test('the sortie begun last comes first, whatever the devices numbered', () => {
  const noon = written(OPEN);
  const here = new Map([
    ['noon', noon],
    ['evening', hoursLater(6, noon)],
  ]);
  const brought = new Map([
    ['afternoon', hoursLater(3, noon).map((entry) => ({ ...entry, seq: 9000 }))],
    ['night', hoursLater(9, noon).map((entry) => ({ ...entry, seq: -9000 }))],
  ]);
  const inOrder = ['night', 'evening', 'afternoon', 'noon'];
  expect([...sortiesTogether(here, brought).keys()]).toEqual(inOrder);
  expect([...sortiesTogether(brought, here).keys()]).toEqual(inOrder);
});

test('a note written today into a sortie of long ago does not make it the last', () => {
  const old = new Map([['old', written(OPEN, tick('held', 'pins'))]]);
  const last = new Map([['last', hoursLater(48, written(OPEN))]]);
  const note = new Map([['old', hoursLater(96, written({ kind: 'noted', text: 'gusts' }))]]);
  const together = sortiesTogether(note, last, old);
  expect([...together.keys()]).toEqual(['last', 'old']);
  expect(together.get('old')).toHaveLength(3);
});

test('however the entries of a sortie lie about, here, brought or both, they tell the same habits once', () => {
  const where = fc.constantFrom('here', 'brought', 'both');
  fc.assert(
    fc.property(anyRecord, fc.infiniteStream(where), (entries, places) => {
      const marked = entries.map((entry) => ({ entry, place: places.next().value }));
      const not = (place: string) =>
        new Map([['one', marked.filter((one) => one.place !== place).map(({ entry }) => entry)]]);
      const [here, brought] = [not('brought'), not('here')];
      const together = sortiesTogether(here, brought, brought);
      expect([...together.keys()]).toEqual(['one']);
      const told = together.get('one') ?? [];
      expect(habitsOf(told, SMALL)).toEqual(habitsOf(entries, SMALL));
      expect(procedureFlown(told)).toBe(procedureFlown(entries));
    }),
    { numRuns: 300 },
  );
});

const sortie = (otherwise: Record<string, 'held' | 'late'>, ...handled: readonly string[]) => ({
  handled: new Set([...handled, ...Object.keys(otherwise)]),
  otherwise: new Map(Object.entries(otherwise)),
});

test('held back in four of the last ten, it says so', () => {
  const sorties = Array.from({ length: 10 }, (_, i) =>
    i < 4 ? sortie({ oxygen: 'held' }) : sortie({}, 'oxygen'),
  );
  expect(habitsIn(sorties)).toEqual([{ step: 'oxygen', kind: 'held', times: 4, of: 10 }]);
});

test('once is nothing, and neither is less than one time in three', () => {
  // From when on a slip is a habit is common practice, no published source.
  expect(habitsIn([sortie({ oxygen: 'held' })])).toEqual([]);
  const few = Array.from({ length: 10 }, (_, i) =>
    i < 3 ? sortie({ oxygen: 'held' }) : sortie({}, 'oxygen'),
  );
  expect(habitsIn(few)).toEqual([]);
});

test('one time in three is enough', () => {
  const sorties = Array.from({ length: 6 }, (_, i) =>
    i < 2 ? sortie({ oxygen: 'held' }) : sortie({}, 'oxygen'),
  );
  expect(habitsIn(sorties)).toEqual([{ step: 'oxygen', kind: 'held', times: 2, of: 6 }]);
});

test('only the sorties in which a step was asked for count', () => {
  const sorties = [sortie({ lamps: 'held' }), sortie({ lamps: 'held' }), sortie({}, 'pins')];
  expect(habitsIn(sorties)).toEqual([{ step: 'lamps', kind: 'held', times: 2, of: 2 }]);
});

test('what goes otherwise most often comes first, each as what it is mostly', () => {
  const sorties = [
    sortie({ oxygen: 'held', trim: 'late' }),
    sortie({ oxygen: 'held', trim: 'held' }),
    sortie({ oxygen: 'late', trim: 'late' }),
    sortie({ oxygen: 'held' }, 'trim'),
  ];
  expect(habitsIn(sorties).map(({ step, kind, times }) => [step, kind, times])).toEqual([
    ['oxygen', 'held', 3],
    ['trim', 'late', 2],
  ]);
});
