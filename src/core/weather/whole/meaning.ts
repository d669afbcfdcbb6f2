/** What a stretch of a text means: a code with its values. Sentences are the view's. */

import type { Wind } from '../report';
import type { Issued } from '../statements';
import type { ReportGroup } from './groupTypes';

/** The modifiers of a report. Late: `RTD`, `RRA`. Missing: `NIL`. */
export type Modifier = 'automatic' | 'corrected' | 'amended' | 'late' | 'missing';

/** What opens an expectation, in a trend or in a forecast. */
export type TrendKind = 'NOSIG' | 'BECMG' | 'TEMPO' | 'INTER' | 'PROB' | 'FM';

/** A time as a trend or a forecast gives it; null if it leaves out the day. */
export interface HourOfDay {
  readonly day: number | null;
  readonly hour: number;
  readonly minute: number;
}

/** `PK WND 28045/1955`, the strongest since the last hourly report. FMH-1, 12.7.1. */
export interface PeakWind {
  readonly code: 'peak-wind';
  /** Degrees true. */
  readonly fromDeg: number;
  readonly speedKt: number;
  /** Null stands for the hour of the report. */
  readonly hour: number | null;
  readonly minute: number;
}

/** `SLP045`; null for `SLPNO`. FMH-1, 12.7.1. */
export interface SeaLevelPressure {
  readonly code: 'sea-level-pressure';
  readonly seaLevelHpa: number | null;
}

/** `T01820159`: temperature and dew point to a tenth of a degree. FMH-1, 12.7.2. */
export interface TenthsTemperature {
  readonly code: 'temperature-tenths';
  readonly airC: number;
  readonly dewPointC: number | null;
}

/** A remark that is recognised but not read. FMH-1, 12.7. */
export type RemarkKind =
  /** `AO1`, `AO2`: automatic, without or with a precipitation sensor. */
  | 'station-kind'
  /** `TSNO`, `PWINO`, `RVRNO`: a sensor is out. */
  | 'sensor-out'
  | 'pressure-rising-rapidly'
  | 'pressure-falling-rapidly'
  /** `52032`: over three hours. */
  | 'pressure-tendency'
  /** `P0009`, `60217`, `70125`: precipitation in the last hour, three or six hours, a day. */
  | 'precipitation'
  /** `4/008`. */
  | 'snow-depth'
  /** `10142`, `21012`, `401120084`. */
  | 'temperature-extremes'
  /** `RAB05E30`. */
  | 'weather-times'
  /** `WSHFT 1715`. */
  | 'wind-shift'
  /** `LTGICCC`. */
  | 'lightning'
  /** `QFE748`. */
  | 'field-pressure'
  /** `SC2AC5`, Canada: eighths of each kind. */
  | 'cloud-kinds';

/** What a stretch means. */
export type Meaning =
  | ReportGroup
  | { readonly code: 'bulletin' }
  | { readonly code: 'type'; readonly type: 'METAR' | 'SPECI' | 'TAF' }
  | { readonly code: 'station'; readonly station: string }
  | ({ readonly code: 'issued' } & Issued)
  | { readonly code: 'modifier'; readonly modifier: Modifier }
  /** Observed, or expected in a trend or a forecast: the stretch's kind says which. */
  | { readonly code: 'wind'; readonly wind: Wind }
  | { readonly code: 'swing'; readonly sectorDeg: readonly [number, number] }
  | { readonly code: 'trend'; readonly trend: TrendKind; readonly percent: number | null }
  /** When what is expected begins, ends or applies: `FM1400`, `TL1600`, `AT1500`. */
  | ({ readonly code: 'time'; readonly is: 'FM' | 'TL' | 'AT' } & HourOfDay)
  /** `0112/0212`: the period of a forecast, or of a change in it. FM 51. */
  | { readonly code: 'validity'; readonly from: HourOfDay; readonly to: HourOfDay }
  /** `TX15/0114Z`, `TNM02/0205Z`: expected extremes. FM 51. */
  | ({ readonly code: 'extreme'; readonly is: 'TX' | 'TN'; readonly airC: number } & HourOfDay)
  /** `RMK`. */
  | { readonly code: 'remarks' }
  | PeakWind
  | SeaLevelPressure
  | TenthsTemperature
  | { readonly code: 'remark'; readonly remark: RemarkKind }
  /** `=`. */
  | { readonly code: 'end' };
