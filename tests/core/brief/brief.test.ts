import fc from 'fast-check';
import { expect, test } from 'vitest';
import { brief } from '../../../src/core/brief/brief';
import { factStage, purposeOf } from '../../../src/core/brief/facts';
import { numbersStage } from '../../../src/core/brief/numbers';
import { stepFacts, stepsStage } from '../../../src/core/brief/steps';
import { taxiStage } from '../../../src/core/brief/taxi';
import { windStage } from '../../../src/core/brief/wind';
import type { Moment } from '../../../src/core/sortie/entry';
import { foldSortie } from '../../../src/core/sortie/fold';
import { demoFields } from '../documents/demo';
import { OPEN, OPEN_LIST, written } from '../sortie/recorder';
import {
  anyDocuments,
  anyMoment,
  anyTables,
  documentsAt,
  moment,
  NO_TABLES,
  stamped,
  TABLES,
} from './moments';

const HARROW = documentsAt('XHAR');
const MARRAM = documentsAt('XMAR');

test('the brief is its stages, one after another, whatever the moment', () => {
  fc.assert(
    fc.property(anyMoment, anyDocuments, anyTables, (asked, documents, tables) => {
      const { inputs, at, wind: entered, run, list, stamps } = asked;
      const settled = factStage(inputs, at, documents, tables);
      const wind = windStage(settled, entered, purposeOf(inputs, stamps), inputs.chosen, at);
      const numbers = numbersStage(documents.aircraft);
      const facts = stepFacts(settled, wind, entered, numbers, inputs);
      expect(brief(asked, documents, tables)).toEqual({
        settled,
        wind,
        numbers,
        taxi: taxiStage(documents.aircraft, documents.field),
        steps: stepsStage(documents.procedure, run, list, stamps, facts),
      });
    }),
  );
});

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

test('the steps are told what they ask for', () => {
  const chosen = { end: '28', purpose: 'take-off' } as const;
  const inputs = { chosen, callsign: 'Gannet 1', surface: 'wet', variationDeg: -14 } as const;
  const { steps, wind } = brief(moment('27012', inputs), HARROW, TABLES);
  const heading = wind.figures.get('28')?.headingMagnetic.value;
  // The Sleet's document, and an evening in April at 63 N.
  expect(steps?.facts).toEqual({
    night: false,
    lights: false,
    wet: true,
    controlled: false,
    lightWind: false,
    runway: '28',
    runwayMagnetic: heading,
    wind: '27012',
    field: HARROW.field?.name,
    callsign: 'Gannet 1',
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
    climbPitch: '13–17',
    approachKt: 161,
  });
});

test('what is not known yet is not known to the steps, and keeps them all', () => {
  const nothing = { field: null, aircraft: null, procedure: HARROW.procedure };
  const { steps } = brief(moment(null), nothing, NO_TABLES);
  const { wet, ...others } = steps?.facts ?? {};
  expect(wet).toBe(false);
  expect(new Set(Object.values(others))).toEqual(new Set([null]));
  const dropped = steps?.walk.phases
    .flatMap(({ rows }) => rows)
    .flatMap(({ state }) => (state.kind === 'not-needed' ? state.facts : []));
  expect(new Set(dropped)).toEqual(new Set(['wet']));
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
