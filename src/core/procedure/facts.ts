/**
 * What is true right now, as far as steps depend on it: facts that conditions ask for, and live
 * numbers in a step's text. Both go by name, and both may be unknown.
 */

import { magneticDeg, relativeDeg } from '../angle';
import type { CONDITION_FACTS } from './conditionFacts';

/** A fact a condition can ask for. */
export type ConditionFact = (typeof CONDITION_FACTS)[number];

/** A live number: a name in braces in a step's text. */
export type LiveName = keyof typeof LIVE;

/** The name of any fact. */
export type FactName = ConditionFact | LiveName;

/** The value of a fact; null if unknown. */
export type FactValue = boolean | number | string | null;

export type FactValues = Readonly<Partial<Record<FactName, FactValue>>>;

/** All facts. */
export type Facts = Readonly<Record<FactName, FactValue>>;

/**
 * How a live number is written, and how far it may move before a step that used it is due again.
 */
interface LiveKind {
  /** `words` are shown as they are; the others are numbers. */
  readonly form: 'words' | 'whole' | 'heading' | 'range';
  readonly unit?: 'kt' | '%' | 'rpm' | 'deg' | 'm' | 'kg' | 'hPa' | 'degC' | 'ft';
  /** What it is rounded to, in its unit; 1 if absent. */
  readonly to?: number;
  /** Which way to round, if the nearest would promise more than there is. */
  readonly way?: 'up' | 'down';
  /** Words that are unknown until the taxi route is worked out: unknown, they haven't moved. */
  readonly comesLate?: true;
  /** The step is due again when the number moved by more than this; Infinity never reopens it. */
  readonly tolerance: number;
}

/** Every live number there is. Any other name is an error in the procedure. */
export const LIVE = {
  runway: { form: 'words', tolerance: 0 },
  runwayMagnetic: { form: 'heading', unit: 'deg', tolerance: 1 },
  wind: { form: 'words', tolerance: Number.POSITIVE_INFINITY },
  /** The gust, or the steady wind where there is none. */
  windKt: { form: 'whole', unit: 'kt', tolerance: Number.POSITIVE_INFINITY },
  headwindKt: { form: 'whole', unit: 'kt', tolerance: Number.POSITIVE_INFINITY },
  crosswindKt: { form: 'whole', unit: 'kt', way: 'up', tolerance: Number.POSITIVE_INFINITY },
  field: { form: 'words', tolerance: 0 },
  callsign: { form: 'words', tolerance: Number.POSITIVE_INFINITY },
  /** The stations called on the ground and at the runway, by their names. */
  ground: { form: 'words', tolerance: Number.POSITIVE_INFINITY },
  tower: { form: 'words', tolerance: Number.POSITIVE_INFINITY },
  /** The next runway to cross, and where one holds before it; the last one once it is crossed. */
  crossing: { form: 'words', tolerance: 0, comesLate: true },
  crossingAt: { form: 'words', tolerance: 0, comesLate: true },
  /** The aircraft's options that are fitted. */
  options: { form: 'words', tolerance: Number.POSITIVE_INFINITY },
  qnh: { form: 'whole', unit: 'hPa', tolerance: 0.5 },
  temperatureC: { form: 'whole', unit: 'degC', tolerance: Number.POSITIVE_INFINITY },
  densityAltitudeFt: {
    form: 'whole',
    unit: 'ft',
    to: 100,
    tolerance: Number.POSITIVE_INFINITY,
  },
  massKg: { form: 'whole', unit: 'kg', to: 10, tolerance: 50 },
  landingMassKg: { form: 'whole', unit: 'kg', to: 10, tolerance: 50 },
  fuelKg: { form: 'whole', unit: 'kg', to: 10, tolerance: 50 },
  taxiKt: { form: 'whole', unit: 'kt', tolerance: 1 },
  turnKt: { form: 'whole', unit: 'kt', tolerance: 1 },
  breakaway: { form: 'whole', tolerance: 1 },
  keepRolling: { form: 'range', tolerance: Number.POSITIVE_INFINITY },
  markM: { form: 'whole', unit: 'm', tolerance: 1 },
  markKt: { form: 'whole', unit: 'kt', tolerance: 3 },
  markLeastKt: { form: 'whole', unit: 'kt', way: 'up', tolerance: 3 },
  lastStopKt: { form: 'whole', unit: 'kt', way: 'down', tolerance: 3 },
  goOnKt: { form: 'whole', unit: 'kt', way: 'up', tolerance: 3 },
  rotateKt: { form: 'whole', unit: 'kt', tolerance: 2 },
  liftOffKt: { form: 'whole', unit: 'kt', tolerance: 2 },
  runM: { form: 'whole', unit: 'm', to: 10, way: 'up', tolerance: 50 },
  gearKt: { form: 'whole', unit: 'kt', tolerance: 2 },
  flapsKt: { form: 'whole', unit: 'kt', tolerance: 2 },
  reheatOffKt: { form: 'whole', unit: 'kt', tolerance: 2 },
  climbKt: { form: 'range', unit: 'kt', tolerance: Number.POSITIVE_INFINITY },
  climbPitch: { form: 'range', unit: 'deg', tolerance: Number.POSITIVE_INFINITY },
  referenceKt: { form: 'whole', unit: 'kt', way: 'up', tolerance: 2 },
  approachKt: { form: 'whole', unit: 'kt', tolerance: 2 },
  landingM: { form: 'whole', unit: 'm', to: 10, way: 'up', tolerance: 50 },
} as const satisfies Record<string, LiveKind>;

/** Separates options in the fact of that name; no option's name contains it. */
export const OPTION_JOINT = ', ';

/** A live number as shown: rounded, and never to the side that would promise more. */
export function roundedLive(name: LiveName, value: number): number {
  const { to = 1, way }: LiveKind = LIVE[name];
  const round = way === 'up' ? Math.ceil : way === 'down' ? Math.floor : Math.round;
  // A value that misses a multiple only by floating-point error rounds to that multiple.
  const steps = value / to;
  const nearest = Math.round(steps);
  return to * (Math.abs(steps - nearest) < ON_A_STEP ? nearest : round(steps));
}

const ON_A_STEP = 1e-6;

/** Whether a name is that of a live number. */
export function isLiveName(name: string): name is LiveName {
  return Object.hasOwn(LIVE, name);
}

/** A step's text in pieces: plain words, and names of live numbers to be filled in. */
export type TextPiece = string | { readonly live: string };

/** Splits a step's text at its live numbers: `Heading {runwayMagnetic}`. */
export function piecesOf(text: string): readonly TextPiece[] {
  return text
    .split(/(\{[A-Za-z]+\})/)
    .filter((piece) => piece !== '')
    .map((piece) =>
      piece.startsWith('{') && piece.endsWith('}') ? { live: piece.slice(1, -1) } : piece,
    );
}

/** The live numbers a text names, known or not. */
export function liveNamesIn(text: string): readonly string[] {
  return piecesOf(text).flatMap((piece) => (typeof piece === 'string' ? [] : [piece.live]));
}

/**
 * Whether a fact moved so far that a step which saw it must be done again. Condition facts and
 * numbers may be unknown for a moment after each start, while tables load: that is no move. Missing
 * words are one: no end is in use, no field is chosen.
 */
export function hasMoved(name: FactName, saw: FactValue, now: FactValue): boolean {
  if (saw === now) return false;
  if (!isLiveName(name)) return saw !== null && now !== null;
  const { form, tolerance, comesLate }: LiveKind = LIVE[name];
  if (tolerance === Number.POSITIVE_INFINITY) return false;
  if (now === null) return form === 'words' && comesLate !== true;
  if (typeof saw !== 'number' || typeof now !== 'number') return true;
  const by = form === 'heading' ? relativeDeg(magneticDeg(now), magneticDeg(saw)) : now - saw;
  return Math.abs(by) > tolerance;
}
