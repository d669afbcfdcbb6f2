/**
 * Fitting a profile to a handbook's few figures, and holding it against rows that it was not fitted
 * to: the two-seat trainer of 1977 whose table check rows come from (Cessna 150; sea level figures and
 * masses from memory).
 */

import { describe, expect, test } from 'vitest';
import { fitToBook } from '../../../src/core/aircraft/fit/fitToBook';
import { takeoff } from '../../../src/core/aircraft/takeoff';
import { flown, flying, inventedAircraft, takeoffQuestion } from '../../core/aircraft/invented';
import { lightSingle } from './lightSingle';

const FT = 0.3048;
const MASS_KG = 726;

/** Begun from textbook ranges for 100 hp, a fixed propeller and 160 ft² of wing. */
const trainer = inventedAircraft(
  lightSingle(
    [
      [0, 1950],
      [40, 1750],
      [68, 1480],
      [100, 1100],
      [125, 850],
    ],
    14.9,
    0.035,
  ),
  {
    engine: 'piston',
    masses: {
      emptyKg: 500,
      usualTakeoffKg: MASS_KG,
      maxTakeoffKg: MASS_KG,
      usualLandingKg: MASS_KG,
      maxLandingKg: MASS_KG,
    },
    takeoff: { rotateKt: 50, rotateTo: '', liftOffKt: 55, runM: 224 },
    climb: { flapsUpByKt: 60, speedKt: [68, 68], pitchDeg: [0, 15] },
    landing: { approachKt: 55, runM: 136 },
  },
);

/** Sea level, 15 °C: 735 ft of roll, 1 385 ft to 50 ft, 670 ft/min, 445 ft after landing (values from memory). */
const BOOK = [
  { massKg: MASS_KG, runM: 735 * FT, to50ftM: 1385 * FT, climbFtMin: 670, takeoffStallKt: 47 },
  { massKg: MASS_KG, landingRunM: 445 * FT },
];

describe('a profile fitted to four figures at sea level', () => {
  const { performance, figures } = fitToBook(flying(trainer), BOOK);
  const fitted = { ...trainer, performance };

  test('gives them back within 2 %', () => {
    expect(figures).toHaveLength(4);
    for (const { book, found } of figures) {
      expect(Math.abs((found ?? 0) / book - 1)).toBeLessThan(0.02);
    }
  });

  test('stalls where the book does, by closed form', () => {
    const { speeds } = flown(takeoff(takeoffQuestion(fitted)));
    expect(speeds.stallKt).toBeCloseTo(47, 1);
  });

  test('foretells 775 and 1 465 ft at 1 000 ft and 10 °C within 3 %', () => {
    // humbleaviation.com takeoffcharts.php.
    const air = { pressureAltitudeFt: 1000, temperatureC: 10 };
    const answer = flown(takeoff(takeoffQuestion(fitted, { air })));
    expect(Math.abs(answer.run.runM / (775 * FT) - 1)).toBeLessThan(0.03);
    expect(Math.abs((answer.to50ftM.value ?? 0) / (1465 * FT) - 1)).toBeLessThan(0.03);
  });
});

test('what cannot be had is left over, and told', () => {
  const { figures } = fitToBook(flying(trainer), [{ massKg: MASS_KG, runM: 80 }]);
  expect(figures[0]?.found).toBeGreaterThan(120);
});
