/**
 * A flight of the test's own, from lift-off to a height: the forces from the document, and small
 * steps of time. It shares nothing with the code but the document.
 */

import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { Performance } from '../../../src/core/aircraft/performance';

const G = 9.80665;
const MPS = 1852 / 3600;

/** What flies, and on what. */
export interface FlightGiven {
  readonly aircraft: Aircraft;
  readonly performance: Performance;
  readonly massKg: number;
  /** ρ / ρ₀. */
  readonly sigma: number;
  /** Standard temperature at the pressure, K, and how much hotter it is, °C. */
  readonly standardK: number;
  readonly hotterC: number;
  readonly headwindKt: number;
  readonly reheat: boolean;
  /** Of the thrust. */
  readonly share: number;
  readonly deadDragM2: number;
}

/** Where it is at the height. */
export interface FlightDone {
  readonly tasMps: number;
  readonly groundM: number;
  readonly s: number;
  /** ∫ (T − D) ds along the way through the air, J. */
  readonly workJ: number;
}

/** The speeds of the document, true, m/s. */
export function trueSpeeds({ aircraft, performance, massKg, sigma }: FlightGiven) {
  const { areaM2, clMax } = performance.wing;
  const root = Math.sqrt(massKg / aircraft.masses.usualTakeoffKg);
  const liftOff = (aircraft.takeoff.liftOffKt * MPS * root) / Math.sqrt(sigma);
  const stall = Math.sqrt((2 * massKg * G) / (1.225 * sigma * areaM2 * clMax.takeoff));
  return { liftOff, stall, safety: Math.max(liftOff, 1.2 * stall) };
}

/** Thrust less drag, N, gear and flaps as for take-off. */
export function spareN(given: FlightGiven, v: number, n: number): number {
  const { performance, massKg, sigma, reheat, share, deadDragM2 } = given;
  const { wing, thrust } = performance;
  const curve =
    thrust.kind === 'propeller' ? thrust.fullN : (reheat && thrust.reheatN) || thrust.dryN;
  const kt = v / MPS;
  let newtons = curve.at(-1)?.[1] ?? 0;
  for (let i = 1; i < curve.length; i++) {
    const [a, b] = [curve[i - 1], curve[i]];
    if (a && b && kt >= a[0] && kt < b[0]) {
      newtons = a[1] + ((b[1] - a[1]) * (kt - a[0])) / (b[0] - a[0]);
    }
  }
  // A piston's power by the density of standard air there and the root of the temperature; T³ ~ ρ P².
  const { standardK, hotterC } = given;
  const kelvin = standardK + hotterC;
  const supercharged = thrust.kind === 'propeller' && thrust.supercharged === true;
  const high = supercharged ? 1 : Math.max((1.132 * sigma * kelvin) / standardK - 0.132, 0);
  const power = high * Math.sqrt(standardK / kelvin);
  const thin = thrust.kind === 'jet' ? sigma : (sigma * power ** 2) ** (1 / 3);
  const q = 0.5 * 1.225 * sigma * v * v;
  const cl = (n * massKg * G) / (q * wing.areaM2);
  const cd = wing.cleanCd + (wing.gearCd ?? 0) + wing.flapsCd + wing.induced * cl * cl;
  // ISA + 20: density alone leaves 288.15 / 308.15.
  const hot =
    thrust.kind === 'jet' && thrust.at20Hotter !== undefined
      ? ((thrust.at20Hotter * 308.15) / 288.15) ** (Math.max(hotterC, 0) / 20)
      : 1;
  return share * newtons * thin * hot - q * (wing.areaM2 * cd + deadDragM2);
}

/** Flies level until 0.9 of the greatest lift is 1.05 weights, pulls up with it to an angle, and holds that. */
function fly(given: FlightGiven, angle: number, heightM: number): FlightDone | null {
  const { massKg, headwindKt } = given;
  const { liftOff, stall } = trueSpeeds(given);
  const dt = heightM / (liftOff * Math.max(Math.sin(angle), 0.02)) / 150;
  let [v, gamma, h, x, s, work] = [liftOff, 0, 0, 0, 0, 0];
  while (h < heightM) {
    if (s > 600) return null;
    const lift = (speed: number, path: number) => {
      const most = Math.min(0.9 * (speed / stall) ** 2, 1.19);
      return path >= angle ? Math.cos(path) : most < 1.05 - 1e-9 ? 1 : most;
    };
    const turning = (speed: number, path: number) => {
      const n = lift(speed, path);
      return path >= angle || n === 1 ? 0 : (G * (n - Math.cos(path))) / speed;
    };
    const gaining = (speed: number, path: number) =>
      spareN(given, speed, lift(speed, path)) / massKg - G * Math.sin(path);
    // Half a step on, then all of it with the middle's forces.
    const vHalf = v + (dt / 2) * gaining(v, gamma);
    const gammaHalf = Math.min(gamma + (dt / 2) * turning(v, gamma), angle);
    const n = lift(vHalf, gammaHalf);
    const part = Math.min(1, (heightM - h) / Math.max(dt * vHalf * Math.sin(gammaHalf), 1e-12));
    work += spareN(given, vHalf, n) * vHalf * dt * part;
    h += part * dt * vHalf * Math.sin(gammaHalf);
    x += part * dt * (vHalf * Math.cos(gammaHalf) - headwindKt * MPS);
    s += part * dt;
    v += part * dt * gaining(vHalf, gammaHalf);
    gamma = Math.min(gamma + dt * turning(vHalf, gammaHalf), angle);
    if (!(v > stall / 2)) return null;
  }
  return { tasMps: v, groundM: x, s, workJ: work };
}

/** As steep as leaves the safety speed at the height; null where nothing up to 10 km does. */
export function flight(given: FlightGiven, heightM: number): FlightDone | null {
  const { safety } = trueSpeeds(given);
  let [shallow, steep] = [Math.atan(heightM / 10_000), Math.PI / 4];
  const fastEnough = (angle: number) => (fly(given, angle, heightM)?.tasMps ?? 0) >= safety;
  if (fastEnough(steep)) return fly(given, steep, heightM);
  if (!fastEnough(shallow)) return null;
  for (let i = 0; i < 14; i++) {
    const middle = Math.sqrt(shallow * steep);
    if (fastEnough(middle)) shallow = middle;
    else steep = middle;
  }
  return fly(given, shallow, heightM);
}
