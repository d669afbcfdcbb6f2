/** m dV/dt = T − D − μ (W cos θ − L) − W sin θ, on the runway and in the air. */

import { GRAVITY } from '../units';
import { dynamicPressurePa, liftCoefficient, trueMps } from './aerodynamics';
import type { RollConditions } from './conditions';
import type { Motion } from './roll';
import type { TakeoffSpeeds } from './takeoffAnswer';
import { type Setting, thrustOf } from './thrust';

/** Engine setting, and what still runs. */
export interface Power {
  readonly setting: Setting;
  /** Share of the thrust, 0 to 1. */
  readonly share: number;
  /** Drag of a dead engine and of the rudder that offsets it, m². */
  readonly deadDragM2: number;
}

/** A force of the run whose work can be counted; the weight's follows from the slope. */
export type RunForce = 'thrust' | 'drag' | 'friction';

/**
 * The take-off run. On all wheels up to rotation; from there the nose rises with speed, so that
 * lift carries the weight at lift-off and drag grows with the square of the pitch gained. With
 * `counted`, gains that force's work over the ground, J.
 */
export function runMotion(
  conditions: RollConditions,
  speeds: TakeoffSpeeds,
  power: Power,
  counted?: RunForce,
): Motion {
  const { performance, densityRatio, massKg, weightN, sin, cos, rollingFriction } = conditions;
  const { areaM2, ground, rotated } = performance.wing;
  const rotateMps = trueMps(speeds.rotateKt, densityRatio);
  const rotatingMps = Math.max(trueMps(speeds.liftOffKt, densityRatio) - rotateMps, 1e-6);
  const liftOffCl = liftCoefficient(massKg, areaM2, speeds.liftOffKt);
  const thrustN = thrustOf(conditions, power.setting);
  const noseUp = (airMps: number) => Math.max(0, (airMps - rotateMps) / rotatingMps);
  const forcesN: Readonly<Record<RunForce, (airMps: number) => number>> = {
    thrust: (airMps) => power.share * thrustN(airMps),
    drag(airMps) {
      const cd = ground.cd + noseUp(airMps) ** 2 * (rotated.cd - ground.cd);
      return fromAheadPa(airMps, densityRatio) * (areaM2 * cd + power.deadDragM2);
    },
    friction(airMps) {
      const cl = ground.cl + noseUp(airMps) * (liftOffCl - ground.cl);
      const liftN = fromAheadPa(airMps, densityRatio) * areaM2 * cl;
      return rollingFriction * Math.max(0, weightN * cos - liftN);
    },
  };
  const { thrust, drag, friction } = forcesN;
  return {
    mps2: (airMps) => (thrust(airMps) - drag(airMps) - friction(airMps) - weightN * sin) / massKg,
    ...workOf(counted && forcesN[counted], conditions),
  };
}

/** Counts a force's work over the ground, J. */
const workOf = (
  forceN: ((airMps: number) => number) | undefined,
  { headwindMps }: RollConditions,
): Pick<Motion, 'gainPerS'> =>
  forceN === undefined ? {} : { gainPerS: (airMps) => forceN(airMps) * (airMps - headwindMps) };

/** A force of a stop whose work can be counted; the weight's follows from the slope. */
export type StopForce = 'brakes' | 'drag' | 'thrust';

/**
 * Deceleration after a rejected take-off (`ground`) or a landing (`rollout`). Gains the energy into
 * the brakes, J, or the work of another counted force. The parachute counts as drag up to its
 * greatest speed.
 */
export function stopMotion(
  conditions: RollConditions,
  attitude: 'ground' | 'rollout',
  withParachute: boolean,
  counted: StopForce = 'brakes',
): Motion {
  const { performance, densityRatio, massKg, weightN, sin, cos } = conditions;
  const { areaM2, [attitude]: held } = performance.wing;
  const parachute = withParachute ? performance.parachute : undefined;
  const openMps = parachute === undefined ? 0 : trueMps(parachute.maxKt, densityRatio) + 1e-9;
  const forcesN: Readonly<Record<StopForce, (airMps: number) => number>> = {
    brakes(airMps) {
      const liftN = fromAheadPa(airMps, densityRatio) * areaM2 * held.cl;
      return conditions.brakingFriction * Math.max(0, weightN * cos - liftN);
    },
    drag(airMps) {
      const parachuteM2 = parachute !== undefined && airMps <= openMps ? parachute.dragAreaM2 : 0;
      return fromAheadPa(airMps, densityRatio) * (areaM2 * held.cd + parachuteM2);
    },
    thrust: thrustOf(conditions, 'idle'),
  };
  const { brakes, drag, thrust } = forcesN;
  return {
    mps2: (airMps) => (brakes(airMps) + drag(airMps) + weightN * sin - thrust(airMps)) / massKg,
    ...workOf(forcesN[counted], conditions),
  };
}

export interface Hanging {
  readonly gear: boolean;
  readonly flaps: boolean;
}

interface AloftN {
  readonly pullN: number;
  readonly dragN: number;
}

/** Thrust and drag in the air, N, by true airspeed in m/s. */
export function aloftN(
  conditions: RollConditions,
  airMps: number,
  power: Power,
  hanging: Hanging,
): AloftN {
  return {
    pullN: power.share * thrustOf(conditions, power.setting)(airMps),
    dragN: dragAloftN(conditions, power, hanging)(airMps, 1),
  };
}

/** Thrust less drag in the air, N, by true airspeed in m/s and load factor. */
export function spareAloftN(
  conditions: RollConditions,
  power: Power,
  hanging: Hanging,
): (airMps: number, loadFactor: number) => number {
  const thrustN = thrustOf(conditions, power.setting);
  const dragN = dragAloftN(conditions, power, hanging);
  return (airMps, loadFactor) => power.share * thrustN(airMps) - dragN(airMps, loadFactor);
}

function dragAloftN(
  { performance, densityRatio, weightN }: RollConditions,
  { deadDragM2 }: Power,
  { gear, flaps }: Hanging,
): (airMps: number, loadFactor: number) => number {
  const { areaM2, cleanCd, gearCd = 0, flapsCd, induced } = performance.wing;
  const cd0 = cleanCd + (gear ? gearCd : 0) + (flaps ? flapsCd : 0);
  return (airMps, loadFactor) => {
    const q = dynamicPressurePa(airMps, densityRatio);
    const cl = (loadFactor * weightN) / (q * areaM2);
    return q * (areaM2 * (cd0 + induced * cl * cl) + deadDragM2);
  };
}

/** Sine of the climb the thrust can sustain at an airspeed, (T − D) / W in the air; at most 1. */
export function climbSine(
  conditions: RollConditions,
  airMps: number,
  power: Power,
  hanging: Hanging,
): number {
  const { pullN, dragN } = aloftN(conditions, airMps, power, hanging);
  return Math.min((pullN - dragN) / conditions.weightN, 1);
}

/** Accelerating in the climb-out: climbing takes its share of spare thrust; gains height, m. */
export function climbOutMotion(conditions: RollConditions, power: Power, hanging: Hanging): Motion {
  const { climbShare } = conditions.performance;
  const spare = (airMps: number) => climbSine(conditions, airMps, power, hanging);
  return {
    mps2: (airMps) => (1 - climbShare) * spare(airMps) * GRAVITY,
    gainPerS: (airMps) => climbShare * spare(airMps) * airMps,
  };
}

/** Dynamic pressure, Pa; 0 while a tailwind overtakes the aircraft, which would only help. */
const fromAheadPa = (airMps: number, densityRatio: number): number =>
  airMps > 0 ? dynamicPressurePa(airMps, densityRatio) : 0;
