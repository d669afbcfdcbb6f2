/** On the demo's Cairn Ice: stands s1 and s2, the apron's junctions p and q, holding point A1, runway 09/27. */

import { expect, test } from 'vitest';
import { holdWords, passingWords } from '../../../../src/parts/pace.en';
import { sayReadback } from '../../../../src/parts/radio/readback';
import { OPENED_MS, openPage, pass } from '../page';

const page = await openPage();
const { add, beginAt, day, load, loadParts, sortie, undoable, undoChange } = page;
await load('XCAI', 'XMAR', 'tussock', 'tussock-usual');
await loadParts('taxi');
const taxi = await import('../../../../src/board/flight/taxi');
const { hold } = await import('../../../../src/board/documents/documents');

const TO_27 = { kind: 'set', inputs: { chosen: { end: '27', purpose: 'take-off' } } } as const;
const passed = () => sortie.value.taxied.filter(({ placed }) => !placed).map(({ point }) => point);
const way = () => day.route()?.marks.map(({ node }) => node);

test('where several stands are, only the pilot knows from which, and says it', () => {
  beginAt('XCAI', 'tussock', TO_27);
  expect([day.from(), day.route()]).toEqual([null, null]);
  expect(taxi.stands.value.map(({ id }) => id)).toEqual(['s1', 's2', 's3']);
  taxi.placeAt('s2');
  expect(day.from()).toBe('s2');
  expect(day.inputs().stand).toBe('s2');
  expect(day.route()).not.toBeNull();
});

test('another stand drops the way chosen from the one before', () => {
  beginAt('XCAI', 'tussock', TO_27, { kind: 'set', inputs: { stand: 's1' } });
  taxi.takeVia('a-way');
  taxi.placeAt('s3');
  expect(day.inputs()).toMatchObject({ stand: 's3', taxiVia: null });
});

test('placed at a point on the way, the route begins there; the stand to return to stays', () => {
  beginAt('XCAI', 'tussock', TO_27, { kind: 'set', inputs: { stand: 's1' } });
  taxi.placeAt('p');
  expect([day.placed(), day.from(), day.inputs().stand]).toEqual(['p', 'p', 's1']);
});

test('after a stop on the runway it is on no stand until the pilot says so', () => {
  beginAt('XCAI', 'tussock', TO_27, { kind: 'set', inputs: { stand: 's1' } });
  add({ kind: 'stamp', what: 'brakes released' }, { kind: 'stamp', what: 'stopping' });
  expect(day.from()).toBeNull();
  taxi.placeAt('s1');
  expect(day.from()).toBe('s1');
});

test('points are passed in the order of the way, and only the last is taken back', () => {
  beginAt('XCAI', 'tussock', TO_27, { kind: 'set', inputs: { stand: 's1' } });
  expect(way()?.filter((node) => ['s1', 'A1'].includes(node))).toEqual(['s1', 'A1']);
  const [first, second] = way() ?? [];
  taxi.passNext();
  pass(30_000);
  taxi.passNext();
  expect(passed()).toEqual([first, second]);
  expect(sortie.value.taxied.map(({ at }) => at.wallMs)).toEqual([OPENED_MS, OPENED_MS + 30_000]);
  expect(day.progress()?.last?.node).toBe(second);
  taxi.takeBackPassing();
  expect(passed()).toEqual([first]);
  expect(day.progress()?.next?.node).toBe(second);
});

test('at the end of the way there is nothing left to pass, and nothing to take back before its beginning', () => {
  beginAt('XCAI', 'tussock', TO_27, { kind: 'set', inputs: { stand: 's1' } });
  taxi.takeBackPassing();
  for (const _ of way() ?? []) taxi.passNext();
  expect(day.progress()).toMatchObject({ next: null, leftM: 0 });
  const count = passed().length;
  taxi.passNext();
  expect(passed()).toHaveLength(count);
});

test('a stretch closed twice is opened once, and others stay closed', () => {
  beginAt('XCAI', 'tussock');
  taxi.closeStretch('p-q', true);
  taxi.closeStretch('A1-p', true);
  taxi.closeStretch('p-q', true);
  expect([...day.inputs().taxiClosed].sort()).toEqual(['A1-p', 'p-q']);
  taxi.closeStretch('p-q', false);
  expect(day.inputs().taxiClosed).toEqual(['A1-p']);
});

test('an own wording of a call is kept beside others, and its usual one comes back', () => {
  beginAt('XCAI', 'tussock');
  taxi.wordCall('taxi', 'Camp, rolling');
  taxi.wordCall('line-up', 'Lining up');
  taxi.wordCall('taxi', null);
  expect(day.inputs().ownCalls).toEqual({ 'line-up': 'Lining up' });
});

const LANDED = [
  { kind: 'set', inputs: { chosen: { end: '27', purpose: 'landing' }, purpose: 'landing' } },
  { kind: 'stamp', what: 'airborne' },
  { kind: 'stamp', what: 'landed' },
] as const;

test('after landing, where the aircraft is answers that question, and the stand to go to is another', () => {
  beginAt('XCAI', 'tussock', ...LANDED);
  taxi.placeAt('q');
  expect(day.placed()).toBe('q');
  expect(day.fault()).toEqual({ code: 'no-destination' });
  taxi.taxiTo('s2');
  expect([day.placed(), day.stand()]).toEqual(['q', 's2']);
  expect([day.route()?.nodes[0], day.route()?.nodes.at(-1)]).toEqual(['q', 's2']);
});

test('another destination on the way in leaves the points passed where they are', () => {
  beginAt('XCAI', 'tussock', { kind: 'set', inputs: { stand: 's1' } }, ...LANDED);
  taxi.placeAt('p');
  const first = day.progress()?.next?.node;
  taxi.passNext();
  expect(passed()).toEqual([first]);
  taxi.taxiTo('s3');
  expect([day.placed(), ...passed()]).toEqual(['p', first]);
});

const FROM_STAND_4 = [
  { kind: 'set', inputs: { chosen: { end: '23R', purpose: 'take-off' }, stand: 's4' } },
] as const;

test('the key at E1 names the runway beyond it, and what one waits for; the end of the way is reached, not passed', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  const keys: string[] = [];
  for (let next = day.passing(); next !== null; next = day.passing()) {
    keys.push(passingWords(next));
    if (next.kind === 'cross') {
      expect(holdWords(next.crossing, true)).toBe('05R/23L: hold until told to cross');
    }
    taxi.passNext();
  }
  expect(keys[0]).toBe('Leaving Stand 4');
  expect(keys.filter((key) => key.includes('E1'))).toEqual(['Crossing 05R/23L at E1']);
  expect(keys.slice(-1)).toEqual(['At B2']);
});

test('steps know the runway to cross and the stations by their names, and the crossing stays once it is behind', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  const before = day.facts();
  expect(before).toMatchObject({ crossesRunway: true, crossing: '05R/23L', crossingAt: 'E1' });
  expect(before).toMatchObject({ ground: 'Marram ground', tower: 'Marram tower', field: 'Marram' });
  while (day.progress()?.next) taxi.passNext();
  expect(day.nextCrossing()).toBeNull();
  expect(day.facts()).toMatchObject({ crossing: '05R/23L', crossingAt: 'E1' });
});

test('on the air one is called by the names on the screen', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  const taxiCall = day.calls().find(({ kind }) => kind === 'taxi');
  expect([taxiCall?.station?.name, taxiCall?.facts.field]).toEqual(['Marram ground', 'Marram']);
});

const told = () => day.route()?.legs.map(({ name }) => name);

test('the route as told is the one everything counts by: crossings, length, time, points, calls and steps', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  const [ownM, ownS] = [day.route()?.lengthM ?? 0, day.pace()?.expectedS ?? 0];
  taxi.takeTold('A D B');
  expect(told()).toEqual(['apron', 'M', 'A', 'D', 'B']);
  expect(day.nextCrossing()).toMatchObject({ runway: '05R/23L', hold: 'D1' });
  expect(day.facts()).toMatchObject({ crossing: '05R/23L', crossingAt: 'D1' });
  // D's way is 1 080 m longer than E's: 540 m more on A and 780 m on B, less 240 m on A to E.
  expect(Math.abs((day.route()?.lengthM ?? 0) - ownM - 1080)).toBeLessThan(5);
  expect(day.pace()?.expectedS).toBeGreaterThan(ownS);
  expect(day.callFacts()?.via).toEqual(['M', 'A', 'D', 'B']);
  const back = day.calls().find(({ kind }) => kind === 'taxi')?.readback ?? [];
  expect(back.map(sayReadback)).toContain('via Alfa, Delta, Bravo');
  const keys: string[] = [];
  for (let next = day.passing(); next !== null; next = day.passing()) {
    keys.push(passingWords(next));
    taxi.passNext();
  }
  expect(keys).toContain('Crossing 05R/23L at D1');
});

test('the call that is due goes with the aircraft: off the stand, to the hold, on to the runway', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  const due = () => [day.dueCall()?.kind, day.dueCallAt()];
  expect(due()).toEqual(['taxi', null]);
  taxi.passNext();
  expect(passed()).toHaveLength(1);
  expect(due()).toEqual(['crossing', 'E1']);
  while (day.progress()?.last?.node !== 'E1') taxi.passNext();
  // On the runway nobody asks to cross it.
  expect(due()).toEqual(['line-up', 'B2']);
  taxi.takeBackPassing();
  expect(due()).toEqual(['crossing', 'E1']);
});

test('points to hold at that nobody surveyed are counted on the route, and on no other', async () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  expect(day.holdsAssumed()).toBe(0);
  const field = page.documents.value.field;
  if (field === null) return expect.unreachable('no field');
  const assume = (...ids: readonly string[]) => ({
    ...field,
    taxi: {
      ...field.taxi,
      nodes: field.taxi.nodes.map((node) =>
        ids.includes(node.id) ? { ...node, assumed: true } : node,
      ),
    },
  });
  // The route crosses 05R/23L at E1 and ends at B2; D1 guards another crossing.
  const hash = page.hashOf('XMAR');
  for (const [ids, count] of [
    [['E1', 'B2'], 2],
    [['D1'], 0],
    [['B2'], 1],
  ] as const) {
    hold(hash, assume(...ids));
    expect([ids, day.holdsAssumed()]).toEqual([ids, count]);
  }
  hold(hash, field);
});

test('another try begins with the call for taxi, and not with that after the stop', () => {
  const run = 'run-one';
  const procedure = page.hashOf('tussock-usual');
  beginAt('XMAR', 'tussock', ...FROM_STAND_4, { kind: 'open', run, procedure, list: null });
  add({ kind: 'stamp', what: 'brakes released' }, { kind: 'stamp', what: 'stopping' });
  expect(day.dueCall()?.kind).toBe('vacated');
  add({ kind: 'reopen', run, passes: { ramp: 2, taxi: 2, 'line-up': 2, roll: 2 } });
  taxi.placeAt('s4');
  expect(day.dueCall()?.kind).toBe('taxi');
});

test('a route as told can be taken back, and put away for the plan’s own', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  taxi.takeTold('A D B');
  expect(undoable.value?.what).toBe('route');
  undoChange();
  expect(told()).toEqual(['apron', 'M', 'A', 'E', 'B']);
  taxi.takeTold('A D B');
  taxi.takeTold(null);
  expect(told()).toEqual(['apron', 'M', 'A', 'E', 'B']);
  undoChange();
  expect(told()).toEqual(['apron', 'M', 'A', 'D', 'B']);
  taxi.takeVia(null);
  expect(day.inputs().taxiTold).toBeNull();
});

test('at a limit the call is for the crossing, and the line-up waits', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  taxi.takeTold('A E, hold short 23L');
  while (day.progress()?.next) taxi.passNext();
  expect(day.progress()?.last?.node).toBe('E1');
  expect(day.dueCall()).toMatchObject({ kind: 'crossing', facts: { crossing: { hold: 'E1' } } });
  expect(day.calls().map(({ kind }) => kind)).not.toContain('line-up');
  // Told to go on, it goes on from there.
  taxi.takeTold('A E B, cross 23L');
  expect(day.passing()).toMatchObject({ kind: 'pass', mark: { node: 'E2' } });
  expect(day.nextCrossing()).toMatchObject({ runway: '05R/23L', told: true });
});

test('what no longer fits is said, and the plan’s own route is taken', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  taxi.takeTold('A D B');
  add({ kind: 'set', inputs: { chosen: { end: '05L', purpose: 'take-off' } } });
  expect(day.asTold()?.problems).toEqual([]);
  add({ kind: 'set', inputs: { chosen: { end: '23L', purpose: 'take-off' } } });
  expect(day.asTold()?.problems).toMatchObject([{ code: 'ends-short', last: 'B', end: '23L' }]);
  expect(day.route()?.nodes.at(-1)).toBe('A2');
});

test('an intersection belongs to its own holding point: a route as told to another gives the whole run', () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  taxi.enterAt({ end: '23R', hold: 'H1', intersection: true }, 388);
  taxi.takeTold('A E B H');
  expect(day.inputs()).toMatchObject({ rollsFromM: 388, taxiTold: 'A E B H' });
  expect(day.out()?.entry).toMatchObject({ hold: 'H1' });
  taxi.takeTold('A E B');
  expect(day.inputs()).toMatchObject({ rollsFromM: 0, taxiEntry: null });
  taxi.enterAt({ end: '23R', hold: 'H1', intersection: true }, 388);
  expect(day.inputs().taxiTold).toBeNull();
});

test('a route as told is over with the roll and with the landing, and no other sortie has it', async () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  taxi.takeTold('A D B');
  add({ kind: 'stamp', what: 'off chocks' });
  expect(day.inputs().taxiTold).toBe('A D B');
  add({ kind: 'stamp', what: 'brakes released' });
  expect(day.inputs().taxiTold).toBeNull();
  taxi.takeTold('A D B');
  taxi.typeTold('A D');
  const { endSortie } = await import('../../../../src/board/record/nextSortie');
  endSortie();
  expect([day.inputs().taxiTold, taxi.toldDraft()]).toEqual([null, '']);
});

test('what is typed of a route is kept until it is used, and no longer than its field', async () => {
  beginAt('XMAR', 'tussock', ...FROM_STAND_4);
  taxi.typeTold('A E');
  expect(taxi.toldDraft()).toBe('A E');
  taxi.takeTold('A D B');
  expect(taxi.toldDraft()).toBe('A D B');
  const { chooseField } = await import('../../../../src/board/record/choices');
  const { all } = await import('../../../../src/board/documents/documents');
  const cairn = all.value.find(({ code }) => code === 'XCAI');
  if (cairn?.kind !== 'field') throw new Error('no such field');
  chooseField(cairn);
  expect([day.inputs().taxiTold, taxi.toldDraft()]).toEqual([null, '']);
});

test('nor does a destination move the aircraft where nobody stamped the landing', () => {
  beginAt('XCAI', 'tussock', {
    kind: 'set',
    inputs: { chosen: { end: '27', purpose: 'landing' }, purpose: 'landing' },
  });
  taxi.placeAt('q');
  taxi.taxiTo('s2');
  expect([day.placed(), day.stand(), day.route()?.nodes[0]]).toEqual(['q', 's2', 'q']);
});
