/** Thrust against speed and density. */

import { KT_PER_MPS } from '../units';
import type { Conditions } from './conditions';
import type { Performance } from './performance';

type Curve = readonly (readonly [kt: number, newtons: number])[];

/** How much of its thrust an engine is asked for. */
export type Setting = 'reheat' | 'full' | 'idle';

/** Thrust, N, by true airspeed in m/s. */
export type ThrustN = (airMps: number) => number;

/** What thrust falls with. */
type ThrustAir = Pick<Conditions, 'performance' | 'densityRatio' | 'hotterC'>;

/** Thrust of all engines together; `reheat` gives what `full` does where there is none. */
export function thrustOf(
  { performance: { thrust }, densityRatio, hotterC }: ThrustAir,
  setting: Setting,
): ThrustN {
  const share = densityShare(thrust, densityRatio) * hotShare(thrust, hotterC);
  if (setting === 'idle') return () => thrust.idleN * share;
  const curve =
    thrust.kind === 'propeller'
      ? thrust.fullN
      : ((setting === 'reheat' ? thrust.reheatN : undefined) ?? thrust.dryN);
  return (airMps) => onCurve(curve, airMps * KT_PER_MPS) * share;
}

/**
 * How thrust falls with density. A jet's goes with it: Anderson, Aircraft Performance and Design,
 * eq. 3.19. A piston engine's power: P / P₀ = 1.132 σ − 0.132, Gagg and Ferrar 1934 (the same book,
 * eq. 3.12); at a given speed the thrust follows it. A supercharger keeps it.
 */
function densityShare(thrust: Performance['thrust'], densityRatio: number): number {
  if (thrust.kind === 'jet') return densityRatio;
  return thrust.supercharged ? 1 : Math.max(0, 1.132 * densityRatio - 0.132);
}

/** Density at ISA + 20 °C over that at ISA, at sea level: 288.15 / 308.15. ICAO Doc 7488. */
const DENSITY_AT_20_HOTTER = 288.15 / 308.15;

/**
 * What heat takes of a jet's thrust beyond what density does: turbines are held to a temperature
 * (Mattingly, Elements of Propulsion, the throttle ratio; from memory). The document gives it at
 * ISA + 20 °C, and it grows evenly with the heat; where it does not, thrust goes with density alone.
 */
function hotShare(thrust: Performance['thrust'], hotterC: number): number {
  if (thrust.kind !== 'jet' || thrust.at20Hotter === undefined) return 1;
  return (thrust.at20Hotter / DENSITY_AT_20_HOTTER) ** (hotterC / 20);
}

/** The value at a speed, by straight lines; below the first point and above the last it stays as it is there. */
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
