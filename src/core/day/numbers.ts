/** Fourth stage, without physics: the numbers of take-off, climb and landing. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Figure } from '../figure';
import { fromAircraft } from './given';

/** The aircraft's plain speeds and lengths, each with its source. */
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
