import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CONDITION_FACTS } from '../../../src/core/procedure/conditionFacts';
import {
  type FactName,
  type FactValue,
  hasMoved,
  isLiveName,
  LIVE,
  liveNamesIn,
  piecesOf,
  roundedLive,
} from '../../../src/core/procedure/facts';

const NAMES: readonly FactName[] = [...CONDITION_FACTS, ...(Object.keys(LIVE) as FactName[])];

test.each<[FactName, FactValue, FactValue, boolean]>([
  ['runway', '28', '01', true],
  ['runway', '28', '28', false],
  // No end in use is not the end that was briefed.
  ['runway', '28', null, true],
  ['runway', null, '28', true],
  ['field', 'Harrow', 'Linnet', true],
  // Speeds are shown whole, and no one flies one to 2 kt. Common practice, no published source.
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

// Common practice, no published source: what must not be exceeded is rounded down, what is needed up.
test.each([
  ['lastStopKt', 121.9, 121],
  ['referenceKt', 155.1, 156],
  ['goOnKt', 118.01, 119],
  ['runM', 1231, 1240],
  ['landingM', 1240, 1240],
  ['landingM', 1241, 1250],
  ['markLeastKt', 79.1, 80],
  // What blows across is held against a limit, and what blows along is counted on.
  ['crosswindKt', 12.1, 13],
  ['massKg', 9204, 9200],
  ['fuelKg', 2425, 2430],
  ['densityAltitudeFt', 1749, 1700],
  ['qnh', 1009.4, 1009],
  ['rotateKt', 138.5, 139],
] as const)('%s of %d is shown as %d', (name, value, shown) => {
  expect(roundedLive(name, value)).toBe(shown);
});

test('what is rounded lies within a step of what it was, on the side that promises less', () => {
  const numbers = NAMES.filter(isLiveName).filter((name) => LIVE[name].form === 'whole');
  fc.assert(
    fc.property(
      fc.constantFrom(...numbers),
      fc.double({ min: -100, max: 100_000, noNaN: true }),
      (name, value) => {
        const kind = LIVE[name];
        const off = roundedLive(name, value) - value;
        expect(Math.abs(off)).toBeLessThanOrEqual('to' in kind ? kind.to : 1);
        const NEARLY = 1e-3;
        const way = 'way' in kind ? kind.way : null;
        if (way === 'up') expect(off).toBeGreaterThanOrEqual(-NEARLY);
        if (way === 'down') expect(off).toBeLessThanOrEqual(NEARLY);
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
