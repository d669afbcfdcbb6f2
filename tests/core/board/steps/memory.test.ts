import { expect, test } from 'vitest';
import type { Event } from '../../../../src/core';
import { openPage, pass } from '../page';

const { beginAt, day, hashOf, load, record } = await openPage({
  fresh: true,
});
await load('XLIN', 'sleet', 'sleet-usual');
const { habits, tie } = await import('../../../../src/board/steps/memory');
const { offered } = await import('../../../../src/board/steps/stepping');

const ramp = () =>
  day
    .steps()
    ?.procedure.phases.find(({ phase }) => phase === 'ramp')
    ?.steps.map(({ id }) => id);
const due = () => {
  const main = offered.value?.main;
  return main?.what === 'tick' ? main.row.step.id : null;
};

test('a step done earlier stands directly before the other, and is due there', () => {
  beginAt('XLIN', 'sleet');
  const before = ramp() ?? [];
  // The document has seat-pins-out, brakes-parked, controls-free, canopy-shut first.
  expect(before.slice(0, 4)).toEqual([
    'seat-pins-out',
    'brakes-parked',
    'controls-free',
    'canopy-shut',
  ]);
  tie('canopy-shut', 'seat-pins-out');
  expect(ramp()?.slice(0, 4)).toEqual([
    'canopy-shut',
    'seat-pins-out',
    'brakes-parked',
    'controls-free',
  ]);
  expect(due()).toBe('canopy-shut');
  tie('canopy-shut', null);
  expect(ramp()).toEqual(before);
  expect(day.inputs().ties).toEqual({});
});

test('a step tied anew forgets where it was, and other ties stay', () => {
  beginAt('XLIN', 'sleet');
  tie('gear-lever', 'seat-pins-out');
  tie('canopy-shut', 'seat-pins-out');
  tie('canopy-shut', 'controls-free');
  expect(day.inputs().ties).toEqual({
    'sleet-usual/gear-lever': 'seat-pins-out',
    'sleet-usual/canopy-shut': 'controls-free',
  });
});

test('a step is never tied to a later place', () => {
  beginAt('XLIN', 'sleet');
  const before = ramp();
  tie('seat-pins-out', 'canopy-shut');
  expect(ramp()).toEqual(before);
});

/** A sortie with the procedure in which something was done with steps, in order. */
function fly(procedure: string, ...did: readonly (readonly ['done' | 'held', string])[]): void {
  pass(1000);
  const run = `run-${record.entries.length}`;
  const events = did.map(([kind, step]): Event => ({ kind, run, pass: 1, step, saw: {} }));
  beginAt('XLIN', 'sleet', { kind: 'open', run, procedure, list: null }, ...events);
}

test('what was held back sortie after sortie is a habit, of this procedure’s sorties alone', () => {
  const usual = hashOf('sleet-usual');
  const before = habits.value.length;
  expect(before).toBe(0);
  for (let sortie = 0; sortie < 3; sortie++) {
    fly(usual, ['held', 'seat-pins-out'], ['done', 'brakes-parked'], ['done', 'seat-pins-out']);
  }
  fly('hash-of-another', ['held', 'brakes-parked'], ['done', 'brakes-parked']);
  // The one in progress doesn't count.
  fly(usual, ['held', 'brakes-parked']);
  expect(habits.value).toEqual([{ step: 'seat-pins-out', kind: 'held', times: 3, of: 3 }]);
});
