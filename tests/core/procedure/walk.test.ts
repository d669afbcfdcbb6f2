import { expect, test } from 'vitest';
import { sawOf } from '../../../src/core/procedure/stepState';
import { walk } from '../../../src/core/procedure/walk';
import { walkList } from '../../../src/core/procedure/walkList';
import type { SortieEvent } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { LIST, OPEN_LIST } from '../sortie/recorder';
import { BY_DAY, facts, nameOf, Pilot, procedureOf, rowOf, SMALL, step } from './invented';

const upcoming = (pilot: Pilot) =>
  pilot.walk().next.map((one) => (one.kind === 'step' ? one.row.step.id : one.moment));

test('before anything is done the first step is due, and the rest follows in order', () => {
  const nothingYet = walk(SMALL, null, [], BY_DAY);
  expect(nameOf(nothingYet.position)).toBe('pins');
  expect(nothingYet.phase).toBe('ramp');
  expect(nothingYet.lastHandled).toBeNull();
});

test('done as they come, steps and moments are due in the order they are flown', () => {
  const order = new Pilot().goToTheEnd();
  expect(order).toEqual([
    'pins',
    'brief',
    'flaps',
    'course',
    'barrier',
    'heading',
    'power',
    'brakes released',
    'airborne',
    'gear',
    'reheat',
    'landing-end',
    'gear-down',
    'landed',
    'pins-in',
  ]);
});

test('what follows the due step is what comes when it is done', () => {
  const pilot = new Pilot();
  const all = new Pilot().goToTheEnd();
  for (const _ of all) {
    const [follows] = upcoming(pilot);
    pilot.goOn();
    expect(pilot.at()).toBe(follows ?? 'end');
  }
  expect(pilot.at()).toBe('end');
});

test('a step that is not needed names the facts that decide it, and counts for nothing', () => {
  const { phases } = new Pilot().walk();
  const ramp = phases.find(({ phase }) => phase === 'ramp');
  expect(rowOf(new Pilot().walk(), 'lamps').state).toEqual({
    kind: 'not-needed',
    facts: ['night'],
    passed: false,
    decided: null,
  });
  expect(ramp).toMatchObject({ total: 2, handled: 0 });
});

test('dusk after the ramp sends nobody back for the lamps', () => {
  const pilot = new Pilot();
  pilot.goTo('barrier');
  pilot.goOn();
  pilot.now = facts({ night: true });
  expect(rowOf(pilot.walk(), 'lamps').state).toMatchObject({ kind: 'not-needed', passed: true });
});

test('after sunset the lamps are needed', () => {
  const pilot = new Pilot();
  pilot.now = facts({ night: true });
  pilot.tick('done', 'pins');
  expect(pilot.at()).toBe('lamps');
});

test('a step that was done and is no longer needed stays done', () => {
  const pilot = new Pilot();
  pilot.now = facts({ night: true });
  pilot.tick('done', 'lamps');
  pilot.now = facts({ night: false });
  expect(pilot.stateOf('lamps')).toBe('done');
});

test('the step handled last is named', () => {
  const pilot = new Pilot();
  pilot.tick('held', 'pins');
  expect(pilot.walk().lastHandled?.step.id).toBe('pins');
  pilot.stamp('off chocks');
  expect(pilot.walk().lastHandled).toBeNull();
});

test('a step held back lets the next come, and is kept in sight', () => {
  const pilot = new Pilot();
  pilot.tick('held', 'pins');
  expect(pilot.at()).toBe('brief');
  expect(pilot.walk().heldBack.map((row) => row.step.id)).toEqual(['pins']);
});

test('a barrier lets nothing held back through', () => {
  const pilot = new Pilot();
  pilot.tick('held', 'pins');
  pilot.tick('held', 'brief');
  pilot.tick('done', 'flaps');
  pilot.tick('done', 'course');
  const { position, phase } = pilot.walk();
  expect(position).toMatchObject({ kind: 'step', barrier: { id: 'barrier' } });
  expect(nameOf(position)).toBe('pins');
  expect(phase).toBe('ramp');
  expect(upcoming(pilot)[0]).toBe('barrier');
  pilot.tick('done', 'pins');
  expect(pilot.at()).toBe('brief');
  pilot.tick('done', 'brief');
  expect(pilot.walk().position).toMatchObject({ row: { step: { id: 'barrier' } }, barrier: null });
});

test('what cannot be done, with its reason, satisfies a barrier', () => {
  const pilot = new Pilot();
  pilot.tick('held', 'pins');
  pilot.goTo('pins');
  expect(pilot.walk().position).toMatchObject({ barrier: { id: 'barrier' } });
  pilot.tick('cannot', 'pins');
  expect(pilot.at()).toBe('barrier');
  pilot.goOn();
  expect(pilot.at()).toBe('heading');
});

test('a step held back after the barrier stands before the brakes are released', () => {
  const pilot = new Pilot();
  pilot.goTo('heading');
  pilot.tick('held', 'heading');
  pilot.tick('done', 'power');
  const { position, phase } = pilot.walk();
  expect(position).toMatchObject({ kind: 'step', barrier: 'brakes released' });
  expect(nameOf(position)).toBe('heading');
  expect(phase).toBe('line-up');
  pilot.tick('done', 'heading');
  expect(pilot.at()).toBe('brakes released');
});

test('a step of the climb that was put off is left undone once the approach has begun', () => {
  const pilot = new Pilot();
  pilot.goTo('gear');
  pilot.tick('held', 'gear');
  pilot.goTo('landing-end');
  expect(pilot.walk().heldBack.map((row) => row.step.id)).toEqual(['gear']);
  pilot.goOn();
  expect(pilot.walk().heldBack).toEqual([]);
  expect(pilot.stateOf('gear')).toBe('held');
  // Nobody raises the gear after landing, and the phase isn't complete.
  const rest = pilot.goToTheEnd();
  expect(rest).not.toContain('gear');
  const climb = pilot.walk().phases.find(({ phase }) => phase === 'climb');
  expect((climb?.total ?? 0) - (climb?.handled ?? 0)).toBe(1);
});

test('one of the approach that was put off is left undone once it has landed', () => {
  const pilot = new Pilot();
  pilot.goTo('gear-down');
  pilot.tick('held', 'gear-down');
  pilot.goTo('landed');
  expect(pilot.walk().heldBack).toHaveLength(1);
  pilot.goOn();
  expect(pilot.goToTheEnd()).not.toContain('gear-down');
});

test('one put off after landing stands before the end', () => {
  const pilot = new Pilot();
  pilot.goTo('pins-in');
  pilot.tick('held', 'pins-in');
  expect(pilot.walk().position).toMatchObject({ kind: 'step', barrier: 'on chocks' });
  pilot.tick('done', 'pins-in');
  expect(pilot.at()).toBe('end');
});

test('the lever is ticked together with the brakes', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  const { position } = pilot.walk();
  expect(position).toMatchObject({ moment: 'brakes released', tied: [{ step: { id: 'lever' } }] });
  pilot.goOn();
  expect(pilot.stateOf('lever')).toBe('done');
  expect(pilot.at()).toBe('airborne');
});

test('left over when its moment is past, what was tied to it is asked for and not lost', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  pilot.stamp('brakes released');
  expect(pilot.at()).toBe('airborne');
  pilot.stamp('airborne');
  expect(pilot.at()).toBe('lever');
});

test('who ticks in the climb without having stamped anything is not asked for the roll', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  pilot.tick('done', 'lever');
  pilot.tick('done', 'gear');
  expect(pilot.at()).toBe('reheat');
});

const AGAIN = { kind: 'again', moved: ['runway'] };

test('another runway makes the brief due again, until the line-up is left', () => {
  const pilot = new Pilot();
  pilot.goTo('heading');
  pilot.now = facts({ runway: '01', runwayMagnetic: 10 });
  expect(rowOf(pilot.walk(), 'brief').state).toMatchObject(AGAIN);
  expect(pilot.at()).toBe('brief');
  expect(pilot.walk().phases[0]).toMatchObject({ phase: 'ramp', total: 2, handled: 1 });
});

test('the runway changed back, the brief is done again without a tick', () => {
  const pilot = new Pilot();
  pilot.goTo('heading');
  pilot.now = facts({ runway: '01', runwayMagnetic: 10 });
  expect(pilot.at()).toBe('brief');
  pilot.now = BY_DAY;
  expect(pilot.stateOf('brief')).toBe('done');
  expect(pilot.at()).toBe('heading');
});

test('the brief given again for the new runway is done, until that changes', () => {
  const pilot = new Pilot();
  pilot.goTo('flaps');
  pilot.now = facts({ runway: '01', runwayMagnetic: 10 });
  pilot.tick('done', 'brief');
  expect(pilot.stateOf('brief')).toBe('done');
  pilot.now = BY_DAY;
  expect(pilot.stateOf('brief')).toBe('again');
});

test('rolling, the runway is no longer briefed for', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  pilot.goOn();
  pilot.now = facts({ runway: null, runwayMagnetic: null });
  expect(pilot.stateOf('brief')).toBe('done');
  expect(pilot.stateOf('heading')).toBe('done');
  expect(pilot.at()).toBe('airborne');
});

test('moments alone tell how far the sortie is', () => {
  const pilot = new Pilot();
  pilot.goTo('brakes released');
  pilot.now = facts({ runway: '01', runwayMagnetic: 10 });
  expect(pilot.at()).toBe('brief');
  const stops = pilot.stamp('brakes released');
  expect(pilot.at()).toBe('airborne');
  pilot.undo(stops);
  // Who stamps only that the aircraft is in the air has released the brakes as well.
  pilot.stamp('airborne');
  expect(upcoming(pilot)).not.toContain('brakes released');
  expect(pilot.at()).toBe('lever');
});

test('once landed, the runway of the landing is no longer looked at', () => {
  const pilot = new Pilot();
  pilot.goTo('landed');
  pilot.now = facts({ runway: '01' });
  expect(pilot.at()).toBe('landing-end');
  pilot.stamp('landed');
  expect(pilot.at()).toBe('pins-in');
});

test('a step without a word on how long it counts is asked again only within its own phase', () => {
  const procedure = procedureOf({
    ramp: [step('said', { response: '{runway}' })],
    taxi: [step('flaps')],
  });
  const pilot = new Pilot(procedure);
  pilot.tick('done', 'said');
  pilot.now = facts({ runway: '01' });
  expect(pilot.stateOf('said')).toBe('again');
  pilot.now = BY_DAY;
  pilot.tick('done', 'flaps');
  pilot.now = facts({ runway: '01' });
  expect(pilot.stateOf('said')).toBe('done');
});

test('a number that moved within its tolerance asks for nothing', () => {
  const pilot = new Pilot();
  pilot.goTo('barrier');
  pilot.now = facts({ runwayMagnetic: 281 });
  expect(pilot.stateOf('course')).toBe('done');
  pilot.now = facts({ runwayMagnetic: 281.1 });
  expect(pilot.stateOf('course')).toBe('again');
});

test('what cannot be done, or is held back, is not asked again for another runway', () => {
  const pilot = new Pilot();
  pilot.tick('cannot', 'brief');
  pilot.now = facts({ runway: '01' });
  expect(pilot.stateOf('brief')).toBe('cannot');
});

test('the facts a step saw are those of its condition and its text', () => {
  const asked = step('call', {
    response: 'runway {runway}',
    note: '{field} traffic, {nonsense}',
    when: { not: { fact: 'controlled' } },
  });
  expect(sawOf(asked, BY_DAY)).toEqual({ controlled: false, runway: '28', field: 'Invented' });
});

test('a stop leads back to the taxi: its steps are due again, those of the ramp stay done', () => {
  const pilot = new Pilot();
  pilot.goTo('airborne');
  const closing: SortieEvent = {
    kind: 'close',
    run: LIST,
    leadsTo: { phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] },
  };
  pilot.stamp('stopping');
  pilot.record(OPEN_LIST);
  const closed = pilot.record(closing);
  expect(pilot.at()).toBe('flaps');
  expect(pilot.stateOf('pins')).toBe('done');
  // On the way to the runway once more, the brief counts again.
  pilot.now = facts({ runway: '01', runwayMagnetic: 10 });
  expect(pilot.at()).toBe('brief');
  pilot.goTo('brakes released');
  expect(pilot.walk().position).toMatchObject({ tied: [{ pass: 2 }] });
  pilot.now = BY_DAY;
  pilot.undo(closed);
  // The roll is over, whatever the list still asks for.
  expect(pilot.at()).toBe('pins-in');
});

test('after a stop that leads to the stand, nothing of the flight is asked for', () => {
  const pilot = new Pilot();
  pilot.goTo('airborne');
  pilot.stamp('stopping');
  pilot.record(OPEN_LIST);
  pilot.record({ kind: 'close', run: LIST, leadsTo: { phase: 'after', reopen: [] } });
  expect(pilot.at()).toBe('pins-in');
  expect(pilot.walk().heldBack).toEqual([]);
  const flight = pilot
    .walk()
    .phases.filter(({ phase }) => phase === 'climb' || phase === 'recovery');
  const asked = flight
    .flatMap(({ rows }) => rows)
    .filter(({ state }) => state.kind !== 'not-needed');
  expect(flight.flatMap(({ rows }) => rows).length).toBeGreaterThan(0);
  expect(asked).toEqual([]);
});

/** The list for a stop, with these things done in it. */
function stopped(...events: readonly SortieEvent[]) {
  const pilot = new Pilot();
  pilot.record(OPEN_LIST);
  for (const event of events) pilot.record(event);
  const { list } = foldSortie(pilot.entries);
  const [abnormal] = SMALL.lists;
  if (list === null || abnormal === undefined) throw new Error('no list');
  return walkList(abnormal, list, BY_DAY, []);
}

const inList = (kind: 'done' | 'held' | 'cannot', id: string): SortieEvent => ({
  kind,
  run: LIST,
  pass: 1,
  step: id,
  saw: {},
});

test('a list for when it goes wrong is walked from its first step to its end', () => {
  expect(nameOf(stopped().position)).toBe('idle');
  expect(nameOf(stopped(inList('done', 'idle')).position)).toBe('brakes-full');
  const through = stopped(
    inList('done', 'idle'),
    inList('cannot', 'brakes-full'),
    inList('done', 'call'),
  );
  expect(through.position).toEqual({ kind: 'list-end' });
  expect(through.lastHandled?.step.id).toBe('call');
});

test('in a list, what is held back comes when the rest is done, and before its end', () => {
  const held = stopped(inList('held', 'idle'));
  expect(nameOf(held.position)).toBe('brakes-full');
  expect(held.heldBack.map((row) => row.step.id)).toEqual(['idle']);
  const rest = [inList('done', 'brakes-full'), inList('done', 'call')];
  expect(nameOf(stopped(inList('held', 'idle'), ...rest).position)).toBe('idle');
  expect(stopped(inList('held', 'idle'), ...rest, inList('done', 'idle')).position).toEqual({
    kind: 'list-end',
  });
});
