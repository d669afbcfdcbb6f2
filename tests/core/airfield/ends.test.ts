import { expect, test } from 'vitest';
import { endsOf } from '../../../src/core/airfield/ends';
import { findEnd } from '../../../src/core/airfield/findEnd';
import { degreesOf } from '../../../src/core/angle';
import { CROSSED, inventedField } from '../runway/invented';

test('every runway has two ends, listed by designator and named for both', () => {
  const ends = endsOf(CROSSED);
  expect(ends.map(({ designator }) => designator)).toEqual(['01', '10', '19', '28']);
  expect(ends.map(({ opposite }) => opposite)).toEqual(['19', '28', '01', '10']);
  expect(ends.map(({ runwayName }) => runwayName)).toEqual(['01/19', '10/28', '01/19', '10/28']);
});

test('an end heads where its coordinates say, whatever its number', () => {
  const field = inventedField([{ designator: '10', headingDeg: 86 }]);
  const heading = (name: string) => {
    const end = findEnd(field, name);
    return end ? degreesOf(end.heading) : null;
  };
  expect(heading('10')).toBeCloseTo(86, 6);
  // Meridians lean together towards the pole, so the way back is not quite the reverse: over
  // 1 400 m at 50° N by 1 400 m sin 86° tan 50° / 6 380 km = 0.015°.
  expect(heading('28')).toBeCloseTo(266.015, 3);
  expect(findEnd(field, '10')?.lengthM).toBeCloseTo(1400, 3);
});

test('an end is found by its name as one writes it', () => {
  const field = inventedField([{ designator: '09L', headingDeg: 90 }]);
  expect(findEnd(field, '9l')?.designator).toBe('09L');
  expect(findEnd(field, '27R')?.opposite).toBe('09L');
  expect(findEnd(field, '09')).toBeNull();
  expect(findEnd(field, 'nowhere')).toBeNull();
});

test('the slope is the rise towards the other end over the length', () => {
  const [runway] = inventedField([{ designator: '10', headingDeg: 86, lengthM: 1000 }]).runways;
  if (!runway) throw new Error('no runway');
  const [low, high] = runway.ends;
  const field = {
    ...CROSSED,
    runways: [
      {
        ...runway,
        ends: [
          { ...low, elevationFt: 100 },
          // 10 m higher over 1 000 m.
          { ...high, elevationFt: 100 + 10 / 0.3048 },
        ] satisfies typeof runway.ends,
      },
    ],
  };
  expect(findEnd(field, '10')?.slopePercent).toBeCloseTo(1, 6);
  expect(findEnd(field, '28')?.slopePercent).toBeCloseTo(-1, 6);
});

test('a runway whose ends lie at the same place is refused by name', () => {
  const [runway] = CROSSED.runways;
  if (!runway) throw new Error('no runway');
  const [one, other] = runway.ends;
  const ends: typeof runway.ends = [one, { ...other, at: one.at }];
  const field = { ...CROSSED, runways: [{ ...runway, ends }] };
  expect(() => endsOf(field)).toThrow(new RangeError('Both ends of 10/28 lie at the same place'));
});
