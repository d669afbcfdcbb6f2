import { expect, test } from 'vitest';
import { foldSortie, sortiesOf } from '../../../../src/core/sortie/fold';
import { openPage } from '../page';

const page = await openPage();
const { add, begin, beginAt, day, happened, hashOf, sortie, undoChange, undoable } = page;
await page.load('XCAI', 'XLIN', 'tussock', 'tussock-usual', 'sleet');
const { listedAircraft: aircraft, listedFields: fields } = await import(
  '../../../../src/board/documents/documents'
);
const { chooseAircraft, chooseField, closeEnd, fitOption, holdShort, useEnd } = await import(
  '../../../../src/board/record/choices'
);
const { flyLesson } = await import('../../../../src/board/documents/lesson');
const { typing } = await import('../../../../src/board/places');

const field = (code: string) => {
  const found = fields.value.find((one) => one.code === code);
  if (found === undefined) throw new Error(`there is no ${code}`);
  return found;
};
const plane = (code: string) => {
  const found = aircraft.value.find((one) => one.code === code);
  if (found === undefined) throw new Error(`there is no ${code}`);
  return found;
};

test('another field lets go of the end in use and of the way there, and undo brings all back', () => {
  beginAt('XCAI', 'tussock');
  const way = { stand: 's2', taxiVia: 'p', taxiClosed: ['p-q'], rollsFromM: 300 } as const;
  add({ kind: 'set', inputs: { ...way, chosen: { end: '27', purpose: 'take-off' } } });
  const before = day.inputs();
  chooseField(field('XLIN'));
  expect(day.inputs()).toEqual({
    ...before,
    field: hashOf('XLIN'),
    chosen: null,
    stand: null,
    taxiClosed: [],
    taxiEntry: null,
    taxiVia: null,
    rollsFromM: 0,
  });
  undoChange();
  expect(day.inputs()).toEqual(before);
});

test('the first field is no change to take back, and the same one again is nothing', () => {
  begin();
  chooseField(field('XCAI'));
  expect(undoable.value).toBeNull();
  const count = happened().length;
  chooseField(field('XCAI'));
  expect(happened()).toHaveLength(count);
});

test('another aircraft has its own load and steps, and undo brings the steps back as they were', () => {
  const load = { fuelKg: 60, stations: {} };
  beginAt('XCAI', 'tussock', { kind: 'set', inputs: { load } });
  const procedure = hashOf('tussock-usual');
  const tick = { kind: 'done', run: 'run-one', pass: 1, step: 'lock-off', saw: {} } as const;
  add({ kind: 'open', run: 'run-one', procedure, list: null }, tick);
  chooseAircraft(plane('sleet'));
  expect(sortie.value.run).toBeNull();
  expect(day.inputs()).toMatchObject({ aircraft: hashOf('sleet'), load: null, procedure: null });
  undoChange();
  expect(sortie.value.run).toMatchObject({ id: 'run-one', procedure });
  expect(day.inputs()).toMatchObject({ aircraft: hashOf('tussock'), load });
});

test('what an aircraft did stays with it: another one begins the next sortie, and undo goes back', () => {
  beginAt('XCAI', 'tussock', { kind: 'set', inputs: { bingoKg: 30, callsign: 'Gannet 1' } });
  const procedure = hashOf('tussock-usual');
  add(
    { kind: 'open', run: 'run-one', procedure, list: null },
    { kind: 'stamp', what: 'brakes released' },
    { kind: 'stamp', what: 'stopping' },
    { kind: 'open', run: 'list-one', procedure, list: 'rejected-takeoff' },
  );
  const { id } = sortie.value;
  chooseAircraft(plane('sleet'));
  expect(sortie.value).toMatchObject({ run: null, lists: [], stamps: [] });
  expect(day.inputs()).toMatchObject({
    field: hashOf('XCAI'),
    aircraft: hashOf('sleet'),
    bingoKg: null,
    brakesUsedMs: null,
    callsign: 'Gannet 1',
  });
  const before = sortiesOf(page.record.entries).get(id ?? '') ?? [];
  expect(foldSortie(before)).toMatchObject({
    inputs: { aircraft: hashOf('tussock'), bingoKg: 30 },
    stamps: [{ what: 'brakes released' }, { what: 'stopping' }],
    endedAt: expect.anything(),
  });
  undoChange();
  expect(sortie.value).toMatchObject({ id, lists: [{ id: 'list-one' }], endedAt: null });
  expect(day.inputs().aircraft).toBe(hashOf('tussock'));
});

test('an aircraft that has only taxied leaves its sortie behind too, and one that was placed does not', () => {
  const procedure = hashOf('tussock-usual');
  const opened = { kind: 'open', run: 'run-one', procedure, list: null } as const;
  beginAt('XCAI', 'tussock', opened, { kind: 'taxied', point: 's2', placed: true });
  const { id } = sortie.value;
  chooseAircraft(plane('sleet'));
  expect(sortie.value.id).toBe(id);
  beginAt('XCAI', 'tussock', opened, { kind: 'taxied', point: 's2', placed: false });
  const taxied = sortie.value.id;
  chooseAircraft(plane('sleet'));
  expect(sortie.value.id).not.toBe(taxied);
});

test('a lesson at another field leaves what was flown at the field it was flown from', () => {
  beginAt('XCAI', 'tussock');
  const procedure = hashOf('tussock-usual');
  add(
    { kind: 'open', run: 'run-one', procedure, list: null },
    { kind: 'stamp', what: 'brakes released' },
    { kind: 'stamp', what: 'stopping' },
  );
  const { id } = sortie.value;
  flyLesson([hashOf('XLIN'), hashOf('sleet')]);
  expect(day.inputs()).toMatchObject({ field: hashOf('XLIN'), aircraft: hashOf('sleet') });
  const before = foldSortie(sortiesOf(page.record.entries).get(id ?? '') ?? []);
  expect(before.endedAt).not.toBeNull();
  expect(before.inputs.field).toBe(hashOf('XCAI'));
});

test('an end is used together with the wind being typed', () => {
  beginAt('XCAI', 'tussock');
  page.draft.value = '27012';
  typing.value = true;
  useEnd('27');
  expect(sortie.value.winds.map(({ text }) => text)).toEqual(['27012']);
  expect([page.draft.value, typing.value, day.wind().using]).toEqual(['', false, '27']);
});

test('only a change of the end is offered to be taken back, and an intersection goes with it', () => {
  beginAt('XCAI', 'tussock', { kind: 'wind', text: '27012KT', north: 'true' });
  useEnd('27');
  expect(undoable.value).toBeNull();
  const taxiEntry = {
    end: '27',
    hold: 'A1',
    on: 'rA',
    backtrack: false,
    intersection: true,
  } as const;
  add({ kind: 'set', inputs: { taxiEntry, rollsFromM: 600 } });
  useEnd('09');
  expect(day.wind().using).toBe('09');
  expect(day.inputs()).toMatchObject({ taxiEntry: null, rollsFromM: 0 });
  undoChange();
  expect(day.wind().using).toBe('27');
  expect(day.inputs()).toMatchObject({ taxiEntry, rollsFromM: 600 });
});

test('two changes of one list, one close upon the other, both count', () => {
  beginAt('XCAI', 'tussock');
  closeEnd('09', true);
  closeEnd('27', true);
  closeEnd('09', true);
  holdShort('09', 400);
  holdShort('27', 500);
  fitOption('camera', true);
  fitOption('tank', false);
  expect(day.inputs()).toMatchObject({
    closedToday: ['27', '09'],
    holdShortM: { '09': 400, '27': 500 },
    options: { camera: true, tank: false },
  });
  closeEnd('27', false);
  holdShort('09', null);
  expect(day.inputs()).toMatchObject({ closedToday: ['09'], holdShortM: { '27': 500 } });
});

test('what the field is like is not taken along to another, and undo brings it back', () => {
  beginAt('XCAI', 'tussock');
  const like = { surface: 'wet', ownQnhHpa: 1002, ownTemperatureC: 31 } as const;
  add({ kind: 'set', inputs: like });
  chooseField(field('XLIN'));
  expect(day.inputs()).toMatchObject({ surface: 'dry', ownQnhHpa: null, ownTemperatureC: null });
  undoChange();
  expect(day.inputs()).toMatchObject(like);
});
