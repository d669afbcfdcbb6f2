import { describe, expect, test } from 'vitest';
import { readReport } from '../../../src/core/weather/readReport';
import type { PresentWeather } from '../../../src/core/weather/whole/groupTypes';
import { PUBLISHED } from './published';
import { MORE_OF_THE_SUITE, PUBLISHED_WHOLE } from './publishedWhole';

const weatherOf = (text: string) => readReport(text).weather;

/** As table 4678 writes it. */
function codeOf({ observed, vicinity, intensity, descriptor, phenomena }: PresentWeather): string {
  if (!observed) return '//';
  const sign = { light: '-', moderate: '', heavy: '+' }[intensity ?? 'moderate'];
  return `${vicinity ? 'VC' : sign}${descriptor ?? ''}${phenomena.join('')}`;
}

describe('a published report means what its source says, group by group', () => {
  test.each(PUBLISHED_WHOLE)('visibility and runway visual range: $text', (published) => {
    const { visibility, visibilityTowards, runwayVisualRange, cavok } = weatherOf(published.text);
    if (published.visibility == null) expect(visibility?.distance).toBeNull();
    else {
      const [value, unit, bound = 'exact'] = published.visibility;
      expect(visibility?.distance).toMatchObject({ value, unit, bound });
    }
    expect(cavok).toBe(published.cavok ?? false);
    expect(
      visibilityTowards.map(({ distance, towards }) => [distance?.distanceM, towards]),
    ).toEqual(published.least ? [published.least] : []);
    expect(
      runwayVisualRange.map(({ runway, distance, tendency }) => [
        runway,
        distance?.value,
        distance?.unit,
        distance?.bound,
        tendency,
      ]),
    ).toEqual(published.ranges ?? []);
  });

  test.each(PUBLISHED_WHOLE)('weather and cloud: $text', (published) => {
    const weather = weatherOf(published.text);
    expect(weather.present.map(codeOf)).toEqual(published.present ?? []);
    expect(weather.recent.map(codeOf)).toEqual(published.recent ?? []);
    expect(
      weather.clouds.map(({ amount, baseFt, convective }) => {
        const kind = convective === 'not-observed' ? '?' : convective;
        return [amount ?? '?', baseFt ?? '?', ...(kind ? [kind] : [])];
      }),
    ).toEqual(published.clouds ?? []);
    expect(weather.noCloud).toBe(published.none ?? null);
    expect(weather.verticalVisibility?.heightFt).toBe(published.verticalFt);
  });

  test.each(PUBLISHED_WHOLE)('air: $text', (published) => {
    const { temperature, pressure } = weatherOf(published.text);
    expect(temperature).toMatchObject({ airC: published.air[0], dewPointC: published.air[1] });
    const [value, unit] = published.qnh;
    expect(unit === 'hPa' ? pressure?.qnhHpa : pressure?.qnhInHg).toBeCloseTo(value, 1);
  });

  test.each(PUBLISHED_WHOLE)('runways, sea and trend: $text', (published) => {
    const { windShear, sea, runwayStates, trends } = weatherOf(published.text);
    expect(windShear.map(({ runway }) => runway)).toEqual(published.shear ?? []);
    expect(sea && [sea.waterC, sea.wavesM]).toEqual(published.sea ?? null);
    expect(runwayStates).toEqual(
      (published.states ?? []).map(({ runway, cleared, deposit, covered, depth, braking }) => ({
        code: 'runway-state',
        runway,
        cleared: cleared ?? false,
        deposit: deposit ?? null,
        coveredPercent: covered ?? null,
        depth: depth ? { depthMm: depth[0], bound: depth[1] } : null,
        closed: false,
        braking: braking ?? null,
      })),
    );
    expect(trends.map(({ text }) => text)).toEqual(published.trends ?? []);
  });
});

describe('no group of a published report is without a meaning', () => {
  const texts = [
    ...PUBLISHED.map(({ text }) => text),
    ...PUBLISHED_WHOLE.map(({ text }) => text),
    ...MORE_OF_THE_SUITE,
  ];
  test.each(texts)('%s', (text) => {
    const mute = readReport(text).spans.filter(({ kind, meaning }) => {
      // A wind that was not reported is a problem with its place, not a meaning.
      return kind !== 'wind' && meaning === null;
    });
    expect(mute.map(({ at }) => text.slice(...at))).toEqual([]);
  });
});

describe('single groups as their sources give them', () => {
  test('CYEK M1/4SM is below 400 m, 1003.0 hPa is A2962', () => {
    // Translation suite, CYEK-290000Z: "prevailingVisibility 400, BELOW", qnh 1003.0.
    const { visibility, pressure } = weatherOf(
      'METAR CYEK 290000Z AUTO 29020G28KT M1/4SM +SN VV006 M24/M26 A2962',
    );
    expect(visibility?.distance?.bound).toBe('below');
    // Its metres are rounded down to the steps of FM 15, 15.6.
    expect(visibility?.distance?.distanceM).toBeCloseTo(402.3, 1);
    expect(pressure?.qnhHpa).toBeCloseTo(1003.0, 1);
  });

  test('NTAA WS R04 is shear on one runway, not on all', () => {
    const [shear] = weatherOf(MORE_OF_THE_SUITE.at(-1) ?? '').windShear;
    expect(shear).toMatchObject({ runway: '04', path: null });
  });

  test('in remarks of the AIM and the chart', () => {
    // AIM 7-1, key: "SLP045, sea-level pressure 1004.5 hPa"; FMH-1, 12.7.1: SLP998 is 999.8.
    const [aim, chart] = [PUBLISHED_WHOLE[2]?.text ?? '', PUBLISHED_WHOLE[3]?.text ?? ''];
    expect(weatherOf(aim).remarks?.seaLevelHpa).toBe(1004.5);
    expect(weatherOf('METAR XBOR 121755Z 10SM RMK SLP998').remarks?.seaLevelHpa).toBe(999.8);
    // "PK WND 20032/25, peak wind from 200 degrees at 32 knots at 25 minutes past the hour".
    expect(weatherOf(chart).remarks?.peakWind).toMatchObject({
      fromDeg: 200,
      speedKt: 32,
      hour: null,
      minute: 25,
    });
    // AIM 7-1, aim-505: "PK WND 28045/1955", from 280 at 45 kt at 1955.
    expect(
      weatherOf('METAR XBOR 121955Z 10SM RMK PK WND 28045/1955').remarks?.peakWind,
    ).toMatchObject({ fromDeg: 280, speedKt: 45, hour: 19, minute: 55 });
    expect(weatherOf(chart).maintenance).toBe(true);
  });
});
