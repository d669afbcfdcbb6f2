/**
 * From lift-off over an obstacle, and from an obstacle to touch-down: an arc and a straight line.
 * Anderson, Aircraft Performance and Design, 6.7.2 and 6.8.1 and 6.8.2.
 */

import { GRAVITY } from './gravity';

/** Load factor of the pull-up after lift-off: (1.15 / 1)² × 0.9 C_Lmax. Anderson, 6.7.2. */
const PULL_UP_LOAD = 1.19;

/** Load factor of the flare. Anderson, 6.8.2. */
const FLARE_LOAD = 1.2;

/** Radius of a path in the vertical, m: R = V² / (g (n − 1)). Anderson, eq. 6.98. */
const arcRadiusM = (airMps: number, loadFactor: number): number =>
  (airMps * airMps) / (GRAVITY * (loadFactor - 1));

/**
 * Through still air from lift-off to a height, m: the arc up to the climb that the thrust can hold,
 * then that climb. `sine` is that of the climb's angle and above 0.
 */
export function airToHeightM(airMps: number, sine: number, heightM: number): number {
  const radiusM = arcRadiusM(airMps, PULL_UP_LOAD);
  const climb = Math.asin(Math.min(sine, 1));
  const arcHeightM = radiusM * (1 - Math.cos(climb));
  if (arcHeightM >= heightM) return Math.sqrt(radiusM ** 2 - (radiusM - heightM) ** 2);
  return radiusM * sine + (heightM - arcHeightM) / Math.tan(climb);
}

/** The two parts of a landing before the wheels touch, through still air, m. */
export interface Descent {
  readonly approachM: number;
  readonly flareM: number;
}

/** From a height down a straight path of an angle in degrees, flared at an airspeed. */
export function descentM(heightM: number, pathDeg: number, flareMps: number): Descent {
  const path = (pathDeg * Math.PI) / 180;
  const radiusM = arcRadiusM(flareMps, FLARE_LOAD);
  const flareHeightM = Math.min(radiusM * (1 - Math.cos(path)), heightM);
  return {
    approachM: (heightM - flareHeightM) / Math.tan(path),
    flareM: radiusM * Math.sin(path),
  };
}

/** Over the ground, of a way through the air flown at an airspeed into a headwind, m. */
export const overGroundM = (airM: number, airMps: number, headwindMps: number): number =>
  airM * (1 - headwindMps / airMps);
