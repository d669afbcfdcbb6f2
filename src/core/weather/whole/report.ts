/** A whole report, as read. */

import type { Place, Span, WindReport } from '../report';
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
 * What a report says besides its wind. A group that the report does not have is null, or an empty
 * list; one whose place is held by slashes is there, with null where its number would be. Only
 * what is observed: of a forecast all is empty but `type` and `modifiers`.
 */
export interface Weather {
  readonly type: 'METAR' | 'SPECI' | 'TAF' | null;
  readonly modifiers: readonly Modifier[];
  /** `CAVOK`, which also gives `visibility`: 10 km or more. */
  readonly cavok: boolean;
  /** Prevailing. Of two, as where `10SM` stands beside `9999`, the first. */
  readonly visibility: Visibility | null;
  /** Towards parts of the horizon, `1200NE`; usually the least. */
  readonly visibilityTowards: readonly Visibility[];
  readonly runwayVisualRange: readonly RunwayVisualRange[];
  /** Now; in its place `//` where a station could not tell. */
  readonly present: readonly PresentWeather[];
  /** Since the last report, and no longer. */
  readonly recent: readonly PresentWeather[];
  readonly clouds: readonly Cloud[];
  readonly verticalVisibility: VerticalVisibility | null;
  readonly noCloud: NoCloud['as'] | null;
  /**
   * To a tenth of a degree where a remark gives that and agrees with the whole degrees, which are
   * what the stretch's meaning holds.
   */
  readonly temperature: Temperature | null;
  /** Where a report has both units, each as it is given. */
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
  readonly at: Place;
  /** As it stands in the text. */
  readonly text: string;
}

/** What stands after `RMK`. */
export interface Remarks {
  readonly at: Place;
  /** As it stands in the text. */
  readonly text: string;
  readonly peakWind: PeakWind | null;
  /** hPa. */
  readonly seaLevelHpa: number | null;
}

/**
 * One stretch of the text, what it was read as, and what it means: null where it means nothing by
 * itself, or is not read. Finer than the stretches of the wind's reader: each group is its own, and
 * the words of one group, such as `1 1/2SM`, are one. The kind of each character is the same.
 */
export interface ReadSpan extends Span {
  readonly meaning: Meaning | null;
}

/** A report, or a wind typed in short, as read in whole. */
export interface Report extends WindReport {
  readonly spans: readonly ReadSpan[];
  readonly weather: Weather;
}
