/**
 * The record: one append-only list of what happened.
 *
 * Everything the app knows about a sortie is folded from this list. Undo is an entry too, so
 * nothing is ever lost; two lists merge by id; entries of unknown kinds are kept and skipped.
 */

import type { FactorChoice } from '../aircraft/factors';
import type { Load } from '../aircraft/load';
import type { Designator, Surface } from '../airfield/field';
import type { North } from '../angle';
import type { FactValues } from '../procedure/facts';
import type { Phase, StepId } from '../procedure/procedure';
import type { CallKind, Compass } from '../radio/call';
import { isReservedName } from '../reservedName';
import type { Purpose } from '../runway/question';
import type { NodeId } from '../taxi/graph';
import type { ChosenEntry } from '../taxi/routeOut';
import type { StretchId } from '../taxi/rules';

/** Names an entry, a sortie or a run: 16 or more random characters. */
export type Id = string;

/** Names a document by its content. */
export type Hash = string;

/** The end the pilot uses. Best is advice and never changes it. */
export interface EndChosen {
  readonly end: Designator;
  readonly purpose: Purpose;
}

/** What is chosen and typed. Each can be set alone. */
export interface Inputs {
  readonly field: Hash | null;
  readonly aircraft: Hash | null;
  readonly procedure: Hash | null;
  readonly callsign: string;
  readonly surface: Surface;
  /** The pilot's own limits, kt; null leaves the aircraft's. */
  readonly ownCrosswindKt: number | null;
  readonly ownTailwindKt: number | null;
  /** The pilot's own crosswind limit if the surface isn't dry, kt; null leaves `ownCrosswindKt`. */
  readonly ownWetCrosswindKt: number | null;
  /** How much the gust may exceed the steady wind, kt; null for any. */
  readonly ownGustSpreadKt: number | null;
  /** The least visibility, m, and ceiling, ft, the pilot flies in; null for any. */
  readonly ownVisibilityM: number | null;
  readonly ownCeilingFt: number | null;
  /** Bingo: the fuel at which the pilot turns back, kg; null if not settled. */
  readonly bingoKg: number | null;
  /**
   * When its brakes last stopped the aircraft in the sortie before, by the device's clock, which no pilot
   * sets back, ms since 1970 UTC; null if they didn't.
   */
  readonly brakesUsedMs: number | null;
  /** Ends that are closed today, work in progress. */
  readonly closedToday: readonly Designator[];
  /** Whether the field's preferred ends come first, if its wind and weather allow them. */
  readonly preferred: boolean;
  /** Metres to where a landing on that end must hold short of another runway. */
  readonly holdShortM: Readonly<Record<Designator, number>>;
  /** The north of a wind typed in short. A full report is true, whatever this says. */
  readonly typedNorth: North;
  /** The pilot's own magnetic variation, east positive; null takes it from the model. */
  readonly variationDeg: number | null;
  /**
   * QNH, hPa, and temperature, °C, if no report gives them; they take precedence over a report's.
   */
  readonly ownQnhHpa: number | null;
  readonly ownTemperatureC: number | null;
  /** Metres behind where the roll begins: line-up, or an intersection. */
  readonly rollsFromM: number;
  /** A mark beside the runway at which the speed is checked, metres from the beginning of TORA. */
  readonly checkMarkM: number | null;
  /** Whose factors planned lengths have. */
  readonly factors: FactorChoice;
  /** The braking parachute doesn't count: not packed, or unusable. */
  readonly noParachute: boolean;
  readonly chosen: EndChosen | null;
  /** What Wind judges for; null means landing from recovery on, take-off before. */
  readonly purpose: Purpose | null;
  /** What is in the aircraft; null means its usual load. */
  readonly load: Load | null;
  /** The stand the aircraft leaves and returns to. */
  readonly stand: NodeId | null;
  /** Stretches of taxiway closed today. */
  readonly taxiClosed: readonly StretchId[];
  /** Where the runway is entered; null means for its whole run, by the shortest route. */
  readonly taxiEntry: ChosenEntry | null;
  /** The route chosen among those offered, by its key; null means the shortest. */
  readonly taxiVia: string | null;
  /**
   * The route as the controller told it, as typed; null means the plan's own. The roll, a landing
   * and the stand end it.
   */
  readonly taxiTold: string | null;
  /** Where the departure turns, for the calls. */
  readonly departTo: Compass | null;
  /** The pilot's own wording of calls. */
  readonly ownCalls: Readonly<Partial<Record<CallKind, string>>>;
  /** Supersonic flight is planned. */
  readonly supersonic: boolean;
  /** Options fitted or not, where that differs from the procedure's default, by id. */
  readonly options: Readonly<Record<string, boolean>>;
  /** Steps that the simulation hasn't, by {@link tieKey}: not asked for in the next sorties either. */
  readonly notSimulated: readonly string[];
  /** Steps the pilot does earlier, by {@link tieKey}: the step each of them precedes. */
  readonly ties: Readonly<Record<string, StepId>>;
}

/** The key for a step of a procedure: steps of two procedures may share an id. */
export const tieKey = (procedureCode: string, step: StepId): string => `${procedureCode}/${step}`;

/** What a sortie begins with. */
export const FRESH_INPUTS: Inputs = {
  field: null,
  aircraft: null,
  procedure: null,
  callsign: '',
  surface: 'dry',
  ownCrosswindKt: null,
  ownTailwindKt: null,
  ownWetCrosswindKt: null,
  ownGustSpreadKt: null,
  ownVisibilityM: null,
  ownCeilingFt: null,
  bingoKg: null,
  brakesUsedMs: null,
  closedToday: [],
  preferred: false,
  holdShortM: {},
  typedNorth: 'true',
  variationDeg: null,
  ownQnhHpa: null,
  ownTemperatureC: null,
  rollsFromM: 0,
  checkMarkM: 300,
  factors: 'document',
  noParachute: false,
  chosen: null,
  purpose: null,
  load: null,
  stand: null,
  taxiClosed: [],
  taxiEntry: null,
  taxiVia: null,
  taxiTold: null,
  departTo: null,
  ownCalls: {},
  supersonic: false,
  options: {},
  notSimulated: [],
  ties: {},
};

/** Moments of a sortie that are stamped with their time. */
export type Moment =
  | 'off chocks'
  | 'brakes released'
  | 'stopping'
  | 'airborne'
  | 'landed'
  | 'on chocks';

/** Names a list within its procedure. */
export type ListId = string;

/** Where a closed run leads. */
export type LeadsTo =
  | 'return'
  | 'end'
  | { readonly phase: Phase; readonly reopen: readonly Phase[] };

/** A figure as shown when it was sealed. */
export interface SealedFigure {
  readonly value: number | string;
  readonly unit: string;
}

/** The version entries are written in. Those of version 1 carry none, and no `by`. */
export const ENTRY_VERSION = 2;

/** The highest number an entry may have. */
export const HIGHEST_SEQ = 2 ** 50;

/** A moment outside these years belongs to no sortie, ms since 1970 UTC. */
export const FIRST_MS = Date.UTC(1800, 0, 1);
export const LAST_MS = Date.UTC(2200, 0, 1);

/** No sortie's clock runs faster. */
export const HIGHEST_RATE = 100;

/** No route as told by a controller is longer, characters. */
export const LONGEST_TOLD = 200;

/** A moment clamped to the years an entry may have; NaN becomes the first. */
export const momentWithin = (ms: number): number =>
  Number.isNaN(ms) ? FIRST_MS : Math.min(Math.max(ms, FIRST_MS), LAST_MS);

/** When, where in the list, and in which sortie something happened. */
export interface Stamped {
  readonly id: Id;
  /** The version it was written in; absent in version 1. */
  readonly v?: number;
  /** The device that made it; absent in version 1. */
  readonly by?: Id;
  /** Higher than every number in the list when it was added; two windows may assign the same. */
  readonly seq: number;
  readonly sortie: Id;
  /** The device's clock and the sortie's own, ms since 1970 UTC. */
  readonly at: { readonly wallMs: number; readonly sortieMs: number };
}

/** What can happen to a step. */
export type StepOutcome = 'done' | 'held' | 'cannot';

/** A caution as it was shown when the pilot went on. */
export interface AcceptedCaution {
  readonly code: string;
  readonly value: number | string | null;
  readonly limit: number | string | null;
}

/** What happened. */
export type SortieEvent =
  | { readonly kind: 'set'; readonly inputs: Partial<Inputs> }
  | {
      readonly kind: 'wind';
      readonly text: string;
      readonly north: North;
      /** The wind of another field it repeats: taking it over makes it no younger. */
      readonly takenFrom?: Id;
    }
  | { readonly kind: 'clock'; readonly sortieMs: number; readonly rate: number }
  | {
      readonly kind: StepOutcome;
      readonly run: Id;
      /** Which pass: it counts up when phases are flown again. */
      readonly pass: number;
      readonly step: StepId;
      /** The facts the step depends on, as they were. */
      readonly saw: FactValues;
      readonly why?: string;
    }
  | {
      readonly kind: 'open';
      readonly run: Id;
      readonly procedure: Hash;
      readonly list: ListId | null;
    }
  | { readonly kind: 'close'; readonly run: Id; readonly leadsTo: LeadsTo }
  /** A step was passed because it wasn't needed, under the facts that decided it. */
  | {
      readonly kind: 'passed';
      readonly run: Id;
      readonly pass: number;
      readonly step: StepId;
      readonly saw: FactValues;
    }
  /**
   * The sortie begins at this phase, as in the air: the phases before it, in their present pass, are
   * not flown.
   */
  | { readonly kind: 'begun'; readonly run: Id; readonly phase: Phase }
  /** Phases are flown again, as after a touch-and-go: the pass each of them is in from here on. */
  | {
      readonly kind: 'reopen';
      readonly run: Id;
      readonly passes: Readonly<Partial<Record<Phase, number>>>;
    }
  | { readonly kind: 'stamp'; readonly what: Moment }
  /** A point of the taxi plan: just passed, or where the pilot says the aircraft stands. */
  | { readonly kind: 'taxied'; readonly point: NodeId; readonly placed: boolean }
  | { readonly kind: 'interrupted' | 'resumed'; readonly run: Id }
  /** The sortie is flown again, whichever was begun since. */
  | { readonly kind: 'taken up' }
  | { readonly kind: 'undo'; readonly target: Id }
  /** The pilot goes on outside limits: the cautions, with the figures they had. */
  | {
      readonly kind: 'accepted';
      readonly end: Designator | null;
      readonly purpose: Purpose;
      readonly cautions: readonly AcceptedCaution[];
    }
  /** A line in the log. */
  | { readonly kind: 'noted'; readonly text: string }
  /**
   * When a moment really was, by the sortie's clock; null if it never was. The original stamp stays
   * in the list.
   */
  | { readonly kind: 'corrected'; readonly what: Moment; readonly sortieMs: number | null }
  | {
      readonly kind: 'sealed';
      readonly documents: Readonly<Record<string, Hash>>;
      readonly figures: Readonly<Record<string, SealedFigure>>;
    };

/** No typed number is larger in magnitude. */
export const HIGHEST_TYPED = 1e6;

/** A number clamped to what an entry may have; NaN becomes 0. */
const numberWithin = (value: number): number =>
  Math.min(Math.max(value || 0, -HIGHEST_TYPED), HIGHEST_TYPED);

/** The properties whose names may be stored: a document of an older version may have others. */
const keepable = <T>(values: Readonly<Record<string, T>>): Readonly<Record<string, T>> =>
  Object.fromEntries(Object.entries(values).filter(([name]) => !isReservedName(name)));

const numbersWithin = (
  values: Readonly<Record<string, number>>,
): Readonly<Record<string, number>> =>
  Object.fromEntries(
    Object.entries(keepable(values)).map(([name, value]) => [name, numberWithin(value)]),
  );

/** The inputs that are a number, or left to a default. */
const NUMBERS = [
  'ownCrosswindKt',
  'ownTailwindKt',
  'ownWetCrosswindKt',
  'ownGustSpreadKt',
  'ownVisibilityM',
  'ownCeilingFt',
  'bingoKg',
  'variationDeg',
  'ownQnhHpa',
  'ownTemperatureC',
  'rollsFromM',
  'checkMarkM',
] as const satisfies readonly (keyof Inputs)[];

function inputsWithin(inputs: Partial<Inputs>): Partial<Inputs> {
  let within = inputs;
  for (const name of NUMBERS) {
    const value = inputs[name];
    if (typeof value === 'number') within = { ...within, [name]: numberWithin(value) };
  }
  const { holdShortM, load, options, ties, taxiTold, brakesUsedMs } = inputs;
  if (brakesUsedMs) within = { ...within, brakesUsedMs: momentWithin(brakesUsedMs) };
  if (taxiTold) within = { ...within, taxiTold: taxiTold.slice(0, LONGEST_TOLD) };
  if (options !== undefined) within = { ...within, options: keepable(options) };
  if (ties !== undefined) within = { ...within, ties: keepable(ties) };
  if (holdShortM !== undefined) within = { ...within, holdShortM: numbersWithin(holdShortM) };
  if (load) {
    const stations = numbersWithin(load.stations);
    within = { ...within, load: { fuelKg: numberWithin(load.fuelKg), stations } };
  }
  return within;
}

/** A caution whose numbers can be read back: one that has none is told without. */
function cautionWithin({ code, value, limit }: AcceptedCaution): AcceptedCaution {
  const within = (told: number | string | null) =>
    typeof told === 'number' && !Number.isFinite(told) ? null : told;
  return { code, value: within(value), limit: within(limit) };
}

/**
 * What happened, with numbers and moments clamped to what an entry may have, so that whatever is
 * added can be read back. A figure that isn't a number is not sealed.
 */
export function withinBounds(event: SortieEvent): SortieEvent {
  switch (event.kind) {
    case 'set':
      return { ...event, inputs: inputsWithin(event.inputs) };
    case 'clock':
      return {
        ...event,
        sortieMs: momentWithin(event.sortieMs),
        rate: Math.min(Math.max(event.rate || 0, 0), HIGHEST_RATE),
      };
    case 'corrected':
      return event.sortieMs === null ? event : { ...event, sortieMs: momentWithin(event.sortieMs) };
    case 'sealed': {
      const known = Object.entries(event.figures).filter(
        ([, { value }]) => typeof value === 'string' || Math.abs(value) <= Number.MAX_SAFE_INTEGER,
      );
      return { ...event, figures: Object.fromEntries(known) };
    }
    case 'accepted':
      return { ...event, cautions: event.cautions.map(cautionWithin) };
    default:
      return event;
  }
}

/** One line of the list. */
export type Entry = Stamped & SortieEvent;

/** The order of the list: by number, then by id, so that two windows agree. */
export function compareEntries(a: Stamped, b: Stamped): number {
  return a.seq - b.seq || (a.id < b.id ? -1 : a.id > b.id ? 1 : 0);
}
