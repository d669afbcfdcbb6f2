import { expect, test, vi } from 'vitest';
import { foldSortie } from '../../../src/core/sortie/fold';
import { newId, SortieRecord } from '../../../src/record/record';
import { AT, openWindow, putRaw, useFreshDevice, wind, windsOf } from './device';
import { firstDocument } from './stores';

useFreshDevice();

test('what was entered is there again when the app is opened again', async () => {
  const { record } = await openWindow();
  const added = record.add('sortie-one', AT, wind('27012KT'), wind('28014KT'));
  await record.settled();
  expect(record.keeping).toBe('kept');
  const { record: again } = await openWindow();
  expect(again.keeping).toBe('kept');
  expect(again.entries).toEqual(added);
});

test('an entry counts at once, before it is written', () => {
  const changed = vi.fn();
  const record = new SortieRecord(changed);
  record.add('sortie-one', AT, wind('27012KT'));
  expect(windsOf(record)).toEqual(['27012KT']);
  expect(changed).toHaveBeenCalledTimes(1);
  expect(record.keeping).toBe('opening');
});

test('what is entered while the store is being opened is kept as well', async () => {
  const record = new SortieRecord(() => undefined);
  record.add('sortie-one', AT, wind('27012KT'));
  await record.open();
  await record.settled();
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT']);
});

test('what fails where the record is drawn from loses no entry, and is reported', async () => {
  const reported = vi.fn();
  vi.stubGlobal('reportError', reported);
  let isBroken = false;
  const failure = new TypeError('cannot be drawn');
  const record = new SortieRecord(() => {
    if (isBroken) throw failure;
  });
  await record.open();
  isBroken = true;
  const added = record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  expect(reported).toHaveBeenCalledWith(failure);
  const { record: again } = await openWindow();
  expect(again.entries).toEqual(added);
});

test('an entry says when, in which sortie, and what', async () => {
  const { record } = await openWindow();
  const [entry] = record.add('sortie-one', AT, wind('27012KT'));
  expect(entry).toEqual({
    id: expect.stringMatching(/^[0-9a-f]{32}$/),
    v: 2,
    by: expect.stringMatching(/^[0-9a-f]{32}$/),
    seq: 1,
    sortie: 'sortie-one',
    at: AT,
    kind: 'wind',
    text: '27012KT',
    north: 'true',
  });
});

test('names do not repeat', () => {
  expect(new Set(Array.from({ length: 1000 }, newId)).size).toBe(1000);
});

test('opened again, the numbers go on where they were', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'), wind('28014KT'));
  await record.settled();
  const { record: again } = await openWindow();
  again.add('sortie-one', AT, wind('29016KT'));
  expect(again.entries.map(({ seq }) => seq)).toEqual([1, 2, 3]);
  expect(windsOf(again)).toEqual(['27012KT', '28014KT', '29016KT']);
});

/** Lets two puts through, and meets the third with this. */
function onThirdPut(meet: (store: IDBObjectStore) => void): void {
  const { put } = IDBObjectStore.prototype;
  let left = 2;
  vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
    this: IDBObjectStore,
    value: unknown,
  ) {
    left -= 1;
    if (left === -1) meet(this);
    return put.call(this, value);
  });
}

test.each<[string, (store: IDBObjectStore) => void]>([
  ['the battery dies', (store) => store.transaction.abort()],
  [
    'the space ends',
    () => {
      throw new DOMException('The device is full.', 'QuotaExceededError');
    },
  ],
])('what is added in one go is kept whole or not at all, where %s amid it', async (_, meet) => {
  const { record } = await openWindow();
  onThirdPut(meet);
  record.add('sortie-one', AT, ...['1', '2', '3', '4'].map(wind));
  await record.settled();
  vi.restoreAllMocks();
  expect(record.keeping).toBe('forgotten');
  expect(windsOf((await openWindow()).record)).toEqual([]);
  // What was refused is written with the next, all of it.
  record.add('sortie-one', AT, wind('5'));
  await record.settled();
  expect(windsOf((await openWindow()).record)).toEqual(['1', '2', '3', '4', '5']);
});

test('every entry is written once', async () => {
  const { record } = await openWindow();
  const put = vi.spyOn(IDBObjectStore.prototype, 'put');
  record.add('sortie-one', AT, wind('27012KT'));
  record.add('sortie-one', AT, wind('28014KT'));
  await record.settled();
  record.add('sortie-one', AT, wind('29016KT'));
  await record.settled();
  expect(put.mock.calls.map(([entry]) => entry)).toEqual(record.entries);
});

test('no entry waits for the one before it to be on the disk: the page may be killed by then', async () => {
  const { record } = await openWindow();
  const commit = vi.spyOn(IDBTransaction.prototype, 'commit');
  record.add('sortie-one', AT, wind('27012KT'));
  expect(commit).toHaveBeenCalledTimes(1);
  record.add('sortie-one', AT, wind('28014KT'));
  expect(commit).toHaveBeenCalledTimes(2);
  await record.settled();
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT', '28014KT']);
});

test('every entry is written durably, so that it outlives a dead battery', async () => {
  const { record } = await openWindow();
  const transaction = vi.spyOn(IDBDatabase.prototype, 'transaction');
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  expect(transaction).toHaveBeenCalledWith(expect.arrayContaining(['entries']), 'readwrite', {
    durability: 'strict',
  });
});

test('the list that was handed out does not change under its reader', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  const before = record.entries;
  record.add('sortie-one', AT, wind('28014KT'));
  expect(before).toHaveLength(1);
  expect(record.entries).not.toBe(before);
});

test('reading again what is known already changes nothing', async () => {
  const { record, changed } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  const { entries } = record;
  changed.mockClear();
  await record.refresh();
  expect(record.entries).toBe(entries);
  expect(changed).not.toHaveBeenCalled();
});

test('what a later version wrote is kept, here and in the store, and skipped', async () => {
  await openWindow();
  const later = { id: 'later', seq: 7, sortie: 'sortie-one', at: AT, kind: 'torn off', of: 'pad' };
  await putRaw(later);
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  const { record: again } = await openWindow();
  expect(again.entries.map(({ id, seq }) => [id, seq])).toEqual([
    ['later', 7],
    [expect.any(String), 8],
  ]);
  expect(again.entries[0]).toEqual(later);
  expect(foldSortie(again.entries).winds).toHaveLength(1);
});

test('garbage in the store is skipped, and the rest is read', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  const whole = { seq: 2, sortie: 'sortie-one', at: AT, kind: 'wind', text: '1', north: 'true' };
  await putRaw(
    { id: 'bare' },
    { ...whole, id: 12 },
    { ...whole, id: 'number', seq: 'two' },
    { ...whole, id: 'fraction', seq: 1.5 },
    { ...whole, id: 'time', at: null },
    { ...whole, id: 'clock', at: { wallMs: 'noon', sortieMs: 0 } },
    { ...whole, id: 'sortie', sortie: undefined },
    { ...whole, id: 'kind', kind: 3 },
    { ...whole, id: 'damaged', kind: 'close', run: 'run', leadsTo: 'nowhere' },
  );
  const { record: again } = await openWindow();
  expect(again.keeping).toBe('kept');
  expect(windsOf(again)).toEqual(['27012KT']);
  expect(foldSortie(again.entries).winds).toHaveLength(1);
});

test('a document is kept as it was', async () => {
  const { record } = await openWindow();
  const document = firstDocument('field');
  await record.keepDocument(document);
  await record.keepDocument(document);
  expect(await (await openWindow()).record.documents()).toEqual([document]);
});
