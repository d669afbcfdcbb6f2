/**
 * Questions the weather raises before choosing an end.
 *
 * A report never changes what the pilot has set: rain doesn't make the runway wet here, it asks
 * whether it is. Each question is a code with its numbers; the most pressing come first.
 */

import type { Surface } from '../airfield/field';

/** The parts of the present weather that raise questions. */
export interface WeatherNow {
  /** Anything falls: `DZ`, `RA`, `SN` and the others, showers too, but not just in the vicinity. */
  readonly precipitation: boolean;
  /** What falls is frozen, wholly or in part: `SN`, `SG`, `PL`, `GR`, `GS`, `IC`. */
  readonly frozenPrecipitation: boolean;
  /** It freezes where it falls: `FZRA`, `FZDZ`. */
  readonly freezingPrecipitation: boolean;
  /** Rain or the like since the last report, or ended: `RERA`. */
  readonly recentRain: boolean;
  /** A thunderstorm at the field or in its vicinity, or a `CB`. */
  readonly thunderstorm: boolean;
  /** Wind shear reported for any runway. */
  readonly windShear: boolean;
  /** What the report says about a runway's surface; null if nothing. */
  readonly runwayState: Surface | null;
  /** Lowest runway visual range, m; null when none is given. */
  readonly lowestRvrM: number | null;
  /** Visibility, m; null when not known. */
  readonly visibilityM: number | null;
  /** Lowest cloud covering more than half the sky, ft; Infinity if none, null if unknown. */
  readonly ceilingFt: number | null;
  /** Air temperature, °C; null when not known. */
  readonly temperatureC: number | null;
}

/** Something to ask the pilot, or to point out. */
export type WeatherQuestion =
  /** Thunderstorms make the wind's direction a guess. FAA AC 00-24. */
  | { readonly code: 'thunderstorm' }
  /** ICAO Annex 3, App. 3, 4.8.1.4: reported for the runways it was met on. */
  | { readonly code: 'wind-shear' }
  /**
   * More than a quarter of a contaminated runway is covered by snow, slush, ice, frost or more than
   * 3 mm of water. ICAO Annex 14, 1.1. What falls may settle, so it is asked.
   */
  | {
      readonly code: 'treat-as-contaminated';
      readonly because: 'runway-state' | 'freezing-precipitation' | 'frozen-precipitation';
    }
  /** A runway with any visible dampness is wet. ICAO Annex 14, 1.1. */
  | {
      readonly code: 'treat-as-wet';
      readonly because: 'runway-state' | 'precipitation' | 'recent-rain';
    }
  /**
   * Visible moisture at +10 °C or less, down to −40 °C: how transport aircraft's manuals define
   * icing conditions on the ground. Common practice, no published source.
   */
  | {
      readonly code: 'icing';
      readonly because: 'freezing-precipitation' | 'precipitation' | 'fog' | 'runway-state';
      readonly temperatureC: number | null;
    }
  /** Below 550 m: low-visibility operations. Regulation (EU) 965/2012, Annex I. */
  | { readonly code: 'low-rvr'; readonly rvrM: number; readonly belowM: number }
  /**
   * Ground visibility below 5 km or ceiling below 1 500 ft: in a control zone, visual flights need
   * a special clearance. ICAO Annex 2, 4.2. Each is null unless below.
   */
  | {
      readonly code: 'below-visual-minima';
      readonly visibilityM: number | null;
      readonly ceilingFt: number | null;
    };

const LOW_RVR_M = 550;
const VISUAL_M = 5000;
const VISUAL_FT = 1500;
const ICING_WARMEST_C = 10;
const ICING_COLDEST_C = -40;

/** Fog counts as visible moisture when one sees a mile or less. As for icing. */
const FOG_M = 1600;

/** The questions the weather raises while the surface is set as it is; empty if none. */
export function weatherQuestions(weather: WeatherNow, surface: Surface): WeatherQuestion[] {
  const { thunderstorm, windShear, lowestRvrM } = weather;
  return [
    ...(thunderstorm ? [{ code: 'thunderstorm' } as const] : []),
    ...(windShear ? [{ code: 'wind-shear' } as const] : []),
    ...surfaceQuestion(weather, surface),
    ...icing(weather),
    ...(lowestRvrM !== null && lowestRvrM < LOW_RVR_M
      ? [{ code: 'low-rvr', rvrM: lowestRvrM, belowM: LOW_RVR_M } as const]
      : []),
    ...belowVisualMinima(weather),
  ];
}

/** Only a surface worse than the one set is asked about. */
function surfaceQuestion(weather: WeatherNow, surface: Surface): WeatherQuestion[] {
  const { runwayState, freezingPrecipitation, frozenPrecipitation } = weather;
  if (surface === 'contaminated') return [];
  const contaminated = (
    because: 'runway-state' | 'freezing-precipitation' | 'frozen-precipitation',
  ) => [{ code: 'treat-as-contaminated', because }] as const satisfies WeatherQuestion[];
  if (runwayState === 'contaminated') return [...contaminated('runway-state')];
  if (freezingPrecipitation) return [...contaminated('freezing-precipitation')];
  if (frozenPrecipitation) return [...contaminated('frozen-precipitation')];
  if (surface === 'wet') return [];
  if (runwayState === 'wet') return [{ code: 'treat-as-wet', because: 'runway-state' }];
  if (weather.precipitation) return [{ code: 'treat-as-wet', because: 'precipitation' }];
  return weather.recentRain ? [{ code: 'treat-as-wet', because: 'recent-rain' }] : [];
}

function icing(weather: WeatherNow): WeatherQuestion[] {
  const { temperatureC } = weather;
  // Freezing precipitation is icing with or without a temperature.
  if (weather.freezingPrecipitation) {
    return [{ code: 'icing', because: 'freezing-precipitation', temperatureC }];
  }
  const because = visibleMoisture(weather);
  if (because === null || temperatureC === null) return [];
  if (temperatureC > ICING_WARMEST_C || temperatureC < ICING_COLDEST_C) return [];
  return [{ code: 'icing', because, temperatureC }];
}

function visibleMoisture(weather: WeatherNow): 'precipitation' | 'fog' | 'runway-state' | null {
  const { precipitation, frozenPrecipitation, visibilityM, runwayState } = weather;
  if (precipitation || frozenPrecipitation) return 'precipitation';
  if (visibilityM !== null && visibilityM <= FOG_M) return 'fog';
  // Water and slush thrown up from the ground.
  return runwayState === 'wet' || runwayState === 'contaminated' ? 'runway-state' : null;
}

function belowVisualMinima({ visibilityM, ceilingFt }: WeatherNow): WeatherQuestion[] {
  const below = (value: number | null, least: number) =>
    value !== null && value < least ? value : null;
  const question = {
    code: 'below-visual-minima',
    visibilityM: below(visibilityM, VISUAL_M),
    ceilingFt: below(ceilingFt, VISUAL_FT),
  } as const;
  return question.visibilityM === null && question.ceilingFt === null ? [] : [question];
}
