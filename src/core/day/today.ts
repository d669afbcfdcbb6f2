/**
 * Today's numbers: take-off and landing at today's mass, in today's air and wind, on an end.
 *
 * Each twice: as expected, in the least headwind the wind may have there, and as planned, with half
 * of a headwind and one and a half times a tailwind (14 CFR 25.105(d)(1)).
 */

import type { Aircraft } from '../aircraft/aircraft';
import { type FactorChoice, landingFactor, takeoffFactor } from '../aircraft/factors';
import { landing } from '../aircraft/landing';
import type { Landing } from '../aircraft/landingAnswer';
import type { LoadFigures } from '../aircraft/loadSheet';
import { landingNeeds, takeoffNeeds } from '../aircraft/needs';
import type {
  CannotCode,
  GroundQuestion,
  LandingQuestion,
  TakeoffQuestion,
} from '../aircraft/performance';
import { additiveKt, plannedHeadwindKt } from '../aircraft/speeds';
import { lastStopOf, takeoff } from '../aircraft/takeoff';
import type { Check, Stop, Takeoff } from '../aircraft/takeoffAnswer';
import { type End, endsOf } from '../airfield/ends';
import type { Designator, Field, Surface } from '../airfield/field';
import { needsByWind } from '../runway/needsByWind';
import type { LengthNeeded, Purpose } from '../runway/question';
import type { Inputs } from '../sortie/entry';
import type { AirBrief } from './air';
import { type LandingFigures, landingFigures } from './landingFigures';
import { type RunwayGiven, type TakeoffFigures, takeoffFigures } from './takeoffFigures';

/** What today's numbers need, but for wind and end. */
export interface DayGiven {
  readonly field: Field;
  readonly aircraft: Aircraft;
  readonly load: LoadFigures;
  readonly air: AirBrief;
  readonly inputs: DayInputs;
}

/** The pilot's choices that today's numbers depend on. */
export interface DayInputs
  extends Pick<
      Inputs,
      'surface' | 'rollsFromM' | 'checkMarkM' | 'holdShortM' | 'noParachute' | 'load'
    >,
    // The end `rollsFromM` belongs to; absent, whichever is asked about.
    Partial<Pick<Inputs, 'taxiEntry' | 'chosen'>> {
  /** Whose factors planned lengths use; absent, the document's. */
  readonly factors?: FactorChoice;
}

export type TakeoffToday =
  | {
      readonly because: null;
      readonly figures: TakeoffFigures;
      /** For the ladder: gates, bounds and climb-out. */
      readonly raw: Takeoff;
      /** The question, to ask again for more gates. */
      readonly asked: TakeoffQuestion;
      readonly rollsFromM: number;
    }
  | { readonly because: NoNumbers };

export type LandingToday =
  | {
      readonly because: null;
      readonly figures: LandingFigures;
      /** Limits it exceeds. */
      readonly exceeds: readonly LandingLimit[];
    }
  | { readonly because: NoNumbers };

/** Limits on a landing besides its length. */
export type LandingLimit = 'brake-energy' | 'parachute' | 'tyres';

export type NoNumbers = CannotCode | 'beyond-atmosphere';

/** In the expected wind, and in the one to plan with. */
export interface Both<T> {
  readonly expected: T;
  readonly planned: T;
}

export interface TodayBrief {
  readonly aircraft: Aircraft;
  /** Their end; null for level ground without an end. */
  readonly end: Designator | null;
  /** Steady wind along it, kt, negative from behind; null if unknown. */
  readonly headwindKt: number | null;
  readonly load: LoadFigures;
  readonly air: AirBrief;
  readonly surface: Surface;
  /** The factors on planned lengths, and whose choice they are; stops never have one. */
  readonly factors: {
    readonly choice: FactorChoice;
    readonly takeoff: number;
    readonly landing: number;
  };
  readonly takeoff: Both<TakeoffToday>;
  readonly landing: Both<LandingToday>;
}

/** Longer than any runway: without an end, no length is a limit. */
const NO_END_M = 9000;

const NO_END = {
  runway: { toraM: NO_END_M, todaM: NO_END_M, asdaM: NO_END_M },
  rollsFromM: 0,
};

/** Today's numbers on an end in a wind along it; without one, on level ground of the best kind. */
export function todayStage(
  given: DayGiven,
  designator: Designator | null,
  headwindKt: number | null,
  gustSpreadKt: number,
  /** In the reported direction, kt: the approach speed goes by it. */
  reportedHeadwindKt: number | null = headwindKt,
): TodayBrief {
  const end = endsOf(given.field).find((one) => one.designator === designator) ?? null;
  const both = <T>(of: (headwindKt: number) => T): Both<T> => ({
    expected: of(headwindKt ?? 0),
    planned: of(plannedHeadwindKt(headwindKt ?? 0)),
  });
  const { aircraft, inputs } = given;
  const { surface, factors: choice = 'document' } = inputs;
  const factors = {
    choice,
    takeoff: takeoffFactor(aircraft, choice),
    landing: landingFactor(aircraft, surface, choice),
  };
  const stop = plannedStop(given, end, plannedHeadwindKt(headwindKt ?? 0));
  const expected = takeoffToday(given, end, headwindKt ?? 0, { stop, factor: 1, mark: null });
  const planned = takeoffToday(given, end, plannedHeadwindKt(headwindKt ?? 0), {
    stop,
    factor: factors.takeoff,
    mark: expected.because === null ? expected.raw.check.check : null,
  });
  return {
    aircraft,
    end: end?.designator ?? null,
    headwindKt,
    load: given.load,
    air: given.air,
    surface,
    factors,
    takeoff: { expected, planned },
    landing: both((kt) =>
      landingToday(given, end, kt, { reportedHeadwindKt: reportedHeadwindKt ?? 0, gustSpreadKt }),
    ),
  };
}

/** The mark rounds the last speed to stop from down to a multiple of this, kt. */
const STOP_STEP_KT = 5;

/**
 * The stop as planned. The expected one is the same stop, at the same speed and with or without the
 * parachute, in the actual wind; at a speed of its own it could be longer than planned.
 */
function plannedStop(given: DayGiven, end: End | null, headwindKt: number): Stop | null {
  const question = takeoffQuestion(given, end, headwindKt);
  return typeof question === 'string' ? null : lastStopOf(question);
}

/**
 * The speed from which the mark guarantees a stop: the planned last speed, down to the next 5 kt.
 * Where the field binds it, a stop from it to the knot would leave the mark no slack.
 */
const keptStopKt = ({ lastKt }: Stop): number => Math.floor(lastKt / STOP_STEP_KT) * STOP_STEP_KT;

/** A take-off question without a mark, or why there is none. */
function takeoffQuestion(
  given: DayGiven,
  end: End | null,
  headwindKt: number,
): TakeoffQuestion | NoNumbers {
  const asked = groundQuestion(given, end, headwindKt, given.load.takeoffMassKg.value);
  if (typeof asked === 'string') return asked;
  const rollsFromM = rollsFromOn(end?.designator ?? null, given.inputs);
  const runway = end === null ? NO_END.runway : runwayOf(end, rollsFromM);
  return { ...asked, runway, rollsFromM };
}

/** What a take-off is planned with, besides its question. */
interface TakeoffPlan {
  readonly stop: Stop | null;
  /** Planned over computed run and distance to 50 ft. */
  readonly factor: number;
  /** What the mark expects and demands in the actual wind; null if this is that wind. */
  readonly mark: Pick<Check, 'expectedKt' | 'leastKt'> | null;
}

function takeoffToday(
  given: DayGiven,
  end: End | null,
  headwindKt: number,
  { stop, factor, mark }: TakeoffPlan,
): TakeoffToday {
  const { aircraft, inputs } = given;
  const asked = takeoffQuestion(given, end, headwindKt);
  if (typeof asked === 'string') return { because: asked };
  const { rollsFromM } = asked;
  const runway = end === null ? null : runwayOf(end, rollsFromM);
  const question: TakeoffQuestion = {
    ...asked,
    ...(stop === null ? {} : { stop: { fromKt: stop.lastKt, parachute: stop.withParachute } }),
    ...(inputs.checkMarkM === null ? {} : { checkMark: markOf(inputs.checkMarkM, stop, mark) }),
  };
  const raw = takeoff(question);
  if (raw.kind === 'cannot') return { because: raw.because };
  const figures = takeoffFigures(raw, aircraft, runway, factor);
  return { because: null, raw, figures, asked: question, rollsFromM };
}

const markOf = (atM: number, stop: Stop | null, mark: TakeoffPlan['mark']) => ({
  atM,
  ...(stop === null ? {} : { stopFromKt: keptStopKt(stop) }),
  ...(mark === null ? {} : { expectedKt: mark.expectedKt, leastKt: mark.leastKt }),
});

function landingToday(
  given: DayGiven,
  end: End | null,
  headwindKt: number,
  forSpeed: Required<Pick<LandingQuestion, 'reportedHeadwindKt' | 'gustSpreadKt'>>,
): LandingToday {
  const asked = groundQuestion(given, end, headwindKt, given.load.landingMassKg.value);
  if (typeof asked === 'string') return { because: asked };
  const ldaM = end === null ? null : ldaOf(end, given.inputs);
  const raw = landing({ ...asked, ...forSpeed, ...factorsOf(given) });
  if (raw.kind === 'cannot') return { because: raw.because };
  return {
    because: null,
    figures: landingFigures(raw, given.aircraft, ldaM, forSpeed.gustSpreadKt),
    exceeds: exceededIn(raw),
  };
}

const factorsOf = ({ inputs: { factors } }: DayGiven) => (factors === undefined ? {} : { factors });

const exceededIn = ({ brakes, parachute, tyre }: Landing): readonly LandingLimit[] => [
  ...(brakes.within ? [] : (['brake-energy'] as const)),
  ...(parachute === null || parachute.within ? [] : (['parachute'] as const)),
  ...(tyre === null || tyre.leftKt >= 0 ? [] : (['tyres'] as const)),
];

/** The common part of both questions, or why there is none. */
function groundQuestion(
  { aircraft, air, inputs }: DayGiven,
  end: End | null,
  headwindKt: number,
  massKg: number | null,
): GroundQuestion | NoNumbers {
  if (massKg === null) return 'no-fuel';
  const { pressureAltitude, temperature } = air;
  if (pressureAltitude.value === null || temperature.value === null) return 'beyond-atmosphere';
  return {
    aircraft: inputs.noParachute ? withoutParachute(aircraft) : aircraft,
    massKg,
    air: {
      pressureAltitudeFt: pressureAltitude.value,
      temperatureC: temperature.value,
      dewPointC: air.dewPointC,
    },
    headwindKt,
    slopePercent: end?.slopePercent ?? 0,
    surface: inputs.surface,
    ground: pavedAs(end),
  };
}

/** What one rolls on; paved where nobody knows, which a caution says. */
function pavedAs(end: End | null): GroundQuestion['ground'] {
  const surface = end?.runway.surface ?? 'unknown';
  return surface === 'unknown' ? 'asphalt' : surface;
}

/** The aircraft without its parachute. */
function withoutParachute(aircraft: Aircraft): Aircraft {
  if (aircraft.performance === undefined) return aircraft;
  const { parachute: _, ...performance } = aircraft.performance;
  return { ...aircraft, performance };
}

const runwayOf = ({ given }: End, rollsFromM: number): RunwayGiven => ({
  toraM: given.toraM,
  todaM: given.todaM,
  asdaM: given.asdaM,
  rollsFromM,
});

/** LDA, unless a landing must hold short of another runway. */
const ldaOf = ({ designator, given }: End, { holdShortM }: DayGiven['inputs']): number =>
  Math.min(given.ldaM, holdShortM[designator] ?? given.ldaM);

/** Start of the roll on an end, metres: an intersection belongs to the end it was chosen for. */
const rollsFromOn = (
  designator: Designator | null,
  { rollsFromM, ...inputs }: DayInputs,
): number => {
  const of = inputs.taxiEntry?.end ?? inputs.chosen?.end ?? null;
  return of === null || of === designator ? rollsFromM : 0;
};

/**
 * What today needs on each end, planned and with its factor, to choose between them or judge one:
 * of TORA and TODA from the start of the roll, of LDA with the wind additive; or why no length is
 * enough.
 */
export function lengthsNeeded(given: DayGiven): Readonly<Record<Purpose, LengthNeeded>> {
  const ends = new Map(endsOf(given.field).map((end) => [end.designator, end]));
  const { load, inputs, aircraft } = given;
  const { factors = 'document' } = inputs;
  const factor = takeoffFactor(aircraft, factors);
  const rule = aircraft.performance?.landing.additive;
  const asked = (end: End | null, headwindKt: number, massKg: number | null) =>
    groundQuestion(given, end, plannedHeadwindKt(headwindKt), massKg);
  return {
    'take-off': needsByWind((designator, headwindKt) => {
      const end = ends.get(designator) ?? null;
      const question = asked(end, headwindKt, load.takeoffMassKg.value);
      if (typeof question === 'string') return { cannot: question };
      const rollsFromM = rollsFromOn(designator, inputs);
      const runway = end === null ? NO_END.runway : runwayOf(end, rollsFromM);
      return takeoffNeeds({ ...question, runway, rollsFromM }, factor);
    }),
    landing: needsByWind(
      (designator, headwindKt, additiveKt) => {
        const end = ends.get(designator) ?? null;
        const question = asked(end, headwindKt, load.landingMassKg.value);
        if (typeof question === 'string') return { cannot: question };
        // A gust that adds this much by either rule, in no headwind.
        const gustSpreadKt = rule === 'half-gust' ? 2 * additiveKt : additiveKt;
        const forSpeed = { reportedHeadwindKt: 0, gustSpreadKt };
        return landingNeeds({ ...question, ...forSpeed, factors });
      },
      (headwindKt, gustSpreadKt) =>
        aircraft.performance === undefined
          ? 0
          : additiveKt(aircraft.performance, headwindKt, gustSpreadKt),
    ),
  };
}
