/**
 * One verdict: no place calls a runway within limits where the verdict has something that stops
 * there, nothing that stops goes away when the day gets worse, and what was gone on with comes back
 * when it does.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endsOf } from '../../../src/core/airfield/ends';
import type { Field, Surface } from '../../../src/core/airfield/field';
import { notAccepted } from '../../../src/core/day/accepted';
import { isStopping } from '../../../src/core/day/verdict';
import type { Purpose } from '../../../src/core/runway/question';
import type { Accepted } from '../../../src/core/sortie/fold';
import { demoAircraft, demoFields } from '../documents/demo';
import { AT, brief, documentsAt, flown, moment, TABLES } from './moments';

const HARROW = documentsAt('XHAR');

/** A day in which the lengths, the mass and the wind may each be beyond what the runway allows. */
interface HardDay {
  readonly field: Field;
  readonly end: string;
  readonly aircraft: string;
  readonly purpose: Purpose;
  readonly wind: string;
  readonly surface: Surface;
  readonly temperatureC: number;
  /** The share of the greatest fuel. */
  readonly fuel: number;
  readonly rollsFromM: number;
}

const two = (number: number) => String(number).padStart(2, '0');

const anyHardDay: fc.Arbitrary<HardDay> = fc
  .record({
    field: fc.constantFrom(...demoFields),
    at: fc.nat(7),
    aircraft: fc.constantFrom(...demoAircraft.map(({ code }) => code)),
    purpose: fc.constantFrom<Purpose>('take-off', 'landing'),
    fromDeg: fc.integer({ min: 1, max: 36 }),
    speedKt: fc.integer({ min: 1, max: 28 }),
    gustKt: fc.constantFrom(0, 0, 6, 12),
    surface: fc.constantFrom<Surface>('dry', 'wet', 'contaminated'),
    temperatureC: fc.integer({ min: -20, max: 45 }),
    fuel: fc.double({ min: 0.3, max: 1.2, noNaN: true }),
    rollsFromM: fc.constantFrom(0, 0, 250),
  })
  .map(({ at, fromDeg, speedKt, gustKt, ...rest }) => {
    const ends = endsOf(rest.field);
    const gust = gustKt === 0 ? '' : `G${two(speedKt + gustKt)}`;
    return {
      ...rest,
      end: ends[at % ends.length]?.designator ?? '',
      wind: `${String(fromDeg * 10).padStart(3, '0')}${two(speedKt)}${gust}KT`,
    };
  });

function judged(day: HardDay) {
  const documents = { field: day.field, ...flown(day.aircraft) };
  const loading = documents.aircraft?.load;
  const [usual] = loading?.presets ?? [];
  const load =
    loading === undefined || usual === undefined
      ? null
      : { ...usual, fuelKg: loading.fuel.maxKg * day.fuel };
  return brief(
    moment(day.wind, {
      chosen: { end: day.end, purpose: day.purpose },
      purpose: day.purpose,
      surface: day.surface,
      ownTemperatureC: day.temperatureC,
      rollsFromM: day.rollsFromM,
      load,
    }),
    documents,
    TABLES,
  );
}

/** What stops because of the runway, the wind and the numbers, and not because of the load alone. */
const OF_LOAD = [
  'over-max-take-off',
  'over-max-landing',
  'outside-envelope',
  'fuel-over',
  'station-over',
  'below-landing-fuel',
  'over-mass',
  'no-fuel',
];

const stopping = (day: HardDay) => judged(day).verdict.cautions.filter(isStopping);

describe('the verdict', () => {
  test('stops wherever a place shows the runway beyond a limit, and nowhere else', () => {
    let [within, beyond] = [0, 0];
    fc.assert(
      fc.property(anyHardDay, (day) => {
        const { verdict, wind, today } = judged(day);
        const said = verdict.cautions.filter(isStopping).map(({ code }) => code);
        const ofRunway = said.filter((code) => !OF_LOAD.includes(code));
        // The list of runways, and the choice among them.
        const isWithin = wind.inUse?.withinLimits === true;
        expect(ofRunway.length > 0 || said.includes('over-mass') || said.includes('no-fuel')).toBe(
          !isWithin,
        );
        // Numbers and the roll: what falls short there stops too.
        const planned =
          day.purpose === 'take-off' ? today?.takeoff.planned : today?.landing.planned;
        if (planned?.because === null) {
          const left = Object.entries(planned.figures).filter(([name]) => name.endsWith('LeftM'));
          const isShort = left.some(([, figure]) => (figure.value ?? 0) < 0);
          if (isShort) expect(isWithin).toBe(false);
        } else if (planned !== undefined) expect(isWithin).toBe(false);
        if (isWithin) within += 1;
        else beyond += 1;
      }),
      { numRuns: 300 },
    );
    expect(Math.min(within, beyond)).toBeGreaterThan(20);
  });

  const SURFACES: readonly Surface[] = ['dry', 'wet', 'contaminated'];
  /** It can't even be worked out any more: what was short before is worse than short. */
  const BEYOND_NUMBERS = ['no-numbers', 'cannot-climb', 'over-mass'];
  /** More fuel mends these. */
  const MENDED_BY_FUEL = ['no-fuel', 'below-landing-fuel'];
  /** A slippery surface takes less of the energy up in the brakes; what binds is then its length. */
  const SPARED_BY_SLIP = ['brake-energy'];

  test.each([
    ['mass', (day: HardDay) => ({ ...day, fuel: day.fuel + 0.15 }), MENDED_BY_FUEL],
    ['temperature', (day: HardDay) => ({ ...day, temperatureC: day.temperatureC + 10 }), []],
    [
      'elevation',
      (day: HardDay) => ({
        ...day,
        field: {
          ...day.field,
          place: { ...day.field.place, elevationFt: day.field.place.elevationFt + 2500 },
        },
      }),
      [],
    ],
    [
      'surface',
      (day: HardDay) => ({
        ...day,
        surface: SURFACES[SURFACES.indexOf(day.surface) + 1] ?? 'contaminated',
      }),
      SPARED_BY_SLIP,
    ],
  ] as const)('loses nothing that stops when the %s gets worse', (_what, worse, mended) => {
    let stopped = 0;
    fc.assert(
      fc.property(anyHardDay, (day) => {
        const before = stopping(day).map(({ code }) => code);
        const after = stopping(worse(day)).map(({ code }) => code);
        if (before.length > 0) stopped += 1;
        if (after.some((code) => BEYOND_NUMBERS.includes(code))) return;
        const isMended = (code: string) => (mended as readonly string[]).includes(code);
        for (const code of before) if (!isMended(code)) expect(after).toContain(code);
      }),
      { numRuns: 150 },
    );
    expect(stopped).toBeGreaterThan(20);
  });
});

describe('going on outside limits', () => {
  const inWind = (text: string) =>
    brief(moment(text, { chosen: { end: '28', purpose: 'take-off' } }), HARROW, TABLES).verdict;
  const acceptedIn = (text: string): readonly Accepted[] =>
    inWind(text)
      .cautions.filter(isStopping)
      .map((caution) => ({
        ...caution,
        end: '28',
        purpose: 'take-off',
        at: { wallMs: AT.getTime(), sortieMs: AT.getTime() },
      }));
  const open = (text: string, accepted: readonly Accepted[]) =>
    notAccepted(inWind(text), accepted).map(({ code }) => code);

  test('counts for what was shown, comes back when it gets worse, and is for one runway', () => {
    // Across 28 from the left, limit 24.
    expect(open('19030KT', [])).toEqual(['crosswind']);
    const accepted = acceptedIn('19030KT');
    expect(open('19030KT', accepted)).toEqual([]);
    expect(open('19028KT', accepted)).toEqual([]);
    expect(open('19033KT', accepted)).toEqual(['crosswind']);
    expect(
      open(
        '19030KT',
        accepted.map((one) => ({ ...one, end: '10' })),
      ),
    ).toEqual(['crosswind']);
  });

  test('counts for each overloaded station by itself', () => {
    const stations = { 'wing-left': 900, 'wing-right': 700 };
    const { verdict } = brief(
      moment('28010KT', {
        chosen: { end: '28', purpose: 'take-off' },
        load: { fuelKg: 600, stations },
      }),
      HARROW,
      TABLES,
    );
    const stopping = verdict.cautions.filter(isStopping);
    expect(stopping.filter(({ code }) => code === 'station-over')).toHaveLength(2);
    const at = { wallMs: AT.getTime(), sortieMs: AT.getTime() };
    const accepted = stopping.map(
      (one) => ({ ...one, end: '28', purpose: 'take-off', at }) as const,
    );
    expect(notAccepted(verdict, accepted)).toEqual([]);
  });

  test('is never asked for what is said in a word', () => {
    expect(inWind('28010KT').cautions.map(({ code }) => code)).toEqual(['low-sun']);
    expect(open('28010KT', [])).toEqual([]);
  });
});

describe('what a runway is like', () => {
  const codesOf = (asked: ReturnType<typeof moment>, documents = HARROW) =>
    brief(asked, documents, TABLES).verdict.cautions;
  const on = (end: string) => ({ chosen: { end, purpose: 'take-off' as const } });

  test('by night one without lights is no choice, by day it is', () => {
    // 01/19 at Harrow Sound has none. The sun sets there before 2000Z on that day.
    const night = { at: new Date('1987-04-05T23:00:00Z') };
    const codes = (more: object) =>
      codesOf(moment('01015KT', on('01'), more)).map(({ code }) => code);
    expect(codes(night)).toContain('no-lights');
    expect(codes({ at: new Date('1987-04-05T12:00:00Z') })).not.toContain('no-lights');
    const { wind } = brief(moment('01015KT', on('01'), night), HARROW, TABLES);
    expect(wind.inUse?.withinLimits).toBe(false);
  });

  test('one narrower than the aircraft may use is no choice', () => {
    // The grass at its field is 18 m wide; the Sleet's document asks for 20.
    const narrow = codesOf(moment('02010KT', on('02')), documentsAt('XLIN'));
    expect(narrow).toContainEqual({ code: 'narrow', value: 18, limit: 20 });
    const tussock = { ...documentsAt('XLIN'), ...flown('tussock') };
    expect(codesOf(moment('02010KT', on('02')), tussock).map(({ code }) => code)).not.toContain(
      'narrow',
    );
  });

  test('wet, tyres may float from 9 √p on: 145 psi, 108 kt', () => {
    // NASA TN D-2056 (Horne, Dreher 1963): 9 × √145 psi = 9 × 12.04.
    const wet = codesOf(moment('28010KT', { ...on('28'), surface: 'wet' }));
    const floats = wet.find(({ code }) => code === 'aquaplaning');
    expect(floats?.value).toBeCloseTo(108.4, 1);
    expect(codesOf(moment('28010KT', on('28'))).map(({ code }) => code)).not.toContain(
      'aquaplaning',
    );
  });
});
