/**
 * What a weather report, or a wind typed in short, was read as.
 *
 * The reader never throws and never guesses: each piece of the text is either read, with a kind, or
 * marked as not read; what was read but cannot be used is a {@link Problem} with its place.
 */

/** A stretch of the text, as `[from, to)` in UTF-16 code units. */
export type Place = readonly [from: number, to: number];

/**
 * The wind of an observation. Directions are whole degrees, 1 to 360, from whichever north the text
 * was given to: a full report is true, a spoken or typed wind is what its entry says.
 */
export interface Wind {
  /** Where the wind comes from, degrees; null when variable or not reported. Calm is 0. */
  readonly fromDeg: number | null;
  /** Steady speed, knots, not rounded; null when not reported. */
  readonly speedKt: number | null;
  /** Gust, knots, not rounded; null when there is none. */
  readonly gustKt: number | null;
  /** The directions it swings between, clockwise from the first to the second; may pass north. */
  readonly sectorDeg: readonly [number, number] | null;
  /** Given as variable (`VRB`), from anywhere. */
  readonly variable: boolean;
  /** The speed is only known to be above `speedKt` (`P99KT`). */
  readonly speedIsMinimum: boolean;
  /** The gust is only known to be above `gustKt` (`GP50KT`). */
  readonly gustIsMinimum: boolean;
}

/** What a stretch of the text was read as. `unread` is what could not be. */
export type SpanKind =
  | 'type'
  | 'station'
  | 'time'
  | 'modifier'
  | 'wind'
  | 'swing'
  | 'trend'
  | 'remarks'
  | 'forecast'
  | 'end'
  | 'other'
  | 'unread';

/** One stretch of the text and what it was read as. Spans are in order and do not overlap. */
export interface Span {
  readonly at: Place;
  readonly kind: SpanKind;
}

/** What cannot be used, where, with the numbers that the sentence about it needs. */
export interface Problem {
  readonly code: ProblemCode;
  readonly at: Place;
  readonly values?: Readonly<Record<string, number | string>>;
}

/** Why a piece of the text cannot be used, or must be used with care. */
export type ProblemCode =
  /** Nothing in the text looks like a wind. */
  | 'no-wind'
  /** The text is a forecast: its wind is not the wind now. */
  | 'forecast'
  /** The station did not report the wind. */
  | 'wind-not-reported'
  /** The direction is above 360. */
  | 'direction-out-of-range'
  /** The speed is above what the trade knows (250 kt and more is taken as a slip). */
  | 'speed-out-of-range'
  /** The gust is below the steady wind; the gust is refused. */
  | 'gust-below-mean'
  /** The mean direction lies outside the swing; both are used. */
  | 'mean-outside-swing'
  /** Text beyond the bound was not read. */
  | 'too-long';

/** A report, or a wind typed in short, as read. */
export interface Report {
  /** A whole report, a wind typed in short, a forecast pasted by mistake, or none of them. */
  readonly kind: 'report' | 'shorthand' | 'forecast' | 'nothing';
  /** Station indicator, such as `XHAR`; null when the text names none. */
  readonly station: string | null;
  /** Day of month and UTC time of the observation; null when the text gives none. */
  readonly issued: { readonly day: number; readonly hour: number; readonly minute: number } | null;
  /** The wind now; null where none was reported. */
  readonly wind: Wind | null;
  readonly spans: readonly Span[];
  readonly problems: readonly Problem[];
}
