import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Procedure, Step } from '../../../src/core';
import type { Entry, Moment, SortieEvent } from '../../../src/core/sortie/entry';
import { chocksNow, foldSortie } from '../../../src/core/sortie/fold';
import { logOf } from '../../../src/core/sortie/log';
import { compareLines, summaryOf, totalsOf } from '../../../src/core/sortie/logSummary';
import {
  blockMinutes,
  flightMinutes,
  LOG_MOMENTS,
  nearestAtMinute,
} from '../../../src/core/sortie/logTimes';
import {
  anyRecord,
  entry,
  OPEN,
  OPEN_OTHER_LIST,
  OTHER_LIST,
  RUN,
  SORTIE_MS,
  tick,
  WALL_MS,
  written,
} from './recorder';

const step = (id: string): Step => ({ id, kind: 'do', item: `The ${id}`, response: 'set' });
const PROCEDURE: Procedure = {
  lapstrip: 'procedure',
  version: 1,
  code: 'x-usual',
  name: 'Usual',
  aircraft: 'x',
  about: '',
  phases: [
    { phase: 'ramp', steps: [step('pins'), step('flaps')] },
    { phase: 'taxi', steps: [step('brakes'), step('trim')] },
    { phase: 'after', steps: [step('chute'), step('lever')] },
  ],
  lists: [],
};
const procedureOf = (hash: string) => (hash === 'hash-p' ? PROCEDURE : null);
const told = (entries: readonly Entry[]) => {
  const sortie = logOf(entries, procedureOf);
  if (sortie === null) throw new Error('no sortie');
  return sortie;
};

/** At so many minutes from the beginning, by both clocks. */
const at = (minutes: number, event: SortieEvent, seq: number): Entry => ({
  ...entry(event, seq),
  at: { wallMs: WALL_MS + minutes * 60_000, sortieMs: SORTIE_MS + minutes * 60_000 },
});
const stamp = (what: 'airborne' | 'landed' | 'off chocks' | 'on chocks' | 'brakes released') =>
  ({ kind: 'stamp', what }) as const;

/** Ramp at 0, taxi from 10, brakes released at 16, airborne at 17, landed at 60, after until 70. */
const FLOWN: readonly Entry[] = [
  at(0, OPEN, 1),
  at(0, tick('done', 'pins'), 2),
  at(5, tick('held', 'flaps'), 3),
  at(10, tick('done', 'brakes'), 4),
  at(12, tick('cannot', 'trim', { why: 'not fitted' }), 5),
  at(16, stamp('brakes released'), 6),
  at(17, stamp('airborne'), 7),
  at(60, stamp('landed'), 8),
  at(65, tick('done', 'chute'), 9),
  at(70, tick('done', 'lever'), 10),
];
const minutesOf = (entries: readonly Entry[]) =>
  LOG_MOMENTS.map((moment) => {
    const { sortieMs } = told(entries).times[moment];
    return sortieMs === null ? null : (sortieMs - SORTIE_MS) / 60_000;
  });

test('it begins with what is done first, not with what was set out the evening before', () => {
  const setOut = at(-14 * 60, { kind: 'set', inputs: { callsign: 'LARK 21' } }, 0);
  const { beganAt } = told([setOut, ...FLOWN]);
  expect(beganAt.sortieMs).toBe(SORTIE_MS);
  expect(summaryOf(told([setOut, ...FLOWN])).wallMs).toBe(WALL_MS);
  // Only set out, it has no other beginning.
  expect(told([setOut]).beganAt).toEqual(setOut.at);
});

test('off chocks is the first done of the taxi, on chocks the last after landing', () => {
  expect(minutesOf(FLOWN)).toEqual([10, 17, 60, 70]);
  expect(LOG_MOMENTS.map((moment) => told(FLOWN).times[moment].recorded?.from)).toEqual([
    'steps',
    'stamp',
    'stamp',
    'steps',
  ]);
  expect(blockMinutes(told(FLOWN).times)).toBe(60);
  expect(flightMinutes(told(FLOWN).times)).toBe(43);
});

test('a key that stamped them comes before the steps', () => {
  const stamped = [...FLOWN, at(8, stamp('off chocks'), 11), at(72, stamp('on chocks'), 12)];
  expect(minutesOf(stamped)).toEqual([8, 17, 60, 72]);
});

test('leaving the stand on Taxi is off chocks, and being placed there or taxiing in is not', () => {
  const taxied = (min: number, placed: boolean, seq: number) =>
    at(min, { kind: 'taxied', point: 's1', placed }, seq);
  expect(minutesOf([...FLOWN, taxied(6, true, 11), taxied(9, false, 12)])).toEqual([9, 17, 60, 70]);
  expect(minutesOf([...FLOWN, taxied(66, false, 11)])).toEqual([10, 17, 60, 70]);
});

test('off chocks is stamped before it has moved, on chocks after a landing or a stop, and neither in between', () => {
  const now = (...events: readonly SortieEvent[]) =>
    chocksNow(foldSortie(written(OPEN, ...events)));
  const moment = (what: Moment): SortieEvent => ({ kind: 'stamp', what });
  expect(now()).toBe('off chocks');
  expect(now({ kind: 'taxied', point: 's1', placed: true })).toBe('off chocks');
  expect(now({ kind: 'taxied', point: 's1', placed: false })).toBeNull();
  expect(now(moment('off chocks'))).toBeNull();
  expect(now(moment('brakes released'), moment('stopping'))).toBe('on chocks');
  expect(now(moment('airborne'), moment('landed'))).toBe('on chocks');
  expect(now(moment('landed'), moment('airborne'))).toBeNull();
});

test('without the procedure at hand the steps tell no times, and stamps do', () => {
  const sortie = logOf(FLOWN, () => null);
  expect(sortie?.times['off chocks'].sortieMs).toBeNull();
  expect(sortie?.times.airborne.sortieMs).toBe(SORTIE_MS + 17 * 60_000);
  expect(sortie?.heldBack).toEqual([{ step: 'flaps', item: null, why: null }]);
});

test('the language of its steps is that of the procedure, and not known without it', () => {
  expect(told(FLOWN).language).toBe('en');
  const inGerman = () => ({ ...PROCEDURE, language: 'de' });
  expect(logOf(FLOWN, inGerman)?.language).toBe('de');
  expect(logOf(FLOWN, () => null)?.language).toBeNull();
});

test('a time that is written over holds, what was stamped stays beside it, and comes back', () => {
  const correction: SortieEvent = {
    kind: 'corrected',
    what: 'airborne',
    sortieMs: SORTIE_MS + 20 * 60_000,
  };
  const corrected = [...FLOWN, at(90, correction, 11)];
  expect(minutesOf(corrected)).toEqual([10, 20, 60, 70]);
  expect(told(corrected).times.airborne).toEqual({
    sortieMs: SORTIE_MS + 20 * 60_000,
    recorded: { sortieMs: SORTIE_MS + 17 * 60_000, from: 'stamp' },
    correction: 'id-11',
  });
  expect(foldSortie(corrected).stamps).toEqual(foldSortie(FLOWN).stamps);
  const again = [...corrected, at(91, { ...correction, sortieMs: SORTIE_MS }, 12)];
  expect(minutesOf(again)[1]).toBe(0);
  // Taken back one after the other, each gives way to the one before.
  const back = [...again, at(92, { kind: 'undo', target: 'id-12' }, 13)];
  expect(minutesOf(back)[1]).toBe(20);
  expect(minutesOf([...back, at(93, { kind: 'undo', target: 'id-11' }, 14)])[1]).toBe(17);
});

test('a landing struck out counts no more; one written in counts', () => {
  const struck: SortieEvent = { kind: 'corrected', what: 'landed', sortieMs: null };
  expect(told(FLOWN).landings).toBe(1);
  expect(told([...FLOWN, at(90, struck, 11)]).landings).toBe(0);
  const notStamped = FLOWN.filter(({ id }) => id !== 'id-8');
  expect(told(notStamped).landings).toBe(0);
  const writtenIn: SortieEvent = { ...struck, sortieMs: SORTIE_MS };
  expect(told([...notStamped, at(90, writtenIn, 11)]).landings).toBe(1);
  expect(told([...FLOWN, at(61, stamp('landed'), 11)]).landings).toBe(2);
});

test('what was held back and could not be done is told by its item, as said last', () => {
  expect(told(FLOWN).heldBack).toEqual([{ step: 'flaps', item: 'The flaps', why: null }]);
  expect(told(FLOWN).cannot).toEqual([{ step: 'trim', item: 'The trim', why: 'not fitted' }]);
  expect(told([...FLOWN, at(71, tick('done', 'flaps'), 11)]).heldBack).toEqual([]);
});

test('a phase lasts until the next begins, and a step done late does not bring it back', () => {
  const late = [...FLOWN, at(11, tick('done', 'flaps'), 4.5)].map((one) => one);
  const expected = [
    ['ramp', 10],
    ['taxi', 6],
    ['roll', 1],
    ['climb', 43],
    ['after', 10],
  ];
  const phases = (entries: readonly Entry[]) =>
    told(entries).phases.map(({ phase, ms }) => [phase, ms / 60_000]);
  expect(phases(FLOWN)).toEqual(expected);
  expect(phases(late)).toEqual(expected);
});

test('notes stand in the order they were written, and one is taken back', () => {
  const noted = [
    ...FLOWN,
    at(80, { kind: 'noted', text: 'gusts' }, 11),
    at(81, { kind: 'noted', text: 'fog' }, 12),
  ];
  const texts = (entries: readonly Entry[]) => told(entries).notes.map(({ text }) => text);
  expect(texts(noted)).toEqual(['gusts', 'fog']);
  expect(texts([...noted, at(82, { kind: 'undo', target: 'id-11' }, 13)])).toEqual(['fog']);
});

test('a note or a correction alone begins no sortie, so that none is flown by writing into an old one', () => {
  const alone = written(
    { kind: 'noted', text: 'gusts' },
    { kind: 'corrected', what: 'landed', sortieMs: SORTIE_MS },
  );
  expect(foldSortie(alone).id).toBeNull();
  expect(logOf(alone, procedureOf)).toBeNull();
});

test('a seal with garbage in it shows what of it is a figure', () => {
  const garbage = {
    kind: 'sealed',
    documents: { field: 'hash-f', aircraft: 7 },
    figures: {
      runway: { value: '28', unit: '' },
      wind: { value: { evil: 1 }, unit: '' },
      rotateKt: null,
    },
  } as unknown as SortieEvent;
  expect(told([...FLOWN, at(60, garbage, 11)]).seals[0]).toMatchObject({
    documents: { field: 'hash-f' },
    figures: { runway: { value: '28', unit: '' } },
  });
  expect(Object.keys(told([...FLOWN, at(60, garbage, 11)]).seals[0]?.figures ?? {})).toEqual([
    'runway',
  ]);
});

test('the log says the same in whatever order its entries come, and twice', () => {
  fc.assert(
    fc.property(anyRecord, fc.nat(), (entries, by) => {
      const turned = [...entries.slice(by % entries.length), ...entries];
      expect(logOf(turned, procedureOf)).toEqual(logOf(entries, procedureOf));
    }),
  );
});

test('whatever was written over, what was recorded is told all the same', () => {
  const correction = fc.record({
    kind: fc.constant('corrected' as const),
    what: fc.constantFrom(...LOG_MOMENTS),
    sortieMs: fc.constantFrom(null, SORTIE_MS, SORTIE_MS + 3_600_000),
  });
  fc.assert(
    fc.property(fc.array(correction, { maxLength: 6 }), (corrections) => {
      const entries = [...FLOWN, ...corrections.map((one, i) => at(100 + i, one, 20 + i))];
      const recorded = (of: readonly Entry[]) =>
        LOG_MOMENTS.map((moment) => told(of).times[moment].recorded);
      expect(recorded(entries)).toEqual(recorded(FLOWN));
      // Everything taken back, newest first, it is as it was.
      const undone = corrections.map((_, i) =>
        at(200 + i, { kind: 'undo', target: `id-${20 + corrections.length - 1 - i}` }, 40 + i),
      );
      expect(told([...entries, ...undone]).times).toEqual(told(FLOWN).times);
    }),
  );
});

// 1850 to 1912 is 22 minutes, whatever the seconds: as times stand on the page of a log. Common practice, no published source.
test('durations are those of the times as they are read', () => {
  const time = (ms: number) => ({ sortieMs: ms, recorded: null, correction: null });
  const off = Date.UTC(1987, 3, 5, 18, 50, 59);
  const on = Date.UTC(1987, 3, 5, 19, 12, 1);
  const none = { sortieMs: null, recorded: null, correction: null };
  const times = (a: number, b: number) => ({
    'off chocks': time(a),
    airborne: none,
    landed: none,
    'on chocks': time(b),
  });
  expect(blockMinutes(times(off, on))).toBe(22);
  expect(blockMinutes(times(on, off))).toBeNull();
  expect(flightMinutes(times(off, on))).toBeNull();
  // Over midnight.
  expect(blockMinutes(times(Date.UTC(1987, 3, 5, 23, 50), Date.UTC(1987, 3, 6, 0, 20)))).toBe(30);
});

test('a time of day is that of the nearest day', () => {
  const near = Date.UTC(1987, 3, 5, 23, 50);
  expect(nearestAtMinute(10, near)).toBe(Date.UTC(1987, 3, 6, 0, 10));
  expect(nearestAtMinute(23 * 60, near)).toBe(Date.UTC(1987, 3, 5, 23, 0));
  expect(nearestAtMinute(23 * 60 + 55, Date.UTC(1987, 3, 6, 0, 5))).toBe(
    Date.UTC(1987, 3, 5, 23, 55),
  );
});

test('totals add up what was flown; what was only planned is not a sortie', () => {
  const line = summaryOf(told(FLOWN));
  const planned = summaryOf(
    told(
      written({ kind: 'set', inputs: { callsign: 'Gannet 1' } }).map((e) => ({
        ...e,
        sortie: 'b',
      })),
    ),
  );
  expect(line).toMatchObject({ blockMinutes: 60, flightMinutes: 43, landings: 1, flown: true });
  expect(planned.flown).toBe(false);
  expect(totalsOf([line, { ...line, sortie: 'c', blockMinutes: null }, planned])).toEqual({
    sorties: 2,
    blockMinutes: 60,
    flightMinutes: 86,
    landings: 2,
  });
  expect([line, { ...line, wallMs: line.wallMs + 1 }].sort(compareLines)[0]?.wallMs).toBe(
    line.wallMs + 1,
  );
});

/** The log of these entries, by the procedure with a list. */
const withList = (entries: readonly Entry[]) =>
  logOf(entries, () => ({
    ...PROCEDURE,
    lists: [
      // biome-ignore lint/suspicious/noThenProperty: an object under this name never makes a promise; only a function would.
      { id: 'engine-fire-ground', title: 'Engine fire', steps: [step('cock')], then: 'end' },
    ],
  }));

test('a list that was gone through is in the log, with its times', () => {
  const fire = [OPEN, tick('done', 'pins'), OPEN_OTHER_LIST] as const;
  const begun = { id: OTHER_LIST, list: 'engine-fire-ground', title: 'Engine fire' };
  expect(withList(written(...fire))?.lists).toMatchObject([
    { ...begun, openedAt: { sortieMs: SORTIE_MS + 3000 }, closedAt: null },
  ]);
  const ended = [
    ...fire,
    { kind: 'close', run: OTHER_LIST, leadsTo: 'end' },
    { kind: 'close', run: RUN, leadsTo: 'end' },
  ] as const;
  expect(withList(written(...ended))?.lists).toMatchObject([
    { ...begun, closedAt: { sortieMs: SORTIE_MS + 4000 } },
  ]);
  // Opened by mistake and taken back, it was not gone through.
  expect(withList(written(...fire, { kind: 'undo', target: 'id-3' }))?.lists).toEqual([]);
  // Without the procedure its name is all there is.
  expect(told(written(...fire)).lists).toMatchObject([{ list: 'engine-fire-ground', title: null }]);
});

test('one that two windows opened at once stands there once; opened again it stands there twice', () => {
  const twice = [
    ...written(OPEN),
    entry({ ...OPEN_OTHER_LIST, run: 'here' }, 2, 'a'),
    entry({ ...OPEN_OTHER_LIST, run: 'there' }, 2, 'b'),
    entry({ kind: 'close', run: 'there', leadsTo: 'return' }, 3),
  ];
  expect(withList(twice)?.lists).toHaveLength(1);
  expect(withList([...twice, entry(OPEN_OTHER_LIST, 4)])?.lists).toHaveLength(2);
});

test('begun in the air, the log says where, and holds nothing before it back', () => {
  const flown = written(OPEN, { kind: 'begun', run: RUN, phase: 'after' }, tick('done', 'lever'));
  expect(told(flown)).toMatchObject({
    begun: [{ phase: 'after', at: { sortieMs: SORTIE_MS + 2000 } }],
    heldBack: [],
    cannot: [],
    done: 1,
  });
  expect(told(written(OPEN, tick('done', 'pins'))).begun).toEqual([]);
});
