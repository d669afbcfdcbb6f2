/** A store that answers late pushes nothing aside: what is done meanwhile waits, and goes on what is flown there. */

import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { sortieFlown } from '../../../src/core/sortie/flying';
import { foldSortie, sortiesOf } from '../../../src/core/sortie/fold';
import { SortieRecord } from '../../../src/record/record';
import { RUN, tick } from '../sortie/recorder';
import { AT, openWindow, useFreshDevice, wind, windsOf } from './device';

useFreshDevice();

let answer: () => void = () => undefined;

/** From now on the store is opened only when it is told to answer. */
function holdBack(): void {
  const device = indexedDB;
  const told = new Promise<void>((resolve) => {
    answer = resolve;
  });
  const { open } = device;
  vi.spyOn(device, 'open').mockImplementation((name, version) => {
    const request = open.call(device, name, version);
    // What the device says is heard only then.
    const listen = request.addEventListener.bind(request);
    vi.spyOn(request, 'addEventListener').mockImplementation(
      (type: string, heard: EventListenerOrEventListenerObject) =>
        type === 'success'
          ? void listen(type, async (event) => {
              await told;
              if (typeof heard === 'function') heard(event);
            })
          : listen(type, heard),
    );
    return request;
  });
}

beforeEach(() => vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] }));
afterEach(() => vi.useRealTimers());

async function openLate() {
  holdBack();
  const record = new SortieRecord(() => undefined);
  const opened = record.open();
  await vi.advanceTimersByTimeAsync(2000);
  await opened;
  return record;
}

async function flownBefore() {
  const { record } = await openWindow();
  record.add(
    'sortie-one',
    AT,
    wind('27012KT'),
    { kind: 'open', run: RUN, procedure: 'hash-p', list: null },
    tick('done', 'brakes'),
  );
  await record.settled();
}

const flownIn = ({ entries }: SortieRecord) => sortieFlown(sortiesOf(entries));

test('it is said, and nothing is written before the answer', async () => {
  await flownBefore();
  const record = await openLate();
  expect(record.keeping).toBe('late');
  const put = vi.spyOn(IDBObjectStore.prototype, 'put');
  record.add('sortie-begun', AT, wind('28014KT'));
  expect(windsOf(record)).toEqual(['28014KT']);
  expect(put).not.toHaveBeenCalled();
  answer();
  await record.answered();
  expect(record.keeping).toBe('kept');
});

test('what was done meanwhile goes on the sortie that is flown there, and no newer one is begun', async () => {
  await flownBefore();
  const record = await openLate();
  record.add('sortie-begun', AT, wind('28014KT'));
  record.add(
    'sortie-begun',
    AT,
    { kind: 'open', run: 'run-two', procedure: 'hash-p', list: null },
    { ...tick('done', 'flaps'), run: 'run-two' } as ReturnType<typeof tick>,
  );
  answer();
  await record.answered();
  await record.settled();
  for (const one of [record, (await openWindow()).record]) {
    expect([...sortiesOf(one.entries).keys()]).toEqual(['sortie-one']);
    const flown = flownIn(one);
    expect(flown.winds.map(({ text }) => text)).toEqual(['27012KT', '28014KT']);
    expect([...(flown.run?.ticks.keys() ?? [])]).toEqual(['1/brakes', '1/flaps']);
  }
  expect(record.entries.map(({ seq }) => seq)).toEqual(
    [...record.entries.keys()].map((n) => n + 1),
  );
});

test('an undo of what was done meanwhile still finds it', async () => {
  await flownBefore();
  const record = await openLate();
  const [made] = record.add('sortie-begun', AT, wind('28014KT'));
  answer();
  await record.answered();
  record.add('sortie-begun', AT, { kind: 'undo', target: made?.id ?? '' });
  expect(flownIn(record).winds.map(({ text }) => text)).toEqual(['27012KT']);
});

test('where nothing was kept before, a sortie begun meanwhile is the one that is flown', async () => {
  const record = await openLate();
  record.add('sortie-begun', AT, wind('28014KT'));
  answer();
  await record.answered();
  await record.settled();
  expect(flownIn((await openWindow()).record).id).toBe('sortie-begun');
});

test('a sortie that was ended meanwhile is ended, and the next stays the next', async () => {
  await flownBefore();
  const record = await openLate();
  record.add('sortie-begun', AT, { kind: 'open', run: 'r', procedure: 'hash-p', list: null });
  record.add('sortie-begun', AT, { kind: 'close', run: 'r', leadsTo: 'end' });
  record.add('sortie-next', AT, wind('28014KT'));
  answer();
  await record.answered();
  expect([...sortiesOf(record.entries).keys()]).toEqual(['sortie-one', 'sortie-next']);
  expect(flownIn(record).id).toBe('sortie-next');
  const first = sortiesOf(record.entries).get('sortie-one') ?? [];
  expect(foldSortie(first).endedAt).not.toBeNull();
});

test('documents wait, too', async () => {
  const record = await openLate();
  const { firstDocument } = await import('./stores');
  await record.keepDocument(firstDocument('field'));
  expect(await record.documents()).toEqual([]);
  answer();
  await record.answered();
  await record.settled();
  expect(await record.documents()).toEqual([firstDocument('field')]);
});
