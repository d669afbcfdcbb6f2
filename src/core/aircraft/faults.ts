/** What makes an aircraft document of the right shape unusable. */

import type { Fault, FaultKey } from '../fault';
import type { AircraftShape } from './aircraft.schema';

export type AircraftFault =
  /** Two figures from least to most, or early to late, are reversed. */
  | 'out-of-order'
  /** A limit grows as the surface gets worse. */
  | 'limit-grows'
  /** A gate lies above the limit it keeps clear of. */
  | 'gate-above-limit'
  /** A gate without its limit, or a limit without its gate. */
  | 'gate-without-limit'
  /** A reheat-off speed without reheat, or the reverse. */
  | 'reheat-without-engine';

type Path = readonly [FaultKey, ...FaultKey[]];

/** A fault at the first figure below its predecessor. */
function* outOfOrder(...rising: readonly (readonly [Path, number])[]) {
  for (const [index, [path, value]] of rising.entries()) {
    const before = rising[index - 1];
    if (before !== undefined && value < before[1]) {
      yield { path, code: 'out-of-order', values: [value, before[1]] } as const;
    }
  }
}

function* faultsOfOrder(aircraft: AircraftShape): Generator<Fault<AircraftFault>> {
  const { masses, taxi, takeoff, climb } = aircraft;
  yield* outOfOrder(
    [['masses', 'emptyKg'], masses.emptyKg],
    [['masses', 'usualTakeoffKg'], masses.usualTakeoffKg],
    [['masses', 'maxTakeoffKg'], masses.maxTakeoffKg],
  );
  yield* outOfOrder(
    [['masses', 'emptyKg'], masses.emptyKg],
    [['masses', 'usualLandingKg'], masses.usualLandingKg],
    [['masses', 'maxLandingKg'], masses.maxLandingKg],
  );
  yield* outOfOrder([['taxi', 'turnKt'], taxi.turnKt], [['taxi', 'maxKt'], taxi.maxKt]);
  if (taxi.power !== undefined) {
    const { keepRolling, breakaway } = taxi.power;
    yield* outOfOrder(
      [['taxi', 'power', 'keepRolling', 0], keepRolling[0]],
      [['taxi', 'power', 'keepRolling', 1], keepRolling[1]],
      [['taxi', 'power', 'breakaway'], breakaway],
    );
  }
  yield* outOfOrder(
    [['takeoff', 'rotateKt'], takeoff.rotateKt],
    [['takeoff', 'liftOffKt'], takeoff.liftOffKt],
    [['climb', 'speedKt', 0], climb.speedKt[0]],
    [['climb', 'speedKt', 1], climb.speedKt[1]],
  );
  if (climb.pitchDeg !== undefined) {
    yield* outOfOrder(
      [['climb', 'pitchDeg', 0], climb.pitchDeg[0]],
      [['climb', 'pitchDeg', 1], climb.pitchDeg[1]],
    );
  }
}

function* faultsOfLimits({
  engine,
  limits,
  climb,
}: AircraftShape): Generator<Fault<AircraftFault>> {
  for (const limit of ['crosswindKt', 'tailwindKt'] as const) {
    const { dry, wet, contaminated } = limits[limit];
    if (wet > dry)
      yield { path: ['limits', limit, 'wet'], code: 'limit-grows', values: [wet, dry] };
    if (contaminated > wet) {
      const values = [contaminated, wet];
      yield { path: ['limits', limit, 'contaminated'], code: 'limit-grows', values };
    }
  }
  if (climb.flapsUpByKt > limits.flapsKt) {
    const values = [climb.flapsUpByKt, limits.flapsKt];
    yield { path: ['climb', 'flapsUpByKt'], code: 'gate-above-limit', values };
  }
  if (climb.gearUpByKt !== undefined && limits.gearKt !== undefined) {
    if (climb.gearUpByKt > limits.gearKt) {
      const values = [climb.gearUpByKt, limits.gearKt];
      yield { path: ['climb', 'gearUpByKt'], code: 'gate-above-limit', values };
    }
  } else if (climb.gearUpByKt !== limits.gearKt)
    yield { path: ['climb', 'gearUpByKt'], code: 'gate-without-limit' };
  if ((climb.reheatOffKt !== undefined) !== (engine === 'jet with reheat'))
    yield { path: ['climb', 'reheatOffKt'], code: 'reheat-without-engine' };
}

/** Everything that makes the aircraft unusable; empty if it holds together. */
export function aircraftFaults(aircraft: AircraftShape): Fault<AircraftFault>[] {
  return [...faultsOfOrder(aircraft), ...faultsOfLimits(aircraft)];
}
