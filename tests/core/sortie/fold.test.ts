import { expect, test } from 'vitest';
import { entriesThatCount } from '../../../src/core/sortie/counting';
import type { SortieEvent } from '../../../src/core/sortie/entry';
import { FRESH_INPUTS } from '../../../src/core/sortie/entry';
import { foldSortie, NO_SORTIE, sortieTimeMs, tickKey } from '../../../src/core/sortie/fold';
import {
  entry,
  fromLater,
  LIST,
  OPEN,
  OPEN_LIST,
  RUN,
  SORTIE_MS,
  tick,
  WALL_MS,
  written,
} from './recorder';

/** What stands of each step, by pass and name. */
const outcomes = (entries: Parameters<typeof foldSortie>[0]) =>
  Object.fromEntries(
    [...(foldSortie(entries).run?.ticks ?? [])].map(([key, { outcome }]) => [key, outcome]),
  );

const undo = (target: string): SortieEvent => ({ kind: 'undo', target });

test('without entries there is no sortie', () => {
  expect(foldSortie([])).toEqual(NO_SORTIE);
  expect(foldSortie([fromLater(1)])).toEqual(NO_SORTIE);
});

test('what is set stays set until it is set again', () => {
  const { inputs } = foldSortie(
    written(
      { kind: 'set', inputs: { field: 'hash-f', surface: 'wet' } },
      { kind: 'set', inputs: { surface: 'dry', callsign: 'Gannet 1' } },
    ),
  );
  expect(inputs).toEqual({ ...FRESH_INPUTS, field: 'hash-f', callsign: 'Gannet 1' });
});

test('winds are kept in the order they were entered, each with its north', () => {
  const { winds } = foldSortie(
    written(
      { kind: 'wind', text: '27012KT', north: 'true' },
      { kind: 'wind', text: '300/8', north: 'magnetic' },
    ),
  );
  expect(winds.map(({ text, north }) => [text, north])).toEqual([
    ['27012KT', 'true'],
    ['300/8', 'magnetic'],
  ]);
});

test('a step done by two windows is done once, and taken back once', () => {
  const twice = [
    entry(OPEN, 1),
    entry(tick('done', 'flaps'), 2, 'here'),
    entry(tick('done', 'flaps'), 2, 'there'),
  ];
  expect(foldSortie(twice).run?.ticks.size).toBe(1);
  for (const target of ['here', 'there']) {
    expect(outcomes([...twice, entry(undo(target), 3)])).toEqual({});
  }
});

test('a step taken back, and then done by two windows, is taken back once as well', () => {
  const entries = [
    ...written(OPEN, tick('done', 'flaps'), undo('id-2')),
    entry(tick('done', 'flaps'), 4, 'here'),
    entry(tick('done', 'flaps'), 4, 'there'),
  ];
  expect(outcomes(entries)).toEqual({ '1/flaps': 'done' });
  expect(outcomes([...entries, entry(undo('here'), 5)])).toEqual({});
  expect(outcomes([...entries, entry(undo('there'), 5)])).toEqual({});
});

test('a step done again after it was taken back stays done', () => {
  expect(
    outcomes(written(OPEN, tick('done', 'flaps'), undo('id-2'), tick('done', 'flaps'))),
  ).toEqual({ '1/flaps': 'done' });
});

test('a step done again because the runway changed, taken back, was still done for the first', () => {
  const entries = written(
    OPEN,
    tick('done', 'brief', { saw: { runway: '28' } }),
    tick('done', 'brief', { saw: { runway: '01' } }),
    undo('id-3'),
  );
  expect(foldSortie(entries).run?.ticks.get('1/brief')?.saw).toEqual({ runway: '28' });
});

test('a step held back and then done, taken back twice, goes through both states again', () => {
  const entries = written(OPEN, tick('done', 'trim'), tick('held', 'trim'), tick('done', 'trim'));
  const once = [...entries, entry(undo('id-4'), 5)];
  expect(outcomes(entries)).toEqual({ '1/trim': 'done' });
  expect(outcomes(once)).toEqual({ '1/trim': 'held' });
  expect(outcomes([...once, entry(undo('id-3'), 6)])).toEqual({ '1/trim': 'done' });
});

test('why a step could not be done, and under which facts, is kept', () => {
  const { run } = foldSortie(
    written(OPEN, tick('cannot', 'trim', { why: 'not fitted', saw: { wet: false } })),
  );
  expect(run?.ticks.get(tickKey(1, 'trim'))).toMatchObject({
    outcome: 'cannot',
    why: 'not fitted',
    saw: { wet: false },
    at: { wallMs: WALL_MS + 2000 },
  });
});

test('"Back" takes back the last thing done, and then the one before', () => {
  const last = (entries: Parameters<typeof foldSortie>[0]) => foldSortie(entries).run?.last?.id;
  const entries = written(OPEN, tick('done', 'flaps'), { kind: 'stamp', what: 'brakes released' });
  expect(last(entries)).toBe('id-3');
  expect(last([...entries, entry(undo('id-3'), 4)])).toBe('id-2');
  expect(last([...entries, entry(undo('id-3'), 4), entry(undo('id-2'), 5)])).toBeUndefined();
});

test('"Back" closes a list that was opened by mistake, before the stop is taken back', () => {
  const entries = written(
    OPEN,
    { kind: 'stamp', what: 'brakes released' },
    { kind: 'stamp', what: 'stopping' },
    OPEN_LIST,
  );
  const opened = foldSortie(entries);
  expect(opened.list?.id).toBe(LIST);
  expect(opened.run?.last?.id).toBe('id-4');
  const back = foldSortie([...entries, entry(undo('id-4'), 5)]);
  expect(back.list).toBeNull();
  expect(back.run?.last?.id).toBe('id-3');
});

const LEADS_BACK = {
  kind: 'close',
  run: LIST,
  leadsTo: { phase: 'taxi', reopen: ['taxi', 'line-up', 'roll'] },
} as const satisfies SortieEvent;

test('a list that leads back to the taxi raises the passes it opens again, and no others', () => {
  const { run, list } = foldSortie(written(OPEN, tick('done', 'flaps'), OPEN_LIST, LEADS_BACK));
  expect(list).toBeNull();
  expect(run?.passes).toEqual({
    ramp: 1,
    taxi: 2,
    'line-up': 2,
    roll: 2,
    climb: 1,
    recovery: 1,
    after: 1,
  });
  expect(run?.ticks.get(tickKey(1, 'flaps'))?.outcome).toBe('done');
  expect(run?.ticks.has(tickKey(2, 'flaps'))).toBe(false);
});

test('a list closed by two windows raises the passes once', () => {
  const entries = [
    ...written(OPEN, OPEN_LIST),
    entry(LEADS_BACK, 3, 'here'),
    entry(LEADS_BACK, 3, 'there'),
  ];
  expect(foldSortie(entries).run?.passes.taxi).toBe(2);
});

test('the second stop of a sortie raises the passes once more', () => {
  const second = { ...OPEN_LIST, run: 'another-list' };
  const entries = written(OPEN, OPEN_LIST, LEADS_BACK, second, {
    ...LEADS_BACK,
    run: 'another-list',
  });
  expect(foldSortie(entries).run?.passes.taxi).toBe(3);
});

test('a list that just returns leaves the passes as they were', () => {
  const { run, list } = foldSortie(
    written(OPEN, OPEN_LIST, { kind: 'close', run: LIST, leadsTo: 'return' }),
  );
  expect(list).toBeNull();
  expect(run?.id).toBe(RUN);
  expect(run?.passes.taxi).toBe(1);
});

test('steps begun by two windows at once are one run, with the ticks of both', () => {
  const entries = [
    entry(OPEN, 1, 'here'),
    entry({ ...OPEN, run: 'run-there' }, 1, 'there'),
    entry(tick('done', 'flaps'), 2),
    entry(tick('done', 'trim', { run: 'run-there' }), 3),
  ];
  expect(outcomes(entries)).toEqual({ '1/flaps': 'done', '1/trim': 'done' });
});

test('a step done by two windows that each began the steps is taken back once too', () => {
  const entries = [
    entry(OPEN, 1, 'here'),
    entry({ ...OPEN, run: 'run-there' }, 1, 'there'),
    entry(tick('done', 'flaps'), 2, 'done-here'),
    entry(tick('done', 'flaps', { run: 'run-there' }), 2, 'done-there'),
  ];
  expect(outcomes(entries)).toEqual({ '1/flaps': 'done' });
  expect(outcomes([...entries, entry(undo('done-here'), 3)])).toEqual({});
  expect(outcomes([...entries, entry(undo('done-there'), 3)])).toEqual({});
});

test('the same step of a list opened again is another', () => {
  const again = { ...OPEN_LIST, run: 'another-list' };
  const entries = written(
    OPEN,
    OPEN_LIST,
    tick('done', 'idle', { run: LIST }),
    LEADS_BACK,
    again,
    tick('done', 'idle', { run: 'another-list' }),
    undo('id-6'),
  );
  expect(foldSortie(entries).list?.ticks.size).toBe(0);
  expect(entriesThatCount(entries).filter(({ kind }) => kind === 'done')).toHaveLength(1);
});

test('another aircraft begins its steps anew', () => {
  const left: SortieEvent = { kind: 'close', run: RUN, leadsTo: 'return' };
  const entries = written(OPEN, tick('done', 'flaps'), left);
  expect(foldSortie(entries).run).toBeNull();
  const anew = foldSortie([
    ...entries,
    entry({ kind: 'open', run: 'run-two', procedure: 'hash-q', list: null }, 4),
  ]);
  expect(anew.run).toMatchObject({ id: 'run-two', procedure: 'hash-q', last: null });
  expect(anew.run?.ticks.size).toBe(0);
});

test('a sortie that is ended says when, and goes on when that is taken back', () => {
  const entries = written(OPEN, { kind: 'close', run: RUN, leadsTo: 'end' });
  expect(foldSortie(entries).endedAt?.wallMs).toBe(WALL_MS + 2000);
  expect(foldSortie([...entries, entry(undo('id-2'), 3)]).endedAt).toBeNull();
});

test('a moment belongs to the pass of the roll it was stamped in', () => {
  const { stamps } = foldSortie(
    written(OPEN, { kind: 'stamp', what: 'stopping' }, OPEN_LIST, LEADS_BACK, {
      kind: 'stamp',
      what: 'brakes released',
    }),
  );
  expect(stamps.map(({ what, pass }) => [what, pass])).toEqual([
    ['stopping', 1],
    ['brakes released', 2],
  ]);
});

test('an interruption lasts until the steps are taken up again, or the next is done', () => {
  const away = written(OPEN, { kind: 'interrupted', run: RUN });
  expect(foldSortie(away).run?.interruptedAt?.wallMs).toBe(WALL_MS + 2000);
  const back: readonly SortieEvent[] = [{ kind: 'resumed', run: RUN }, tick('done', 'flaps')];
  for (const event of back) {
    expect(foldSortie([...away, entry(event, 3)]).run?.interruptedAt).toBeNull();
  }
});

test('what was sealed stays as it was shown', () => {
  const figures = { rotateKt: { value: 138, unit: 'kt' } };
  const { seals } = foldSortie(
    written({ kind: 'sealed', documents: { field: 'hash-f' }, figures }),
  );
  expect(seals).toMatchObject([{ documents: { field: 'hash-f' }, figures }]);
});

test('without a clock of its own the sortie goes by the device', () => {
  expect(sortieTimeMs(foldSortie([]).clock, WALL_MS)).toBe(WALL_MS);
});

test('a clock that runs keeps its distance from the device, and a paused one stands', () => {
  const set = (rate: number) =>
    foldSortie(written({ kind: 'clock', sortieMs: SORTIE_MS, rate })).clock;
  const setAt = WALL_MS + 1000;
  expect(sortieTimeMs(set(1), setAt)).toBe(SORTIE_MS);
  expect(sortieTimeMs(set(1), setAt + 90_000)).toBe(SORTIE_MS + 90_000);
  expect(sortieTimeMs(set(0), setAt + 90_000)).toBe(SORTIE_MS);
});

test('the clock set last counts, and taken back the one before', () => {
  const entries = written(
    { kind: 'clock', sortieMs: SORTIE_MS, rate: 1 },
    { kind: 'clock', sortieMs: SORTIE_MS + 3_600_000, rate: 0 },
  );
  expect(foldSortie(entries).clock?.sortieMs).toBe(SORTIE_MS + 3_600_000);
  expect(foldSortie([...entries, entry(undo('id-2'), 3)]).clock).toMatchObject({
    sortieMs: SORTIE_MS,
    rate: 1,
    wallMs: WALL_MS + 1000,
  });
});

test('what is skipped is not among the entries that count', () => {
  const list = [...written(OPEN, tick('done', 'flaps'), undo('id-2')), fromLater(4)];
  expect(entriesThatCount(list).map(({ id }) => id)).toEqual(['id-1']);
});
