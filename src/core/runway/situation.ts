/** All that judging the ends depends on but the wind's direction, which may be turned. */

import { type End, endsOf } from '../airfield/ends';
import { degreesOf, magneticDeg, type TrueDeg, toMagnetic, toTrue, trueDeg } from '../angle';
import { clockwiseDeg, envelopeOf, type WindEnvelope } from '../weather/envelope';
import type { Wind } from '../weather/report';
import { type Bearing, bearingOf } from './components';
import type { Declared } from './needs';
import type { EndsQuestion, LengthNeeded, PreferredEnds, Purpose, WindLimits } from './question';

/**
 * Which rules order the ends. FAA JO 7110.65, 3-5-1: at 5 kt or more the end most nearly aligned
 * with the wind, below that the calm-wind runway.
 */
export type Rule = 'into-wind' | 'light' | 'from-anywhere' | 'direction-only';

/** Below this, kt, wind doesn't determine the runway. FAA JO 7110.65, 3-5-1. */
const LIGHT_BELOW_KT = 5;

/** The wind without its direction: what stays when it turns. */
export interface WindShape {
  /** Steady speed, kt; null when not known. */
  readonly speedKt: number | null;
  /** The stronger of steady wind and gust, kt; null when the speed is not known. */
  readonly strongestKt: number | null;
  /** From the reported direction clockwise to the middle of the envelope, degrees. */
  readonly middleDeg: number;
  /** Half the envelope's width; a half turn is the whole circle. */
  readonly half: Bearing;
}

/** An end, with everything about it that doesn't depend on the wind. */
export interface Candidate extends Pick<End, 'designator' | 'given' | 'heading'> {
  /** Its heading, as cosine and sine. */
  readonly bearing: Bearing;
  /** TORA, or LDA unless a landing must hold short of its end, metres. */
  readonly availableM: number;
  /** The same for each declared length. */
  readonly declaredM: Readonly<Record<Declared, number>>;
  /** The pilot said so. */
  readonly closedToday: boolean;
  /** The report says so. */
  readonly closedByReport: boolean;
  /** Its width and the least allowed, if it is narrower. */
  readonly narrow: { readonly widthM: number; readonly limitM: number } | null;
  /** It is known to have no lights, and it is night. */
  readonly dark: boolean;
  readonly taxiM: number | null;
  readonly isCalmWindEnd: boolean;
  /** Open, wide enough, lit by night, and something is declared for the purpose. */
  readonly usable: boolean;
}

/** The question, prepared for any direction. */
export interface Situation {
  readonly candidates: readonly Candidate[];
  readonly rule: Rule;
  readonly shape: WindShape;
  /** Where it comes from; null if from anywhere. A calm counts as north, with components of 0. */
  readonly from: TrueDeg | null;
  /** A speed is only known to be above a number. */
  readonly unbounded: boolean;
  /** With an infinite gust spread if none was given. */
  readonly limits: Required<WindLimits>;
  /** Null if there are none, or they don't count. */
  readonly preferred: PreferredEnds | null;
  readonly purpose: Purpose;
  /** Null if nobody asked to consider length. */
  readonly lengthNeededM: LengthNeeded | null;
}

/** Prepares a question for any direction of the wind. */
export function situationOf(question: EndsQuestion): Situation {
  const { field, wind, limits, preferred } = question;
  const envelope = envelopeOf(wind);
  const from = fromOf(question, envelope);
  const shape = shapeOf(wind, envelope);
  const unbounded = wind.speedIsMinimum || wind.gustIsMinimum;
  return {
    candidates: endsOf(field).map(({ designator, given, heading, runway }) => {
      const holdM = question.holdShortM?.[designator] ?? given.ldaM;
      const declaredM = {
        tora: given.toraM,
        toda: given.todaM,
        asda: given.asdaM,
        lda: Math.min(given.ldaM, holdM),
      };
      const availableM = declaredM[lengthOf(question.purpose)];
      const closedToday = question.closedToday?.includes(designator) === true;
      const closedByReport = question.closedByReport?.includes(designator) === true;
      const limitM = question.leastWidthM ?? 0;
      const narrow =
        runway.widthM !== undefined && runway.widthM < limitM
          ? { widthM: runway.widthM, limitM }
          : null;
      const dark = question.night === true && runway.edgeLights === false;
      const closed = given.closed !== undefined || closedToday || closedByReport;
      return {
        designator,
        given,
        heading,
        bearing: bearingOf(heading),
        availableM,
        declaredM,
        closedToday,
        closedByReport,
        narrow,
        dark,
        taxiM: question.taxiDistanceM?.(designator) ?? null,
        isCalmWindEnd: designator === field.calmWindEnd,
        usable: !closed && narrow === null && !dark && availableM > 0,
      };
    }),
    rule: ruleOf(shape, from, unbounded),
    shape,
    from,
    unbounded,
    limits: { gustSpreadKt: Number.POSITIVE_INFINITY, ...limits },
    // An unknown wind can't be known to be weak enough.
    preferred: preferred?.applies && !unbounded && wind.speedKt !== null ? preferred : null,
    purpose: question.purpose,
    lengthNeededM: question.lengthNeededM ?? null,
  };
}

/** The declared length a purpose goes by first. */
export const lengthOf = (purpose: Purpose): Declared => (purpose === 'take-off' ? 'tora' : 'lda');

/** A direction true, as a whole-circle direction of the wind's own north: 1 to 360 for whole degrees. */
export function inOwnNorth(direction: TrueDeg, question: EndsQuestion): number {
  const own = question.north === 'true' ? direction : toMagnetic(direction, question.variationDeg);
  return degreesOf(own) || 360;
}

function fromOf(
  { wind, north, variationDeg }: EndsQuestion,
  envelope: WindEnvelope,
): TrueDeg | null {
  if (envelope.kind === 'calm') return trueDeg(0);
  if (envelope.kind === 'any' || wind.variable || wind.fromDeg === null) return null;
  return north === 'true' ? trueDeg(wind.fromDeg) : toTrue(magneticDeg(wind.fromDeg), variationDeg);
}

function ruleOf({ strongestKt }: WindShape, from: TrueDeg | null, unbounded: boolean): Rule {
  if (strongestKt === null) return 'direction-only';
  if (strongestKt < LIGHT_BELOW_KT && !unbounded) return 'light';
  return from === null ? 'from-anywhere' : 'into-wind';
}

function shapeOf(wind: Wind, envelope: WindEnvelope): WindShape {
  const { speedKt } = wind;
  const strongestKt = speedKt === null ? null : Math.max(speedKt, wind.gustKt ?? 0);
  const shape = (middleDeg: number, halfDeg: number): WindShape => ({
    speedKt,
    strongestKt,
    middleDeg,
    half: bearingOf(trueDeg(halfDeg)),
  });
  if (envelope.kind === 'any') return shape(0, 180);
  if (envelope.kind !== 'sector') return shape(0, 0);
  const halfDeg = envelope.widthDeg / 2;
  return shape(clockwiseDeg(wind.fromDeg ?? 0, envelope.fromDeg + halfDeg), halfDeg);
}
