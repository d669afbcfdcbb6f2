/** A whole report, as read. */

import type { Span, TextSpan, WindReport } from '../report';
import type {
  Cloud,
  ColourState,
  NoCloud,
  PresentWeather,
  Pressure,
  RunwayState,
  RunwayVisualRange,
  Sea,
  SnowClosed,
  Temperature,
  VerticalVisibility,
  Visibility,
  WindShear,
} from './groupTypes';
import type { Meaning, Modifier, PeakWind, TrendKind } from './meaning';

/**
 * What a report says besides its wind. A group the report lacks is null, or an empty list; one
 * whose place is held by slashes is present, with null in place of its number. Only what is
 * observed: for a forecast everything is empty but `type` and `modifiers`.
 */
export interface Weather {
  readonly type: 'METAR' | 'SPECI' | 'TAF' | null;
  readonly modifiers: readonly Modifier[];
  /** `CAVOK`, which also gives `visibility`: 10 km or more. */
  readonly cavok: boolean;
  /** Prevailing. Of two, such as `10SM` beside `9999`, the first. */
  readonly visibility: Visibility | null;
  /** Towards parts of the horizon, `1200NE`; usually the least. */
  readonly visibilityTowards: readonly Visibility[];
  readonly runwayVisualRange: readonly RunwayVisualRange[];
  /** Now; or `//` if a station couldn't tell. */
  readonly present: readonly PresentWeather[];
  /** Since the last report, but no longer. */
  readonly recent: readonly PresentWeather[];
  readonly clouds: readonly Cloud[];
  readonly verticalVisibility: VerticalVisibility | null;
  readonly noCloud: NoCloud['as'] | null;
  /** In tenths if a remark has them and they agree with the whole degrees. */
  readonly temperature: Temperature | null;
  /** If a report has both units, each as given. */
  readonly pressure: Pressure | null;
  readonly windShear: readonly WindShear[];
  readonly sea: Sea | null;
  readonly runwayStates: readonly (RunwayState | SnowClosed)[];
  readonly colourState: ColourState | null;
  /** The station wants maintenance. */
  readonly maintenance: boolean;
  /** What is expected, in the text's own words. */
  readonly trends: readonly Trend[];
  readonly remarks: Remarks | null;
}

/** One expectation at the end of a report, such as `TEMPO TL1200 0600`, not read further here. */
export interface Trend {
  /** What opens it; `FM` also for a time alone, such as `TL1400`. */
  readonly trend: TrendKind;
  readonly at: TextSpan;
  /** As in the text. */
  readonly text: string;
}

/** What follows `RMK`. */
export interface Remarks {
  readonly at: TextSpan;
  /** As in the text. */
  readonly text: string;
  readonly peakWind: PeakWind | null;
  /** hPa. */
  readonly seaLevelHpa: number | null;
}

/**
 * One stretch of the text, what it was read as, and what it means: null if it means nothing by
 * itself, or isn't read. Finer than the stretches of the wind reader: each group is its own, and
 * the words of one group, such as `1 1/2SM`, are one. The kind of each character is the same.
 */
export interface ReadSpan extends Span {
  readonly meaning: Meaning | null;
}

/** A report, or a wind typed in short, read whole. */
export interface Report extends WindReport {
  readonly spans: readonly ReadSpan[];
  readonly weather: Weather;
}

/**
 * Whether a text states more than a wind. A wind in short does not, nor does one that is spoken
 * with nothing beside it: all else stays as the report before it has it.
 */
export function statesWeather({ kind, station, weather }: Report): boolean {
  if (kind !== 'report') return false;
  const { type, cavok, visibility, clouds, temperature, pressure, present } = weather;
  return (
    station !== null ||
    type !== null ||
    cavok ||
    [visibility, temperature, pressure].some((group) => group !== null) ||
    clouds.length + present.length > 0
  );
}
