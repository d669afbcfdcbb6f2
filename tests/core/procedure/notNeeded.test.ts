/** What is not needed: why, since when, and what becomes of it when the facts move. */

import { expect, test } from 'vitest';
import { rowsOf } from '../../../src/core/day/steps';
import { passedBefore } from '../../../src/core/procedure/passed';
import { BY_DAY, facts, Pilot, procedureOf, rowOf, step } from './invented';

/** Lamps that count until the line-up is over, and a hatch that counts in its own phase. */
const LIT = procedureOf({
  ramp: [
    step('pins'),
    step('lamps', { when: { fact: 'night' }, until: 'line-up' }),
    step('hatch', { when: { fact: 'wet' } }),
    step('brief'),
  ],
  taxi: [
    step('look', { when: { fact: 'crossesRunway' } }),
    step('wing', { when: { windAboveKt: 20 } }),
    step('chute', { when: { option: 'chute' } }),
    step('flaps'),
  ],
  'line-up': [step('power')],
});

const decided = (pilot: Pilot, id: string) => {
  const { state } = rowOf(pilot.walk(), id);
  return state.kind === 'not-needed' ? state.decided : undefined;
};

test('it is decided when the pilot goes on past it, under the facts of that moment', () => {
  const pilot = new Pilot(LIT);
  pilot.tick('done', 'pins');
  expect(decided(pilot, 'lamps')).toBeNull();
  const brief = pilot.tick('done', 'brief');
  expect(decided(pilot, 'lamps')).toMatchObject({ saw: { night: false } });
  const { wallMs } = decided(pilot, 'lamps')?.at ?? { wallMs: Number.NaN };
  // Recorded in the same go as the step that was done, just before it.
  expect(brief.at.wallMs - wallMs).toBeLessThanOrEqual(2000);
});

test('it gets dark, and what was passed by day is due again, saying so', () => {
  const pilot = new Pilot(LIT);
  pilot.tick('done', 'pins');
  pilot.tick('done', 'brief');
  pilot.now = facts({ night: true });
  expect(rowOf(pilot.walk(), 'lamps').state).toMatchObject({ kind: 'again', moved: ['night'] });
  expect(pilot.at()).toBe('lamps');
  pilot.tick('done', 'lamps');
  expect(pilot.stateOf('lamps')).toBe('done');
});

test('it gets dark and light again, and the decision stands as it was', () => {
  const pilot = new Pilot(LIT);
  pilot.tick('done', 'pins');
  pilot.tick('done', 'brief');
  const before = decided(pilot, 'lamps');
  pilot.now = facts({ night: true });
  pilot.now = BY_DAY;
  expect(decided(pilot, 'lamps')).toEqual(before);
});

test('at the end what stands last and was not needed is decided too', () => {
  const procedure = procedureOf({
    after: [step('pins-in'), step('lamps-off', { when: { fact: 'lights' } })],
  });
  const pilot = new Pilot(procedure);
  pilot.tick('done', 'pins-in');
  expect(pilot.at()).toBe('end');
  expect(passedBefore(rowsOf(pilot.walk()), null, pilot.now)).toEqual([
    { step: 'lamps-off', pass: 1, saw: { lights: false } },
  ]);
});

test('past its phase it stays decided, whatever the weather does', () => {
  const pilot = new Pilot(LIT);
  pilot.goTo('flaps');
  pilot.tick('done', 'flaps');
  pilot.now = facts({ wet: true });
  expect(rowOf(pilot.walk(), 'hatch').state).toMatchObject({
    kind: 'not-needed',
    passed: true,
    decided: { saw: { wet: false } },
  });
});

test.each([
  ['look', { crossesRunway: true }],
  ['wing', { windKt: 21 }],
])('%s is asked for when %j', (id, now) => {
  const pilot = new Pilot(LIT);
  expect(pilot.stateOf(id)).toBe('not-needed');
  pilot.now = facts(now);
  expect(pilot.stateOf(id)).toBe('open');
});

test('20 kt are not above 20 kt', () => {
  const pilot = new Pilot(LIT);
  pilot.now = facts({ windKt: 20 });
  expect(pilot.stateOf('wing')).toBe('not-needed');
});

test('what is not fitted is not asked for, and what is not known is', () => {
  const pilot = new Pilot(LIT);
  expect(pilot.stateOf('chute')).toBe('open');
  pilot.now = facts({ options: 'hook' });
  expect(pilot.stateOf('chute')).toBe('not-needed');
  // The name of one option inside that of another is not that option.
  pilot.now = facts({ options: 'chute-large' });
  expect(pilot.stateOf('chute')).toBe('not-needed');
  pilot.now = facts({ options: null, windKt: null, crossesRunway: null });
  expect(['chute', 'wing', 'look'].map((id) => pilot.stateOf(id))).toEqual([
    'open',
    'open',
    'open',
  ]);
});

test('a tick that is taken back leaves what was passed decided, and nothing due', () => {
  const pilot = new Pilot(LIT);
  pilot.tick('done', 'pins');
  pilot.undo(pilot.tick('done', 'brief'));
  expect(pilot.stateOf('lamps')).toBe('not-needed');
  expect(pilot.at()).toBe('brief');
});
