/** What makes an aircraft's physics unusable: figures that contradict each other. */

import type { Fault, FaultKey } from '../fault';
import { speedAtLiftKt } from './aerodynamics';
import type { AircraftShape } from './aircraft.schema';
import { landing } from './landing';
import type { Performance } from './performance';
import { runNeededM } from './takeoff';

export type PerformanceFault =
  /** A propeller on a jet, a jet with reheat without its thrust, and the like. */
  | 'thrust-not-of-engine'
  /** A thrust table's speeds don't rise from 0. */
  | 'thrust-out-of-order'
  /** The table ends before the climb speed. */
  | 'thrust-too-short'
  /** The wing would stall at lift-off speed. */
  | 'stall-above-lift-off'
  /** The approach speed differs by over 3 % from the wing's reference speed. */
  | 'approach-not-of-wing'
  /** Rotated it meets no more air, or meets it with less drag, than on all wheels. */
  | 'rotates-downwards'
  /** Brakes grip better on a worse surface. */
  | 'braking-grows'
  /** Drag for a gear that can't retract, or none for one that can. */
  | 'gear-without-limit'
  /** The centre of gravity is not between the wheels. */
  | 'gear-tips'
  /** The computed run is over 5 % off the book's, or it never lifts off. */
  | 'run-not-of-book'
  /** The same for the landing run, with the parachute if there is one; or it never stops. */
  | 'landing-run-not-of-book'
  /** Rotation below 1.05 times the minimum control speed. CS 25.107 (value from memory). */
  | 'rotates-below-control'
  /** Rotation below 1.05 times the stall. */
  | 'rotates-below-stall';

type Found = Fault<PerformanceFault>;

/** Tolerated share between computed figures and the book's. */
const SPEED_SHARE = 0.03;
const RUN_SHARE = 0.05;

/** Rotation over minimum control speed and stall. CS 25.107 (value from memory). */
const ROTATION_OVER = 1.05;

/** Everything that makes the physics unusable; empty if it holds together or is absent. */
export function performanceFaults(aircraft: AircraftShape): Found[] {
  const { performance } = aircraft;
  if (performance === undefined) return [];
  const found = [
    ...faultsOfThrust(aircraft, performance),
    ...faultsOfWing(aircraft, performance),
    ...faultsOnWheels(aircraft, performance),
  ];
  // Nothing follows from faulty figures.
  return found.length > 0 ? found : [...faultsOfRun(aircraft), ...faultsOfLandingRun(aircraft)];
}

const at = (...path: readonly FaultKey[]): Found['path'] => ['performance', ...path];

const isNear = (value: number, book: number, share: number): boolean =>
  Math.abs(value - book) <= share * book;

function* faultsOfThrust(
  { engine, climb }: AircraftShape,
  { thrust }: Performance,
): Generator<Found> {
  const curves =
    thrust.kind === 'propeller'
      ? { fullN: thrust.fullN }
      : { dryN: thrust.dryN, ...(thrust.reheatN ? { reheatN: thrust.reheatN } : {}) };
  const engines =
    thrust.kind === 'propeller'
      ? ['piston', 'turboprop']
      : [thrust.reheatN ? 'jet with reheat' : 'jet'];
  if (!engines.includes(engine)) yield { path: at('thrust'), code: 'thrust-not-of-engine' };
  for (const [name, curve] of Object.entries(curves)) {
    const speeds = curve.map(([kt]) => kt);
    const wrong = speeds.findIndex((kt, i) => (i === 0 ? kt !== 0 : kt <= (speeds[i - 1] ?? kt)));
    if (wrong >= 0) yield { path: at('thrust', name, wrong), code: 'thrust-out-of-order' };
    if ((speeds.at(-1) ?? 0) < climb.speedKt[1]) {
      yield { path: at('thrust', name, speeds.length - 1), code: 'thrust-too-short' };
    }
  }
}

function* faultsOfWing(
  { takeoff, landing, masses }: AircraftShape,
  { wing, landing: rule, oneEngineOut }: Performance,
): Generator<Found> {
  const { areaM2, clMax, ground, rotated } = wing;
  const stallKt = speedAtLiftKt(masses.usualTakeoffKg, areaM2, clMax.takeoff);
  if (stallKt > takeoff.liftOffKt) {
    const values = [stallKt, takeoff.liftOffKt];
    yield { path: at('wing', 'clMax', 'takeoff'), code: 'stall-above-lift-off', values };
    return;
  }
  const referenceKt = rule.reference * speedAtLiftKt(masses.usualLandingKg, areaM2, clMax.landing);
  if (!isNear(referenceKt, landing.approachKt, SPEED_SHARE)) {
    const values = [referenceKt, landing.approachKt];
    yield { path: at('wing', 'clMax', 'landing'), code: 'approach-not-of-wing', values };
  }
  const { rotateKt } = takeoff;
  const below = (code: PerformanceFault, leastKt: number): Found[] =>
    rotateKt < leastKt
      ? [{ path: ['takeoff', 'rotateKt'], code, values: [rotateKt, leastKt] }]
      : [];
  yield* below('rotates-below-stall', ROTATION_OVER * stallKt);
  yield* below('rotates-below-control', ROTATION_OVER * (oneEngineOut?.minimumControlKt ?? 0));
  if (rotated.alphaDeg <= ground.alphaDeg) {
    yield { path: at('wing', 'rotated', 'alphaDeg'), code: 'rotates-downwards' };
  }
  if (rotated.cd < ground.cd) {
    yield { path: at('wing', 'rotated', 'cd'), code: 'rotates-downwards' };
  }
}

function* faultsOnWheels(
  { limits }: AircraftShape,
  { brakes, wing, gear }: Performance,
): Generator<Found> {
  const { dry, wet, contaminated } = brakes.friction;
  if (wet > dry) yield { path: at('brakes', 'friction', 'wet'), code: 'braking-grows' };
  if (contaminated > wet) {
    yield { path: at('brakes', 'friction', 'contaminated'), code: 'braking-grows' };
  }
  if ((wing.gearCd === undefined) !== (limits.gearKt === undefined)) {
    yield { path: at('wing', 'gearCd'), code: 'gear-without-limit' };
  }
  if (gear.cgToMainM >= gear.wheelbaseM) {
    yield { path: at('gear', 'cgToMainM'), code: 'gear-tips' };
  }
}

/** A book row's conditions: dry, level, sea level, no wind, standard air. */
const BOOK_ROW = {
  air: { pressureAltitudeFt: 0, temperatureC: 15 },
  headwindKt: 0,
  slopePercent: 0,
  surface: 'dry',
  ground: 'asphalt',
} as const;

function* faultsOfRun(aircraft: AircraftShape): Generator<Found> {
  const { takeoff, masses } = aircraft;
  if (takeoff.runM === undefined) return;
  const runM = runNeededM({
    ...BOOK_ROW,
    aircraft,
    massKg: masses.usualTakeoffKg,
    runway: { toraM: 0, todaM: 0, asdaM: 0 },
    rollsFromM: 0,
  });
  if (runM === null || !isNear(runM, takeoff.runM, RUN_SHARE)) {
    const values = [runM ?? Number.POSITIVE_INFINITY, takeoff.runM];
    yield { path: ['takeoff', 'runM'], code: 'run-not-of-book', values };
  }
}

function* faultsOfLandingRun(aircraft: AircraftShape): Generator<Found> {
  const { landing: book, masses } = aircraft;
  if (book.runM === undefined) return;
  const answer = landing({
    ...BOOK_ROW,
    aircraft,
    massKg: masses.usualLandingKg,
    gustSpreadKt: 0,
  });
  const runM = answer.kind === 'cannot' ? null : answer.runM;
  if (runM === null || !isNear(runM, book.runM, RUN_SHARE)) {
    const values = [runM ?? Number.POSITIVE_INFINITY, book.runM];
    yield { path: ['landing', 'runM'], code: 'landing-run-not-of-book', values };
  }
}
