/** Thrust against speed and density. */

import { KT_PER_MPS } from '../units';
import type { Performance } from './performance';

type Curve = readonly (readonly [kt: number, newtons: number])[];

/** How much of its thrust an engine is asked for. */
export type Setting = 'reheat' | 'full' | 'idle';

/**
 * Thrust of all engines, N, at a true airspeed in m/s. Below the first point and above the last it
 * stays as it is there. `reheat` gives what `full` does where there is none.
 */
export function thrustN(
  { thrust }: Performance,
  setting: Setting,
  airMps: number,
  densityRatio: number,
): number {
  const share = densityShare(thrust, densityRatio);
  if (setting === 'idle') return thrust.idleN * share;
  const curve =
    thrust.kind === 'propeller'
      ? thrust.fullN
      : ((setting === 'reheat' ? thrust.reheatN : undefined) ?? thrust.dryN);
  return onCurve(curve, airMps * KT_PER_MPS) * share;
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

/** The value at a speed, by straight lines. */
function onCurve(curve: Curve, kt: number): number {
  let [beforeKt, beforeN] = curve[0] ?? [0, 0];
  if (kt <= beforeKt) return beforeN;
  for (const [atKt, atN] of curve) {
    if (kt <= atKt) return beforeN + ((atN - beforeN) * (kt - beforeKt)) / (atKt - beforeKt);
    beforeKt = atKt;
    beforeN = atN;
  }
  return beforeN;
}
