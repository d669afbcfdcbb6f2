/** Lists that stand over one another, where they lead, and phases that are flown again. */

import { expect, test } from 'vitest';
import type { SortieEvent } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import {
  entry,
  LIST,
  OPEN,
  OPEN_LIST,
  OPEN_OTHER_LIST,
  OTHER_LIST,
  RUN,
  tick,
  WALL_MS,
  written,
} from './recorder';

const close = (
  run: string,
  leadsTo: Extract<SortieEvent, { kind: 'close' }>['leadsTo'],
): SortieEvent => ({
  kind: 'close',
  run,
  leadsTo,
});

const names = (entries: Parameters<typeof foldSortie>[0]) =>
  foldSortie(entries).lists.map(({ list }) => list);

const BOTH = [OPEN, tick('done', 'flaps'), OPEN_LIST, OPEN_OTHER_LIST] as const;

test('a list that is opened from another stands over it', () => {
  expect(names(written(...BOTH))).toEqual(['rejected-takeoff', 'engine-fire-ground']);
  expect(foldSortie(written(...BOTH)).list?.id).toBe(OTHER_LIST);
});

test('a list leads back to the one it was opened from, and that one to the steps', () => {
  const once = written(...BOTH, close(OTHER_LIST, 'return'));
  expect(names(once)).toEqual(['rejected-takeoff']);
  const twice = [...once, entry(close(LIST, 'return'), once.length + 1)];
  expect(names(twice)).toEqual([]);
  expect(foldSortie(twice).run?.ticks.size).toBe(1);
});

test('back at the place that was left, it was left when the list was opened', () => {
  const { run } = foldSortie(
    written(OPEN, tick('done', 'flaps'), OPEN_LIST, close(LIST, 'return')),
  );
  expect(run?.interruptedAt?.wallMs).toBe(WALL_MS + 3000);
  // "Back" takes back the step before the list.
  expect(run?.last).toMatchObject({ id: 'id-2', step: 'flaps' });
});

test('back from lists over lists, the step before each of them is the one to take back', () => {
  const inList = { ...tick('done', 'idle'), run: LIST } as SortieEvent;
  const events = [OPEN, tick('done', 'flaps'), OPEN_LIST, inList, OPEN_OTHER_LIST];
  const one = foldSortie(written(...events, close(OTHER_LIST, 'return')));
  expect(one.list?.last).toMatchObject({ id: 'id-4', step: 'idle' });
  const both = foldSortie(written(...events, close(OTHER_LIST, 'return'), close(LIST, 'return')));
  expect(both.run?.last).toMatchObject({ id: 'id-2', step: 'flaps' });
  // Where nothing had been done there is nothing to take back.
  expect(foldSortie(written(OPEN, OPEN_LIST, close(LIST, 'return'))).run?.last).toBeNull();
});

test('a list under another that is closed takes the one above with it', () => {
  expect(names(written(...BOTH, close(LIST, 'return')))).toEqual([]);
});

test('what leads to a phase leaves every list', () => {
  const { lists, run } = foldSortie(
    written(...BOTH, close(OTHER_LIST, { phase: 'recovery', reopen: ['recovery'] })),
  );
  expect(lists).toEqual([]);
  expect(run?.passes.recovery).toBe(2);
  expect(run?.interruptedAt).toBeNull();
});

test('what leads to the end ends the sortie', () => {
  const { lists, endedAt } = foldSortie(written(...BOTH, close(OTHER_LIST, 'end')));
  expect(lists).toEqual([]);
  expect(endedAt?.wallMs).toBe(WALL_MS + 5000);
});

test('opened by two windows a list is open once', () => {
  const twice = [
    ...written(OPEN),
    entry({ ...OPEN_LIST, run: 'here' }, 2, 'a'),
    entry({ ...OPEN_LIST, run: 'there' }, 2, 'b'),
  ];
  expect(names(twice)).toEqual(['rejected-takeoff']);
  expect(names([...twice, entry(close('there', 'return'), 3)])).toEqual([]);
});

test('another aircraft leaves the steps and whatever list was open', () => {
  const { run, lists } = foldSortie(written(...BOTH, close(RUN, 'return')));
  expect([run, lists]).toEqual([null, []]);
});

const AGAIN = { kind: 'reopen', run: RUN, passes: { roll: 2, climb: 2, recovery: 2 } } as const;

test('phases that are flown again are in their next pass, also where two windows said so', () => {
  for (const events of [[AGAIN], [AGAIN, AGAIN]]) {
    expect(foldSortie(written(OPEN, ...events)).run?.passes).toMatchObject({
      taxi: 1,
      roll: 2,
      climb: 2,
      recovery: 2,
      after: 1,
    });
  }
});

test('a landing before it belongs to the take-off before, a take-off after it to the next', () => {
  const { stamps } = foldSortie(
    written(OPEN, { kind: 'stamp', what: 'airborne' }, { kind: 'stamp', what: 'landed' }, AGAIN, {
      kind: 'stamp',
      what: 'airborne',
    }),
  );
  expect(stamps.map(({ what, pass }) => [what, pass])).toEqual([
    ['airborne', 1],
    ['landed', 1],
    ['airborne', 2],
  ]);
});

test('a step that was passed is no tick, and the facts that decided it are kept', () => {
  const { run } = foldSortie(
    written(OPEN, { kind: 'passed', run: RUN, pass: 1, step: 'lamps', saw: { night: false } }),
  );
  expect(run?.ticks.size).toBe(0);
  expect(run?.last).toBeNull();
  expect(run?.passed.get('1/lamps')).toMatchObject({
    saw: { night: false },
    at: { wallMs: WALL_MS + 2000 },
  });
});
