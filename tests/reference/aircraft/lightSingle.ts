/** A light single with a fixed propeller, begun from textbook ranges: what handbooks' figures are fitted from. */

import type { Performance } from '../../../src/core/aircraft/performance';
import { BARE } from '../../core/aircraft/invented';

/** Thrust by airspeed, N by kt, as in a document; wing area and drag as of its class. */
export const lightSingle = (
  fullN: readonly (readonly [kt: number, newtons: number])[],
  areaM2: number,
  cleanCd: number,
): Performance => ({
  ...BARE,
  thrust: { kind: 'propeller', fullN: fullN.map(([kt, newtons]) => [kt, newtons]), idleN: 40 },
  wing: {
    areaM2,
    clMax: { takeoff: 1.5, landing: 1.8 },
    ground: { alphaDeg: 1, cl: 0.4, cd: 0.05 },
    rotated: { alphaDeg: 9, cd: 0.09 },
    rollout: { cl: 0.4, cd: 0.09 },
    cleanCd,
    flapsCd: 0.005,
    flapsCl: 0,
    induced: 0.06,
  },
  rolling: { dry: 0.025, wet: 0.03, contaminated: 0.05 },
  brakes: { friction: { dry: 0.3, wet: 0.2, contaminated: 0.1 }, delayS: 1 },
  landing: { ...BARE.landing, pathDeg: 5, touchdownShare: 0.85 },
});
