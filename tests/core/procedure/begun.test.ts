/** A sortie that begins at a later phase, as in the air: what lies before is not flown. */

import { expect, test } from 'vitest';
import { PHASES } from '../../../src/core/procedure/phases';
import type { Phase } from '../../../src/core/procedure/procedure';
import { foldSortie } from '../../../src/core/sortie/fold';
import { RUN } from '../sortie/recorder';
import { BY_DAY, facts, Pilot } from './invented';

function begunAt(phase: Phase, pilot = new Pilot()): Pilot {
  pilot.record({ kind: 'begun', run: RUN, phase });
  return pilot;
}

test.each([
  ['taxi', 'flaps'],
  ['line-up', 'heading'],
  ['roll', 'brakes released'],
  ['climb', 'gear'],
  ['recovery', 'landing-end'],
  ['after', 'pins-in'],
] as const)('begun at %s, %s is due and nothing is held back', (phase, due) => {
  const pilot = begunAt(phase);
  expect(pilot.at()).toBe(due);
  const { phases, heldBack } = pilot.walk();
  expect(heldBack).toEqual([]);
  for (const one of phases.slice(0, PHASES.indexOf(phase))) {
    expect(one.rows.map(({ state }) => state.kind)).toEqual(one.rows.map(() => 'not-flown'));
    expect([one.phase, one.total]).toEqual([one.phase, 0]);
  }
});

test('from there it is flown to the end, and no moment of what was left out is asked for', () => {
  expect(begunAt('climb').goToTheEnd()).toEqual([
    'gear',
    'reheat',
    'landing-end',
    'gear-down',
    'landed',
    'pins-in',
  ]);
});

test('what was put off before is not asked for at the runway check', () => {
  const pilot = new Pilot();
  pilot.tick('held', 'pins');
  begunAt('taxi', pilot);
  expect(pilot.stateOf('pins')).toBe('not-flown');
  pilot.tick('done', 'flaps');
  pilot.tick('done', 'course');
  expect(pilot.walk().position).toMatchObject({ row: { step: { id: 'barrier' } }, barrier: null });
});

test('what was done stays done, and is due again when what it depends on moves', () => {
  const pilot = new Pilot();
  pilot.tick('done', 'pins');
  pilot.tick('done', 'brief');
  begunAt('taxi', pilot);
  expect([pilot.stateOf('pins'), pilot.stateOf('brief')]).toEqual(['done', 'done']);
  pilot.now = facts({ runway: '01' });
  expect(pilot.at()).toBe('brief');
});

test('another take-off asks for what the first one left out', () => {
  const pilot = begunAt('recovery');
  pilot.record({ kind: 'reopen', run: RUN, passes: { taxi: 2, 'line-up': 2, roll: 2 } });
  expect(pilot.at()).toBe('flaps');
  expect(pilot.stateOf('pins')).toBe('not-flown');
});

test('taken back, it is as before', () => {
  const pilot = new Pilot();
  const before = pilot.walk();
  const begun = pilot.record({ kind: 'begun', run: RUN, phase: 'recovery' });
  expect(foldSortie(pilot.entries).run?.last?.id).toBe(begun.id);
  pilot.record({ kind: 'undo', target: begun.id });
  expect(pilot.walk()).toEqual(before);
  expect(pilot.now).toBe(BY_DAY);
});
