/** The numbers of a take-off, each with its inputs. */

import type { Aircraft } from '../aircraft/aircraft';
import type { RunForcesN, Takeoff } from '../aircraft/takeoffAnswer';
import { type Figure, type Known, known, unknown } from '../figure';

/** A take-off's figures, each of which can be asked why. */
export interface TakeoffFigures {
  readonly rotateKt: Figure<'kt'>;
  readonly liftOffKt: Figure<'kt'>;
  /** At 50 ft. */
  readonly safetyKt: Figure<'kt'>;
  /** From the start of the roll to lift-off. */
  readonly runM: Figure<'m'>;
  readonly to50ftM: Figure<'m'>;
  readonly toraLeftM: Figure<'m'>;
  readonly todaLeftM: Figure<'m'>;
  /** The last speed to stop from. */
  readonly lastStopKt: Figure<'kt'>;
  /** The same without the parachute, which may fail; only if the aircraft has one. */
  readonly lastStopBareKt: Figure<'kt'>;
  /** From the start of the roll to rest, rejected at that speed. */
  readonly stopM: Figure<'m'>;
  readonly asdaLeftM: Figure<'m'>;
  readonly atMarkKt: Figure<'kt'>;
  /** Below this at the mark: stop. */
  readonly atMarkLeastKt: Figure<'kt'>;
  /** The lowest speed to go on from with an engine out; twins only. */
  readonly lowestGoOnKt: Figure<'kt'>;
  readonly tyreLeftKt: Figure<'kt'>;
  readonly climbKt: Figure<'kt'>;
  readonly climbPitch: Figure<'deg'>;
  readonly climbGradient: Figure<'%'>;
  /** Over the ground, in the wind along the runway: this clears obstacles. */
  readonly climbGroundGradient: Figure<'%'>;
  readonly climbRate: Figure<'ft/min'>;
}

/** What the runway offers, metres from where TORA starts; null while no end is known. */
export interface RunwayGiven {
  readonly toraM: number;
  readonly todaM: number;
  readonly asdaM: number;
  readonly rollsFromM: number;
}

export function takeoffFigures(
  takeoff: Takeoff,
  aircraft: Aircraft,
  runway: RunwayGiven | null,
  /** Planned over computed run and distance to 50 ft; 1 as expected. */
  factor: number,
): TakeoffFigures {
  const { speeds, given, stop, limits, climb } = takeoff;
  const { massKg } = given;
  const byMass = (bookKt: number, value: number): Known<'kt'> =>
    known(value, 'kt', {
      formula: 'root-of-mass',
      inputs: { bookKt, massKg, usualMassKg: aircraft.masses.usualTakeoffKg },
      source: 'lift-equation',
    });
  const liftOffKt = byMass(aircraft.takeoff.liftOffKt, speeds.liftOffKt);
  const bareRunM = runFigure(takeoff);
  const runM = factored(bareRunM, factor);
  const bareTo50ftM = to50ftFigure(takeoff, bareRunM);
  const to50ftM = bareTo50ftM.value === null ? bareTo50ftM : factored(bareTo50ftM, factor);
  const stopM = runway === null ? unknown('no-end') : stopFigure(takeoff);
  return {
    rotateKt: byMass(aircraft.takeoff.rotateKt, speeds.rotateKt),
    liftOffKt,
    safetyKt: known(speeds.safetyKt, 'kt', {
      formula: 'safety-speed',
      inputs: { stallKt: speeds.stallKt, liftOff: liftOffKt },
      source: '14-cfr-23-53',
    }),
    runM,
    to50ftM,
    toraLeftM: leftOf(runway?.toraM, runway, runM),
    todaLeftM: leftOf(runway?.todaM, runway, to50ftM),
    lastStopKt:
      runway === null
        ? unknown('no-end')
        : known(stop.lastKt, 'kt', {
            formula: 'smallest-of',
            inputs: boundsOf(stop.allowsKt),
            source: 'accelerate-stop',
          }),
    lastStopBareKt:
      runway === null
        ? unknown('no-end')
        : stop.bare === null
          ? unknown('not-in-aircraft')
          : known(stop.bare.lastKt, 'kt', {
              formula: 'smallest-of',
              inputs: boundsOf(stop.bare.allowsKt),
              source: 'accelerate-stop',
            }),
    stopM,
    asdaLeftM: leftOf(runway?.asdaM, runway, stopM),
    ...markFigures(takeoff, runway),
    lowestGoOnKt: lowestGoOnFigure(takeoff, runway),
    tyreLeftKt:
      limits.tyre === null
        ? unknown('not-in-aircraft')
        : known(limits.tyre.leftKt, 'kt', {
            formula: 'limit-less-speed',
            inputs: { limitKt: limits.tyre.limitKt, groundKt: limits.tyre.liftOffGroundKt },
            source: 'aircraft',
          }),
    climbKt: known(climb.speedKt, 'kt', {
      formula: 'climb-speed',
      inputs: {
        leastKt: aircraft.climb.speedKt[0],
        mostKt: aircraft.climb.speedKt[1],
        massKg,
        usualMassKg: aircraft.masses.usualTakeoffKg,
      },
      source: 'aircraft',
    }),
    ...climbFigures(climb, given.headwindKt),
  };
}

/** m V² / 2 = F s, F the mean of all forces along the run. */
const runFigure = ({ run, liftOff, given, forcesN }: Takeoff): Known<'m'> =>
  known(run.runM, 'm', {
    formula: 'run',
    inputs: {
      // A headwind above the lift-off speed leaves no run.
      groundKt: Math.max(liftOff.groundKt, 0),
      massKg: given.massKg,
      ...forcesN.toLiftOff,
    },
    source: given.heatCounted ? 'equation-of-motion' : 'equation-of-motion-by-density',
  });

/** Times the planning factor, if there is one. */
const factored = (needed: Known<'m'>, factor: number): Known<'m'> =>
  factor === 1
    ? needed
    : known(factor * needed.value, 'm', {
        formula: 'times-factor',
        inputs: { needed, factor },
        source: 'takeoff-factor',
      });

function to50ftFigure({ at50ft }: Takeoff, run: Known<'m'>): Figure<'m'> {
  if (at50ft === null) return unknown('cannot-climb');
  return known(at50ft.distanceM, 'm', {
    formula: 'run-and-climb',
    inputs: { run, airM: at50ft.airM },
    source: 'equation-of-motion',
  });
}

function leftOf(
  availableM: number | undefined,
  runway: RunwayGiven | null,
  needed: Figure<'m'>,
): Figure<'m'> {
  if (availableM === undefined || runway === null) return unknown('no-end');
  if (needed.value === null) return needed;
  const { rollsFromM } = runway;
  return known(availableM - rollsFromM - needed.value, 'm', {
    formula: 'left-over',
    inputs: { availableM, rollsFromM, needed },
    source: 'field',
  });
}

/** The aircraft's bounds, by the names in the words. */
function boundsOf(allows: Takeoff['stop']['allowsKt']): Record<string, number> {
  const named = {
    fieldAllowsKt: allows.field,
    brakesAllowKt: allows['brake-energy'],
    tyresAllowKt: allows.tyres,
    parachuteAllowsKt: allows.parachute,
    rotationKt: allows.rotation,
  };
  return Object.fromEntries(
    Object.entries(named).flatMap(([name, kt]) => (kt === null ? [] : [[name, kt] as const])),
  );
}

/** The roll to the speed, two seconds at it, and braking to rest. 14 CFR 25.109. */
const stopFigure = ({ stop }: Takeoff): Known<'m'> =>
  known(stop.distanceM, 'm', {
    formula: 'accelerate-stop',
    inputs: {
      fromKt: stop.fromKt,
      toSpeedM: stop.toSpeedM,
      groundKt: stop.groundKt,
      heldS: stop.heldS,
      brakingM: stop.brakingM,
    },
    source: 'accelerate-stop',
  });

/** The speed a run reaches by a distance. */
const reachedKt = ({ given }: Takeoff, distance: Record<string, number>, forcesN: RunForcesN) => ({
  ...distance,
  massKg: given.massKg,
  ...forcesN,
  headwindKt: given.headwindKt,
  densityRatio: given.densityRatio,
});

function markFigures(
  takeoff: Takeoff,
  runway: RunwayGiven | null,
): Pick<TakeoffFigures, 'atMarkKt' | 'atMarkLeastKt'> {
  const { check, because } = takeoff.check;
  const { toMark } = takeoff.forcesN;
  if (check === null || toMark === null || runway === null) {
    const none = unknown(because ?? 'no-end');
    return { atMarkKt: none, atMarkLeastKt: none };
  }
  const { distanceM, expectedKt, leastForRunKt, leastForStopKt, leastInWindKt } = check;
  return {
    atMarkKt: known(expectedKt, 'kt', {
      formula: 'speed-at-mark',
      inputs: reachedKt(takeoff, { distanceM }, toMark),
      source: 'equation-of-motion',
    }),
    atMarkLeastKt: known(check.leastKt, 'kt', {
      formula: 'greatest-of',
      inputs: { leastForRunKt, leastForStopKt, leastInWindKt },
      source: 'scaled-thrust',
    }),
  };
}

function lowestGoOnFigure(takeoff: Takeoff, runway: RunwayGiven | null): Figure<'kt'> {
  if (takeoff.goOn === null) return unknown('one-engine');
  if (runway === null) return unknown('no-end');
  const { lowest } = takeoff.goOn;
  if (lowest.value === null) return unknown(lowest.because);
  const { field, minimumControlKt, standingKt } = lowest.bound;
  const { toFailure } = takeoff.forcesN;
  return field !== null && toFailure !== null
    ? known(lowest.value, 'kt', {
        formula: 'engine-out-run',
        inputs: reachedKt(takeoff, { ...field }, toFailure),
        source: 'equation-of-motion',
      })
    : known(lowest.value, 'kt', {
        formula: 'greatest-of',
        inputs: { minimumControlKt, standingKt },
        source: 'aircraft',
      });
}

function climbFigures(
  climb: Takeoff['climb'],
  headwindKt: number,
): Pick<TakeoffFigures, 'climbPitch' | 'climbGradient' | 'climbGroundGradient' | 'climbRate'> {
  const { trueKt, pitchDeg, gradientPercent, rateFtMin, alphaDeg, groundGradientPercent } = climb;
  const { thrustN, dragN, weightN, accelerationFactor } = climb;
  const gradient = known(gradientPercent, '%', {
    formula: 'climb-gradient',
    inputs: { thrustN, dragN, weightN, accelerationFactor },
    source: 'equation-of-motion',
  });
  return {
    climbGradient: gradient,
    climbPitch: known(pitchDeg, 'deg', {
      formula: 'pitch',
      inputs: { gradient, alphaDeg },
      source: 'equation-of-motion',
    }),
    climbGroundGradient:
      groundGradientPercent === null
        ? unknown('cannot-climb')
        : known(groundGradientPercent, '%', {
            formula: 'ground-gradient',
            inputs: { gradient, trueKt, headwindKt },
            source: 'equation-of-motion',
          }),
    climbRate: known(rateFtMin, 'ft/min', {
      formula: 'climb-rate',
      inputs: { trueKt, gradient },
      source: 'equation-of-motion',
    }),
  };
}
