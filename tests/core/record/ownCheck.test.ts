/** What the app adds is read again by the app: from its store, from another window, and from a file. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Entry, Inputs, SortieEvent } from '../../../src/core/sortie/entry';
import { HIGHEST_SEQ } from '../../../src/core/sortie/entry';
import { entryMisfit, readEntry } from '../../../src/core/sortie/entry.schema';
import { readRecord, writeRecord } from '../../../src/exchange/recordFile';
import { newId, SortieRecord } from '../../../src/record/record';
import { useFreshDevice } from './device';

useFreshDevice();

/** Any number there is: infinite ones and none at all among them. */
const anyNumber = fc.double();
const orNull = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: null });
const anyEnd = fc.constantFrom('01', '19', '28L', '10R');
/** A name as documents give it; an older one may have given one that the language reserves. */
const anyNode = fc.oneof(
  { weight: 5, arbitrary: fc.stringMatching(/^[A-Za-z0-9-]{1,16}$/) },
  fc.constantFrom('constructor', 'prototype'),
);
const anyText = fc.string({ unit: 'binary', maxLength: 400 });
const anyHash = fc.stringMatching(/^[0-9a-f]{64}$/);
const anyId = fc.constantFrom(newId(), newId(), newId());
const anyPass = fc.integer({ min: 1, max: 1000 });
const anyPhase = fc.constantFrom('ramp', 'taxi', 'line-up', 'roll', 'after');
const anyMoment = fc.constantFrom(
  'off chocks',
  'brakes released',
  'stopping',
  'airborne',
  'landed',
  'on chocks',
);
const anySaw = fc.dictionary(
  fc.constantFrom('runway', 'wet', 'rotateKt'),
  fc.oneof(anyText, fc.boolean(), fc.constant(null), fc.constantFrom(Number.NaN, 0, 131.5)),
  { noNullPrototype: true },
);

const anyInputs: fc.Arbitrary<Partial<Inputs>> = fc.record(
  {
    field: orNull(anyHash),
    aircraft: orNull(anyHash),
    procedure: orNull(anyHash),
    callsign: anyText,
    surface: fc.constantFrom('dry', 'wet', 'contaminated'),
    ownCrosswindKt: orNull(anyNumber),
    ownTailwindKt: orNull(anyNumber),
    ownWetCrosswindKt: orNull(anyNumber),
    ownGustSpreadKt: orNull(anyNumber),
    ownVisibilityM: orNull(anyNumber),
    ownCeilingFt: orNull(anyNumber),
    bingoKg: orNull(anyNumber),
    brakesUsedMs: orNull(anyNumber),
    closedToday: fc.array(anyEnd),
    preferred: fc.boolean(),
    holdShortM: fc.dictionary(anyEnd, anyNumber, { noNullPrototype: true }),
    typedNorth: fc.constantFrom('true', 'magnetic'),
    variationDeg: orNull(anyNumber),
    ownQnhHpa: orNull(anyNumber),
    ownTemperatureC: orNull(anyNumber),
    rollsFromM: anyNumber,
    checkMarkM: orNull(anyNumber),
    factors: fc.constantFrom('none', 'document', 'common'),
    noParachute: fc.boolean(),
    chosen: orNull(fc.record({ end: anyEnd, purpose: fc.constantFrom('take-off', 'landing') })),
    purpose: fc.constantFrom(null, 'take-off', 'landing'),
    load: orNull(
      fc.record({
        fuelKg: anyNumber,
        stations: fc.dictionary(anyNode, anyNumber, { noNullPrototype: true }),
      }),
    ),
    stand: orNull(anyNode),
    taxiClosed: fc.array(fc.tuple(anyNode, anyNode).map(([from, to]) => `${from}~${to}`)),
    taxiEntry: orNull(fc.record({ end: anyEnd, hold: anyNode, intersection: fc.boolean() })),
    taxiVia: orNull(anyText),
    departTo: fc.constantFrom(null, 'n', 'sw'),
    ownCalls: fc.dictionary(fc.constantFrom('taxi', 'line-up'), anyText, { noNullPrototype: true }),
    supersonic: fc.boolean(),
    options: fc.dictionary(anyNode, fc.boolean(), { noNullPrototype: true }),
    ties: fc.dictionary(anyNode, anyNode, { noNullPrototype: true }),
  },
  { requiredKeys: [] },
);

/** All that a pilot can do, with whatever number, text or moment. */
const anyDeed: fc.Arbitrary<SortieEvent> = fc.oneof(
  { weight: 4, arbitrary: fc.record({ kind: fc.constant('set'), inputs: anyInputs }) },
  fc.record({
    kind: fc.constant('wind'),
    text: anyText,
    north: fc.constantFrom('true', 'magnetic'),
  }),
  fc.record({ kind: fc.constant('clock'), sortieMs: anyNumber, rate: anyNumber }),
  fc.record(
    {
      kind: fc.constantFrom('done', 'held', 'cannot'),
      run: anyId,
      pass: anyPass,
      step: anyNode,
      saw: anySaw,
      why: anyText,
    },
    { requiredKeys: ['kind', 'run', 'pass', 'step', 'saw'] },
  ),
  fc.record({
    kind: fc.constant('passed'),
    run: anyId,
    pass: anyPass,
    step: anyNode,
    saw: anySaw,
  }),
  fc.record({
    kind: fc.constant('open'),
    run: anyId,
    procedure: anyHash,
    list: orNull(anyNode),
  }),
  fc.record({
    kind: fc.constant('close'),
    run: anyId,
    leadsTo: fc.oneof(
      fc.constantFrom('return', 'end'),
      fc.record({ phase: anyPhase, reopen: fc.array(anyPhase) }),
    ),
  }),
  fc.record({
    kind: fc.constant('reopen'),
    run: anyId,
    passes: fc.dictionary(anyPhase, anyPass, { noNullPrototype: true }),
  }),
  fc.record({ kind: fc.constant('stamp'), what: anyMoment }),
  fc.record({ kind: fc.constant('taxied'), point: anyNode, placed: fc.boolean() }),
  fc.record({ kind: fc.constantFrom('interrupted', 'resumed'), run: anyId }),
  fc.record({ kind: fc.constant('taken up') }),
  fc.record({ kind: fc.constant('undo'), target: anyId }),
  fc.record({ kind: fc.constant('noted'), text: anyText }),
  fc.record({ kind: fc.constant('corrected'), what: anyMoment, sortieMs: orNull(anyNumber) }),
  fc.record({
    kind: fc.constant('sealed'),
    documents: fc.dictionary(fc.constantFrom('field', 'aircraft'), anyHash, {
      noNullPrototype: true,
    }),
    figures: fc.dictionary(
      fc.constantFrom('rotateKt', 'runway'),
      fc.record({ value: fc.oneof(anyNumber, anyText), unit: fc.constantFrom('kt', '') }),
      { noNullPrototype: true },
    ),
  }),
);

const anyClock = fc.record({ wallMs: anyNumber, sortieMs: anyNumber });

/** How high the list may have been counted, by this device or by one it heard of. */
const anyBefore = fc.constantFrom(0, 7, HIGHEST_SEQ / 2, HIGHEST_SEQ, Number.MAX_SAFE_INTEGER);

function expectRead(entries: readonly Entry[]): void {
  expect(entries.map((entry) => readEntry(entry).problem)).toEqual(entries.map(() => null));
  expect(entries.map((entry) => entryMisfit(entry))).toEqual(entries.map(() => null));
  const [file = []] = writeRecord({ entries, documents: [] });
  expect(readRecord(file.join(''))).toMatchObject({ problem: null });
}

describe('whatever is added passes the check of what is read', () => {
  test('of its store, of another window, and of a file that is brought', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(anyClock, fc.array(anyDeed, { minLength: 1, maxLength: 3 })), {
          minLength: 1,
          maxLength: 6,
        }),
        anyBefore,
        (deeds, seq) => {
          const record = new SortieRecord(() => undefined);
          record.numberAfter([{ ...AN_ENTRY, seq }]);
          const added = deeds.flatMap(([at, events]) => record.add('sortie-one', at, ...events));
          expect(added).toHaveLength(deeds.flatMap(([, events]) => events).length);
          expectRead(added);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('also what waited for the store, and was numbered when it answered', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyDeed, { minLength: 1, maxLength: 4 }), async (events) => {
        const record = new SortieRecord(() => undefined);
        record.add(newId(), { wallMs: Number.NaN, sortieMs: 1e20 }, ...events);
        await record.open();
        await record.settled();
        expect(record.entries.length).toBeGreaterThanOrEqual(events.length);
        expectRead(record.entries);
      }),
      { numRuns: 20 },
    );
  });
});

const AN_ENTRY: Entry = {
  id: 'before',
  seq: 1,
  sortie: 'sortie-one',
  at: { wallMs: 0, sortieMs: 0 },
  kind: 'taken up',
};
