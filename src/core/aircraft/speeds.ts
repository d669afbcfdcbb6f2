/** Speeds by mass, each with its root. Indicated, kt. */

import { speedAtLiftKt } from './aerodynamics';
import type { Aircraft } from './aircraft';
import type { LandingQuestion, Performance } from './performance';
import type { TakeoffSpeeds } from './takeoffAnswer';

/** Safety speed over the stall: at least 1.2 V_S1 at 50 ft. 14 CFR 23.53 until 2017. */
const SAFETY_OVER_STALL = 1.2;

/** Root of a mass over the one a speed is given for. */
export const rootOfMass = (massKg: number, givenForKg: number): number =>
  Math.sqrt(massKg / givenForKg);

/** Stall, rotation, lift-off and safety speed for a mass. */
export function takeoffSpeeds(
  { takeoff, masses }: Aircraft,
  { wing }: Performance,
  massKg: number,
): TakeoffSpeeds {
  const root = rootOfMass(massKg, masses.usualTakeoffKg);
  const stallKt = speedAtLiftKt(massKg, wing.areaM2, wing.clMax.takeoff);
  const liftOffKt = takeoff.liftOffKt * root;
  return {
    stallKt,
    rotateKt: takeoff.rotateKt * root,
    liftOffKt,
    safetyKt: Math.max(liftOffKt, SAFETY_OVER_STALL * stallKt),
  };
}

/** Climb speed by mass: the middle of the book's two at the usual mass, always within them. */
export function climbSpeedKt({ climb, masses }: Aircraft, massKg: number): number {
  const [least, most] = climb.speedKt;
  const forMass = ((least + most) / 2) * rootOfMass(massKg, masses.usualTakeoffKg);
  return Math.min(Math.max(forMass, least), most);
}

/** The most wind may add to an approach speed, kt. Common practice, no published source. */
const MOST_ADDITIVE_KT = 20;

/**
 * What the wind adds to the reference speed, kt, by the aircraft's own rule. The headwind is that
 * of the reported direction: see {@link LandingQuestion.reportedHeadwindKt}.
 */
export function additiveKt(
  { landing }: Performance,
  headwindKt: number,
  gustSpreadKt: number,
): number {
  // FAA-H-8083-3, ch. 8.
  if (landing.additive === 'half-gust') return gustSpreadKt / 2;
  // Common practice in transport, no published source.
  return Math.min(Math.max(headwindKt, 0) / 2 + gustSpreadKt, MOST_ADDITIVE_KT);
}

/** Headwind to plan with, kt: half a headwind, 1.5 times a tailwind. 14 CFR 25.105(d)(1). */
export const plannedHeadwindKt = (headwindKt: number): number =>
  headwindKt > 0 ? headwindKt / 2 : 1.5 * headwindKt + 0;
