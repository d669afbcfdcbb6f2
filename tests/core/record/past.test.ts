import fc from 'fast-check';
import { describe, expect, test, vi } from 'vitest';
import type { Entry, SortieEvent } from '../../../src/core/sortie/entry';
import { compareEntries } from '../../../src/core/sortie/entry';
import { sortieFlown } from '../../../src/core/sortie/flying';
import { foldSortie, sortiesOf } from '../../../src/core/sortie/fold';
import { entriesOf, mergeBrought, sortieNames, wholeRecord } from '../../../src/record/past';
import { SortieRecord } from '../../../src/record/record';
import { anyRecord, entry } from '../sortie/recorder';
import { AT, openWindow, useFreshDevice, wind, windsOf } from './device';

useFreshDevice();

const brought = (entries: readonly Entry[]) => ({ entries, documents: [] });
const allOf = async (record: SortieRecord) =>
  [...(await wholeRecord(record)).entries].sort(compareEntries);
const W = (id: string, seq: number, sortie = 'sortie-there'): Entry => ({
  ...entry(wind('27012KT'), seq, id),
  sortie,
});

test('two exports merged in either order, and twice, give the same', async () => {
  await fc.assert(
    fc.asyncProperty(anyRecord, fc.infiniteStream(fc.boolean()), async (entries, picks) => {
      const all = [...new Map(entries.map((one) => [one.id, one])).values()];
      const here = all.filter(() => picks.next().value);
      const there = all.filter((one) => picks.next().value || !here.includes(one));
      const merged: Entry[][] = [];
      for (const order of [
        [here, there],
        [there, here, there],
      ]) {
        const { IDBFactory } = await import('fake-indexeddb');
        vi.stubGlobal('indexedDB', new IDBFactory());
        const { record } = await openWindow();
        for (const file of order) await mergeBrought(record, brought(file));
        merged.push(await allOf(record));
      }
      expect(merged[0]).toEqual(merged[1]);
      expect(merged[0]).toEqual([...all].sort(compareEntries));
      expect(foldSortie(merged[0] ?? [])).toEqual(foldSortie(all));
    }),
    { numRuns: 25 },
  );
}, 30_000);

test('what is brought is not flown: the start does not read it, and the sortie stays the same', async () => {
  const { record } = await openWindow();
  record.add('sortie-here', AT, wind('28014KT'));
  await mergeBrought(record, brought([W('there', 900)]));
  expect(windsOf(record)).toEqual(['28014KT']);
  const { record: again } = await openWindow();
  expect(windsOf(again)).toEqual(['28014KT']);
  expect((await allOf(again)).map(({ sortie }) => sortie)).toEqual(['sortie-here', 'sortie-there']);
  expect([...(again.store === null ? [] : await sortieNames(again.store))].sort()).toEqual([
    'sortie-here',
    'sortie-there',
  ]);
});

test('what is here already stays as it is, also where a file tells it otherwise', async () => {
  const { record } = await openWindow();
  const [made] = record.add('sortie-here', AT, wind('28014KT'));
  await record.settled();
  const other = { ...W(made?.id ?? '', 1, 'sortie-here'), text: '36099KT' } as Entry;
  expect(await mergeBrought(record, brought([other, W('fresh', 2)]))).toEqual({
    entries: 1,
    sorties: 1,
    documents: 0,
    leftOut: 0,
  });
  expect((await entriesOf(record, ['sortie-here'])).get('sortie-here')).toEqual([made]);
  expect(await mergeBrought(record, brought([other, W('fresh', 2)]))).toMatchObject({ entries: 0 });
});

test('a log that came home is not counted twice', async () => {
  const { record } = await openWindow();
  record.add('sortie-here', AT, wind('27012KT'), wind('28014KT'));
  await record.settled();
  const file = await wholeRecord(record);
  expect(await mergeBrought(record, file)).toEqual({
    entries: 0,
    sorties: 0,
    documents: 0,
    leftOut: 0,
  });
  expect(await allOf(record)).toHaveLength(2);
});

test('what is written into a sortie from elsewhere comes after what was written there', async () => {
  const { record } = await openWindow();
  await mergeBrought(record, brought([W('there', 900)]));
  record.numberAfter((await entriesOf(record, ['sortie-there'])).get('sortie-there') ?? []);
  const [added] = record.add('sortie-there', AT, wind('28014KT'));
  await record.settled();
  const { record: again } = await openWindow();
  const entries = [...((await entriesOf(again, ['sortie-there'])).get('sortie-there') ?? [])];
  expect(entries.sort(compareEntries).map(({ id }) => id)).toEqual(['there', added?.id]);
});

describe('a log that tells more of a sortie that was flown here', () => {
  const more = (id: string, seq: number, event: SortieEvent): Entry => ({
    ...entry(event, seq, id),
    sortie: 'sortie-here',
  });

  test('changes nothing in it: no note, no time, no undo of a tick', async () => {
    const { record } = await openWindow();
    const [made] = record.add('sortie-here', AT, wind('28014KT'));
    await record.settled();
    const told = [
      more('note', 10, { kind: 'noted', text: 'not mine' }),
      more('time', 11, { kind: 'corrected', what: 'airborne', sortieMs: AT.sortieMs }),
      more('undo', 12, { kind: 'undo', target: made?.id ?? '' }),
    ];
    expect(await mergeBrought(record, brought([...told, W('there', 13)]))).toEqual({
      entries: 1,
      sorties: 1,
      documents: 0,
      leftOut: 3,
    });
    expect((await entriesOf(record, ['sortie-here'])).get('sortie-here')).toEqual([made]);
  });

  test('is still taken where only a note was written into it here', async () => {
    const { record } = await openWindow();
    await mergeBrought(record, brought([W('there', 5)]));
    record.add('sortie-there', AT, { kind: 'noted', text: 'seen' });
    await record.settled();
    expect(await mergeBrought(record, brought([W('more', 6)]))).toMatchObject({
      entries: 1,
      leftOut: 0,
    });
  });
});

test('a sortie that was brought and is taken up is the one flown, also after a restart', async () => {
  const { record } = await openWindow();
  await mergeBrought(record, brought([W('there', 900)]));
  record.add('sortie-here', AT, wind('28014KT'));
  record.recall((await entriesOf(record, ['sortie-there'])).get('sortie-there') ?? []);
  const flown = ({ entries }: SortieRecord) => sortieFlown(sortiesOf(entries));
  record.add('sortie-there', AT, { kind: 'taken up' });
  await record.settled();
  expect(flown(record).id).toBe('sortie-there');
  const { record: again } = await openWindow();
  expect(flown(again).id).toBe('sortie-there');
  expect(flown(again).winds.map(({ text }) => text)).toEqual(['27012KT']);
});

describe('where the device fails amid a merge', () => {
  const DOCUMENT = { hash: 'hash-f', kind: 'field', content: {}, own: true };
  const file = {
    entries: Array.from({ length: 20 }, (_, at) => W(`there-${at}`, at + 1)),
    documents: [DOCUMENT],
  };

  test.each([1, 2, 10, 20, 21])('at write %i, all is as it was', async (failing) => {
    const { record } = await openWindow();
    record.add('sortie-here', AT, wind('28014KT'));
    await record.settled();
    const before = await wholeRecord(record);
    const { put } = IDBObjectStore.prototype;
    let left = failing;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      value: unknown,
    ) {
      left -= 1;
      if (left === 0) throw new DOMException('The device is full.', 'QuotaExceededError');
      return put.call(this, value);
    });
    await expect(mergeBrought(record, file)).rejects.toThrow('full');
    vi.restoreAllMocks();
    expect(await wholeRecord((await openWindow()).record)).toEqual(before);
  });

  test('because the power goes, all is as it was', async () => {
    const { record } = await openWindow();
    const { put } = IDBObjectStore.prototype;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (
      this: IDBObjectStore,
      value: unknown,
    ) {
      if ((value as Entry).id === 'there-7') this.transaction.abort();
      return put.call(this, value);
    });
    await expect(mergeBrought(record, file)).rejects.toBeDefined();
    vi.restoreAllMocks();
    expect(await wholeRecord((await openWindow()).record)).toEqual({ entries: [], documents: [] });
  });

  test('because it keeps nothing at all, it is said', async () => {
    await expect(mergeBrought(new SortieRecord(() => undefined), file)).rejects.toThrow();
  });
});

test('the start reads the sorties flown last, each of them whole', async () => {
  const { record } = await openWindow();
  for (let sortie = 0; sortie < 45; sortie++) {
    record.add(`sortie-${sortie}`, AT, ...Array.from({ length: 100 }, () => wind('27012KT')));
  }
  await record.settled();
  const { record: again } = await openWindow();
  const counts = new Map<string, number>();
  for (const { sortie } of again.entries) counts.set(sortie, (counts.get(sortie) ?? 0) + 1);
  expect([...counts.values()].every((count) => count === 100)).toBe(true);
  expect(counts.size).toBeGreaterThanOrEqual(15);
  expect(counts.size).toBeLessThan(45);
  expect([...counts.keys()].at(-1)).toBe('sortie-44');
  // The numbers go on above all there are, and an old sortie is still there when it is asked for.
  expect(again.add('sortie-44', AT, wind('1'))[0]?.seq).toBe(4501);
  expect((await entriesOf(again, ['sortie-0'])).get('sortie-0')).toHaveLength(100);
});

test('a store of the version before is taken over with all that is in it', async () => {
  const old = W('old', 5, 'sortie-old');
  await new Promise<void>((done) => {
    const opening = indexedDB.open('lapstrip', 1);
    opening.onupgradeneeded = () => {
      opening.result.createObjectStore('entries', { keyPath: 'id' }).put(old);
      opening.result.createObjectStore('documents', { keyPath: 'hash' });
    };
    opening.onsuccess = () => {
      opening.result.close();
      done();
    };
  });
  const { record } = await openWindow();
  expect(record.entries).toEqual([old]);
  expect(record.add('sortie-old', AT, wind('1'))[0]?.seq).toBe(6);
  await record.settled();
  expect(record.keeping).toBe('kept');
});

test('what was worked out of a sortie is forgotten with the next that is added to it', async () => {
  const { record } = await openWindow();
  await record.store?.write({ summaries: [{ sortie: 'a' }, { sortie: 'b' }] });
  record.add('a', AT, wind('27012KT'));
  await record.settled();
  expect(await record.store?.read('summaries')).toEqual([{ sortie: 'b' }]);
  await mergeBrought(record, brought([W('there', 3, 'b')]));
  expect(await record.store?.read('summaries')).toEqual([]);
});
