/** On the demo's usual sortie of the Sleet, as its document has the steps; on the ground, by day. */

import { expect, test } from 'vitest';
import type { Event, Phase, Procedure, StepId } from '../../../../src/core';
import { openPage, pass } from '../page';

const page = await openPage();
const { add, beginAt, day, happened, hashOf, load, sortie, undoChange, undoable } = page;
await load('XLIN', 'sleet', 'sleet-usual');
const stepping = await import('../../../../src/board/steps/stepping');

const { setClock } = await import('../../../../src/board/record/choices');
const { endSortie } = await import('../../../../src/board/record/nextSortie');
const { procedure } = await import('../../../../src/board/documents/inUse');

const { offered } = stepping;
const begin = () => {
  beginAt('XLIN', 'sleet');
  return procedure.value as Procedure;
};
const idsOf = (of: Procedure, phase: string) =>
  of.phases.find((part) => part.phase === phase)?.steps.map(({ id }) => id) ?? [];
const rows = () => day.steps()?.walk.phases.flatMap(({ rows: all }) => all) ?? [];
const row = (id: StepId) => {
  const found = rows().find(({ step }) => step.id === id);
  if (found === undefined) throw new Error(`there is no step ${id}`);
  return found;
};
const due = () => {
  const main = offered.value?.main;
  return main?.what === 'tick' ? main.row.step.id : (main?.what ?? null);
};
const states = (...ids: readonly StepId[]) => ids.map((id) => row(id).state.kind);

/** Ticks what is due, so many times. */
function tickNext(times = 1): void {
  for (let time = 0; time < times; time++) {
    const main = offered.value?.main;
    if (main?.what !== 'tick') throw new Error('no step is due');
    pass(1000);
    stepping.tick(main.row, 'done');
  }
}

/** A sortie in which every step of some phases is done, but for one. */
function done(phases: readonly Phase[], but = ''): void {
  const of = begin();
  const steps = phases.flatMap((phase) => idsOf(of, phase)).filter((id) => id !== but);
  add(
    { kind: 'open', run: 'run-one', procedure: hashOf('sleet-usual'), list: null },
    ...steps.map((step): Event => ({ kind: 'done', run: 'run-one', pass: 1, step, saw: {} })),
  );
  pass(1000);
}

/** No wind is known here: before the runway that is gone on with first. */
function goOutside(): void {
  const main = offered.value?.main;
  if (main?.what !== 'go-outside') throw new Error('nothing is outside limits');
  stepping.doIt(main);
  pass(1000);
}

/** Everything is done up to brake release. */
const toTheRunway = () => done(['ramp', 'taxi', 'line-up']);

test('the first tick opens the run, and the step after it is due', () => {
  const [first, second] = idsOf(begin(), 'ramp');
  expect([due(), sortie.value.run]).toEqual([first, null]);
  tickNext();
  expect(due()).toBe(second);
  expect(sortie.value.run?.procedure).toBe(hashOf('sleet-usual'));
  expect(happened().map(({ kind }) => kind)).toEqual(['set', 'set', 'open', 'done']);
});

test('Back takes back the last tick alone, again and again until nothing is done', () => {
  const [first, second, third] = idsOf(begin(), 'ramp');
  tickNext(2);
  expect(due()).toBe(third);
  stepping.goBack();
  expect(due()).toBe(second);
  stepping.goBack();
  expect(due()).toBe(first);
  expect(stepping.canGoBack()).toBe(false);
  const count = happened().length;
  stepping.goBack();
  expect(happened()).toHaveLength(count);
});

test('what is held back waits, and comes again before the runway, which it bars', () => {
  done(['ramp', 'taxi'], 'oxygen');
  // The two calls that come after the check, and the check.
  for (const _ of ['traffic', 'tower', 'check']) stepping.goBack();
  expect(due()).toBe('oxygen');
  stepping.tick(row('oxygen'), 'held');
  expect(due()).toBe('oxygen');
  const main = offered.value?.main;
  expect(main?.what === 'tick' && main.barrier).toMatchObject({ id: 'before-runway' });
  expect(offered.value?.putOff).toBeNull();
  tickNext();
  goOutside();
  expect(due()).toBe('before-runway');
});

test('what cannot be done says why, and is not asked for again', () => {
  const [first, second] = idsOf(begin(), 'ramp');
  stepping.tick(row(first ?? ''), 'cannot', 'Pin bent');
  expect(due()).toBe(second);
  expect(happened().at(-1)).toMatchObject({ kind: 'cannot', step: first, why: 'Pin bent' });
});

test('going on from a step holds back all before it, and one tap brings it all back', () => {
  const [first, second, third, fourth] = idsOf(begin(), 'ramp');
  tickNext();
  stepping.resumeFrom(row(fourth ?? ''));
  expect(due()).toBe(fourth);
  expect(states(first ?? '', second ?? '', third ?? '')).toEqual(['done', 'held', 'held']);
  expect(undoable.value?.what).toBe('jump');
  undoChange();
  expect(due()).toBe(second);
  expect(states(first ?? '', second ?? '', third ?? '')).toEqual(['done', 'open', 'open']);
});

test('ticked on, a jump is no longer offered to be taken back', () => {
  const [, , , fourth] = idsOf(begin(), 'ramp');
  stepping.resumeFrom(row(fourth ?? ''));
  tickNext();
  expect(undoable.value).toBeNull();
});

test('releasing the brakes ticks what is tied to it, and Back takes both back together', () => {
  toTheRunway();
  goOutside();
  pass(1000);
  if (offered.value !== null) stepping.doIt(offered.value.main);
  expect(sortie.value.stamps.map(({ what }) => what)).toEqual(['brakes released']);
  expect(states('brakes-off')).toEqual(['done']);
  expect(sortie.value.seals).toHaveLength(1);
  stepping.goBack();
  expect([sortie.value.stamps, sortie.value.seals]).toEqual([[], []]);
  expect(states('brakes-off')).toEqual(['open']);
});

test('a stop on the roll opens its list, whose end leads to the stand, and another try to the ramp', () => {
  toTheRunway();
  goOutside();
  if (offered.value !== null) stepping.doIt(offered.value.main);
  pass(1000);
  stepping.stopRoll();
  expect(sortie.value.stamps.at(-1)?.what).toBe('stopping');
  expect(sortie.value.list?.list).toBe('rejected-takeoff');
  const then = procedure.value?.lists.find(({ id }) => id === 'rejected-takeoff')?.then;
  if (then === undefined) throw new Error('there is no such list');
  pass(1000);
  stepping.closeList(then);
  expect([sortie.value.list, due()]).toEqual([null, 'seat-pins-in']);
  // Nobody is asked for a flight that wasn't flown.
  expect(day.steps()?.walk.heldBack).toEqual([]);
  expect(states('seat-pins-out', 'gear-up', 'fuel-home')).toEqual([
    'done',
    'not-needed',
    'not-needed',
  ]);
  tickNext();
  stepping.openList('another-try');
  const again = procedure.value?.lists.find(({ id }) => id === 'another-try')?.then;
  if (again === undefined) throw new Error('there is no such list');
  pass(1000);
  stepping.closeList(again);
  // With the pins in, the whole cockpit is swept again, and then everything flown.
  expect(due()).toBe('seat-pins-out');
  expect(states('heading', 'brakes-off', 'gear-up', 'seat-pins-in')).toEqual([
    'open',
    'open',
    'open',
    'open',
  ]);
});

test('Back after a stop takes the list and the stop back together', () => {
  toTheRunway();
  pass(1000);
  stepping.stamp('brakes released');
  pass(1000);
  stepping.stopRoll();
  stepping.goBack();
  expect(sortie.value.list).toBeNull();
  expect(sortie.value.stamps.map(({ what }) => what)).toEqual(['brakes released']);
});

test('a list opened over a list leads back to it, and one already open beneath is gone back to', () => {
  begin();
  tickNext();
  stepping.openList('gear-unsafe');
  stepping.openList('limit-light');
  expect(sortie.value.lists.map(({ list }) => list)).toEqual(['gear-unsafe', 'limit-light']);
  stepping.openList('gear-unsafe');
  expect(sortie.value.lists.map(({ list }) => list)).toEqual(['gear-unsafe']);
  stepping.closeList('return');
  expect(sortie.value.list).toBeNull();
  // What was due before is not simply due again: the steps are taken up first.
  expect(due()).toBe('resume');
  if (offered.value !== null) stepping.doIt(offered.value.main);
  expect(due()).toBe('brakes-parked');
});

test('a list the procedure does not have is not opened', () => {
  begin();
  const count = happened().length;
  stepping.openList('no-such-list');
  expect(happened()).toHaveLength(count);
});

test('a touch-and-go lands and takes off at once, and flies climb and recovery again', () => {
  toTheRunway();
  stepping.stamp('brakes released');
  stepping.stamp('airborne');
  pass(1000);
  stepping.flyAgain('touch-and-go');
  expect(sortie.value.stamps.map(({ what, pass: of }) => [what, of])).toEqual([
    ['brakes released', 1],
    ['airborne', 1],
    ['landed', 1],
    ['airborne', 2],
  ]);
  expect(states('gear-up', 'gear-down', 'heading')).toEqual(['open', 'open', 'done']);
});

test('the brakes stay hot into the next sortie, until they are used again', () => {
  toTheRunway();
  stepping.stamp('brakes released');
  stepping.stopRoll();
  const stopped = sortie.value.stamps.at(-1)?.at.wallMs;
  endSortie();
  expect(sortie.value.stamps).toEqual([]);
  expect(day.inputs().brakesUsedMs).toBe(stopped);
  // Whatever the sortie's clock is set to.
  setClock(Date.UTC(1987, 3, 5, 18), 1);
  pass(60_000);
  endSortie();
  expect(day.inputs().brakesUsedMs).toBe(stopped);
});

test('the end seals, and begins the next sortie with the same field, its clock running on', () => {
  const at = Date.UTC(1987, 3, 5, 18, 50);
  begin();
  add({ kind: 'clock', sortieMs: at, rate: 1 });
  add({ kind: 'set', inputs: { callsign: 'Gannet 1', chosen: { end: '20', purpose: 'landing' } } });
  tickNext();
  const before = sortie.value.id;
  pass(59_000);
  add({ kind: 'set', inputs: { surface: 'wet', ownQnhHpa: 1002, ownTemperatureC: 31 } });
  endSortie();
  expect(sortie.value.id).not.toBe(before);
  expect(day.inputs()).toMatchObject({
    field: hashOf('XLIN'),
    callsign: 'Gannet 1',
    chosen: null,
    supersonic: false,
    // What the field was like is not taken along.
    surface: 'dry',
    ownQnhHpa: null,
    ownTemperatureC: null,
  });
  expect(sortie.value.clock).toMatchObject({ sortieMs: at + 60_000, rate: 1 });
  expect(sortie.value.run).toBeNull();
  undoChange();
  expect(sortie.value.id).toBe(before);
  expect(sortie.value).toMatchObject({ endedAt: null, seals: [] });
  expect(day.inputs().chosen).toEqual({ end: '20', purpose: 'landing' });
});

test('a step the simulation has not got is not asked for in the next sortie, until it is asked again', async () => {
  const { setSimulated } = await import('../../../../src/board/steps/memory');
  const [first = '', second = ''] = idsOf(begin(), 'ramp');
  stepping.tick(row(first), 'cannot', 'not simulated', true);
  pass(1000);
  expect([due(), ...states(first)]).toEqual([second, 'cannot']);
  endSortie();
  expect([due(), ...states(first)]).toEqual([second, 'not-needed']);
  expect(row(first).state).toMatchObject({ notSimulated: true });
  setSimulated(first);
  expect([due(), ...states(first)]).toEqual([first, 'open']);
});

test('taking it back forgets it too, and another reason is not remembered', () => {
  const [first = ''] = idsOf(begin(), 'ramp');
  stepping.tick(row(first), 'cannot', 'not simulated', true);
  stepping.goBack();
  expect([due(), ...day.inputs().notSimulated]).toEqual([first]);
  pass(1000);
  stepping.tick(row(first), 'cannot', 'does not work');
  pass(1000);
  endSortie();
  expect(due()).toBe(first);
});

test('outside limits, going on is told by the record and releases the brakes only then', () => {
  toTheRunway();
  add(
    { kind: 'set', inputs: { chosen: { end: '02', purpose: 'take-off' } } },
    { kind: 'wind', text: '11030KT', north: 'true' },
  );
  expect(due()).toBe('go-outside');
  goOutside();
  expect(due()).toBe('stamp');
  const { accepted } = sortie.value;
  expect(accepted.map(({ code }) => code)).toContain('crosswind');
  expect(accepted).toContainEqual(
    expect.objectContaining({ code: 'crosswind', limit: 24, end: '02', purpose: 'take-off' }),
  );
});
