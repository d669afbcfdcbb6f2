/** Thrust against speed and density. */

import { KT_PER_MPS } from '../units';
import type { RollConditions } from './conditions';
import type { Performance } from './performance';

type Curve = readonly (readonly [kt: number, newtons: number])[];

/** How much of its thrust an engine is asked for. */
export type Setting = 'reheat' | 'full' | 'idle';

/** Thrust, N, by true airspeed in m/s. */
export type ThrustN = (airMps: number) => number;

type ThrustAir = Pick<
  RollConditions,
  'performance' | 'densityRatio' | 'temperatureK' | 'standardK'
>;

/** Thrust of all engines together; without reheat, `reheat` gives what `full` does. */
export function thrustOf(air: ThrustAir, setting: Setting): ThrustN {
  const { thrust } = air.performance;
  const share = airShare(thrust, air);
  if (setting === 'idle') return () => thrust.idleN * share;
  const curve =
    thrust.kind === 'propeller'
      ? thrust.fullN
      : ((setting === 'reheat' ? thrust.reheatN : undefined) ?? thrust.dryN);
  return (airMps) => onCurve(curve, airMps * KT_PER_MPS) * share;
}

/**
 * How thrust falls with the air. A jet's goes with density: Anderson, Aircraft Performance and
 * Design, eq. 3.19. A piston engine's power falls with height, P / P₀ = 1.132 σ − 0.132 in standard
 * air (Gagg and Ferrar 1934; the same book, eq. 3.12), and at a given pressure with the root of
 * intake temperature, 1 % per 6 °C (engine makers' power charts; value from memory). A supercharger
 * keeps the former. A propeller turns it into thrust by T³ ~ ρ P², momentum theory at rest, which
 * take-off speeds are near (Froude; textbook).
 */
function airShare(
  thrust: Performance['thrust'],
  { densityRatio, temperatureK, standardK }: ThrustAir,
): number {
  if (thrust.kind === 'jet') return densityRatio * hotShare(thrust, temperatureK - standardK);
  const inStandardAir = (densityRatio * temperatureK) / standardK;
  const byHeight = thrust.supercharged ? 1 : Math.max(0, 1.132 * inStandardAir - 0.132);
  const power = byHeight * Math.sqrt(standardK / temperatureK);
  return Math.cbrt(densityRatio * power * power);
}

/** Density at ISA + 20 °C over that at ISA, at sea level: 288.15 / 308.15. ICAO Doc 7488. */
const DENSITY_AT_20_HOTTER = 288.15 / 308.15;

/**
 * What heat takes of a jet's thrust beyond density: turbines are held to a temperature (Mattingly,
 * Elements of Propulsion, the throttle ratio; from memory). The document gives it at ISA + 20 °C,
 * and it grows linearly; if absent, thrust goes with density alone.
 */
function hotShare(
  { at20Hotter }: Extract<Performance['thrust'], { kind: 'jet' }>,
  hotterC: number,
): number {
  if (at20Hotter === undefined) return 1;
  return (at20Hotter / DENSITY_AT_20_HOTTER) ** (Math.max(hotterC, 0) / 20);
}

/** Linear interpolation at a speed, constant beyond the first and last point. */
function onCurve(curve: Curve, kt: number): number {
  let before = curve[0];
  for (let i = 0; i < curve.length; i++) {
    const at = curve[i];
    if (before === undefined || at === undefined) break;
    if (kt <= at[0]) {
      return kt <= before[0]
        ? before[1]
        : before[1] + ((at[1] - before[1]) * (kt - before[0])) / (at[0] - before[0]);
    }
    before = at;
  }
  return before?.[1] ?? 0;
}
