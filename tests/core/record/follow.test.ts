import { expect, test, vi } from 'vitest';
import { foldSortie } from '../../../src/core/sortie/fold';
import { AT, CHANNEL, openWindow, useFreshDevice, wind, windsOf } from './device';

useFreshDevice();

const told = (winds: () => readonly string[], expected: readonly string[]) =>
  vi.waitFor(() => expect(winds()).toEqual(expected));

test('what one window enters the other has, and the other way round', async () => {
  const [{ record: here }, { record: there, changed }] = [await openWindow(), await openWindow()];
  here.add('sortie-one', AT, wind('27012KT'));
  await told(() => windsOf(there), ['27012KT']);
  expect(changed).toHaveBeenCalled();
  there.add('sortie-one', AT, wind('28014KT'));
  await told(() => windsOf(here), ['27012KT', '28014KT']);
  expect(here.entries).toEqual(there.entries);
  expect(here.entries.map(({ seq }) => seq)).toEqual([1, 2]);
});

test('two windows that did not hear of each other come to the same list', async () => {
  const [{ record: here }, { record: there }] = [await openWindow(), await openWindow()];
  here.add('sortie-one', AT, wind('27012KT'));
  there.add('sortie-one', AT, wind('28014KT'));
  await vi.waitFor(() =>
    expect([here.entries, there.entries].map(({ length }) => length)).toEqual([2, 2]),
  );
  expect(here.entries).toEqual(there.entries);
  expect(foldSortie(here.entries)).toEqual(foldSortie(there.entries));
});

test('a window that follows does not write what another has written', async () => {
  const { record: here } = await openWindow();
  const { record: there } = await openWindow();
  const put = vi.spyOn(IDBObjectStore.prototype, 'put');
  here.add('sortie-one', AT, wind('27012KT'));
  await told(() => windsOf(there), ['27012KT']);
  await Promise.all([here.settled(), there.settled()]);
  expect(put).toHaveBeenCalledTimes(1);
});

test('a window that slept reads what the other wrote when it wakes', async () => {
  vi.stubGlobal('BroadcastChannel', undefined);
  const { record: here } = await openWindow();
  const { record: there } = await openWindow();
  here.add('sortie-one', AT, wind('27012KT'));
  await here.settled();
  expect(windsOf(there)).toEqual([]);
  await there.refresh();
  expect(windsOf(there)).toEqual(['27012KT']);
});

test('a window is told only of what is written', async () => {
  const { record: here } = await openWindow();
  const { record: there } = await openWindow();
  let isWritten = false;
  const { write } = here.store ?? {};
  vi.spyOn(here.store ?? { write: async () => undefined }, 'write').mockImplementation(
    async (writing) => {
      await write?.(writing);
      isWritten = true;
    },
  );
  const heard: boolean[] = [];
  new BroadcastChannel(CHANNEL).onmessage = () => heard.push(isWritten);
  here.add('sortie-one', AT, wind('27012KT'));
  await told(() => windsOf(there), ['27012KT']);
  expect(heard).toEqual([true]);
});

test('what a window cannot write is written by another that can, and is there after a restart', async () => {
  const { record: here } = await openWindow();
  const { record: there } = await openWindow();
  vi.spyOn(here.store ?? { write: async () => undefined }, 'write').mockRejectedValue(
    new DOMException('The device is full.', 'QuotaExceededError'),
  );
  here.add('sortie-one', AT, wind('27012KT'));
  await told(() => windsOf(there), ['27012KT']);
  await there.settled();
  expect(here.keeping).toBe('forgotten');
  expect(there.keeping).toBe('kept');
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT']);
});

test('a window without any store is written for by one that has it', async () => {
  const { record: there } = await openWindow();
  const device = indexedDB;
  vi.stubGlobal('indexedDB', undefined);
  const { record: here } = await openWindow();
  vi.stubGlobal('indexedDB', device);
  here.add('sortie-one', AT, wind('27012KT'));
  await told(() => windsOf(there), ['27012KT']);
  await there.settled();
  expect(windsOf((await openWindow()).record)).toEqual(['27012KT']);
});

test('two windows that can both write nothing tell each other, and come to rest', async () => {
  vi.stubGlobal('indexedDB', undefined);
  const [{ record: here }, { record: there }] = [await openWindow(), await openWindow()];
  const heard = vi.fn();
  new BroadcastChannel(CHANNEL).onmessage = heard;
  here.add('sortie-one', AT, wind('27012KT'));
  await told(() => windsOf(there), ['27012KT']);
  await new Promise((done) => setTimeout(done, 50));
  expect(heard).toHaveBeenCalledTimes(1);
});

test('garbage on the channel is skipped', async () => {
  const { record } = await openWindow();
  const stranger = new BroadcastChannel(CHANNEL);
  for (const message of [null, 'hello', { entries: 1 }, [null, 3, 'x', {}, { id: 'a' }]]) {
    stranger.postMessage(message);
  }
  const entry = { id: 'last', seq: 4, sortie: 'sortie-one', at: AT, ...wind('27012KT') };
  stranger.postMessage([entry]);
  await told(() => windsOf(record), ['27012KT']);
  expect(record.entries).toEqual([entry]);
});
