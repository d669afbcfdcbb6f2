import { expect, test, vi } from 'vitest';
import { SortieRecord } from '../../../src/record/record';
import { AT, fillDevice, openWindow, useFreshDevice, wind, windsOf } from './device';

useFreshDevice();

const DOCUMENT = { hash: 'hash-f', kind: 'field', content: {}, own: false };

/** Ways in which a device refuses to keep anything. */
const REFUSALS: readonly (readonly [string, () => void])[] = [
  ['there is no storage', () => vi.stubGlobal('indexedDB', undefined)],
  [
    'storage is forbidden',
    () =>
      vi.stubGlobal('indexedDB', {
        open() {
          throw new DOMException('Not allowed here.', 'SecurityError');
        },
      }),
  ],
  [
    'the store cannot be read',
    () =>
      vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
        throw new DOMException('Internal error.', 'UnknownError');
      }),
  ],
];

test.each(REFUSALS)(
  'where %s, all still counts, and it is said that it will be forgotten',
  async (_, refuse) => {
    refuse();
    const changed = vi.fn();
    const record = new SortieRecord(changed);
    await record.open();
    expect(record.keeping).toBe('forgotten');
    record.add('sortie-one', AT, wind('27012KT'));
    await record.settled();
    expect(record.keeping).toBe('forgotten');
    await record.refresh();
    await record.keepDocument(DOCUMENT);
    expect(windsOf(record)).toEqual(['27012KT']);
    expect(await record.documents()).toEqual([]);
    expect(record.keeping).toBe('forgotten');
  },
);

/** A later version of the app opens the store as its own. */
const openAsLater = (upgrade: (db: IDBDatabase) => void = () => undefined): Promise<IDBDatabase> =>
  new Promise((done) => {
    const opening = indexedDB.open('lapstrip', 3);
    opening.onupgradeneeded = () => upgrade(opening.result);
    opening.onsuccess = () => done(opening.result);
  });

test('where a later version keeps the record otherwise, that is what is said', async () => {
  (await openAsLater()).close();
  const { record } = await openWindow();
  expect(record.keeping).toBe('newer');
  record.add('sortie-one', AT, wind('27012KT'));
  expect(windsOf(record)).toEqual(['27012KT']);
});

test('where a later version only added a part, all is read and kept on', async () => {
  const { record: before } = await openWindow();
  before.add('sortie-one', AT, wind('27012KT'));
  await before.settled();
  (await openAsLater((db) => void db.createObjectStore('tracks'))).close();
  const { record } = await openWindow();
  expect(record.keeping).toBe('kept');
  record.add('sortie-one', AT, wind('28014KT'));
  await record.settled();
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT', '28014KT']);
});

test('a later version that wants the store gets it, and this window goes on writing into it', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  const later = await openAsLater((db) => void db.createObjectStore('tracks'));
  record.add('sortie-one', AT, wind('28014KT'));
  await vi.waitFor(async () =>
    expect(windsOf((await openWindow()).record)).toEqual(['27012KT', '28014KT']),
  );
  expect(record.keeping).toBe('kept');
  later.close();
});

test('where the later version took the parts away, this window says so, and counts on', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  await openAsLater((db) => db.deleteObjectStore('entries'));
  await vi.waitFor(() => expect(record.keeping).toBe('newer'));
  record.add('sortie-one', AT, wind('28014KT'));
  expect(windsOf(record)).toEqual(['27012KT', '28014KT']);
});

test('on a full device all counts until the window closes', async () => {
  const { record } = await openWindow();
  fillDevice();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  expect(record.keeping).toBe('forgotten');
  expect(windsOf(record)).toEqual(['27012KT']);
});

test('when there is room again, what was refused is written with the next', async () => {
  const { record, changed } = await openWindow();
  const makeRoom = fillDevice();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  record.add('sortie-one', AT, wind('28014KT'));
  await record.settled();
  makeRoom();
  changed.mockClear();
  record.add('sortie-one', AT, wind('29016KT'));
  await record.settled();
  expect(record.keeping).toBe('kept');
  // Once for the entry, once for its being kept.
  expect(changed).toHaveBeenCalledTimes(2);
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT', '28014KT', '29016KT']);
});

test('where one was refused while the next was under way, both are kept once there is room', async () => {
  const { record } = await openWindow();
  const makeRoom = fillDevice();
  record.add('sortie-one', AT, wind('27012KT'));
  makeRoom();
  record.add('sortie-one', AT, wind('28014KT'));
  await record.settled();
  expect(record.keeping).toBe('forgotten');
  record.add('sortie-one', AT, wind('29016KT'));
  await record.settled();
  expect(record.keeping).toBe('kept');
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT', '28014KT', '29016KT']);
});

test('a document that cannot be kept shows', async () => {
  const { record } = await openWindow();
  fillDevice();
  await record.keepDocument(DOCUMENT);
  expect(record.keeping).toBe('forgotten');
});

test('a store that cannot be read again shows', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  vi.spyOn(IDBObjectStore.prototype, 'getAll').mockImplementation(() => {
    throw new DOMException('Gone.', 'UnknownError');
  });
  await record.refresh();
  expect(record.keeping).toBe('forgotten');
  expect(windsOf(record)).toEqual(['27012KT']);
});
