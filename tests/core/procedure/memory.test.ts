/** What the sorties kept say of a pilot's habits. */

import { expect, test } from 'vitest';
import { habitsIn, habitsOf, procedureFlown } from '../../../src/core/procedure/memory';
import { OPEN, OPEN_LIST, tick, written } from '../sortie/recorder';
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
  expect(habitsIn([sortie({ oxygen: 'held' })])).toEqual([]);
  const few = Array.from({ length: 10 }, (_, i) =>
    i < 3 ? sortie({ oxygen: 'held' }) : sortie({}, 'oxygen'),
  );
  expect(habitsIn(few)).toEqual([]);
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
