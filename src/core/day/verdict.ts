/** Sixth stage: what speaks against the runway in use, worked out once for all views. */

import { WELL_WITHIN } from '../aircraft/handbook';
import type { Exceeded, LoadFigures } from '../aircraft/loadSheet';
import type { Designator } from '../airfield/field';
import type { Figure } from '../figure';
import type { NoLength } from '../runway/needs';
import type { NoBestReason, Purpose, RankedEnd, Shortfall } from '../runway/question';
import { cautionsInAWord, type InAWordSources } from './inAWord';
import { belowMinima } from './minima';
import type { NoParachute } from './parachute';
import type { LateParts } from './sources';
import type { LandingLimit, LandingToday, TakeoffToday, TodayBrief } from './today';
import type { NoRanking, WindAnswer } from './wind';

/**
 * Cautions that stop, worst first: going on in spite of one is a decision, and recorded. Those of
 * the second list are said in a word.
 */
export const STOPPING = [
  'no-field',
  'no-end',
  'closed',
  'closed-by-report',
  'closed-today',
  'not-for-purpose',
  'no-numbers',
  /** The aircraft's document says neither how long it rolls nor what to work that out from. */
  'no-run',
  'over-mass',
  'over-max-take-off',
  'over-max-landing',
  'no-fuel',
  'outside-envelope',
  'fuel-over',
  'station-over',
  'cannot-climb',
  'tora',
  'toda',
  'asda',
  'lda',
  'go-above-stop',
  'tyres',
  'brake-energy',
  'brakes-hot',
  'parachute-used',
  'crosswind',
  'tailwind',
  'gust-spread',
  'speed-unbounded',
  'speed-not-known',
  'no-wind',
  'no-limits',
  'no-variation',
  'none-within-limits',
  'below-landing-fuel',
  'bingo',
  'narrow',
  'visibility',
  'ceiling',
  'no-lights',
] as const;

/** Cautions in a word, worst first. */
const IN_A_WORD = [
  'parachute',
  'thunderstorm',
  'wind-shear',
  'icing',
  'forecast-crosswind',
  'forecast-tailwind',
  'forecast-gust-spread',
  'forecast-visibility',
  'forecast-ceiling',
  'near-length',
  'near-crosswind',
  'demonstrated-crosswind',
  'near-tailwind',
  'near-tyres',
  'wet-tailwind',
  'aquaplaning',
  'cable',
  'surface',
  'wind-old',
  'density-altitude',
  'low-sun',
  /** What is worked out is off the handbook's table. */
  'off-book',
  'lights-unknown',
  'width-unknown',
  'surface-unknown',
  'slope-unknown',
  'lengths-unknown',
  'doubtful',
  'not-best',
] as const;

/** What a caution is about, worst first. */
export const CAUTIONS = [...STOPPING, ...IN_A_WORD] as const;

export type CautionCode = (typeof CAUTIONS)[number];

/** Whether a caution stops: it is asked about before the runway and before brake release. */
export const isStopping = ({ code }: Pick<Caution, 'code'>): boolean =>
  STOPPING.some((one) => one === code);

/** Whether this version knows a caution by that name. */
export const isCautionCode = (code: string): code is CautionCode =>
  CAUTIONS.some((one) => one === code);

/** What speaks against the runway, with figure and limit; null where there is no number. */
export interface Caution {
  readonly code: CautionCode;
  /** The figure, or the state in a word. */
  readonly value: number | string | null;
  readonly limit: number | string | null;
}

export interface Verdict {
  /** Its runway: the selected one, else the best; null without either. */
  readonly end: Designator | null;
  readonly purpose: Purpose;
  /** Parts still loading. Until they are in, an empty list of cautions means nothing. */
  readonly awaited: readonly (keyof LateParts)[];
  /** Parts that failed to load: their cautions are missing. */
  readonly failed: readonly (keyof LateParts)[];
  /** Worst first. */
  readonly cautions: readonly Caution[];
}

export interface VerdictSources
  extends Pick<Verdict, 'awaited' | 'failed'>,
    Omit<InAWordSources, 'end' | 'purpose'> {
  readonly wind: WindAnswer;
  readonly load: LoadFigures | null;
  readonly noParachute: NoParachute | null;
  /** Since the brakes last stopped the aircraft before this take-off, minutes; null if they haven't. */
  readonly brakesUsedMin: number | null;
  /** The most that today's physics is off its handbook's table, as a share; null without a table. */
  readonly bookLeftOver: number | null;
  /** Fuel on board before take-off and the fuel to turn back at, kg; null where either isn't known. */
  readonly fuel: { readonly onBoardKg: number; readonly bingoKg: number } | null;
}

export function verdictOf(sources: VerdictSources): Verdict {
  const { wind, load, today, awaited, failed } = sources;
  const { purpose, ranked } = wind;
  const end = wind.inUse ?? ranked?.best ?? null;
  const cautions = [
    ...cannotJudge(wind),
    ...(end?.shortfalls ?? []).map(ofShortfall),
    ...(load?.exceeded ?? []).map(ofLoad),
    ...(sources.noParachute === 'used' ? [bare('parachute-used')] : []),
    ...(today === null ? [] : ofToday(today, purpose)),
    ...brakesHot(sources),
    ...bingo(sources.fuel),
    ...belowMinima(sources.conditions.weather?.now, sources.minima),
    ...cautionsInAWord({ ...sources, end, purpose }),
    ...offBook(sources.bookLeftOver),
    ...notBest(end, ranked?.best ?? null),
  ];
  return {
    end: end?.designator ?? wind.using,
    purpose,
    awaited,
    failed,
    cautions: inOrder(cautions),
  };
}

/** Worst first, each once: two stages may report the same. */
function inOrder(cautions: readonly Caution[]): readonly Caution[] {
  return CAUTIONS.flatMap((code) => {
    const [first, ...others] = cautions.filter((one) => one.code === code);
    // A load may break several stations; otherwise the first report is closest to the runway.
    return first === undefined ? [] : code === 'station-over' ? [first, ...others] : [first];
  });
}

const bare = (code: CautionCode): Caution => ({ code, value: null, limit: null });

/** Why no end is judged, or why none is best while none is selected. */
function cannotJudge({ because, ranked, inUse, using }: WindAnswer): readonly Caution[] {
  if (because !== null) return [bare(because satisfies NoRanking)];
  if (inUse !== null || ranked === null) return [];
  if (using !== null) return [{ code: 'no-end', value: using, limit: null }];
  return ranked.because === null ? [] : [bare(ranked.because satisfies NoBestReason)];
}

function ofShortfall(shortfall: Shortfall): Caution {
  switch (shortfall.code) {
    case 'closed':
      return { code: 'closed', value: shortfall.why, limit: null };
    case 'not-for-purpose':
      return { code: 'not-for-purpose', value: shortfall.purpose, limit: null };
    case 'crosswind':
    case 'tailwind':
      return { code: shortfall.code, value: shortfall.worstKt, limit: shortfall.limitKt };
    case 'gust-spread':
      return { code: 'gust-spread', value: shortfall.spreadKt, limit: shortfall.limitKt };
    case 'length':
      return { code: shortfall.of, value: shortfall.neededM, limit: shortfall.availableM };
    case 'no-length':
      return noLength(shortfall.because);
    case 'tyres':
      return { code: 'tyres', value: shortfall.groundKt, limit: shortfall.limitKt };
    case 'narrow':
      return { code: 'narrow', value: shortfall.widthM, limit: shortfall.limitM };
    case 'brake-energy':
      return { code: 'brake-energy', value: shortfall.energyMJ, limit: shortfall.limitMJ };
    case 'go-on':
      return { code: 'go-above-stop', value: shortfall.lowestKt, limit: shortfall.stopKt };
    default:
      return bare(shortfall.code);
  }
}

function ofLoad(exceeded: Exceeded): Caution {
  switch (exceeded.code) {
    case 'outside-envelope':
      return { code: 'outside-envelope', value: exceeded.at, limit: exceeded.side };
    case 'no-fuel':
      return bare('no-fuel');
    case 'station-over':
      return { code: 'station-over', value: exceeded.byKg, limit: exceeded.station };
    default:
      return { code: exceeded.code, value: exceeded.byKg, limit: 0 };
  }
}

const ofToday = ({ takeoff, landing }: TodayBrief, purpose: Purpose): readonly Caution[] =>
  purpose === 'take-off' ? ofTakeoff(takeoff.planned) : ofLanding(landing.planned);

/** No length is enough, worded as where there are no numbers. */
function noLength(because: NoLength): Caution {
  switch (because) {
    case 'cannot-climb':
    case 'no-fuel':
    case 'over-mass':
      return bare(because);
    case 'no-performance':
      return bare('no-run');
    default:
      return { code: 'no-numbers', value: because, limit: null };
  }
}

/** Before a take-off: the aircraft has stopped too lately for its brakes to be cool. */
function brakesHot({ wind, settled, brakesUsedMin }: VerdictSources): readonly Caution[] {
  const limit = settled.aircraft?.limits.brakesCoolMin;
  if (limit === undefined || brakesUsedMin === null || wind.purpose !== 'take-off') return [];
  return brakesUsedMin >= limit
    ? []
    : [{ code: 'brakes-hot', value: Math.max(0, Math.floor(brakesUsedMin)), limit }];
}

/** A handbook's table that the physics is fitted to, and doesn't meet. */
function offBook(by: number | null): readonly Caution[] {
  if (by === null || Math.abs(by) <= WELL_WITHIN) return [];
  return [{ code: 'off-book', value: 100 * Math.abs(by), limit: 100 * WELL_WITHIN }];
}

/** Fuel that is no more than the pilot turns back with. */
function bingo(fuel: VerdictSources['fuel']): readonly Caution[] {
  if (fuel === null || fuel.onBoardKg > fuel.bingoKg) return [];
  return [{ code: 'bingo', value: fuel.onBoardKg, limit: fuel.bingoKg }];
}

/** A length that falls short: what is needed, and what there is. */
function short(code: CautionCode, needed: Figure<'m'>, left: Figure<'m'>): readonly Caution[] {
  if (left.value === null || left.value >= 0 || needed.value === null) return [];
  return [{ code, value: needed.value, limit: needed.value + left.value }];
}

function ofTakeoff(planned: TakeoffToday): readonly Caution[] {
  if (planned.because !== null) return [noLength(planned.because)];
  const { figures, raw } = planned;
  const { tyre } = raw.limits;
  const [goKt, stopKt] = [figures.lowestGoOnKt.value, figures.lastStopKt.value];
  return [
    ...short('tora', figures.runM, figures.toraLeftM),
    ...short('toda', figures.to50ftM, figures.todaLeftM),
    ...short('asda', figures.stopM, figures.asdaLeftM),
    ...(goKt === null || stopKt === null || goKt <= stopKt
      ? []
      : [{ code: 'go-above-stop', value: goKt, limit: stopKt } as const]),
    ...(tyre === null || tyre.leftKt >= 0
      ? []
      : [{ code: 'tyres', value: tyre.liftOffGroundKt, limit: tyre.limitKt } as const]),
  ];
}

const LANDING_LIMITS = {
  'brake-energy': 'brake-energy',
  parachute: 'parachute',
  tyres: 'tyres',
} as const satisfies Record<LandingLimit, CautionCode>;

function ofLanding(planned: LandingToday): readonly Caution[] {
  if (planned.because !== null) return [noLength(planned.because)];
  const { figures, exceeds } = planned;
  return [
    ...short('lda', figures.plannedM, figures.plannedLeftM),
    ...exceeds.map((limit) => bare(LANDING_LIMITS[limit])),
  ];
}

function notBest(end: RankedEnd | null, best: RankedEnd | null): readonly Caution[] {
  if (end === null || best === null || end.designator === best.designator) return [];
  return [{ code: 'not-best', value: end.designator, limit: best.designator }];
}
