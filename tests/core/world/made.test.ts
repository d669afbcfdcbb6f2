/** What the set contradicts is marked, and what can't be used is left out and counted. */

import { describe, expect, test } from 'vitest';
import { M_PER_FT } from '../../../src/core/units';
import { madeWorld, readIdent } from '../../../tools/world/made';
import type { SourceEnd, SourceField, SourceRunway } from '../../../tools/world/source';

const sourceEnd = (
  ident: string,
  latDeg: number,
  lonDeg: number,
  more: Partial<SourceEnd> = {},
) => ({
  ident,
  latDeg,
  lonDeg,
  headingTrueDeg: 10 * (Number.parseInt(ident, 10) || 0),
  displacedFt: null,
  elevationFt: null,
  ...more,
});

/** On the equator, where a minute of longitude is 1 855.3 m long: WGS 84, a · π / 10 800. */
const MINUTE_M = 1855.3;
const MINUTE_FT = MINUTE_M / M_PER_FT;

/** A runway to the east on the equator, a minute long. */
const east = (one = '09', other = '27', more: Partial<SourceRunway> = {}): SourceRunway => ({
  lengthFt: Math.round(MINUTE_FT),
  widthFt: 100,
  surface: 'asphalt',
  lighted: false,
  ends: [sourceEnd(one, 0, 0), sourceEnd(other, 0, 1 / 60)],
  ...more,
});

const sourceField = (...runways: readonly SourceRunway[]): SourceField => ({
  code: 'XAAA',
  otherCodes: ['', 'XAAA', 'AA1'],
  name: 'Invented',
  town: '',
  country: 'XX',
  type: 'small_airport',
  latDeg: 0,
  lonDeg: 0,
  elevationFt: 50,
  tower: null,
  ground: null,
  unicom: null,
  runways,
});

const made = (field: SourceField, variationDeg = 0) => madeWorld([field], () => variationDeg);
const only = (field: SourceField, variationDeg = 0) =>
  made(field, variationDeg).fields[0]?.runways[0];
const numbers = (field: SourceField, variationDeg = 0) =>
  only(field, variationDeg)?.ends.map(({ designator }) => designator);

test('a runway without a contradiction has no doubt', () => {
  expect(only(sourceField(east()))?.doubts).toEqual([]);
  expect(numbers(sourceField(east()))).toEqual(['09', '27']);
});

describe('numbers', () => {
  test('are magnetic: one that fits the variation is no doubt', () => {
    expect(only(sourceField(east('05', '23')), 40)?.doubts).not.toContain('number');
    expect(only(sourceField(east('05', '23')))?.doubts).toContain('number');
  });

  test('that fit the other end are swapped, and marked', () => {
    const swapped = only(
      sourceField(
        east('27', '09', {
          ends: [
            sourceEnd('27', 0, 0, { headingTrueDeg: 90 }),
            sourceEnd('09', 0, 1 / 60, { headingTrueDeg: 270 }),
          ],
        }),
      ),
    );
    expect(swapped?.ends.map(({ designator }) => designator)).toEqual(['09', '27']);
    expect(swapped?.ends[0].at).toEqual({ latDeg: 0, lonDeg: 0 });
    expect(swapped?.doubts).toEqual(['swapped']);
  });

  test('more than 25° off are marked', () => {
    expect(only(sourceField(east('12', '30')), 0)?.doubts).toContain('number');
    expect(only(sourceField(east('11', '29')), 0)?.doubts).not.toContain('number');
  });

  test('that are not opposite follow the one that fits better, and are marked', () => {
    expect(numbers(sourceField(east('09', '26')))).toEqual(['09', '27']);
    expect(numbers(sourceField(east('08', '27')))).toEqual(['09', '27']);
    expect(only(sourceField(east('09', '26')))?.doubts).toContain('number');
  });

  test('are worked out from the magnetic direction where there are none, and marked', () => {
    expect(numbers(sourceField(east('E', 'W')), -20)).toEqual(['11', '29']);
    expect(only(sourceField(east('E', 'W')))?.doubts).toContain('number');
  });

  test('of a field whose ends say so are painted to true north', () => {
    expect(made(sourceField(east('09T', '27T')), 20).fields[0]?.isNumberedTrue).toBe(true);
    expect(made(sourceField(east('09T', '27T')), 3).fields[0]?.isNumberedTrue).toBe(true);
    expect(made(sourceField(east('07T', '25T')), 20).fields[0]?.isNumberedTrue).toBe(false);
  });

  test('are read as the set writes them', () => {
    expect(readIdent('9l').designator).toBe('09L');
    expect(readIdent('161').designator).toBe('16');
    expect(readIdent('009').designator).toBe('01');
    expect(readIdent('02T')).toMatchObject({ designator: '02', isTrue: true });
    expect(readIdent('H27R')).toMatchObject({ designator: '27R', isForHelicopters: true });
    expect(readIdent('25.').designator).toBe('25');
    expect(readIdent('NW').designator).toBeNull();
  });
});

describe('lengths, directions, elevations', () => {
  test('a length more than 15 % off the coordinates is marked', () => {
    const long = (share: number) =>
      only(sourceField(east('09', '27', { lengthFt: Math.round(share * MINUTE_FT) })));
    expect(long(1.14)?.doubts).toEqual([]);
    expect(long(1.19)?.doubts).toEqual(['length']);
    expect(long(0.86)?.doubts).toEqual(['length']);
  });

  test('a stated direction more than 3° off them is marked', () => {
    const turned = (deg: number) =>
      only(
        sourceField(
          east('09', '27', {
            ends: [sourceEnd('09', 0, 0, { headingTrueDeg: deg }), sourceEnd('27', 0, 1 / 60)],
          }),
        ),
      );
    expect(turned(92.9)?.doubts).toEqual([]);
    expect(turned(93.2)?.doubts).toEqual(['heading']);
  });

  test('an elevation that can’t be is left out and marked', () => {
    const high = only(
      sourceField(
        east('09', '27', {
          ends: [
            sourceEnd('09', 0, 0, { elevationFt: 551 }),
            sourceEnd('27', 0, 1 / 60, { elevationFt: 70 }),
          ],
        }),
      ),
    );
    expect(high?.ends.map(({ elevationFt }) => elevationFt)).toEqual([null, 70]);
    expect(high?.doubts).toEqual(['elevation']);
  });

  test('a threshold displaced by more than half of the runway is marked', () => {
    const displaced = only(
      sourceField(
        east('09', '27', {
          ends: [sourceEnd('09', 0, 0, { displacedFt: 4000 }), sourceEnd('27', 0, 1 / 60)],
        }),
      ),
    );
    expect(displaced?.doubts).toEqual(['displaced']);
  });

  test('the other end of a runway that has one lies in its direction, as far as it is long', () => {
    const one = only(sourceField(east('09', '27', { ends: [sourceEnd('09', 0, 0)] })));
    expect(one?.doubts).toEqual(['one-end']);
    expect(one?.ends[1].designator).toBe('27');
    expect(one?.ends[1].at.lonDeg).toBeCloseTo(1 / 60, 5);
  });
});

describe('left out and counted', () => {
  test.each([
    ['one-point', east('09', '27', { ends: [sourceEnd('09', 0, 0), sourceEnd('27', 0, 0)] })],
    ['far-off', east('09', '27', { lengthFt: Math.round(2.1 * MINUTE_FT) })],
    ['far-off', east('09', '27', { lengthFt: Math.round(0.4 * MINUTE_FT) })],
    ['one-end', east('09', '27', { ends: [sourceEnd('09', 0, 0, { headingTrueDeg: 140 })] })],
    ['helicopters', east('H09', 'H27')],
  ] as const)('a runway: %s', (why, runway) => {
    const { fields, table } = made(sourceField(runway));
    expect(fields).toEqual([]);
    expect(table.runwaysOut[why]).toBe(1);
    expect(table.withoutRunway).toBe(1);
  });

  test('the second runway with one number', () => {
    const { fields, table } = made(sourceField(east(), east()));
    expect(fields[0]?.runways).toHaveLength(1);
    expect(table.runwaysOut['number-twice']).toBe(1);
  });

  test('a closed field', () => {
    const { fields, table } = made({ ...sourceField(east()), type: 'closed' });
    expect(fields).toEqual([]);
    expect(table.closed).toBe(1);
  });
});

test.each([
  ['Frankfurt Main Airport', 'Frankfurt Main'],
  ['Paris-Le Bourget International Airport', 'Paris-Le Bourget'],
  ['Mid Delta Regional  Airport', 'Mid Delta'],
  ['Parr Airport', 'Parr'],
  ['Dübendorf Air Base', 'Dübendorf Air Base'],
  ['Airport', 'Airport'],
])('%s is called %s', (name, called) => {
  expect(made({ ...sourceField(east()), name }).fields[0]?.name).toBe(called);
});

test('frequencies are those of the airband, and a common one only at a small field', () => {
  const heard = (more: Partial<SourceField>) =>
    made({ ...sourceField(east()), ...more }).fields[0]?.radio;
  expect(heard({ tower: '118.8', ground: '121.9', unicom: '123' })).toEqual({
    tower: '118.8',
    ground: '121.9',
    traffic: '123.0',
  });
  expect(heard({ type: 'large_airport', unicom: '118.5' })?.traffic).toBeNull();
  expect(heard({ tower: '255.4', unicom: '12' })).toEqual({
    tower: null,
    ground: null,
    traffic: null,
  });
});
