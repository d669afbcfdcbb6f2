/** A runway proposed from its two ends. */

import { describe, expect, test } from 'vitest';
import { editedField } from '../../../src/core/airfield/edit';
import { emptyField, isPlaced } from '../../../src/core/airfield/emptyField';
import { runwayBetween } from '../../../src/core/airfield/runwayBetween';
import { demoFields } from '../documents/demo';

const at = (latDeg: number, lonDeg: number) => ({ latDeg, lonDeg });

describe('two places on a meridian or on the equator, by WGS 84 (NIMA TR8350.2)', () => {
  // The equator's radius is 6 378 137 m: 0.01° of it is 1 113.195 m.
  test('east along the equator is 09, and its length that of the arc', () => {
    expect(runwayBetween(at(0, 20), at(0, 20.01), 0)).toEqual({
      lengthM: expect.closeTo(1113.195, 2),
      headingTrueDeg: expect.closeTo(90, 6),
      headingMagneticDeg: expect.closeTo(90, 6),
      numbers: ['09', '27'],
    });
  });
  // The radius of curvature of the meridian at the equator is 6 335 439 m: 0.01° is 1 105.74 m.
  test('north from the equator is 36, never 00', () => {
    expect(runwayBetween(at(0, 20), at(0.01, 20), 0)).toMatchObject({
      lengthM: expect.closeTo(1105.74, 1),
      numbers: ['36', '18'],
    });
  });
});

// Annex 14 Vol. I, 5.2.2.4: the whole number nearest one tenth of the magnetic azimuth.
test('numbers are from the magnetic heading: variation west adds, variation east takes away', () => {
  const numbers = (variation: number | null) => {
    const found = runwayBetween(at(0, 20), at(0, 20.01), variation);
    return typeof found === 'string' ? found : found.numbers;
  };
  expect(numbers(-14)).toEqual(['10', '28']);
  expect(numbers(14)).toEqual(['08', '26']);
  expect(numbers(null)).toBeNull();
});

test('ends at one place, and ends that are no runway apart, are told', () => {
  expect(runwayBetween(at(52, 4), at(52, 4), 0)).toBe('one-place');
  expect(runwayBetween(at(52, 4), at(52.00001, 4), 0)).toBe('one-place');
  expect(runwayBetween(at(52, 4), at(53, 4), 0)).toBe('too-far-apart');
  expect(runwayBetween(at(0, 0), at(0, 180), 0)).toBe('too-far-apart');
});

test.each(demoFields.map((field) => [field.code, field] as const))(
  'the ends of each runway of %s give its length',
  (_, field) => {
    for (const { ends } of field.runways) {
      const found = runwayBetween(ends[0].at, ends[1].at, 0);
      if (typeof found === 'string') throw new Error(found);
      // Its documents are written by hand: TORA is the pavement, to a metre.
      expect(Math.abs(found.lengthM - ends[0].toraM)).toBeLessThan(2);
    }
  },
);

describe('a runway added to a field', () => {
  const line = { by: 'ends', ends: [at(0, 20), at(0, 20.01)] } as const;
  const runway = {
    line,
    designator: '09',
    widthM: 30,
    surface: 'grass',
    edgeLights: false,
  } as const;

  test('gives it its reference point, if it has none', () => {
    const field = editedField(emptyField(at(0, 0)), { kind: 'runway-added', runway });
    expect(field.place).toEqual({ latDeg: 0, lonDeg: expect.closeTo(20.005, 6), elevationFt: 0 });
    expect(isPlaced(field)).toBe(true);
  });

  test('is of no known width, surface, lights and level, and of no declared distances', () => {
    const bare = { line, designator: '09' } as const;
    const field = editedField(emptyField(at(0, 20)), { kind: 'runway-added', runway: bare });
    expect(field.version).toBe(2);
    const [added] = field.runways;
    expect(added).toMatchObject({ surface: 'unknown', declared: false });
    for (const of of ['widthM', 'edgeLights']) expect(added).not.toHaveProperty(of);
    expect(added?.ends.map(({ elevationFt, toraM }) => [elevationFt, toraM])).toEqual([
      [undefined, 1113],
      [undefined, 1113],
    ]);
  });

  test('leaves the reference point of one that has one', () => {
    const field = editedField(emptyField(at(0, 20.1)), { kind: 'runway-added', runway });
    expect(field.place).toEqual({ latDeg: 0, lonDeg: 20.1, elevationFt: 0 });
  });
});
