/**
 * From lift-off over an obstacle, and from an obstacle to touch-down: an arc and a straight line.
 * Anderson, Aircraft Performance and Design, 6.7.2, 6.8.1 and 6.8.2.
 */

import { GRAVITY } from '../units';
import { trueMps } from './aerodynamics';
import type { RollConditions } from './conditions';
import { type Power, spareAloftN } from './forces';
import { atRest, endOf, speedUp } from './roll';
import { zeroBetween } from './solve';
import type { TakeoffSpeeds } from './takeoffAnswer';

/** Load factor of the flare. Anderson, 6.8.2. */
const FLARE_LOAD = 1.2;

/** Share of the greatest lift used to pull up. Anderson, 6.7.2. */
const PULL_UP_SHARE = 0.9;

/** The load factor at 1.15 of the stall, 0.9 × 1.15², and no more. Anderson, 6.7.2. */
const MOST_PULL_UP = 1.19;

/** With less to spare it first accelerates level. */
const LEAST_PULL_UP = 1.05;

/** Longer than any runway, m: beyond this it counts as not climbing. */
const LONGEST_M = 10_000;

/** From lift-off to a height, and the speed there. */
export interface AtHeight {
  /** True airspeed. */
  readonly airMps: number;
  /** Since lift-off, s and m over the ground. */
  readonly s: number;
  readonly m: number;
}

/** A moment in the air: height and distance through the air since lift-off, m. */
interface Flown {
  readonly airMps: number;
  /** Of the path, upwards, radians. */
  readonly angle: number;
  readonly heightM: number;
  readonly s: number;
  readonly airM: number;
}

/** What flies after lift-off, and how. */
interface AirSegment {
  readonly conditions: RollConditions;
  readonly speeds: TakeoffSpeeds;
  readonly power: Power;
}

/** The same, with what is computed once. */
interface Prepared {
  readonly massKg: number;
  readonly liftOffMps: number;
  readonly stallMps: number;
  /** Thrust less drag, N, at a true airspeed and load factor. */
  readonly spareN: (airMps: number, loadFactor: number) => number;
}

/**
 * From lift-off to a height, gear and flaps as for take-off: an arc, then a climb as steep as still
 * gives the safety speed at the height. All forces are summed along the way, so that thrust less
 * drag pays for height and speed: Δ(W h + ½ m V²) = ∫ (T − D) ds. If the arc reaches the height, it
 * is faster there than it needs to be. Null if no such climb reaches it within 10 km.
 */
export function flyToHeight(
  { conditions, speeds, power }: AirSegment,
  heightM: number,
): AtHeight | null {
  const { densityRatio, headwindMps, massKg } = conditions;
  const segment: Prepared = {
    massKg,
    liftOffMps: trueMps(speeds.liftOffKt, densityRatio),
    stallMps: trueMps(speeds.stallKt, densityRatio),
    spareN: spareAloftN(conditions, power, { gear: true, flaps: true }),
  };
  const begun = fastEnoughToPull(segment);
  if (begun === null) return null;
  const safetyMps = trueMps(speeds.safetyKt, densityRatio);
  const arc = pulledUp(segment, begun, heightM);
  const answer = ({ airMps, s, airM }: Flown): AtHeight | null =>
    airM <= LONGEST_M ? { airMps, s, m: Math.max(airM - headwindMps * s, 0) } : null;
  if (arc.top !== null && arc.top.airMps >= safetyMps) return answer(arc.top);

  // The longer the pull-up, the steeper the climb and the slower at the height.
  const climbAfter = (s: number) => climbed(segment, arc.after(s), heightM);
  const short = (s: number) => climbAfter(s).airMps - safetyMps;
  const turn = turnPerS(pullUp(segment, begun.airMps), 0, begun.airMps);
  const leastS = Math.min(Math.atan(heightM / LONGEST_M) / turn, arc.mostS);
  if (short(leastS) < 0) return null;
  return answer(climbAfter(zeroBetween(short, leastS, arc.mostS, NEAR_S)));
}

/** Precision of the pull-up's end, s. */
const NEAR_S = 1e-4;

/** Turn rate of a path upwards: dγ/dt = g (n − cos γ) / V. */
const turnPerS = (loadFactor: number, angle: number, airMps: number): number =>
  (GRAVITY * (loadFactor - Math.cos(angle))) / airMps;

/** Load factor the wing gives for the pull-up at an airspeed. */
function pullUp({ stallMps }: Prepared, airMps: number): number {
  const most = PULL_UP_SHARE * (airMps / stallMps) ** 2;
  return Math.min(Math.max(most, LEAST_PULL_UP), MOST_PULL_UP);
}

/** Where the pull-up begins: at lift-off, or once level flight is fast enough; null if never. */
function fastEnoughToPull({ massKg, liftOffMps, stallMps, spareN }: Prepared): Flown | null {
  const pullMps = stallMps * Math.sqrt(LEAST_PULL_UP / PULL_UP_SHARE);
  // A roll takes its first airspeed for a standstill, and counts metres from there.
  const level = { mps2: (airMps: number) => spareN(airMps, 1) / massKg };
  const { airMps, s, m } = endOf(speedUp(atRest(liftOffMps), level, pullMps));
  if (airMps < pullMps - 1e-9) return null;
  return { airMps, angle: 0, heightM: 0, s, airM: m + liftOffMps * s };
}

/** The arc up to a height. */
interface Arc {
  /** Where it reaches the height; null if it gets too steep or too slow first. */
  readonly top: Flown | null;
  /** Duration up to there, s. */
  readonly mostS: number;
  /** The moment this long after it began, up to `mostS`. */
  readonly after: (s: number) => Flown;
}

/** Time step along the arc, s. */
const ARC_STEP_S = 0.5;
/** No take-off is steeper. */
const STEEPEST = Math.PI / 4;

/** Pulls up from where the speed allows. */
function pulledUp(segment: Prepared, begun: Flown, heightM: number): Arc {
  const moments: [Flown, ...Flown[]] = [begun];
  const after = (s: number): Flown => {
    const whole = Math.min(Math.floor(s / ARC_STEP_S), moments.length - 1);
    return alongArc(segment, moments[whole] ?? begun, s - whole * ARC_STEP_S);
  };
  for (let index = 0; ; index++) {
    const from = moments[index] ?? begun;
    const next = alongArc(segment, from, ARC_STEP_S);
    const s = index * ARC_STEP_S;
    if (next.heightM >= heightM) {
      const over = (x: number) => after(x).heightM - heightM;
      const mostS = zeroBetween(over, s, s + ARC_STEP_S, NEAR_S);
      return { top: after(mostS), mostS, after };
    }
    if (!(next.airMps > 0 && next.angle < STEEPEST)) return { top: null, mostS: s, after };
    moments.push(next);
  }
}

/** One fourth-order Runge-Kutta step along the arc, in time. */
function alongArc(segment: Prepared, from: Flown, width: number): Flown {
  const { massKg, spareN } = segment;
  let [mps2, turn] = [0, 0];
  let [sumMps, sumAngle, sumUp, sumAlong] = [0, 0, 0, 0];
  for (const [back, weight] of STAGES) {
    const airMps = from.airMps + back * width * mps2;
    const angle = from.angle + back * width * turn;
    const loadFactor = pullUp(segment, airMps);
    const sin = Math.sin(angle);
    mps2 = spareN(airMps, loadFactor) / massKg - GRAVITY * sin;
    turn = turnPerS(loadFactor, angle, airMps);
    sumMps += weight * mps2;
    sumAngle += weight * turn;
    sumUp += weight * airMps * sin;
    sumAlong += weight * airMps * Math.cos(angle);
  }
  return {
    airMps: from.airMps + width * sumMps,
    angle: from.angle + width * sumAngle,
    heightM: from.heightM + width * sumUp,
    s: from.s + width,
    airM: from.airM + width * sumAlong,
  };
}

/** How far each stage looks ahead with the last one's rates, and its weight. */
const STAGES = [
  [0, 1 / 6],
  [1 / 2, 1 / 3],
  [1 / 2, 1 / 3],
  [1, 1 / 6],
] as const;

/** Step of the climb, m through the air, and the most steps. */
const CLIMB_STEP_M = 150;
const MOST_CLIMB_STEPS = 40;

/**
 * From the arc to the height at a constant angle: d(½ V²) / dh = (T − D) / (m sin γ) − g, by
 * fourth-order Runge-Kutta. An airspeed of 0 if the speed is lost first.
 */
function climbed({ massKg, spareN }: Prepared, from: Flown, heightM: number): Flown {
  const { angle } = from;
  const [sin, cos] = [Math.sin(angle), Math.cos(angle)];
  const leftM = heightM - from.heightM;
  const steps = Math.min(Math.max(Math.ceil(leftM / sin / CLIMB_STEP_M), 4), MOST_CLIMB_STEPS);
  const width = leftM / steps;
  const mps = (half: number) => Math.sqrt(2 * half);
  const rate = (airMps: number) => spareN(airMps, cos) / (massKg * sin) - GRAVITY;
  let half = from.airMps ** 2 / 2;
  let s = from.s;
  for (let i = 0; i < steps; i++) {
    const firstMps = mps(half);
    const first = rate(firstMps);
    const secondMps = mps(half + (width / 2) * first);
    const second = rate(secondMps);
    const thirdMps = mps(half + (width / 2) * second);
    const third = rate(thirdMps);
    const fourthMps = mps(half + width * third);
    half += (width / 6) * (first + 2 * second + 2 * third + rate(fourthMps));
    // Too slow to fly, or NaN from a negative root.
    if (!(half > from.airMps ** 2 / 8)) return { ...from, airMps: 0 };
    s += (width / 6 / sin) * (1 / firstMps + 2 / secondMps + 2 / thirdMps + 1 / fourthMps);
  }
  return { airMps: mps(half), angle, heightM, s, airM: from.airM + (leftM * cos) / sin };
}

/** Radius of a path in the vertical, m: R = V² / (g (n − 1)). Anderson, eq. 6.98. */
const arcRadiusM = (airMps: number, loadFactor: number): number =>
  (airMps * airMps) / (GRAVITY * (loadFactor - 1));

/** A landing before the wheels touch, in still air, m. */
export interface Descent {
  readonly approachM: number;
  readonly flareM: number;
}

/** From a height down a straight path, its angle in degrees, flared at an airspeed. */
export function descentM(heightM: number, pathDeg: number, flareMps: number): Descent {
  const path = (pathDeg * Math.PI) / 180;
  const radiusM = arcRadiusM(flareMps, FLARE_LOAD);
  const flareHeightM = Math.min(radiusM * (1 - Math.cos(path)), heightM);
  return {
    approachM: (heightM - flareHeightM) / Math.tan(path),
    flareM: radiusM * Math.sin(path),
  };
}

/** Ground distance of a distance through the air into a headwind, m. */
export const overGroundM = (airM: number, airMps: number, headwindMps: number): number =>
  airM * (1 - headwindMps / airMps);
