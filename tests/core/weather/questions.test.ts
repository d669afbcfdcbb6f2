import { describe, expect, test } from 'vitest';
import type { Surface } from '../../../src/core/airfield/field';
import { type WeatherNow, weatherQuestions } from '../../../src/core/weather/questions';

const FINE: WeatherNow = {
  precipitation: false,
  frozenPrecipitation: false,
  freezingPrecipitation: false,
  recentRain: false,
  thunderstorm: false,
  windShear: false,
  runwayState: null,
  lowestRvrM: null,
  visibilityM: 10_000,
  ceilingFt: Number.POSITIVE_INFINITY,
  temperatureC: 15,
};

const asked = (more: Partial<WeatherNow>, surface: Surface = 'dry') =>
  weatherQuestions({ ...FINE, ...more }, surface);
const codes = (more: Partial<WeatherNow>, surface: Surface = 'dry') =>
  asked(more, surface).map(({ code }) => code);

test('fine weather asks nothing', () => {
  expect(asked({})).toEqual([]);
});

test('a report that says nothing asks nothing', () => {
  expect(asked({ visibilityM: null, ceilingFt: null, temperatureC: null })).toEqual([]);
});

// ICAO Annex 14, 1.1 (as quoted by atplquestions.com): a wet runway has any visible dampness or
// water up to 3 mm deep. That what falls may lie is common practice, no published source.
describe('the surface', () => {
  test('is asked about when rain falls, has fallen, or is reported, on what is set as dry', () => {
    const wet = (because: string) => [{ code: 'treat-as-wet', because }];
    expect(asked({ precipitation: true })).toEqual(wet('precipitation'));
    expect(asked({ recentRain: true })).toEqual(wet('recent-rain'));
    expect(asked({ runwayState: 'wet' })).toEqual(wet('runway-state'));
    expect(asked({ precipitation: true, recentRain: true })).toEqual(wet('precipitation'));
  });

  test('is not asked about when it is set as bad as that', () => {
    expect(asked({ precipitation: true, recentRain: true, runwayState: 'wet' }, 'wet')).toEqual([]);
    const worst = { precipitation: true, frozenPrecipitation: true } as const;
    expect(asked({ ...worst, runwayState: 'contaminated' }, 'contaminated')).toEqual([]);
    expect(asked({ runwayState: 'dry' })).toEqual([]);
  });

  test('may be contaminated by what is frozen or freezes, also where it is set as wet', () => {
    for (const surface of ['dry', 'wet'] as const) {
      const because = (more: Partial<WeatherNow>) =>
        asked(more, surface).filter(({ code }) => code !== 'icing');
      const question = (cause: string) => [{ code: 'treat-as-contaminated', because: cause }];
      expect(because({ precipitation: true, frozenPrecipitation: true })).toEqual(
        question('frozen-precipitation'),
      );
      expect(because({ precipitation: true, freezingPrecipitation: true })).toEqual(
        question('freezing-precipitation'),
      );
      expect(because({ runwayState: 'contaminated' })).toEqual(question('runway-state'));
    }
  });
});

// Common practice, no published source: +10 °C and less in visible moisture, as flight manuals of
// transport aircraft define it; one such is Saab 340B, aircraft operations manual, 11.2, 2.2.
describe('icing', () => {
  const ice = (more: Partial<WeatherNow>) => asked(more, 'contaminated');

  test('is asked about from +10 to −40 °C when something falls', () => {
    expect(ice({ precipitation: true, temperatureC: 10 })).toEqual([
      { code: 'icing', because: 'precipitation', temperatureC: 10 },
    ]);
    expect(ice({ precipitation: true, temperatureC: 11 })).toEqual([]);
    expect(ice({ precipitation: true, temperatureC: -40 })).toHaveLength(1);
    expect(ice({ precipitation: true, temperatureC: -41 })).toEqual([]);
    expect(ice({ temperatureC: 3 })).toEqual([]);
  });

  test('counts fog with a mile of sight or less, and water on the ground', () => {
    expect(ice({ visibilityM: 1600, temperatureC: 4 })).toMatchObject([
      { code: 'icing', because: 'fog' },
      { code: 'below-visual-minima' },
    ]);
    expect(codes({ visibilityM: 1700, temperatureC: 4 })).toEqual(['below-visual-minima']);
    expect(ice({ runwayState: 'wet', temperatureC: 4 })).toEqual([
      { code: 'icing', because: 'runway-state', temperatureC: 4 },
    ]);
  });

  test('is there in freezing rain, whatever is known of the temperature', () => {
    expect(ice({ precipitation: true, freezingPrecipitation: true, temperatureC: null })).toEqual([
      { code: 'icing', because: 'freezing-precipitation', temperatureC: null },
    ]);
  });

  test('is not guessed at without a temperature', () => {
    expect(ice({ precipitation: true, temperatureC: null })).toEqual([]);
  });
});

test('thunderstorm and wind shear come first', () => {
  expect(
    codes({
      precipitation: true,
      thunderstorm: true,
      windShear: true,
      temperatureC: 5,
      lowestRvrM: 400,
      visibilityM: 500,
    }),
  ).toEqual([
    'thunderstorm',
    'wind-shear',
    'treat-as-wet',
    'icing',
    'low-rvr',
    'below-visual-minima',
  ]);
});

test('a runway visual range below 550 m makes a low-visibility operation', () => {
  // Regulation (EU) 965/2012, Annex I: approach or take-off with less than 550 m.
  expect(asked({ lowestRvrM: 549 })).toEqual([{ code: 'low-rvr', rvrM: 549, belowM: 550 }]);
  expect(asked({ lowestRvrM: 550 })).toEqual([]);
});

test('below 5 km or a ceiling of 1 500 ft a control zone is closed to plain visual flight', () => {
  // ICAO Annex 2, 4.2 (value from memory). What is not below is not named.
  const below = (visibilityM: number | null, ceilingFt: number | null) => [
    { code: 'below-visual-minima', visibilityM, ceilingFt },
  ];
  expect(asked({ visibilityM: 4900 })).toEqual(below(4900, null));
  expect(asked({ ceilingFt: 1400 })).toEqual(below(null, 1400));
  expect(asked({ visibilityM: 4900, ceilingFt: 1400 })).toEqual(below(4900, 1400));
  expect(asked({ visibilityM: 5000, ceilingFt: 1500 })).toEqual([]);
});
