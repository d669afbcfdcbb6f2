/** Fourth stage, where physics gives none: the numbers of the take-off, the climb and the landing. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Figure } from '../figure';
import { fromAircraft } from './given';

/** The plain speeds and lengths of the aircraft, each with where it comes from. */
export interface NumbersBrief {
  readonly aircraft: Aircraft;
  readonly takeoff: {
    readonly massKg: Figure<'kg'>;
    readonly rotateKt: Figure<'kt'>;
    readonly liftOffKt: Figure<'kt'>;
    readonly runM: Figure<'m'>;
  };
  readonly climb: {
    readonly gearUpByKt: Figure<'kt'>;
    readonly flapsUpByKt: Figure<'kt'>;
    readonly reheatOffKt: Figure<'kt'>;
    readonly leastKt: Figure<'kt'>;
    readonly mostKt: Figure<'kt'>;
  };
  readonly landing: {
    readonly massKg: Figure<'kg'>;
    readonly approachKt: Figure<'kt'>;
    readonly runM: Figure<'m'>;
  };
  readonly limits: {
    readonly gearKt: Figure<'kt'>;
    readonly flapsKt: Figure<'kt'>;
    readonly tyreKt: Figure<'kt'>;
  };
}

/** The numbers of an aircraft; null without one. */
export function numbersStage(aircraft: Aircraft | null): NumbersBrief | null {
  if (aircraft === null) return null;
  const { takeoff, climb, landing, limits, masses } = aircraft;
  return {
    aircraft,
    takeoff: {
      massKg: fromAircraft(masses.usualTakeoffKg, 'kg'),
      rotateKt: fromAircraft(takeoff.rotateKt, 'kt'),
      liftOffKt: fromAircraft(takeoff.liftOffKt, 'kt'),
      runM: fromAircraft(takeoff.runM, 'm'),
    },
    climb: {
      gearUpByKt: fromAircraft(climb.gearUpByKt, 'kt'),
      flapsUpByKt: fromAircraft(climb.flapsUpByKt, 'kt'),
      reheatOffKt: fromAircraft(climb.reheatOffKt, 'kt'),
      leastKt: fromAircraft(climb.speedKt[0], 'kt'),
      mostKt: fromAircraft(climb.speedKt[1], 'kt'),
    },
    landing: {
      massKg: fromAircraft(masses.usualLandingKg, 'kg'),
      approachKt: fromAircraft(landing.approachKt, 'kt'),
      runM: fromAircraft(landing.runM, 'm'),
    },
    limits: {
      gearKt: fromAircraft(limits.gearKt, 'kt'),
      flapsKt: fromAircraft(limits.flapsKt, 'kt'),
      tyreKt: fromAircraft(limits.tyreKt, 'kt'),
    },
  };
}
