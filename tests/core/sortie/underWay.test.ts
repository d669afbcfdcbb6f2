/** What the pilot is in the middle of, and where the way back leads. */

import { expect, test } from 'vitest';
import type { SortieEvent } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { aged, leadsToSteps, underWay } from '../../../src/core/sortie/underWay';
import { OPEN, OPEN_LIST, RUN, tick, WALL_MS, written } from './recorder';

const after = (...events: readonly SortieEvent[]) => foldSortie(written(...events));
const RELEASED = { kind: 'stamp', what: 'brakes released' } as const;
const AWAY = { kind: 'interrupted', run: RUN } as const;
const MINUTE_MS = 60_000;

test('an open list, the roll and an interruption are under way; an ordinary step is not', () => {
  const done = tick('done', 'flaps');
  expect(underWay(after())).toBeNull();
  expect(underWay(after(OPEN, done))).toBeNull();
  expect(underWay(after(OPEN, done, OPEN_LIST))).toMatchObject({
    what: 'list',
    list: 'rejected-takeoff',
    since: { wallMs: WALL_MS + 3000 },
  });
  expect(underWay(after(OPEN, done, RELEASED))?.what).toBe('roll');
  expect(underWay(after(OPEN, done, AWAY))?.what).toBe('interrupted');
  // Whoever is interrupted on the roll is on the roll.
  expect(underWay(after(OPEN, done, RELEASED, AWAY))?.what).toBe('roll');
});

test('the roll is over with the next moment, and everything with the end of the sortie', () => {
  for (const what of ['airborne', 'stopping', 'landed'] as const) {
    expect(underWay(after(OPEN, RELEASED, { kind: 'stamp', what }))).toBeNull();
  }
  expect(underWay(after(OPEN, RELEASED, { kind: 'close', run: RUN, leadsTo: 'end' }))).toBeNull();
  const again = { kind: 'reopen', run: RUN, passes: { roll: 2 } } as const;
  expect(underWay(after(OPEN, RELEASED, again))).toBeNull();
});

test('a start at no particular place, and ten minutes away, lead to what is under way', () => {
  const left = after(OPEN, tick('done', 'flaps'), AWAY);
  expect(leadsToSteps(left, 0, false)).toBe(true);
  expect(leadsToSteps(left, 9 * MINUTE_MS, true)).toBe(false);
  expect(leadsToSteps(left, 10 * MINUTE_MS, true)).toBe(true);
  const begun = after(OPEN, tick('done', 'flaps'));
  expect(leadsToSteps(begun, 60 * MINUTE_MS, false)).toBe(false);
});

test('a wind is old after a quarter of an hour, a report whose wind no longer counts after one', () => {
  expect(aged(null, null, false)).toEqual([]);
  expect(aged(15 * MINUTE_MS, 60 * MINUTE_MS, false)).toEqual([]);
  expect(aged(16 * MINUTE_MS, 61 * MINUTE_MS, false)).toEqual([
    { what: 'wind', ageMs: 16 * MINUTE_MS },
    { what: 'report', ageMs: 61 * MINUTE_MS },
  ]);
  // A report's own wind is said once.
  expect(aged(20 * MINUTE_MS, 20 * MINUTE_MS, true)).toEqual([
    { what: 'report', ageMs: 20 * MINUTE_MS },
  ]);
});
