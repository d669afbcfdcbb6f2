/** What a decoded report raises questions about. */

import type { WeatherNow } from './questions';
import type { Deposit, PresentWeather, RunwayState, SnowClosed } from './whole/groupTypes';
import type { Weather } from './whole/report';

/** What falls and is frozen, wholly or in part. WMO-No. 306, table 4678. */
const FROZEN: ReadonlySet<string> = new Set(['SN', 'SG', 'IC', 'PL', 'GR', 'GS']);

/** What falls at all. The same table. */
const FALLING: ReadonlySet<string> = new Set([...FROZEN, 'DZ', 'RA', 'UP']);

/** Deposits that contaminate if they cover enough of a runway; damp and wet don't. */
const CONTAMINATES: ReadonlySet<Deposit> = new Set([
  'rime',
  'dry-snow',
  'wet-snow',
  'slush',
  'ice',
  'compacted-snow',
  'frozen-ruts',
]);

/** The report's weather in the form the questions need. */
export function weatherNow(weather: Weather): WeatherNow {
  const here = weather.present.filter((group) => !group.vicinity);
  const has = (groups: readonly PresentWeather[], codes: ReadonlySet<string>) =>
    groups.some(({ phenomena }) => phenomena.some((code) => codes.has(code)));
  const falls = has(here, FALLING);
  return {
    precipitation: falls || here.some(({ descriptor }) => descriptor === 'SH'),
    frozenPrecipitation: has(here, FROZEN),
    freezingPrecipitation: here.some(
      ({ descriptor, phenomena }) =>
        descriptor === 'FZ' && phenomena.some((code) => FALLING.has(code)),
    ),
    recentRain: has(weather.recent, FALLING),
    thunderstorm:
      weather.present.some(({ descriptor }) => descriptor === 'TS') ||
      weather.clouds.some(({ convective }) => convective === 'CB'),
    windShear: weather.windShear.length > 0,
    runwayState: worst(weather.runwayStates),
    lowestRvrM: lowest(weather.runwayVisualRange.map(({ distance }) => distance?.distanceM)),
    visibilityM: weather.visibility?.distance?.distanceM ?? null,
    ceilingFt: ceilingFt(weather),
    temperatureC: weather.temperature?.airC ?? null,
  };
}

function lowest(values: readonly (number | undefined)[]): number | null {
  const known = values.filter((value) => value !== undefined);
  return known.length === 0 ? null : Math.min(...known);
}

/**
 * The lowest layer that covers more than half the sky, or the vertical visibility into an obscured
 * one, feet; infinite under a clear sky, null if nothing is said. ICAO Annex 2, ch. 1.
 */
export function ceilingFt({ clouds, verticalVisibility, noCloud, cavok }: Weather): number | null {
  const layers = clouds.filter(({ amount }) => amount === 'BKN' || amount === 'OVC');
  const base = lowest([
    ...layers.map((layer) => layer.baseFt ?? undefined),
    verticalVisibility?.heightFt ?? undefined,
  ]);
  if (base !== null) return base;
  const clear = cavok || noCloud !== null || (clouds.length > 0 && layers.length === 0);
  return clear ? Number.POSITIVE_INFINITY : null;
}

function worst(states: readonly (RunwayState | SnowClosed)[]): WeatherNow['runwayState'] {
  const surfaces = states.map((state) => {
    if (state.code === 'snow-closed') return 'contaminated';
    if (state.deposit !== null && CONTAMINATES.has(state.deposit)) return 'contaminated';
    return state.deposit === 'wet' || state.deposit === 'damp' ? 'wet' : null;
  });
  return surfaces.find((surface) => surface === 'contaminated') ?? surfaces.find(Boolean) ?? null;
}
