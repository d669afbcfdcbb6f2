/**
 * What the groups of an observation say: one type for each, distinguished by its `code`.
 *
 * Section numbers are those of WMO-No. 306 Vol. I.1, FM 15, from memory; table numbers those of
 * WMO-No. 306 Vol. I.1, section C, from memory. Null always stands for slashes in the text: not
 * observed.
 */

/** What a number bounds: `P6SM` is above it, `M1/4SM` below, `9999` at least 10 km. */
export type Bound = 'exact' | 'at-least' | 'above' | 'below';

/** A distance, in metres and as the text gives it. */
export interface Distance {
  /** Metres, not rounded. */
  readonly distanceM: number;
  /** The number in the text's own unit. */
  readonly value: number;
  /** `SM` is the statute mile. */
  readonly unit: 'm' | 'km' | 'ft' | 'SM';
  readonly bound: Bound;
}

/** A point of the compass, as used for directional visibility. */
export type CompassPoint = 'N' | 'NE' | 'E' | 'SE' | 'S' | 'SW' | 'W' | 'NW';

/** A runway, such as `24L`, or all of them. */
export type RunwayName = string | 'all';

/** `9999`, `1200NE`, `1 1/2SM`, `M1/4SM`. 15.6. */
export interface Visibility {
  readonly code: 'visibility';
  readonly distance: Distance | null;
  /** The direction it is observed in; null for the prevailing visibility. */
  readonly towards: CompassPoint | null;
  /** `NDV`: the station cannot tell directions apart. */
  readonly undirected: boolean;
}

/** `CAVOK`: 10 km or more, no weather, no cloud below 5 000 ft or the sector altitude, no CB or TCU. 15.10. */
export interface Cavok {
  readonly code: 'cavok';
}

/** `R24L/0600V1200U`. 15.7. */
export interface RunwayVisualRange {
  readonly code: 'runway-visual-range';
  readonly runway: string;
  readonly distance: Distance | null;
  /** The greatest, if it varies; `distance` is then the least. */
  readonly upTo: Distance | null;
  readonly tendency: 'rising' | 'falling' | 'steady' | null;
}

/** `MI` shallow, `PR` partial, `BC` patches, `DR` drifting, `BL` blowing, `SH` showers, `TS` thunderstorm, `FZ` freezing. Table 4678. */
export type Descriptor = 'MI' | 'PR' | 'BC' | 'DR' | 'BL' | 'SH' | 'TS' | 'FZ';

/** Table 4678; `UP`: unknown precipitation, from an automatic station. */
export type Phenomenon =
  | ('DZ' | 'RA' | 'SN' | 'SG' | 'IC' | 'PL' | 'GR' | 'GS' | 'UP')
  | ('BR' | 'FG' | 'FU' | 'VA' | 'DU' | 'SA' | 'HZ' | 'PY')
  | ('PO' | 'SQ' | 'FC' | 'SS' | 'DS');

/** `-SHRA`, `VCTS`, `FG`; with RE, since the last report, `RETS`. 15.8, 15.13.2. */
export interface PresentWeather {
  readonly code: 'weather';
  readonly recent: boolean;
  /** False for `//`: the station could not tell whether there is any. */
  readonly observed: boolean;
  /** `VC`: within about 8 km of the field, but not at it. */
  readonly vicinity: boolean;
  /** Null in the vicinity, in the past, and for what is neither precipitation nor a storm. */
  readonly intensity: 'light' | 'moderate' | 'heavy' | null;
  readonly descriptor: Descriptor | null;
  readonly phenomena: readonly Phenomenon[];
}

/** `NSW`: earlier weather has ended. */
export interface NoSignificantWeather {
  readonly code: 'no-significant-weather';
}

/** `BKN030CB`. 15.9. */
export interface Cloud {
  readonly code: 'cloud';
  /** Few 1 to 2 eighths, scattered 3 to 4, broken 5 to 7, overcast 8. */
  readonly amount: 'FEW' | 'SCT' | 'BKN' | 'OVC' | null;
  /** Above the field, ft; 0 is below 100 ft. */
  readonly baseFt: number | null;
  /** `not-observed`: an automatic station can't tell whether it is one of the two. */
  readonly convective: 'CB' | 'TCU' | 'not-observed' | null;
}

/** `VV002`: the sky is obscured; vertical visibility. 15.9. */
export interface VerticalVisibility {
  readonly code: 'vertical-visibility';
  readonly heightFt: number | null;
}

/** No cloud to report: of significance, detected by an automatic station, at all, or (US, automatic) below 12 000 ft. */
export interface NoCloud {
  readonly code: 'no-cloud';
  readonly as: 'NSC' | 'NCD' | 'SKC' | 'CLR';
}

/** `15/M02`. 15.11. */
export interface Temperature {
  readonly code: 'temperature';
  /** °C. */
  readonly airC: number | null;
  /** °C. */
  readonly dewPointC: number | null;
}

/** `Q1013`, `A2992`. 15.12. */
export interface Pressure {
  readonly code: 'pressure';
  /** QNH, hPa, converted and not rounded where inches were given. */
  readonly qnhHpa: number | null;
  /** QNH, inches of mercury, converted and not rounded where hPa were given. */
  readonly qnhInHg: number | null;
  readonly given: 'hPa' | 'inHg' | 'both';
}

/** `WS R04`, `WS ALL RWY`: along the take-off or approach path, below 1 600 ft. 15.13.3. */
export interface WindShear {
  readonly code: 'wind-shear';
  /** Null if none is named. */
  readonly runway: RunwayName | null;
  /** Null stands for both. */
  readonly path: 'take-off' | 'landing' | null;
}

/** `WS010/31022KT`: the wind above a layer of shear, as US forecasts have it. */
export interface ShearAloft {
  readonly code: 'shear-aloft';
  readonly heightFt: number;
  /** Degrees true. */
  readonly fromDeg: number;
  readonly speedKt: number;
}

/** `W15/S4`, `W12/H75`. 15.13.5. */
export interface Sea {
  readonly code: 'sea';
  /** °C. */
  readonly waterC: number | null;
  /** 0 glassy to 9 phenomenal. Table 3700. */
  readonly state: number | null;
  /** Significant height of the waves, m. */
  readonly wavesM: number | null;
}

/** Table 0919, 0 to 9. */
export type Deposit =
  | ('clear-and-dry' | 'damp' | 'wet' | 'rime' | 'dry-snow' | 'wet-snow' | 'slush' | 'ice')
  | ('compacted-snow' | 'frozen-ruts');

/** Table 0366, 91 to 95 and 99. */
export type BrakingAction = 'poor' | 'medium-poor' | 'medium' | 'medium-good' | 'good';

/** `R24L/290150`, `24290150`, `R24L/CLRD70`. 15.13.6, until 2021. */
export interface RunwayState {
  readonly code: 'runway-state';
  /** `repeated`: taken from the message before, because there is no new one. */
  readonly runway: RunwayName | 'repeated';
  /** Deposits have ceased to exist. */
  readonly cleared: boolean;
  readonly deposit: Deposit | null;
  /** Share of the runway covered, per cent, from and to. Table 0519. */
  readonly coveredPercent: readonly [from: number, to: number] | null;
  /** Depth, mm; null also if it is insignificant. Table 1079. */
  readonly depth: { readonly depthMm: number; readonly bound: Bound } | null;
  /** Out of use because of snow, slush, ice or their clearance. */
  readonly closed: boolean;
  /** Coefficient of friction from 0 to 0.9, or a word for it. */
  readonly braking: number | BrakingAction | 'unreliable' | null;
}

/** `SNOCLO`, `R/SNOCLO`: closed by snow. 15.13.6. */
export interface SnowClosed {
  readonly code: 'snow-closed';
  readonly runway: RunwayName;
}

/** `BLU`, `BLACKAMB`: what a military field can be used for. Habit, no standard. */
export interface ColourState {
  readonly code: 'colour-state';
  readonly colour: 'BLU' | 'WHT' | 'GRN' | 'YLO' | 'YLO1' | 'YLO2' | 'AMB' | 'RED' | null;
  /** Not usable for reasons other than weather. */
  readonly black: boolean;
}

/** `$`: the station wants maintenance. FMH-1, 12.7.2. */
export interface Maintenance {
  readonly code: 'maintenance';
}

/** Any group of an observation except its wind. */
export type ReportGroup =
  | (Visibility | Cavok | RunwayVisualRange | PresentWeather | NoSignificantWeather)
  | (Cloud | VerticalVisibility | NoCloud | Temperature | Pressure)
  | (WindShear | ShearAloft | Sea | RunwayState | SnowClosed | ColourState | Maintenance);
