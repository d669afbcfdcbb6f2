/** Cautions in a word: what doesn't stop anyone, but is worth a glance. */

import { findEnd } from '../airfield/findEnd';
import { densityAltitudeFt } from '../earth/atmosphere';
import type { Figure } from '../figure';
import type { LengthAsked, Purpose, RankedEnd } from '../runway/question';
import type { Conditions } from './conditions';
import type { ExpectedBrief } from './expected';
import { forecastBelowMinima, type Minima } from './minima';
import type { SettledFacts } from './settled';
import type { TodayBrief } from './today';
import type { Caution, CautionCode } from './verdict';

export interface InAWordSources {
  readonly end: RankedEnd | null;
  readonly purpose: Purpose;
  readonly today: TodayBrief | null;
  readonly settled: SettledFacts;
  readonly conditions: Pick<Conditions, 'weather' | 'air' | 'lowSunOn'>;
  /** Null until it is loaded. */
  readonly expected: ExpectedBrief | null;
  /** How old the wind in use is, minutes by the sortie's clock; null without one. */
  readonly windAgeMin: number | null;
  readonly minima: Minima;
}

/** A wind this near to its limit is close to it, kt. Common practice, no published source. */
const NEAR_KT = 2;

/** The share of a declared length below which little of it is left. Likewise. */
const NEAR_SHARE = 0.1;

/** A wind is older than this when it should be asked for again, minutes. Likewise. */
const OLD_MIN = 15;

/** Density altitude this far above the field is worth a word, ft. Likewise. */
const THIN_FT = 2000;

/** What is said in a word, in no order. */
export function cautionsInAWord(sources: InAWordSources): readonly Caution[] {
  const { end, settled, conditions, windAgeMin } = sources;
  const { surface } = settled;
  const now = conditions.weather?.now;
  return [
    ...(now?.thunderstorm ? [bare('thunderstorm')] : []),
    ...(now?.windShear ? [bare('wind-shear')] : []),
    ...(now?.freezingPrecipitation ? [bare('icing')] : []),
    ...beyondForecast(sources),
    ...forecastBelowMinima(sources.expected, sources.minima),
    ...(end === null ? [] : nearWinds(end, settled)),
    ...(end === null ? [] : demonstrated(end, settled)),
    ...nearLength(sources),
    ...nearTyres(sources),
    ...cable(end, settled),
    ...notKnown(end, settled),
    ...(surface === 'dry' ? [] : [{ code: 'surface', value: surface, limit: null } as const]),
    ...wetTailwind(end, surface),
    ...aquaplaning(sources),
    ...(windAgeMin === null || windAgeMin <= OLD_MIN
      ? []
      : [{ code: 'wind-old', value: Math.floor(windAgeMin), limit: OLD_MIN } as const]),
    ...thinAir(settled, conditions.air),
    ...(end !== null && conditions.lowSunOn.get(end.designator)?.kind === 'now'
      ? [bare('low-sun')]
      : []),
  ];
}

const bare = (code: CautionCode): Caution => ({ code, value: null, limit: null });

/** A part of what is forecast, in force or coming within the hour, beyond a limit. */
function beyondForecast({ expected }: InAWordSources): readonly Caution[] {
  const beyond = expected?.worst?.beyond ?? null;
  if (beyond === null) return [];
  const { code, valueKt, limitKt } = beyond;
  return [{ code: `forecast-${code}`, value: valueKt, limit: limitKt }];
}

function near(code: CautionCode, value: number | null, limit: Figure<'kt'>): readonly Caution[] {
  if (value === null || limit.value === null || limit.value <= 0) return [];
  const isNear = value <= limit.value && value >= limit.value - NEAR_KT;
  return isNear ? [{ code, value, limit: limit.value }] : [];
}

const nearWinds = (end: RankedEnd, { crosswindLimit, tailwindLimit }: SettledFacts) => [
  ...near('near-crosswind', end.crosswindWorstKt, crosswindLimit),
  ...near('near-tailwind', end.tailwindWorstKt, tailwindLimit),
];

/** Where the last cable lies on the way along the runway. */
function cable(end: RankedEnd | null, { field }: SettledFacts): readonly Caution[] {
  const one = field && end && findEnd(field, end.designator);
  const cables = one?.given.cablesM ?? [];
  return cables.length === 0 ? [] : [{ code: 'cable', value: Math.max(...cables), limit: null }];
}

/** What nobody knows of the runway, so that it can't be judged; and what its source contradicts. */
function notKnown(end: RankedEnd | null, settled: SettledFacts): readonly Caution[] {
  const { field, aircraft, sun } = settled;
  const found = field && end && findEnd(field, end.designator);
  if (!found) return [];
  const { widthM, surface, edgeLights, declared, doubts = [] } = found.runway;
  const isNight = sun?.night.holds === true;
  const asksWidth = aircraft?.limits.leastWidthM !== undefined;
  const [doubt] = doubts;
  return [
    ...(isNight && edgeLights === undefined ? [bare('lights-unknown')] : []),
    ...(asksWidth && widthM === undefined ? [bare('width-unknown')] : []),
    ...(surface === 'unknown' ? [bare('surface-unknown')] : []),
    ...(found.slopePercent === null ? [bare('slope-unknown')] : []),
    ...(declared === false ? [bare('lengths-unknown')] : []),
    ...(doubt === undefined ? [] : [{ code: 'doubtful', value: doubt, limit: null } as const]),
  ];
}

/** A crosswind within the limit, but more than the maker has demonstrated. */
function demonstrated(end: RankedEnd, settled: SettledFacts): readonly Caution[] {
  const limit = settled.aircraft?.limits.demonstratedCrosswindKt;
  const value = end.crosswindWorstKt;
  if (limit === undefined || value === null || value <= limit) return [];
  // Beyond its limit it stops, and says so itself.
  if (settled.crosswindLimit.value !== null && value > settled.crosswindLimit.value) return [];
  return [{ code: 'demonstrated-crosswind', value, limit }];
}

function nearLength({ end }: InAWordSources): readonly Caution[] {
  const tightest: LengthAsked | null = end?.tightest ?? null;
  if (tightest === null) return [];
  const { neededM, availableM } = tightest;
  const leftM = availableM - neededM;
  const isNear = leftM >= 0 && leftM < NEAR_SHARE * availableM;
  return isNear ? [{ code: 'near-length', value: neededM, limit: availableM }] : [];
}

function nearTyres({ today, purpose }: InAWordSources): readonly Caution[] {
  const planned = today?.takeoff.planned;
  if (purpose !== 'take-off' || planned?.because !== null) return [];
  const { tyre } = planned.raw.limits;
  return tyre !== null && tyre.leftKt >= 0 && tyre.leftKt < NEAR_KT
    ? [{ code: 'near-tyres', value: tyre.liftOffGroundKt, limit: tyre.limitKt }]
    : [];
}

function wetTailwind(end: RankedEnd | null, surface: SettledFacts['surface']): readonly Caution[] {
  const tailKt = Math.round(end?.tailwindWorstKt ?? 0);
  return surface === 'dry' || tailKt < 1
    ? []
    : [{ code: 'wet-tailwind', value: tailKt, limit: null }];
}

/**
 * On a wet surface the tyres may float from 9 √p kt on, p in psi. NASA TN D-2056, Horne and Dreher,
 * 1963. Take-off reaches lift-off, a landing touch-down.
 */
function aquaplaning({ settled, today, purpose }: InAWordSources): readonly Caution[] {
  const psi = settled.aircraft?.limits.tyrePsi;
  if (psi === undefined || settled.surface === 'dry' || today === null) return [];
  const floatsKt = 9 * Math.sqrt(psi);
  const planned = today[purpose === 'take-off' ? 'takeoff' : 'landing'].planned;
  if (planned.because !== null) return [];
  const fastestKt =
    'liftOffKt' in planned.figures
      ? planned.figures.liftOffKt.value
      : planned.figures.touchdownKt.value;
  return fastestKt === null || fastestKt <= floatsKt
    ? []
    : [{ code: 'aquaplaning', value: floatsKt, limit: null }];
}

function thinAir({ field }: SettledFacts, air: Conditions['air']): readonly Caution[] {
  const [pressureFt, airC] = [air?.pressureAltitude.value, air?.temperature.value];
  if (field === null || pressureFt == null || airC == null) return [];
  const densityFt = densityAltitudeFt(pressureFt, airC, air?.dewPointC ?? null);
  const { elevationFt } = field.place;
  return densityFt === null || densityFt - elevationFt < THIN_FT
    ? []
    : [{ code: 'density-altitude', value: densityFt, limit: elevationFt }];
}
