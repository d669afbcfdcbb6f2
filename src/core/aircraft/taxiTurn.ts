/** How fast an aircraft may go round a turn on the ground. */

import { GRAVITY, KT_PER_MPS } from '../units';
import type { Aircraft } from './aircraft';

/** Sideways acceleration that is comfortable, in g: reproduces the table of radii in ICAO Doc 9157 Part 2. */
const COMFORT_G = 0.134;

/** Of the tipping speed no more than this is used: at it, half the sideways force that tips. Common practice, no published source. */
const TIPPING_SHARE = 0.7;

/** Speeds for a turn, kt over the ground. */
export interface TaxiTurn {
  /** The smaller of comfort and what is left of tipping after its margin. */
  readonly maxKt: number;
  readonly boundBy: 'comfort' | 'tipping';
  readonly comfortKt: number;
  /** At this it tips over, without margin. Null for a tail wheel, which ground-loops first, and where the gear is not known. */
  readonly tippingKt: number | null;
}

/** Speeds for a turn of a radius, metres; null where that is no radius. */
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

/** v² = g r t′ / (h cos ψ), t′ the distance of the centre of gravity from the line nose wheel to main wheel. */
function tippingKt({ performance }: Aircraft, radiusM: number): number | null {
  if (performance === undefined || performance.gear.tailWheel) return null;
  const { trackM, wheelbaseM, cgHeightM, cgToMainM } = performance.gear;
  const psi = Math.atan2(trackM / 2, wheelbaseM);
  const armM = (wheelbaseM - cgToMainM) * Math.sin(psi);
  return Math.sqrt((GRAVITY * radiusM * armM) / (cgHeightM * Math.cos(psi))) * KT_PER_MPS;
}
