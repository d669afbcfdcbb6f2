/** Several take-offs and approaches in one sortie. */

import { expect, test } from 'vitest';
import { walkList } from '../../../src/core/procedure/walkList';
import { BY_DAY, Pilot, procedureOf, rowOf, step } from './invented';

/** As the key for it does: landed in the pass that ends, airborne in the one that begins. */
function touchAndGo(pilot: Pilot): void {
  pilot.stamp('landed');
  pilot.flyAgain('touch-and-go');
  pilot.stamp('airborne');
}

test('after a touch-and-go the climb is due, and nothing that was done on the ground', () => {
  const pilot = new Pilot();
  pilot.goTo('landed');
  touchAndGo(pilot);
  expect(pilot.at()).toBe('gear');
  expect(pilot.goToTheEnd()).toEqual([
    'gear',
    'reheat',
    'landing-end',
    'gear-down',
    'landed',
    'pins-in',
  ]);
});

test('what goes with the brakes is not asked for in the air, and is again from a standstill', () => {
  const pilot = new Pilot();
  pilot.goTo('landed');
  touchAndGo(pilot);
  expect(rowOf(pilot.walk(), 'lever').state).toMatchObject({ kind: 'not-needed', facts: [] });
  pilot.goTo('landed');
  pilot.stamp('landed');
  pilot.flyAgain('take-off');
  pilot.goTo('brakes released');
  expect(pilot.walk().position).toMatchObject({ tied: [{ step: { id: 'lever' }, pass: 3 }] });
});

test('three touch-and-goes are three passes of the climb', () => {
  const pilot = new Pilot();
  for (let circuit = 0; circuit < 3; circuit++) {
    pilot.goTo('landed');
    touchAndGo(pilot);
  }
  expect(rowOf(pilot.walk(), 'gear').pass).toBe(4);
  expect(rowOf(pilot.walk(), 'flaps').pass).toBe(1);
});

test('another take-off asks for the taxi again and not for the ramp', () => {
  const pilot = new Pilot();
  pilot.goTo('landed');
  pilot.stamp('landed');
  pilot.flyAgain('take-off');
  expect(pilot.at()).toBe('flaps');
  expect(pilot.stateOf('pins')).toBe('done');
});

test('with the pins in again after the landing, another take-off begins on the ramp', () => {
  const pilot = new Pilot();
  pilot.goTo('pins-in');
  pilot.tick('done', 'pins-in');
  pilot.flyAgain('take-off');
  expect(pilot.at()).toBe('pins');
  expect(pilot.stateOf('pins-in')).toBe('open');
});

test('a go-around asks for the approach again', () => {
  const pilot = new Pilot();
  pilot.goTo('landed');
  pilot.flyAgain('approach');
  expect(pilot.at()).toBe('landing-end');
  expect(pilot.stateOf('reheat')).toBe('done');
});

test('taken back, phases that were opened again are done again', () => {
  const pilot = new Pilot();
  pilot.goTo('landed');
  const again = pilot.flyAgain('approach');
  pilot.undo(again);
  expect(pilot.at()).toBe('landed');
});

const STOP = procedureOf({ ramp: [step('chute-packed'), step('hook-up')] });
const [list] = STOP.lists;
const PULLED = step('pull', { needs: 'chute-packed' });

test('what could not be done on the ground is not there to stop with', () => {
  if (list === undefined) throw new Error('no list');
  const stopping = { ...list, steps: [step('idle'), PULLED, step('hook', { needs: 'hook-up' })] };
  const pilot = new Pilot(STOP);
  pilot.tick('cannot', 'chute-packed');
  pilot.tick('done', 'hook-up');
  const rows = pilot.walk().phases.flatMap((part) => part.rows);
  const walked = walkList(stopping, null, BY_DAY, rows);
  expect(rowOf(walked, 'pull').state.kind).toBe('cannot');
  expect(rowOf(walked, 'hook').state.kind).toBe('open');
  expect(walked.next.map((one) => (one.kind === 'step' ? one.row.step.id : ''))).toEqual(['hook']);
});
