/**
 * What a text expects, part by part, and the time each part counts.
 *
 * A forecast (TAF): WMO-No. 306 Vol. I.1, FM 51; ICAO Annex 3, App. 5, 1. The trend at the end of a
 * report: FM 15, 15.14; Annex 3, App. 5, 2. Section numbers from memory.
 */

import { issuedAt } from '../issued';
import { readReports } from '../readReport';
import type { TextSpan, Wind } from '../report';
import { ceilingFt } from '../weatherNow';
import { weatherOf } from './gather';
import type { HourOfDay, Meaning } from './meaning';
import type { ReadSpan, Report } from './report';

export type PartKind =
  /** What a forecast begins with. */
  | 'base'
  /** From a moment on, everything before it is superseded. */
  | 'FM'
  /** Changes within a period, and stays so. */
  | 'BECMG'
  /** At times, for less than an hour each. `INTER`, for less than half an hour: Australia. */
  | 'TEMPO'
  | 'INTER'
  /** Instead of what prevails, with that probability. */
  | 'PROB';

/** A part of a forecast or a trend. */
export interface ForecastPart {
  readonly kind: PartKind;
  /** Of a `PROB30` or `PROB40`, alone or before `TEMPO`; null without. */
  readonly percent: number | null;
  /** As in the text. */
  readonly text: string;
  /** Degrees true. Null if it expects none, or none that can be used. */
  readonly wind: Wind | null;
  /** What it expects to be seen: metres, and the ceiling in feet, infinite under a clear sky; null if it says nothing. */
  readonly visibilityM: number | null;
  readonly ceilingFt: number | null;
  /** When it may begin to count. */
  readonly fromMs: number;
  /** From when it prevails for certain: later than `fromMs` only for `BECMG`. */
  readonly byMs: number;
  /** When it no longer counts. */
  readonly untilMs: number;
}

/** A forecast, or the trend of a report. */
export interface Forecast {
  readonly of: 'taf' | 'trend';
  readonly station: string | null;
  /** `NIL`: none was made; `CNL`: it no longer counts. Both have no parts. */
  readonly state: 'given' | 'missing' | 'cancelled';
  readonly issuedMs: number | null;
  /** The whole time it is for; null if the text gives none. */
  readonly validMs: readonly [from: number, until: number] | null;
  /** In the text's order. */
  readonly parts: readonly ForecastPart[];
}

const MINUTE_MS = 60_000;
const HOUR_MS = 60 * MINUTE_MS;

/** A trend is for the two hours after its report. Annex 3, App. 5, 2.1. */
const TREND_MS = 2 * HOUR_MS;

/**
 * The forecasts of a text and the trends of its reports, in its order; those that expect nothing
 * (`NOSIG`) are left out. Days have no month in a text: they are the ones nearest to `nearMs`.
 */
export function forecastsIn(text: string, nearMs: number): readonly Forecast[] {
  return readReports(text).flatMap((report) => {
    const forecast = forecastOf(text, report, nearMs);
    return forecast === null ? [] : [forecast];
  });
}

function forecastOf(text: string, report: Report, nearMs: number): Forecast | null {
  const { kind, station, spans } = report;
  const isTaf = kind === 'forecast' && spans.some((span) => isValidity(span) || isTafType(span));
  const issuedMs = report.issued && issuedAt(report.issued, new Date(nearMs)).getTime();
  const groups = expectedGroups(text, spans);
  const drafts = draftsOf(groups, isTaf);
  if (isTaf) {
    const first = groups.find(isValidity);
    const validMs = first ? periodOf(first, issuedMs ?? nearMs) : null;
    const says = (word: RegExp) => groups.some(({ at }) => word.test(text.slice(...at)));
    const isMissing = report.weather.modifiers.includes('missing') || says(/\bNIL\b/);
    const state = isMissing ? 'missing' : says(/\bCNL\b/) ? 'cancelled' : 'given';
    const parts = state === 'given' && validMs !== null ? partsOf(text, drafts, validMs) : [];
    return { of: 'taf', station, state, issuedMs, validMs, parts };
  }
  if (drafts.length === 0) return null;
  const fromMs = issuedMs ?? nearMs;
  const validMs = [fromMs, fromMs + TREND_MS] as const;
  const parts = partsOf(text, drafts, validMs);
  return { of: 'trend', station, state: 'given', issuedMs, validMs, parts };
}

const isTafType = ({ meaning }: ReadSpan): boolean =>
  meaning?.code === 'type' && meaning.type === 'TAF';

const isValidity = ({ kind, meaning }: ReadSpan): boolean =>
  (kind === 'forecast' || kind === 'trend') && meaning?.code === 'validity';

/** What is expected, up to the remarks, whose words and numbers are no part of it. */
function expectedGroups(text: string, spans: readonly ReadSpan[]): readonly ReadSpan[] {
  const all = spans.filter(({ kind }) => kind === 'forecast' || kind === 'trend');
  const end = all.findIndex(
    ({ at, meaning }) => meaning === null && /\b(?:RMKS?|REMARKS?)\b/i.test(text.slice(...at)),
  );
  return end < 0 ? all : all.slice(0, end);
}

/** A part as written, before its times are worked out. */
interface Draft {
  kind: PartKind;
  percent: number | null;
  at: TextSpan;
  wind: Wind | null;
  /** What it says besides its times and wind. */
  meanings: Meaning[];
  /** `0112/0114`. */
  period: ReadSpan | null;
  from: HourOfDay | null;
  until: HourOfDay | null;
  moment: HourOfDay | null;
}

const draft = (kind: PartKind, at: TextSpan, percent: number | null = null): Draft => ({
  kind,
  percent,
  at,
  wind: null,
  meanings: [],
  period: null,
  from: null,
  until: null,
  moment: null,
});

/** The parts as written; a forecast has a base before the first that is opened, a trend none. */
function draftsOf(groups: readonly ReadSpan[], hasBase: boolean): readonly Draft[] {
  const drafts: Draft[] = [];
  /** A part takes times only where it opens: an extreme, or words after it, bring others. */
  let opening = false;
  for (const group of groups) {
    const { at, meaning } = group;
    const last = drafts.at(-1);
    if (meaning?.code === 'trend') {
      if (meaning.trend === 'NOSIG') continue;
      const isTimesOf = opening && last?.kind === 'PROB' && meaning.trend !== 'PROB';
      if (isTimesOf) {
        last.kind = meaning.trend;
        last.at = [last.at[0], at[1]];
      } else drafts.push(draft(meaning.trend, at, meaning.percent));
      opening = true;
      continue;
    }
    if (meaning?.code === 'time' && meaning.is === 'FM' && !(opening && last?.kind !== 'base')) {
      drafts.push({ ...draft('FM', at), from: meaning });
      opening = true;
      continue;
    }
    if (last === undefined && !hasBase) continue;
    const part = last ?? draft('base', at);
    if (last === undefined) drafts.push(part);
    part.at = [part.at[0], at[1]];
    if (meaning?.code === 'validity' && opening) part.period ??= group;
    else if (meaning?.code === 'time' && opening) {
      if (meaning.is === 'FM') part.from ??= meaning;
      else if (meaning.is === 'TL') part.until ??= meaning;
      else part.moment ??= meaning;
    } else {
      opening = false;
      if (meaning?.code === 'wind') part.wind ??= meaning.wind;
      else if (meaning?.code === 'swing' && part.wind !== null) {
        part.wind = { ...part.wind, sectorDeg: meaning.sectorDeg };
      } else if (meaning !== null) part.meanings.push(meaning);
    }
  }
  return drafts;
}

/**
 * The moment of a day and hour nearest to another; hour 24 is the end of that day. NaN if there is
 * no such moment.
 */
function momentOf({ day, hour, minute }: HourOfDay, nearMs: number): number {
  if (hour > 24 || minute > 59) return Number.NaN;
  const sinceMidnightMs = (hour * 60 + minute) * MINUTE_MS;
  const near = new Date(nearMs);
  if (day !== null) {
    const midnight = issuedAt({ day, hour: 0, minute: 0 }, near).getTime();
    return midnight + sinceMidnightMs;
  }
  const today = Date.UTC(near.getUTCFullYear(), near.getUTCMonth(), near.getUTCDate());
  const days = Math.round((nearMs - today - sinceMidnightMs) / (24 * HOUR_MS));
  return today + days * 24 * HOUR_MS + sinceMidnightMs;
}

/** Null for days and hours no calendar has. */
function periodOf({ meaning }: ReadSpan, nearMs: number): readonly [number, number] | null {
  if (meaning?.code !== 'validity') return null;
  const fromMs = momentOf(meaning.from, nearMs);
  const untilMs = momentOf(meaning.to, fromMs);
  return Number.isNaN(fromMs) || !(untilMs >= fromMs) ? null : [fromMs, untilMs];
}

/**
 * When each part counts within the time of the whole. One whose own times can't be read counts all
 * of it, which is the cautious answer.
 */
function partsOf(
  text: string,
  drafts: readonly Draft[],
  whole: readonly [number, number],
): readonly ForecastPart[] {
  const timed = drafts.map((one): ForecastPart => {
    const { kind, percent, at, wind, meanings } = one;
    const weather = weatherOf(meanings);
    const visibilityM = weather.visibility?.distance?.distanceM ?? null;
    const seen = { visibilityM, ceilingFt: ceilingFt(weather) };
    const said = { kind, percent, text: text.slice(...at), wind, ...seen };
    return { ...said, ...timesOf(one, whole) };
  });
  return timed.map((part, place) => ({
    ...part,
    untilMs: Math.min(part.untilMs, ...timed.slice(place + 1).map((later) => endFor(part, later))),
  }));
}

/**
 * - `BECMG FM1100 TL1200`: the change begins and is complete. Without `FM` it begins, without `TL`
 *   it is complete, with the whole; `AT` is both. FM 15, 15.14.2 to 15.14.5.
 * - `TEMPO FM1100 TL1200`: from and until, likewise. 15.14.6 to 15.14.8.
 */
function timesOf(
  { kind, period, from, until, moment }: Draft,
  [wholeFromMs, wholeUntilMs]: readonly [number, number],
): Pick<ForecastPart, 'fromMs' | 'byMs' | 'untilMs'> {
  const middleMs = (wholeFromMs + wholeUntilMs) / 2;
  const written = period === null ? null : periodOf(period, middleMs);
  const at = (hour: HourOfDay | null, otherwiseMs: number): number => {
    const ms = hour === null ? Number.NaN : momentOf(hour, middleMs);
    return Number.isNaN(ms) ? otherwiseMs : ms;
  };
  const fromMs = written?.[0] ?? at(moment ?? from, wholeFromMs);
  switch (kind) {
    case 'base':
      return { fromMs: wholeFromMs, byMs: wholeFromMs, untilMs: wholeUntilMs };
    case 'FM':
      return { fromMs, byMs: fromMs, untilMs: wholeUntilMs };
    case 'BECMG': {
      const byMs = written?.[1] ?? at(moment ?? until, wholeUntilMs);
      // One that begins after the whole has ended never counts.
      return { fromMs, byMs: Math.max(fromMs, byMs), untilMs: wholeUntilMs };
    }
    default:
      return { fromMs, byMs: fromMs, untilMs: written?.[1] ?? at(until, wholeUntilMs) };
  }
}

/** What comes and goes; anything else prevails until something replaces it. */
const isPassing = ({ kind }: ForecastPart): boolean =>
  kind === 'TEMPO' || kind === 'INTER' || kind === 'PROB';

/** When a part stops counting because of a later one: `FM` supersedes all, `BECMG` what it states. */
function endFor(part: ForecastPart, later: ForecastPart): number {
  const never = Number.POSITIVE_INFINITY;
  if (later.kind === 'FM') return later.fromMs > part.fromMs ? later.fromMs : never;
  const changesWind = later.kind === 'BECMG' && later.wind !== null;
  return changesWind && !isPassing(part) ? later.byMs : never;
}

/**
 * The wind expected to prevail at a moment: of base, `FM` and completed `BECMG` the last. Null
 * outside the time of the forecast, or without a wind.
 */
export function prevailingAt({ parts }: Forecast, atMs: number): ForecastPart | null {
  const prevails = (part: ForecastPart): boolean =>
    !isPassing(part) && part.wind !== null && part.byMs <= atMs && atMs < part.untilMs;
  return parts.findLast(prevails) ?? null;
}
