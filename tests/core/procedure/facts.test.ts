import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  type FactName,
  type FactValue,
  hasMoved,
  LIVE,
  liveNamesIn,
  piecesOf,
} from '../../../src/core/procedure/facts';
import { CONDITION_FACTS } from '../../../src/core/procedure/phases';

const NAMES: readonly FactName[] = [...CONDITION_FACTS, ...(Object.keys(LIVE) as FactName[])];

test.each<[FactName, FactValue, FactValue, boolean]>([
  ['runway', '28', '01', true],
  ['runway', '28', '28', false],
  // No end in use is not the end that was briefed.
  ['runway', '28', null, true],
  ['runway', null, '28', true],
  ['field', 'Harrow', 'Linnet', true],
  // Speeds are shown whole: 2 kt more or less is what another load makes.
  ['rotateKt', 138, 140, false],
  ['rotateKt', 138, 140.5, true],
  ['rotateKt', 140.5, 138, true],
  ['runwayMagnetic', 104, 105, false],
  ['runwayMagnetic', 104, 105.2, true],
  ['runwayMagnetic', null, 104, true],
  // Either side of north is 0.4° apart.
  ['runwayMagnetic', 359.8, 0.2, false],
  ['runwayMagnetic', 0.2, 359.8, false],
  ['runwayMagnetic', 359.8, 1.2, true],
  // The wind always moves, and a call is not made again for it.
  ['wind', '27012KT', '01020KT', false],
  ['callsign', 'Gannet 1', null, false],
  ['wet', false, true, true],
  ['night', true, false, true],
])('%s from %s to %s moved: %s', (name, saw, now, moved) => {
  expect(hasMoved(name, saw, now)).toBe(moved);
});

test('what is not known for a moment after a start, while tables load, has not moved', () => {
  expect(hasMoved('lights', true, null)).toBe(false);
  expect(hasMoved('lights', null, true)).toBe(false);
  expect(hasMoved('runwayMagnetic', 104, null)).toBe(false);
  expect(hasMoved('rotateKt', 138, null)).toBe(false);
});

test('nothing moves by staying', () => {
  const anyValue = fc.oneof(fc.double(), fc.string(), fc.boolean(), fc.constant(null));
  fc.assert(
    fc.property(fc.constantFrom(...NAMES), anyValue, (name, value) => {
      fc.pre(!Number.isNaN(value));
      expect(hasMoved(name, value, value)).toBe(false);
    }),
  );
});

test('between two known values a move there is a move back', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...NAMES),
      fc.double({ min: 0, max: 360, noNaN: true }),
      fc.double({ min: 0, max: 360, noNaN: true }),
      (name, one, other) => {
        expect(hasMoved(name, one, other)).toBe(hasMoved(name, other, one));
      },
    ),
  );
});

test('a text falls into words and live numbers, and its pieces give it back', () => {
  expect(piecesOf('Runway {runway}, heading {runwayMagnetic}')).toEqual([
    'Runway ',
    { live: 'runway' },
    ', heading ',
    { live: 'runwayMagnetic' },
  ]);
  expect(liveNamesIn('tell traffic, {field} traffic')).toEqual(['field']);
  const words = fc.constantFrom('{runway}', '{field}', '{', '}', 'a', ' ', '{1}', '{}');
  fc.assert(
    fc.property(
      fc.array(words).map((parts) => parts.join('')),
      (text) => {
        const back = piecesOf(text).map((piece) =>
          typeof piece === 'string' ? piece : `{${piece.live}}`,
        );
        expect(back.join('')).toBe(text);
      },
    ),
  );
});
