import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { askDay } from '../../../src/core';
import type { Field } from '../../../src/core/airfield/field';
import { northOf } from '../../../src/core/day/wind';
import { variationTableFor } from '../../../src/core/earth/variationTable';
import type { RankedEnd } from '../../../src/core/runway/question';
import { demoFields } from '../documents/demo';
import { AT, brief, documentsAt, moment, NO_TABLES, TABLES } from './moments';

const HARROW = documentsAt('XHAR');
const REPORT = 'XHAR 051850Z 27012KT 9999 FEW020 04/01 Q1008';

const three = (deg: number) => String(((deg + 719) % 360) + 1).padStart(3, '0');

/** An end, as far as numbers go; rounded, since a turn there and back is not exact. */
const rounded = (end: RankedEnd) =>
  JSON.parse(
    JSON.stringify(end, (_, value) =>
      typeof value === 'number' ? Math.round(value * 1e6) / 1e6 + 0 : value,
    ),
  );

test('the same air typed to magnetic and to true north is the same answer', () => {
  const typed = fc.record({
    from: fc.integer({ min: 1, max: 360 }),
    speed: fc.integer({ min: 1, max: 40 }),
    gust: fc.integer({ min: 0, max: 15 }),
    swing: fc.option(fc.tuple(fc.nat({ max: 60 }), fc.nat({ max: 60 }))),
    variationDeg: fc.integer({ min: -60, max: 60 }),
    field: fc.constantFrom(...demoFields),
  });
  fc.assert(
    fc.property(typed, ({ from, speed, gust, swing, variationDeg, field }) => {
      const tell = (typedNorth: 'true' | 'magnetic') => {
        // Magnetic = true − variation, east positive: ICAO Annex 4; FAA-H-8083-25, ch. 16.
        const turn = typedNorth === 'true' ? 0 : -variationDeg;
        const swinging =
          swing === null
            ? ''
            : ` ${three(from + turn - swing[0])}V${three(from + turn + swing[1])}`;
        const text = `${three(from + turn)}${String(speed).padStart(2, '0')}G${String(speed + gust).padStart(2, '0')}KT${swinging}`;
        return brief(moment(text, { typedNorth, variationDeg }), { ...HARROW, field }, TABLES).wind;
      };
      const [true_, magnetic] = [tell('true'), tell('magnetic')];
      expect(magnetic.north).toBe('magnetic');
      expect(magnetic.fromTrueDeg).toBeCloseTo(true_.fromTrueDeg ?? Number.NaN, 9);
      expect(magnetic.fromMagneticDeg).toBeCloseTo(true_.fromMagneticDeg ?? Number.NaN, 9);
      expect(magnetic.sectorTrueDeg?.map(Math.round)).toEqual(true_.sectorTrueDeg?.map(Math.round));
      expect(magnetic.ranked?.best?.designator).toBe(true_.ranked?.best?.designator);
      expect(magnetic.ranked?.ends.map(rounded)).toEqual(true_.ranked?.ends.map(rounded));
      expect(magnetic.ring).toEqual(true_.ring);
    }),
    { numRuns: 200 },
  );
});

test('a whole report is given to true north, whatever the pilot types in', () => {
  const told = (typedNorth: 'true' | 'magnetic') => {
    const { question, ...wind } = brief(moment(REPORT, { typedNorth }), HARROW, TABLES).wind;
    return { ...wind, asked: question?.wind, north: question?.north };
  };
  expect(told('magnetic').north).toBe('true');
  expect(told('magnetic')).toEqual(told('true'));
});

test('a wind in short is to the north the pilot types in', () => {
  const told = (typedNorth: 'true' | 'magnetic') =>
    brief(moment('27012', { typedNorth, variationDeg: -14 }), HARROW, TABLES).wind;
  expect(told('true')).toMatchObject({ north: 'true', fromTrueDeg: 270, fromMagneticDeg: 284 });
  expect(told('magnetic')).toMatchObject({
    north: 'magnetic',
    fromTrueDeg: 256,
    fromMagneticDeg: 270,
  });
});

test('the pilot’s own variation stands in place of the model’s', () => {
  const own = brief(moment('27012', { variationDeg: -20.5 }), HARROW, TABLES);
  expect(own.settled.variation).toEqual({
    value: -20.5,
    unit: 'deg',
    why: { formula: 'as-set', inputs: { set: -20.5 }, source: 'pilot' },
  });
  const model = brief(moment('27012'), HARROW, TABLES).settled.variation;
  expect(model).toMatchObject({ why: { formula: 'variation', source: 'IGRF-12' } });
  const turned = (told: typeof own) =>
    told.wind.figures.get('28')?.headingMagnetic.value ?? Number.NaN;
  const modelDeg = model.value ?? Number.NaN;
  expect(turned(own) - turned(brief(moment('27012'), HARROW, TABLES))).toBeCloseTo(
    modelDeg + 20.5,
    9,
  );
});

test('the pilot’s own variation needs no field and no model', () => {
  const told = brief(moment(null, { variationDeg: 3 }), { ...HARROW, field: null }, NO_TABLES);
  expect(told.settled.variation.value).toBe(3);
  expect(brief(moment(null), { ...HARROW, field: null }, TABLES).settled.variation).toEqual({
    value: null,
    because: 'no-field',
  });
});

test.each([
  ['before every model', new Date('1899-12-31T23:59:59Z')],
  ['after every model', new Date('2030-01-01T00:00:01Z')],
  ['that is none', new Date(Number.NaN)],
])('on a date %s a true wind is judged, and headings to magnetic north are not known', (_, at) => {
  const { wind, settled } = brief(moment('27012', {}, { at }), HARROW, { ...TABLES, sun: null });
  expect(settled.variation).toEqual({ value: null, because: 'no-magnetic-model' });
  expect(wind.ranked?.best?.designator).toBe('28');
  expect(wind.because).toBeNull();
  expect(wind.fromMagneticDeg).toBeNull();
  for (const figures of wind.figures.values()) {
    expect(figures.headingMagnetic).toEqual({ value: null, because: 'no-magnetic-model' });
    expect(figures.headwind.value).not.toBeNull();
  }
});

test('without variation a magnetic wind is not judged, and that is said', () => {
  const { wind } = brief(moment('27012', { typedNorth: 'magnetic' }), HARROW, NO_TABLES);
  expect(wind).toMatchObject({
    ranked: null,
    because: 'no-variation',
    ring: null,
    fromTrueDeg: null,
  });
  expect(wind.figures.size).toBe(0);
  expect(wind.report?.wind?.speedKt).toBe(12);
});

test('without variation the heading is not known to the steps either', () => {
  const chosen = { end: '28', purpose: 'take-off' } as const;
  const facts = (tables: typeof TABLES) =>
    brief(moment('27012', { chosen }), HARROW, tables).steps?.facts;
  expect(facts(NO_TABLES)).toMatchObject({ runway: '28', runwayMagnetic: null, night: null });
  expect(facts(TABLES)?.runwayMagnetic).toBeTypeOf('number');
});

test('a model answers to the last moment of its span, and no further', async () => {
  const magnetic = await variationTableFor(AT);
  const until = (ms: number) => new Date(magnetic.until.getTime() + ms);
  const variation = (at: Date) =>
    brief(moment(null, {}, { at }), HARROW, { magnetic, sun: null }).settled.variation.value;
  expect(variation(until(0))).not.toBeNull();
  expect(variation(until(1))).toBeNull();
  expect(variation(new Date(magnetic.from.getTime() - 1))).toBeNull();
});

describe('a coded wind in a spoken text', () => {
  // Spoken directions are magnetic: FAA AIM 4-3-6. True in Canada's northern airspace: the same.
  const text = 'KELDER ATIS INFO K 1156Z 19018G28KT 10SM FEW030 15/08 A2992';
  const KELDER = documentsAt('XKEL');
  const asked = (field: Field | null, north?: 'true' | 'magnetic') =>
    askDay({
      ...KELDER,
      field,
      at: AT,
      inputs: { variationDeg: -14 },
      wind: { text, ...(north ? { north } : {}) },
    });

  test('is magnetic, and turns with the key', async () => {
    expect((await asked(KELDER.field)).wind).toMatchObject({ north: 'magnetic', fromTrueDeg: 176 });
    expect((await asked(KELDER.field, 'true')).wind).toMatchObject({ fromTrueDeg: 190 });
    expect(northOf(text, KELDER.field, 'true', true)).toBe('true');
    expect(northOf(text, KELDER.field, 'true')).toBe('magnetic');
  });

  test('is true where the field’s numbers are', async () => {
    const northern = KELDER.field && { ...KELDER.field, numbersFrom: 'true' as const };
    expect((await asked(northern)).wind).toMatchObject({ north: 'true', fromTrueDeg: 190 });
    expect(northOf(text, northern, 'magnetic', true)).toBe('magnetic');
  });

  test('leaves a wind in short to whoever types it', () => {
    expect(northOf('27012', KELDER.field, 'true', true)).toBe('true');
    expect(northOf('27012', KELDER.field, 'magnetic')).toBe('magnetic');
  });
});

test('a field that the report closes has no runway within limits, and the verdict says so', async () => {
  // FM 15, 15.13.6: the aerodrome is closed by snow.
  for (const closed of ['R/SNOCLO', 'BLACK']) {
    const { wind, verdict } = await askDay({
      ...HARROW,
      at: AT,
      wind: { text: `METAR XHAR 051850Z 28010KT 9999 01/M02 Q1008 ${closed}` },
    });
    expect(wind.ranked?.best).toBeNull();
    for (const { shortfalls } of wind.ranked?.ends ?? []) {
      expect(shortfalls).toContainEqual({ code: 'closed-by-report' });
    }
    expect(verdict.cautions.map(({ code }) => code)).toContain('none-within-limits');
  }
});
