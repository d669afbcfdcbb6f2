import fc from 'fast-check';
import { expect, test } from 'vitest';
import { askDay } from '../../../src/core';
import { day } from '../../../src/core/day/day';
import { plainMemo } from '../../../src/core/day/memo';
import { CAUTIONS } from '../../../src/core/day/verdict';
import type { Shortfall } from '../../../src/core/runway/question';
import { type FlightGiven, flight, spareN, trueSpeeds } from '../aircraft/flight';
import { demoAircraft } from '../documents/demo';
import {
  AT,
  anyDocuments,
  anyMoment,
  anyTables,
  brief,
  documentsAt,
  moment,
  sourcesAt,
  TABLES,
} from './moments';

const HARROW = documentsAt('XHAR');
const on = (end: string) => ({ chosen: { end, purpose: 'take-off' as const } });
const codes = (text: string | null, inputs = {}, documents = HARROW) =>
  brief(moment(text, inputs), documents, TABLES).verdict.cautions.map(({ code }) => code);

test('on a good day there is nothing to say against the best runway but the evening sun', () => {
  const { verdict } = brief(moment('28010KT'), HARROW, TABLES);
  expect(verdict).toEqual({
    end: '28',
    purpose: 'take-off',
    awaited: [],
    failed: [],
    cautions: [{ code: 'low-sun', value: null, limit: null }],
  });
});

test('a crosswind beyond the limit is said with its figure and the limit, gust included', () => {
  // From the left at right angles: 28 at Harrow Sound heads 280° by its number, within 10°.
  const { verdict } = brief(moment('19030G40KT', on('28')), HARROW, TABLES);
  expect(verdict.end).toBe('28');
  const crosswind = verdict.cautions.find(({ code }) => code === 'crosswind');
  // The Sleet's document: 24 kt dry.
  expect(crosswind?.limit).toBe(24);
  expect(crosswind?.value).toBeGreaterThan(38);
  expect(crosswind?.value).toBeLessThanOrEqual(40);
});

test('the runway selected is judged, not the best, and it is said that another is best', () => {
  const { verdict } = brief(moment('28010KT', on('10')), HARROW, TABLES);
  expect(verdict.end).toBe('10');
  expect(verdict.cautions.at(-1)).toEqual({ code: 'not-best', value: '10', limit: '28' });
});

test('a load beyond its limits is said before a wind beyond its limit', () => {
  const load = { fuelKg: 3200, stations: { 'wing-left': 900, 'wing-right': 900, belly: 900 } };
  const said = codes('19030G40KT', { ...on('28'), load });
  const [mass, crosswind] = [said.indexOf('over-max-take-off'), said.indexOf('crosswind')];
  expect(mass).toBeGreaterThanOrEqual(0);
  expect(crosswind).toBeGreaterThan(mass);
});

test('without a field, an aircraft or a wind the reason is the caution', () => {
  expect(codes('28010KT', {}, { ...HARROW, field: null })).toEqual(['no-field']);
  expect(codes(null)).toContain('no-wind');
  expect(codes('28010KT', {}, { ...HARROW, aircraft: null })).toContain('no-limits');
});

test('while a part is on its way, no cautions mean nothing yet, and that is said', () => {
  const sources = sourcesAt(moment('28010KT'), HARROW, TABLES);
  const { verdict } = day(
    { ...sources, parts: { ...sources.parts, physics: () => 'loading', sun: () => 'failed' } },
    plainMemo,
  );
  expect(verdict()).toMatchObject({ awaited: ['physics'], failed: ['sun'] });
});

/** What a shortfall is called among the cautions: a length by what is declared, the rest by its own name. */
function saidOf(shortfall: Shortfall): string {
  if (shortfall.code === 'length') return shortfall.of;
  if (shortfall.code === 'go-on') return 'go-above-stop';
  if (shortfall.code !== 'no-length') return shortfall.code;
  const { because } = shortfall;
  const byName = ['over-mass', 'no-fuel', 'cannot-climb'].includes(because);
  return byName ? because : 'no-numbers';
}

test('that a twin cannot go on with an engine out is said before it takes off', () => {
  const turnstone = demoAircraft.find(({ code }) => code === 'turnstone');
  if (turnstone?.performance === undefined) throw new Error('no twin');
  const { performance, masses, takeoff } = turnstone;
  // Lost at rotation: the book's run up to there at 15 °C, and the flight of the test's own at 35.
  const oneOut: FlightGiven = {
    aircraft: turnstone,
    performance,
    massKg: masses.usualTakeoffKg,
    sigma: 288.15 / 308.15,
    standardK: 288.15,
    hotterC: 20,
    headwindKt: 5,
    reheat: false,
    share: 0.5,
    deadDragM2: performance.oneEngineOut?.dragAreaM2 ?? 0,
  };
  const { liftOff } = trueSpeeds(oneOut);
  const share = takeoff.rotateKt / takeoff.liftOffKt;
  const spare = spareN(oneOut, liftOff, 0.7);
  const onOneM = (oneOut.massKg * liftOff ** 2 * (1 - share ** 2)) / 2 / spare;
  const airM = flight(oneOut, 50 * 0.3048)?.groundM ?? Number.POSITIVE_INFINITY;
  expect((takeoff.runM ?? 0) * share ** 2 + onOneM + airM).toBeGreaterThan(1200);

  const { verdict } = brief(
    moment('09005KT', { chosen: { end: '09', purpose: 'take-off' }, ownTemperatureC: 35 }),
    { ...documentsAt('XCAI'), aircraft: turnstone },
    TABLES,
  );
  expect(verdict.cautions).toContainEqual(
    expect.objectContaining({ code: 'go-above-stop', value: null }),
  );
});

test('cautions come worst first, and every shortfall of the runway is among them', () => {
  fc.assert(
    fc.property(anyMoment, anyDocuments, anyTables, (asked, documents, tables) => {
      const { verdict, wind } = brief(asked, documents, tables);
      const order = verdict.cautions.map(({ code }) => CAUTIONS.indexOf(code));
      expect(order).toEqual([...order].sort((a, b) => a - b));
      const end = wind.inUse ?? wind.ranked?.best ?? null;
      const said = verdict.cautions.map(({ code }) => code);
      for (const shortfall of end?.shortfalls ?? []) expect(said).toContain(saidOf(shortfall));
    }),
    { numRuns: 60 },
  );
});

test('asked from outside, the whole day comes at once', async () => {
  const asked = await askDay({
    ...HARROW,
    at: AT,
    inputs: { callsign: 'Gannet 1' },
    wind: { text: 'METAR XHAR 051850Z 28012G18KT 9999 FEW020 04/01 Q1008', north: 'true' },
  });
  expect(asked.conditions.weather?.qnhHpa.value).toBe(1008);
  expect(asked.conditions.variation).toMatchObject({ why: { source: 'IGRF-12' } });
  expect(asked.wind.ranked?.best?.designator).toBe('28');
  expect(asked.numbers.today?.takeoff.planned.because).toBeNull();
  expect(asked.verdict.awaited).toEqual([]);
  expect(asked.steps?.facts.callsign).toBe('Gannet 1');
  expect(asked.taxi.fault).toEqual({ code: 'no-start' });
});

test('a date that no magnetic model covers leaves the variation unknown, and says so', async () => {
  const asked = await askDay({ ...HARROW, at: new Date('2031-01-01T00:00:00Z') });
  expect(asked.conditions.variation).toEqual({ value: null, because: 'no-magnetic-model' });
  expect(asked.verdict.failed).toEqual(['variation']);
});
