/** The words of the weather under the answer. */

import type { ReportNote, WeatherQuestion } from '../../../core';
import { wholeNumber } from '../../../parts/format';
import { length } from '../../../parts/units';

function age(minutes: number): string {
  if (minutes < 120) return `${minutes} min`;
  const hours = Math.round(minutes / 60);
  return hours < 48 ? `${hours} h` : `${Math.round(hours / 24)} days`;
}

function note(of: ReportNote): string {
  switch (of.code) {
    case 'other-field':
      return `The report is for ${of.station}; the field is ${of.field}.`;
    case 'old':
      return `The report is ${age(of.minutes)} old by the sortie’s clock.`;
    case 'ahead':
      return `The report is ${age(of.minutes)} ahead of the sortie’s clock.`;
  }
}

const BECAUSE = {
  'runway-state': 'The runway’s state is reported',
  precipitation: 'Rain or similar',
  'recent-rain': 'Recent rain',
  'freezing-precipitation': 'Freezing precipitation',
  'frozen-precipitation': 'Snow, ice or hail',
} as const;

function question(of: WeatherQuestion): string {
  switch (of.code) {
    case 'thunderstorm':
      return 'Thunderstorms nearby: the wind can shift and rise at any moment.';
    case 'wind-shear':
      return 'Wind shear is reported.';
    case 'treat-as-wet':
      return `${BECAUSE[of.because]}: treat the runway as wet?`;
    case 'treat-as-contaminated':
      return `${BECAUSE[of.because]}: treat the runway as contaminated?`;
    case 'icing':
      return of.temperatureC === null
        ? 'Freezing precipitation: icing on the airframe and in the intake?'
        : `Visible moisture at ${wholeNumber(of.temperatureC)} °C: icing on the airframe and in the intake?`;
    case 'low-rvr':
      return `Runway visual range ${length(of.rvrM)}, below ${length(of.belowM)}.`;
    case 'below-visual-minima': {
      const parts = [
        of.visibilityM === null
          ? null
          : `visibility ${wholeNumber(of.visibilityM)} m, below 5 000 m`,
        of.ceilingFt === null ? null : `ceiling ${wholeNumber(of.ceilingFt)} ft, below 1 500 ft`,
      ].filter((part) => part !== null);
      return `Below visual minima: ${parts.join('; ')}.`;
    }
  }
}

export const words = {
  title: 'Weather',
  note,
  question,
  treatAs: { wet: 'Treat as wet', contaminated: 'Treat as contaminated' },
  other: (station: string | null) => (station === null ? 'Another report:' : `Also ${station}:`),
  take: 'Take it',
  qnh: 'QNH',
  temperature: 'Temperature',
  dewPoint: (celsius: string) => `dew point ${celsius} °C`,
  pressureAltitude: 'Pressure altitude',
  densityAltitude: 'Density altitude',
  gustSpread: 'Gust above the steady wind',
  absent: {
    'no-qnh': 'no QNH reported',
    'no-temperature': 'no temperature reported',
    'no-field': 'no field',
    'beyond-atmosphere': 'beyond the standard atmosphere',
    'no-speed': 'no speed reported',
    'no-gust': 'no gust',
  } as Partial<Record<string, string>>,
  ask: 'opens where this number comes from',
  sun: (rise: string, set: string) => `Sun up ${rise} to ${set}.`,
  sunAllDay: { always: 'The sun does not set today.', never: 'The sun does not rise today.' },
  civil: (from: string, until: string) => `Civil twilight ${from} to ${until}.`,
  butTheWind: (at: string | null) =>
    at === null
      ? 'All but the wind is from the last report.'
      : `All but the wind is from the report of ${at}.`,
  groupByGroup: 'Group by group',
  expected: {
    title: 'Expected',
    trend: (until: string) => `Trend of the report, until ${until}`,
    taf: (station: string | null, from: string, until: string) =>
      `Forecast${station === null ? '' : ` for ${station}`}, ${from} to ${until}`,
    cancelled: (station: string | null) =>
      `Forecast${station === null ? '' : ` for ${station}`} cancelled`,
    missing: (station: string | null) => `No forecast${station === null ? '' : ` for ${station}`}`,
    kinds: {
      base: 'At first',
      FM: 'From then on',
      BECMG: 'Becoming',
      TEMPO: 'At times',
      INTER: 'Intermittently',
      PROB: 'Instead',
    },
    chance: (percent: number) => `${percent} %`,
    when: (from: string, until: string) => `${from} to ${until}`,
    windStays: 'wind as before',
    variable: 'variable',
    crosswind: (knots: string, limit: string) => `crosswind ${knots}, limit ${limit}`,
    tailwind: (knots: string, limit: string) => `tailwind ${knots}, limit ${limit}`,
    'gust-spread': (knots: string, limit: string) => `gust ${knots} above the wind, limit ${limit}`,
    within: { trend: 'Within this report', taf: 'Within this forecast' },
    /** `Within this report: 280° 25 gust 38, crosswind 32, limit 24, until 1300Z`. */
    said: (within: string, wind: string, figure: string, from: string | null, until: string) =>
      `${within}: ${wind}, ${figure}, ${from === null ? '' : `from ${from} `}until ${until}`,
  },
  elsewhere: {
    typed: (place: string | null, age: string, wind: string) =>
      `Typed at ${place ?? 'another field'}, ${age}: ${wind}`,
    report: (place: string | null, time: string, wind: string) =>
      `Report of ${place ?? 'another field'}, ${time}: ${wind}`,
    take: 'Use it here',
  },
  trend: {
    turn: { veering: 'Veered', backing: 'Backed' },
    strength: { strengthening: 'rose', easing: 'fell' },
    turned: (how: string, deg: number) => `${how} ${deg}°`,
    changed: (how: string, kt: number) => `${how} ${kt} kt`,
    and: ' and ',
    in: (what: string, minutes: number) => `${what} in ${minutes} min`,
    steady: (minutes: number) => `Steady over ${minutes} min`,
    holds: (end: string, time: string) => `${end} holds past ${time} at this rate`,
    none: (time: string) => `no runway within limits past ${time}, at this rate`,
    changes: (end: string, time: string) => `${end} better from about ${time}, at this rate`,
    breaks: (time: string) => `no runway within limits from about ${time}, at this rate`,
    basis: (count: number) => `From ${count} winds, carried on in a straight line: no forecast.`,
  },
} as const;
