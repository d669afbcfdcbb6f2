/** Thrust against speed and density. */

import { KT_PER_MPS } from '../units';
import type { Performance } from './performance';

type Curve = readonly (readonly [kt: number, newtons: number])[];

/** How much of its thrust an engine is asked for. */
export type Setting = 'reheat' | 'full' | 'idle';

/** Thrust, N, by true airspeed in m/s. */
export type ThrustN = (airMps: number) => number;

/** Thrust of all engines together; `reheat` gives what `full` does where there is none. */
export function thrustOf({ thrust }: Performance, setting: Setting, densityRatio: number): ThrustN {
  const share = densityShare(thrust, densityRatio);
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
