/** What is stored and cannot be read takes nothing with it, is told, and is kept. */

import { describe, expect, test, vi } from 'vitest';
import { HIGHEST_SEQ } from '../../../src/core/sortie/entry';
import { readEntry } from '../../../src/core/sortie/entry.schema';
import { allSetAside } from '../../../src/record/aside';
import { besideRecord, entriesOf, wholeRecord } from '../../../src/record/past';
import { AT, openWindow, putRaw, useFreshDevice, wind, windsOf } from './device';
import { firstDocument, LATER_VERSION } from './stores';

useFreshDevice();

const stamped = (id: string, seq: number, more: object) => ({
  id,
  seq,
  sortie: 'sortie-one',
  at: AT,
  ...more,
});
const set = (inputs: object) => ({ kind: 'set', inputs });

/** Each was seen to leave a pilot on a blank page. */
const DAMAGED: readonly (readonly [string, object])[] = [
  ['ends closed today that are no list', set({ closedToday: {} })],
  ['a load without stations', set({ load: {} })],
  ['no options', set({ options: null })],
  ['no distances to hold short', set({ holdShortM: null })],
  ['a distance without end', set({ rollsFromM: 1e300 })],
  ['a surface that is none', set({ surface: 3 })],
  ['a clock far from any year', { kind: 'clock', sortieMs: 1e20, rate: 1 }],
  ['a wind that is no text', { kind: 'wind', text: 27012, north: 'true' }],
  ['a tick that saw nothing', { kind: 'done', run: 'r', pass: 1, step: 's', saw: null }],
  ['figures that are none', { kind: 'sealed', documents: {}, figures: { headwindKt: null } }],
];

/** Opens a window on what stands there, and waits until it has set aside what it cannot read. */
async function openOn(...values: readonly object[]) {
  await openWindow();
  await putRaw(stamped('good', 1, wind('27012KT')), ...values);
  const { record } = await openWindow();
  await vi.waitFor(async () => expect(await allSetAside()).toHaveLength(values.length));
  return record;
}

test.each(DAMAGED)('%s are set aside, and the rest is flown on', async (_, event) => {
  const damaged = stamped('damaged', 2, event);
  const record = await openOn(damaged);
  expect(windsOf(record)).toEqual(['27012KT']);
  expect(record.keeping).toBe('kept');
  await vi.waitFor(() => expect(record.unread).toEqual({ damaged: 1, newer: 0 }));
  expect((await allSetAside()).map(({ part, value }) => [part, value])).toEqual([
    ['entries', damaged],
  ]);
  // It is told once: the next start finds the record in order.
  const { record: again } = await openWindow();
  expect(again.unread).toEqual({ damaged: 0, newer: 0 });
  expect((await wholeRecord(again)).entries.map(({ id }) => id)).toEqual(['good']);
  // It goes out with what stands beside the record.
  expect((await besideRecord(again)).setAside).toEqual([{ part: 'entries', value: damaged }]);
});

test('a stored draft of version 1 that is none does no harm', async () => {
  await openWindow();
  await putRaw(stamped('old', 1, set({ draft: 0, callsign: 'Gannet 1' })));
  const { record } = await openWindow();
  expect(record.entries.map((entry) => entry.kind === 'set' && entry.inputs)).toEqual([
    { callsign: 'Gannet 1' },
  ]);
  expect(record.draftOfVersion1).toBeNull();
});

test('what was set aside is put back by a version that can read it', async () => {
  await openWindow();
  const { changeDrafts: change } = await import('../../../src/record/drafts');
  const value = stamped('mended', 3, wind('28014KT'));
  await change([{ code: ' aside/entries/mended', part: 'entries', value } as { code: string }], []);
  const { record } = await openWindow();
  await vi.waitFor(() => expect(windsOf(record)).toEqual(['28014KT']));
  await vi.waitFor(async () => expect(await allSetAside()).toEqual([]));
  expect(windsOf((await openWindow()).record)).toEqual(['28014KT']);
});

test('a device that cannot set it aside flies on all the same', async () => {
  const factory: IDBFactory = Object.getPrototypeOf(indexedDB);
  const { open } = factory;
  vi.spyOn(factory, 'open').mockImplementation(function (this: IDBFactory, name, version) {
    if (name === 'lapstrip-unkept') throw new DOMException('refused', 'UnknownError');
    return open.call(this, name, version);
  });
  await openWindow();
  const damaged = stamped('damaged', 2, set({ load: {} }));
  await putRaw(stamped('good', 1, wind('27012KT')), damaged);
  const { record } = await openWindow();
  await record.setAside('entries', [damaged]);
  expect(windsOf(record)).toEqual(['27012KT']);
  expect(record.keeping).toBe('kept');
  expect(await record.store?.read('entries')).toContainEqual(damaged);
});

describe('of a newer version', () => {
  const newer = stamped('newer', 7, { v: 3, by: 'device', kind: 'wind', text: {}, north: 'grid' });

  test('an entry stays where it is, is told, and its sortie is not flown', async () => {
    await openWindow();
    await putRaw(
      { ...stamped('mine', 1, wind('27012KT')), sortie: 'sortie-before' },
      stamped('good', 2, wind('28014KT')),
      newer,
    );
    const { record } = await openWindow();
    expect(record.unread).toEqual({ damaged: 0, newer: 1 });
    expect(record.newerSorties).toEqual(new Set(['sortie-one']));
    const [added] = record.add('sortie-before', AT, wind('29016KT'));
    expect(added?.seq).toBe(8);
    await record.settled();
    expect((await wholeRecord(record)).entries).toContainEqual(newer);
    expect(await record.store?.read('entries')).toContainEqual(newer);
    expect(await allSetAside()).toEqual([]);
  });

  test('a document stays, is told, and is not used', async () => {
    const { record } = await openWindow();
    const mine = firstDocument('field');
    const content = { ...Object(mine.content), version: LATER_VERSION };
    const later = { ...mine, hash: 'later', content };
    await record.store?.write({ documents: [mine, later] });
    expect(await record.documents()).toEqual([mine]);
    expect(record.unread).toEqual({ damaged: 0, newer: 1 });
    expect(await record.store?.read('documents')).toContainEqual(later);
    expect((await besideRecord(record)).setAside).toEqual([{ part: 'documents', value: later }]);
  });
});

test('a document without content is set aside, and the others are read', async () => {
  const { record } = await openWindow();
  const mine = firstDocument('procedure');
  const damaged = { hash: 'damaged', kind: 'procedure', content: null, own: true };
  await record.store?.write({ documents: [mine, damaged] });
  expect(await record.documents()).toEqual([mine]);
  expect(record.unread.damaged).toBe(1);
  expect((await allSetAside()).map(({ value }) => value)).toEqual([damaged]);
  expect(await record.store?.read('documents')).toEqual([mine]);
});

describe('however high a number stands in the list', () => {
  const numbers = [Number.MAX_SAFE_INTEGER, 1e300, HIGHEST_SEQ, HIGHEST_SEQ - 1, HIGHEST_SEQ / 2];

  test.each(numbers)('%f does not block adding, and what is added is read again', async (seq) => {
    await openWindow();
    await putRaw(stamped('good', 1, wind('27012KT')), stamped('high', seq, wind('28014KT')));
    const { record } = await openWindow();
    const added = record.add('sortie-one', AT, wind('29016KT'), wind('30018KT'));
    expect(added.map((entry) => readEntry(entry).problem)).toEqual([null, null]);
    await record.settled();
    const { record: again } = await openWindow();
    expect(windsOf(again)).toEqual(expect.arrayContaining(['27012KT', '29016KT', '30018KT']));
  });

  test('one in a sortie that was brought does not raise what is flown', async () => {
    const { record } = await openWindow();
    const high = { ...stamped('high', HIGHEST_SEQ, wind('28014KT')), sortie: 'sortie-there' };
    await record.store?.write({ brought: [high] });
    record.numberAfter((await entriesOf(record, ['sortie-there'])).get('sortie-there') ?? []);
    expect(record.add('sortie-one', AT, wind('29016KT'))[0]?.seq).toBe(1);
  });
});
