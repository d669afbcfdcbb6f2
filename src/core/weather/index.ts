/** Reading reports, and the wind in them. */

export { ageMinutes, issuedAt, newestFor } from './issued';
export type { WeatherQuestion } from './questions';
export { readReport, readReports } from './readReport';
export type {
  Problem,
  ProblemCode,
  Span,
  SpanKind,
  TextSpan as TextPlace,
  Wind,
  WindReport,
} from './report';
export { type ReportNote, reportNotes } from './reportNotes';
export type { Forecast, ForecastPart, PartKind } from './whole/forecast';
export type * from './whole/groupTypes';
export type { HourOfDay, Meaning, Modifier, RemarkKind, TrendKind } from './whole/meaning';
export type { ReadSpan, Remarks, Report, Trend, Weather } from './whole/report';
export type { WindOutlook } from './windOutlook';
export type { ThinBasis, WindTrend } from './windTrend';
