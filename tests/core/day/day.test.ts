import { computed, signal } from '@preact/signals-core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { wholeDay } from '../../../src/core/day/askDay';
import { type Day, day } from '../../../src/core/day/day';
import { type Memo, plainMemo } from '../../../src/core/day/memo';
import type { Moment } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { demoFields } from '../documents/demo';
import { OPEN, OPEN_LIST, written } from '../sortie/recorder';
import {
  anyDocuments,
  anyMoment,
  anyTables,
  brief,
  documentsAt,
  moment,
  NO_TABLES,
  sourcesAt,
  stamped,
  TABLES,
} from './moments';

const HARROW = documentsAt('XHAR');
const MARRAM = documentsAt('XMAR');

/** The memo that the app passes: a value that says the same as before is no change. */
const signals: Memo = (work, same = Object.is) => {
  let last: { value: ReturnType<typeof work> } | null = null;
  const kept = computed(() => {
    const value = work();
    if (last === null || !same(last.value, value)) last = { value };
    return last.value;
  });
  return () => kept.value;
};

/** What can be compared of a day: functions are others in each. */
const said = (asked: Day) => {
  const { settled, dayGiven, ...others } = wholeDayOf(asked);
  const { lengthNeededM, taxiDistanceM, ...facts } = settled;
  const runs = asked
    .wind()
    .ranked?.ends.map(({ designator, headwindLeastKt }) => [
      lengthNeededM?.['take-off'](designator, headwindLeastKt),
      taxiDistanceM?.(designator),
    ]);
  const { question, ...wind } = others.wind;
  return { ...others, wind, facts, runs, given: dayGiven?.inputs };
};

const wholeDayOf = (asked: Day) => ({
  ...wholeDay(asked),
  settled: asked.settled(),
  wind: asked.wind(),
  dayGiven: asked.dayGiven(),
  ladder: asked.ladder(),
  calls: asked.calls(),
});

test('however its sources change, a day kept by signals is the day worked out afresh', () => {
  const anySources = fc.tuple(anyMoment, anyDocuments, anyTables);
  fc.assert(
    fc.property(fc.array(anySources, { minLength: 2, maxLength: 4 }), (changes) => {
      const [first] = changes;
      if (first === undefined) return;
      const now = signal(sourcesAt(...first));
      const { parts } = now.peek();
      const kept = day(
        {
          sortie: () => now.value.sortie(),
          fieldCode: () => null,
          minuteMs: () => now.value.minuteMs(),
          secondMs: () => now.value.secondMs(),
          documents: {
            field: () => now.value.documents.field(),
            aircraft: () => now.value.documents.aircraft(),
            procedure: () => now.value.documents.procedure(),
          },
          parts: {
            ...parts,
            sun: () => now.value.parts.sun(),
            variation: () => now.value.parts.variation(),
          },
        },
        signals,
      );
      for (const change of changes) {
        now.value = sourcesAt(...change);
        expect(said(kept)).toEqual(said(day(now.peek(), plainMemo)));
      }
    }),
    { numRuns: 15 },
  );
}, 30_000);

test('what is judged either has an order of ends or says why there is none', () => {
  fc.assert(
    fc.property(anyMoment, anyDocuments, anyTables, (asked, documents, tables) => {
      const { wind } = brief(asked, documents, tables);
      expect(wind.ranked === null).toBe(wind.because !== null);
      expect([...wind.figures.keys()]).toEqual(
        wind.ranked?.ends.map(({ designator }) => designator) ?? [],
      );
    }),
  );
});

test.each([
  ['no field', { field: null }, '27012', 'no-field'],
  ['no aircraft and no limits of the pilot’s own', { aircraft: null }, '27012', 'no-limits'],
  ['no wind', {}, null, 'no-wind'],
  ['no wind in what was typed', {}, 'hello', 'no-wind'],
])('with %s there is no order of ends, and that is the reason', (_, without, text, because) => {
  expect(brief(moment(text), { ...HARROW, ...without }, TABLES).wind.because).toBe(because);
});

test('the pilot’s own limits are enough to judge by', () => {
  const inputs = { ownCrosswindKt: 15, ownTailwindKt: 5 };
  const { wind, settled } = brief(
    moment('27012', inputs),
    { ...HARROW, aircraft: null, procedure: null },
    TABLES,
  );
  expect(wind.ranked?.best?.designator).toBe('28');
  expect(settled.crosswindLimit).toMatchObject({ value: 15, why: { source: 'pilot' } });
});

test.each([
  // The Sleet's document: 24 dry, 18 wet, 10 contaminated.
  ['dry', null, 24, 'aircraft'],
  ['wet', null, 18, 'aircraft'],
  ['contaminated', null, 10, 'aircraft'],
  ['dry', 20, 20, 'pilot'],
  ['dry', 24, 24, 'aircraft'],
  ['wet', 20, 18, 'aircraft'],
  ['dry', 0, 0, 'pilot'],
] as const)(
  'on a %s runway, with %s kt of one’s own, the limit across is %s kt, by the %s',
  (surface, ownCrosswindKt, value, source) => {
    const { settled } = brief(moment(null, { surface, ownCrosswindKt }), HARROW, TABLES);
    expect(settled.crosswindLimit).toMatchObject({ value, why: { source } });
  },
);

test.each<[readonly Moment[], string]>([
  [[], 'take-off'],
  [['off chocks'], 'take-off'],
  [['brakes released'], 'take-off'],
  [['brakes released', 'stopping'], 'take-off'],
  [['brakes released', 'airborne'], 'landing'],
  [['brakes released', 'airborne', 'landed'], 'landing'],
  [['brakes released', 'airborne', 'landed', 'on chocks'], 'landing'],
  [['brakes released', 'airborne', 'landed', 'brakes released'], 'take-off'],
])('after %j the ends are judged for %s', (moments, purpose) => {
  const stamps = moments.map(stamped);
  expect(brief(moment('27012', {}, { stamps }), HARROW, TABLES).wind.purpose).toBe(purpose);
  for (const set of ['take-off', 'landing'] as const) {
    const own = brief(moment('27012', { purpose: set }, { stamps }), HARROW, TABLES);
    expect(own.wind.purpose).toBe(set);
  }
});

test('for take-off the run available counts, for landing the distance beyond the threshold', () => {
  for (const field of demoFields) {
    for (const { ends } of field.runways) {
      for (const end of ends) {
        const available = (purpose: 'take-off' | 'landing') =>
          brief(moment('27012', { purpose }), { ...HARROW, field }, TABLES).wind.figures.get(
            end.designator,
          )?.available.value;
        expect(available('take-off')).toBe(end.toraM);
        expect(available('landing')).toBe(end.ldaM);
      }
    }
  }
});

test('the end in use is the pilot’s choice, also where another is best', () => {
  const chosen = { end: '10', purpose: 'take-off' } as const;
  const { wind } = brief(moment('27012', { chosen }), HARROW, TABLES);
  expect(wind.using).toBe('10');
  expect(wind.inUse?.designator).toBe('10');
  expect(wind.ranked?.best?.designator).toBe('28');
});

test('the end is in use before there is a wind to judge it in', () => {
  const chosen = { end: '10', purpose: 'take-off' } as const;
  const { wind } = brief(moment(null, { chosen }), HARROW, TABLES);
  expect(wind).toMatchObject({ using: '10', inUse: null });
});

test('an end chosen to take off from is not in use for landing', () => {
  const chosen = { end: '28', purpose: 'take-off' } as const;
  const stamps = [stamped('brakes released'), stamped('airborne')];
  const { wind, steps } = brief(moment('27012', { chosen }, { stamps }), HARROW, TABLES);
  expect(wind).toMatchObject({ using: null, inUse: null });
  expect(steps?.facts.runway).toBeNull();
});

/** The Sleet as its document gives it, without what physics needs. */
const BOOK = {
  ...HARROW,
  aircraft: HARROW.aircraft && { ...HARROW.aircraft, performance: undefined },
};
const CHOSEN = { end: '28', purpose: 'take-off' } as const;

test('the steps are told what they ask for', () => {
  const inputs = {
    chosen: CHOSEN,
    callsign: 'Gannet 1',
    surface: 'wet',
    variationDeg: -14,
  } as const;
  const { steps, wind } = brief(moment('27012G20KT', inputs), BOOK, TABLES);
  // The Sleet's document, and an evening in April at 63 N.
  expect(steps?.facts).toMatchObject({
    night: false,
    lights: false,
    wet: true,
    controlled: false,
    lightWind: false,
    crossesRunway: null,
    supersonic: false,
    // Its usual load hangs a pod under each wing; there is no seat but the pilot's.
    stores: true,
    passengers: false,
    options: 'chute',
    runway: '28',
    runwayMagnetic: wind.figures.get('28')?.headingMagnetic.value,
    wind: '27012G20KT',
    windKt: 20,
    headwindKt: wind.figures.get('28')?.headwind.value,
    field: 'Harrow',
    callsign: 'Gannet 1',
    massKg: 9200,
    landingMassKg: 7300,
    fuelKg: 2420,
    taxiKt: 18,
    turnKt: 11,
    breakaway: 66,
    keepRolling: '49–52',
    rotateKt: 138,
    liftOffKt: 165,
    gearKt: 240,
    flapsKt: 265,
    reheatOffKt: 320,
    climbKt: '345–375',
    climbPitch: '12–16',
    approachKt: 150,
  });
});

test('where physics gives numbers for today, the steps are told those', () => {
  const load = { fuelKg: 3200, stations: { 'wing-left': 260, 'wing-right': 260, belly: 220 } };
  const { steps, today } = brief(moment('27012KT', { chosen: CHOSEN, load }), HARROW, TABLES);
  // 6 350 kg empty, a pilot of 110, and the load: 10 400 kg, and speeds go with the root of mass.
  expect(steps?.facts.massKg).toBe(10_400);
  expect(steps?.facts.rotateKt).toBeCloseTo(138 * Math.sqrt(10_400 / 9200), 6);
  expect(steps?.facts.liftOffKt).toBeCloseTo(165 * Math.sqrt(10_400 / 9200), 6);
  const planned = today?.takeoff.planned;
  expect(planned?.because).toBeNull();
  if (planned?.because !== null) return;
  expect(steps?.facts.lastStopKt).toBe(planned.figures.lastStopKt.value);
  expect(steps?.facts.runM).toBe(planned.figures.runM.value);
});

test('QNH and density altitude are told only where someone gave them', () => {
  const air = (text: string, inputs = {}) => {
    const { steps } = brief(moment(text, inputs), HARROW, TABLES);
    return [steps?.facts.qnh, steps?.facts.temperatureC, steps?.facts.densityAltitudeFt];
  };
  expect(air('27012KT')).toEqual([null, null, null]);
  expect(air('27012KT', { ownQnhHpa: 1009 })).toEqual([1009, null, null]);
  expect(air('XHAR 051850Z 27012KT 9999 FEW030 14/06 Q1009')).toEqual([
    1009,
    14,
    expect.any(Number),
  ]);
});

test('while today’s numbers are on their way, what they would change is not known', () => {
  const sources = sourcesAt(moment('27012KT', { chosen: CHOSEN }), HARROW, TABLES);
  const facts = (physics: 'loading' | 'failed') =>
    day({ ...sources, parts: { ...sources.parts, physics: () => physics } }, plainMemo).facts();
  expect(facts('loading')).toMatchObject({
    rotateKt: null,
    approachKt: null,
    climbKt: null,
    gearKt: 240,
  });
  // Where they cannot be had, the book's figures stand in for them.
  expect(facts('failed')).toMatchObject({ rotateKt: 138, approachKt: 150, climbKt: '345–375' });
});

test('an option is fitted as the pilot says, or else as the procedure does', () => {
  const options = (chosen: Record<string, boolean>) =>
    brief(moment(null, { options: chosen }), HARROW, TABLES).steps?.facts.options;
  expect([options({}), options({ chute: false }), options({ chute: true, hook: true })]).toEqual([
    'chute',
    '',
    'chute',
  ]);
});

test('what is not known yet is not known to the steps, and keeps them all', () => {
  const nothing = { field: null, aircraft: null, procedure: HARROW.procedure };
  const { steps } = brief(moment(null), nothing, NO_TABLES);
  const { wet, supersonic, options, markM, ...others } = steps?.facts ?? {};
  expect([wet, supersonic, options, markM]).toEqual([false, false, 'chute', 300]);
  expect(new Set(Object.values(others))).toEqual(new Set([null]));
  const dropped = steps?.walk.phases
    .flatMap(({ rows }) => rows)
    .flatMap(({ state }) => (state.kind === 'not-needed' ? state.facts : []));
  expect(new Set(dropped)).toEqual(new Set(['wet', 'supersonic']));
});

test('4 kt is a light wind and 5 kt is not, by gust as well', () => {
  // FAA JO 7110.65, 3-5-1: below 5 kt the wind does not choose the runway.
  const light = (text: string) => brief(moment(text), HARROW, TABLES).steps?.facts.lightWind;
  expect(['27004', 'calm', 'VRB04KT'].map(light)).toEqual([true, true, true]);
  expect(['27005', '27004G06KT', 'VRB05KT'].map(light)).toEqual([false, false, false]);
});

test('a field with a tower or a ground station is controlled, one with traffic or information is not', () => {
  const controlled = (code: string) =>
    brief(moment(null), documentsAt(code), TABLES).settled.controlled;
  expect(['XMAR', 'XTUM', 'XHAR', 'XKEL'].map(controlled)).toEqual([true, true, false, false]);
});

test('on the ground one calls ground, else the tower, else information, else traffic', () => {
  const called = (code: string) =>
    brief(moment(null), documentsAt(code), TABLES).taxi?.radio?.service;
  expect(['XMAR', 'XTUM', 'XKEL', 'XHAR'].map(called)).toEqual([
    'ground',
    'tower',
    'information',
    'traffic',
  ]);
  const silent = MARRAM.field && { ...MARRAM.field, radio: [] };
  expect(brief(moment(null), { ...MARRAM, field: silent }, TABLES).taxi?.radio).toBeNull();
});

test('without an aircraft there are no numbers and no taxi, and without a procedure no steps', () => {
  const told = brief(moment('27012'), { ...HARROW, aircraft: null, procedure: null }, TABLES);
  expect(told).toMatchObject({ numbers: null, taxi: null, steps: null });
});

test('a list that is open is walked beside the procedure', () => {
  const { run, list } = foldSortie(written(OPEN, OPEN_LIST));
  const { steps } = brief(moment('27012', {}, { run, list }), HARROW, TABLES);
  expect(steps?.abnormal?.list.id).toBe('rejected-takeoff');
  expect(steps?.abnormal?.walk.position).toMatchObject({ row: { step: { id: 'stop-throttle' } } });
  expect(brief(moment('27012', {}, { run }), HARROW, TABLES).steps?.abnormal).toBeNull();
});
