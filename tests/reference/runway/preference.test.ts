import { describe, expect, test } from 'vitest';
import {
  againstPreference,
  PREFERRED_CROSSWIND_KT,
  PREFERRED_TAILWIND_KT,
  type PreferenceConditions,
  preferenceApplies,
} from '../../../src/core/runway/preference';
import { rankRunwayEnds } from '../../../src/core/runway/rank';
import { inventedField, question, wind } from '../../core/runway/invented';

/**
 * ICAO Doc 8168 (PANS-OPS), noise abatement, 2.1.3, as quoted by atplquestions.com (ECQB 2020,
 * operational procedures): a) surface affected; b) for landing a ceiling below 150 m (500 ft), for
 * take-off and landing a visibility below 1.9 km; c) more than 15 kt across with gusts; d) more than
 * 5 kt behind with gusts; e) wind shear reported or forecast, or thunderstorms expected. EASA AMC1
 * ATS.TR.260, as quoted by the Swiss FOCA, has the same values.
 */
describe('ICAO Doc 8168, 2.1.3: noise should not decide', () => {
  const fine: PreferenceConditions = {
    purpose: 'landing',
    surface: 'dry',
    visibilityM: 1900,
    ceilingFt: 500,
    windShear: false,
    thunderstorm: false,
  };
  const codes = (more: Partial<PreferenceConditions>) =>
    againstPreference({ ...fine, ...more }).map(({ code }) => code);

  test('unless all of it is fine, each bound included', () => {
    expect(codes({})).toEqual([]);
    expect(preferenceApplies(fine)).toBe(true);
    expect(codes({ ceilingFt: Number.POSITIVE_INFINITY, visibilityM: 10_000 })).toEqual([]);
  });

  test.each([
    ['a) on a wet surface', { surface: 'wet' }, ['surface']],
    ['a) on a contaminated surface', { surface: 'contaminated' }, ['surface']],
    ['b) to land with a ceiling below 500 ft', { ceilingFt: 400 }, ['ceiling']],
    ['b) to land with less than 1.9 km', { visibilityM: 1800 }, ['visibility']],
    [
      'b) to take off with less than 1.9 km',
      { purpose: 'take-off', visibilityM: 1800 },
      ['visibility'],
    ],
    ['e) with wind shear', { windShear: true }, ['wind-shear']],
    ['e) with thunderstorms', { thunderstorm: true }, ['thunderstorm']],
  ] as const)('%s', (_, more, expected) => {
    expect(codes(more)).toEqual(expected);
    expect(preferenceApplies({ ...fine, ...more })).toBe(false);
  });

  test('b) a low ceiling speaks against it for landing only', () => {
    expect(codes({ purpose: 'take-off', ceilingFt: 300 })).toEqual([]);
  });

  test('what is not known speaks neither for nor against', () => {
    expect(codes({ visibilityM: null, ceilingFt: null })).toEqual([]);
  });

  test('c) and d) above 15 kt across and 5 kt behind, gusts included', () => {
    // The preferred end heads north, the other way lies the wind of the field's second runway.
    const field = inventedField([
      { designator: '01', headingDeg: 0 },
      { designator: '10', headingDeg: 90 },
    ]);
    const preferred = {
      ends: ['01'],
      maxCrosswindKt: PREFERRED_CROSSWIND_KT,
      maxTailwindKt: PREFERRED_TAILWIND_KT,
      applies: true,
    };
    const best = (from: number, speed: number, gustKt: number | null) =>
      rankRunwayEnds(
        question({
          field,
          wind: wind(from, speed, { gustKt }),
          limits: { crosswindKt: 40, tailwindKt: 15 },
          variationDeg: 0,
          preferred,
        }),
      ).best?.designator;
    expect(best(90, 15, null)).toBe('01');
    expect(best(90, 15, 16)).toBe('10');
    expect(best(90, 16, null)).toBe('10');
    expect(best(180, 5, null)).toBe('01');
    expect(best(180, 5, 6)).toBe('19');
    expect(best(180, 6, null)).toBe('19');
  });
});
