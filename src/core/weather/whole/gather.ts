/** A report's weather, assembled from the meanings of its stretches. */

import type { TextSpan } from '../report';
import type { Pressure, Temperature } from './groupTypes';
import type { Meaning, TenthsTemperature } from './meaning';
import type { ReadSpan, Trend, Weather } from './report';

/** A value being assembled. */
type Draft<T> = {
  -readonly [K in keyof T]: T[K] extends readonly (infer One)[] ? One[] : T[K];
};

/** The weather in the stretches of one report, which are places in the text. */
export function gather(text: string, spans: readonly ReadSpan[]): Weather {
  const weather = noWeather();
  let previous: Meaning | null = null;
  for (const { at, kind, meaning } of spans) {
    if (kind === 'trend') addExpected(weather.trends, text, at, meaning, previous);
    else if (kind === 'remarks') addRemark(weather, text, at, meaning);
    else if (kind !== 'forecast' && meaning) addObserved(weather, meaning);
    previous = meaning;
  }
  return weather;
}

/** The weather that these groups give, as if they had been observed. */
export function weatherOf(meanings: readonly Meaning[]): Weather {
  const weather = noWeather();
  for (const meaning of meanings) addObserved(weather, meaning);
  return weather;
}

const noWeather = (): Draft<Weather> => ({
  type: null,
  modifiers: [],
  cavok: false,
  visibility: null,
  visibilityTowards: [],
  runwayVisualRange: [],
  present: [],
  recent: [],
  clouds: [],
  verticalVisibility: null,
  noCloud: null,
  temperature: null,
  pressure: null,
  windShear: [],
  sea: null,
  runwayStates: [],
  colourState: null,
  maintenance: false,
  trends: [],
  remarks: null,
});

/** 10 km or more, as `CAVOK` has it. 15.10. */
const TEN_KM = { distanceM: 10_000, value: 10_000, unit: 'm', bound: 'at-least' } as const;

/** Adds the meaning of one observed group. Of what can occur once, the first counts. */
function addObserved(weather: Draft<Weather>, meaning: Meaning): void {
  switch (meaning.code) {
    case 'type':
      weather.type ??= meaning.type;
      break;
    case 'modifier':
      weather.modifiers.push(meaning.modifier);
      break;
    case 'cavok':
      weather.cavok = true;
      weather.visibility ??= {
        code: 'visibility',
        distance: TEN_KM,
        towards: null,
        undirected: false,
      };
      break;
    case 'visibility':
      if (meaning.towards) weather.visibilityTowards.push(meaning);
      else weather.visibility ??= meaning;
      break;
    case 'runway-visual-range':
      weather.runwayVisualRange.push(meaning);
      break;
    case 'weather':
      (meaning.recent ? weather.recent : weather.present).push(meaning);
      break;
    case 'cloud':
      weather.clouds.push(meaning);
      break;
    case 'vertical-visibility':
      weather.verticalVisibility ??= meaning;
      break;
    case 'no-cloud':
      weather.noCloud ??= meaning.as;
      break;
    case 'temperature':
      // Slashes may stand for something else that is missing, if figures follow.
      if (!isGiven(weather.temperature)) weather.temperature = meaning;
      break;
    case 'pressure':
      weather.pressure = weather.pressure ? bothOf(weather.pressure, meaning) : meaning;
      break;
    case 'wind-shear':
      weather.windShear.push(meaning);
      break;
    case 'sea':
      weather.sea ??= meaning;
      break;
    case 'runway-state':
    case 'snow-closed':
      weather.runwayStates.push(meaning);
      break;
    case 'colour-state':
      weather.colourState ??= meaning;
      break;
    case 'maintenance':
      weather.maintenance = true;
      break;
  }
}

const isGiven = (temperature: Temperature | null): boolean =>
  temperature !== null && (temperature.airC !== null || temperature.dewPointC !== null);

/** Adds a stretch to the expectation it belongs to, or opens a new one. */
function addExpected(
  trends: Trend[],
  text: string,
  at: TextSpan,
  meaning: Meaning | null,
  previous: Meaning | null,
): void {
  const last = trends.at(-1);
  const follows = previous?.code === 'trend';
  const opens =
    // `PROB30 TEMPO` is one expectation, and so is `BECMG FM1400`; `FM1400` alone opens one.
    (meaning?.code === 'trend' && !(follows && previous.trend === 'PROB')) ||
    (meaning?.code === 'time' && meaning.is === 'FM' && !follows);
  if (last && !opens) {
    const whole: TextSpan = [last.at[0], at[1]];
    trends[trends.length - 1] = {
      trend: last.trend,
      at: whole,
      text: text.slice(whole[0], whole[1]),
    };
    return;
  }
  const trend = meaning?.code === 'trend' ? meaning.trend : 'FM';
  trends.push({ trend, at, text: text.slice(at[0], at[1]) });
}

function addRemark(
  weather: Draft<Weather>,
  text: string,
  at: TextSpan,
  meaning: Meaning | null,
): void {
  const { remarks, temperature } = weather;
  const whole: TextSpan = [remarks?.at[0] ?? at[0], at[1]];
  weather.remarks = {
    at: whole,
    text: text.slice(whole[0], whole[1]),
    peakWind: meaning?.code === 'peak-wind' ? meaning : (remarks?.peakWind ?? null),
    seaLevelHpa:
      meaning?.code === 'sea-level-pressure' ? meaning.seaLevelHpa : (remarks?.seaLevelHpa ?? null),
  };
  if (meaning?.code === 'temperature-tenths')
    weather.temperature = withTenths(temperature, meaning);
  if (meaning?.code === 'maintenance') weather.maintenance = true;
}

/** Two units, each as given; a unit that wasn't observed is converted from the other. */
function bothOf(first: Pressure, second: Pressure): Pressure {
  if (first.given === second.given || first.given === 'both') return first;
  const [hpa, inches] = first.given === 'hPa' ? [first, second] : [second, first];
  return {
    code: 'pressure',
    qnhHpa: hpa.qnhHpa ?? inches.qnhHpa,
    qnhInHg: inches.qnhInHg ?? hpa.qnhInHg,
    given: 'both',
  };
}

/** Whole degrees are the tenths rounded: half a degree, plus floating-point error. */
const ROUNDING_C = 0.5 + 1e-9;

/** The tenths if they agree with the whole degrees, or if there are none. */
function withTenths(body: Temperature | null, tenths: TenthsTemperature): Temperature {
  const finer = (degrees: number | null | undefined, inTenths: number | null): number | null =>
    degrees == null || (inTenths !== null && Math.abs(inTenths - degrees) <= ROUNDING_C)
      ? inTenths
      : degrees;
  return {
    code: 'temperature',
    airC: finer(body?.airC, tenths.airC),
    dewPointC: finer(body?.dewPointC, tenths.dewPointC),
  };
}
