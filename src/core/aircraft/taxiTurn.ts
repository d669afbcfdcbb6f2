/** How fast an aircraft may take a turn on the ground. */

import { GRAVITY, KT_PER_MPS } from '../units';
import type { Aircraft } from './aircraft';

/** Comfortable sideways acceleration, g: reproduces the radii in ICAO Doc 9157 Part 2. */
const COMFORT_G = 0.134;

/** Share of tipping speed used: half the force. Common practice, no published source. */
const TIPPING_SHARE = 0.7;

/** Speeds for a turn, kt over the ground. */
export interface TaxiTurn {
  /** The smaller of comfort and tipping with its margin. */
  readonly maxKt: number;
  readonly boundBy: 'comfort' | 'tipping';
  readonly comfortKt: number;
  /** Tips over here, with no margin; null if unknown, or for a tail wheel, which ground-loops. */
  readonly tippingKt: number | null;
}

/** Speeds for a turn of a radius, metres; null unless that is positive and finite. */
export function taxiTurn(aircraft: Aircraft, radiusM: number): TaxiTurn | null {
  if (!(radiusM > 0 && radiusM < Number.POSITIVE_INFINITY)) return null;
  const comfort = comfortKt(radiusM);
  const tipping = tippingKt(aircraft, radiusM);
  const usable = tipping === null ? Number.POSITIVE_INFINITY : tipping * TIPPING_SHARE;
  return {
    maxKt: Math.min(comfort, usable),
    boundBy: usable < comfort ? 'tipping' : 'comfort',
    comfortKt: comfort,
    tippingKt: tipping,
  };
}

/** v² / r = 0.134 g. ICAO Doc 9157 Part 2. */
export const comfortKt = (radiusM: number): number =>
  Math.sqrt(COMFORT_G * GRAVITY * radiusM) * KT_PER_MPS;

/** v² = g r t′ / (h cos ψ), t′ from the centre of gravity to the line nose to main wheel. */
function tippingKt({ performance }: Aircraft, radiusM: number): number | null {
  if (performance === undefined || performance.gear.tailWheel) return null;
  const { trackM, wheelbaseM, cgHeightM, cgToMainM } = performance.gear;
  const psi = Math.atan2(trackM / 2, wheelbaseM);
  const armM = (wheelbaseM - cgToMainM) * Math.sin(psi);
  return Math.sqrt((GRAVITY * radiusM * armM) / (cgHeightM * Math.cos(psi))) * KT_PER_MPS;
}
