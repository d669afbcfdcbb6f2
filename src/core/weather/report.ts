/**
 * What a weather report, or a wind typed in short, was read as, as far as its wind goes.
 *
 * The reader never throws and never guesses: each piece of the text is either read, with a kind, or
 * marked as not read; what was read but can't be used is a {@link Problem} with its place.
 */

/** A stretch of the text, as `[from, to)` in UTF-16 code units. */
export type TextSpan = readonly [from: number, to: number];

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

/** What a stretch of the text was read as. */
export type SpanKind =
  /** The line above a bulletin: `SAXX31 XHAR 011250`. WMO-No. 386, Part II, 2.3.2. */
  | 'heading'
  | 'type'
  | 'station'
  | 'time'
  | 'modifier'
  | 'wind'
  | 'swing'
  | 'trend'
  | 'remarks'
  | 'forecast'
  /** The `=` that ends a report. */
  | 'end'
  /** A group of a report that says nothing about the wind: visibility, cloud, pressure. */
  | 'other'
  /** Another report in the same text, not the one answered from. */
  | 'another'
  /** The last piece, which the next key may still complete. */
  | 'unfinished'
  /** What could not be read. */
  | 'unread';

/**
 * One stretch of the text and what it was read as. Spans are in order, don't overlap, and cover all
 * of the text except its spaces. Those of kind heading, trend, remarks, forecast, another and
 * unread include the spaces between their groups.
 */
export interface Span {
  readonly at: TextSpan;
  readonly kind: SpanKind;
}

/** What can't be used, where, with the numbers its sentence needs. */
export interface Problem {
  readonly code: ProblemCode;
  readonly at: TextSpan;
  readonly values?: Readonly<Record<string, number | string>>;
}

/** Why a piece of the text can't be used, or must be used with care. */
export type ProblemCode =
  /** The next key may still make a wind, or more of one, of the text. Not a mistake. */
  | 'incomplete'
  /** Nothing in the text looks like a wind. */
  | 'no-wind'
  /** The text is a forecast: its wind is not the wind now. */
  | 'forecast'
  /** The station did not report the wind. */
  | 'wind-not-reported'
  /** The direction is above 360; it yields no wind, or no swing. */
  | 'direction-out-of-range'
  /** A speed of 250 kt or more, taken for a slip; it yields no wind. */
  | 'speed-out-of-range'
  /** The gust is below the steady wind; the gust is refused. */
  | 'gust-below-mean'
  /** A gust out of a calm: it may come from anywhere. */
  | 'gust-in-calm'
  /** More of the wind seems to be written than was read: it may be stronger. */
  | 'wind-unread'
  /** The mean direction lies outside the swing; both are used. */
  | 'mean-outside-swing'
  /** Text beyond the bound was not read. */
  | 'too-long';

/** A report, or a wind typed in short, as read for its wind. */
export interface WindReport {
  /** A whole report, a wind typed in short, a forecast instead of a report, or none of them. */
  readonly kind: 'report' | 'shorthand' | 'forecast' | 'nothing';
  /** Station indicator, such as `XHAR`; null if the text names none. */
  readonly station: string | null;
  /** Day of month and UTC time of the observation; null when the text gives none. */
  readonly issued: { readonly day: number; readonly hour: number; readonly minute: number } | null;
  /** The wind now; null where none was reported. */
  readonly wind: Wind | null;
  /**
   * The north its directions are measured from. A whole report is true; a spoken text, such as an
   * ATIS, is magnetic unless its field does otherwise (FAA AIM 4-3-6); a short wind doesn't say.
   */
  readonly north: 'true' | 'magnetic' | 'unstated';
  /** How many other observations the same text holds. */
  readonly others: number;
  readonly spans: readonly Span[];
  readonly problems: readonly Problem[];
}
