/**
 * The integrator: how long and how far from one airspeed to another.
 *
 * Along a runway every force depends on airspeed alone, so it steps in speed, not in time:
 * t = ∫ dV / a and s = ∫ (V − headwind) / a dV, each by Simpson's rule, which is fourth-order
 * Runge-Kutta for these integrals. Halving the step moves a run of up to 2 km by less than a
 * thousandth. A long run takes as many steps as a short one, and every aircraft's ends.
 *
 * A stop is the same from rest upwards, with deceleration for acceleration.
 */

export interface RollMoment {
  /** True airspeed, m/s. */
  readonly airMps: number;
  /** Since the roll began: s, and m over the ground. */
  readonly s: number;
  readonly m: number;
  /** What was gained: height, m, or energy in the brakes, J. */
  readonly gained: number;
}

/** What moves the aircraft, by true airspeed in m/s. */
export interface Motion {
  /** Acceleration, or deceleration in a stop, m/s². */
  readonly mps2: (airMps: number) => number;
  /** Gained per second, if anything is counted. */
  readonly gainPerS?: (airMps: number) => number;
}

/** Moments in order of rising airspeed, and the headwind met. */
export interface Roll {
  readonly moments: readonly [RollMoment, ...RollMoment[]];
  readonly headwindMps: number;
}

/** Step, m/s. */
export const STEP_MPS = 1.5;

/** Below this, m/s², it no longer accelerates: 80 m/s would take 64 km. */
const LEAST_MPS2 = 0.05;

/** A roll at rest on the ground: its airspeed is the headwind. */
export const atRest = (headwindMps: number): Roll => ({
  moments: [{ airMps: headwindMps, s: 0, m: 0, gained: 0 }],
  headwindMps,
});

export const endOf = ({ moments }: Roll): RollMoment => moments[moments.length - 1] ?? moments[0];

/** Whether the roll reached an airspeed. */
export const reaches = (roll: Roll, airMps: number): boolean => endOf(roll).airMps >= airMps - 1e-9;

/** Continues a roll to an airspeed, or as far as it accelerates. */
export function speedUp(roll: Roll, motion: Motion, toMps: number, stepMps = STEP_MPS): Roll {
  const from = endOf(roll);
  const steps = Math.ceil((toMps - from.airMps) / stepMps - 1e-9);
  if (!(steps > 0)) return roll;
  const moments: [RollMoment, ...RollMoment[]] = [...roll.moments];
  const width = (toMps - from.airMps) / steps;
  let before = from;
  const gain = motion.gainPerS ?? none;
  let first = 1 / motion.mps2(from.airMps);
  let firstGain = gain(from.airMps);
  for (let step = 1; step <= steps; step++) {
    const airMps = from.airMps + step * width;
    const middleMps = airMps - width / 2;
    // Seconds per further metre a second.
    const middle = 1 / motion.mps2(middleMps);
    const last = 1 / motion.mps2(airMps);
    if (!(isGaining(first) && isGaining(middle) && isGaining(last))) break;
    const middleGain = gain(middleMps);
    const lastGain = gain(airMps);
    const groundMps = before.airMps - roll.headwindMps;
    before = {
      airMps,
      s: before.s + simpson(width, first, middle, last),
      m:
        before.m +
        simpson(
          width,
          first * groundMps,
          middle * (groundMps + width / 2),
          last * (groundMps + width),
        ),
      gained:
        before.gained + simpson(width, first * firstGain, middle * middleGain, last * lastGain),
    };
    moments.push(before);
    first = last;
    firstGain = lastGain;
  }
  return { moments, headwindMps: roll.headwindMps };
}

const none = () => 0;

const isGaining = (sPerMps: number): boolean => sPerMps > 0 && sPerMps <= 1 / LEAST_MPS2;

/** Simpson's rule over one step. */
const simpson = (width: number, first: number, middle: number, last: number): number =>
  (width / 6) * (first + 4 * middle + last);

/**
 * The moment at an airspeed, clamped to the roll. Between two moments the acceleration is constant:
 * the square of the ground speed grows linearly with distance.
 */
export function rollMomentAt(roll: Roll, airMps: number): RollMoment {
  const [before, after] = around(roll, ({ airMps: at }) => at, airMps);
  const width = after.airMps - before.airMps;
  if (width === 0) return before;
  const at = Math.min(Math.max(airMps, before.airMps), after.airMps);
  const shareOfWay = squareShare(
    before.airMps - roll.headwindMps,
    at - roll.headwindMps,
    after.airMps - roll.headwindMps,
  );
  return between(before, after, at, (at - before.airMps) / width, shareOfWay);
}

/** The moment at a distance, as {@link rollMomentAt}. */
export function momentAtM(roll: Roll, m: number): RollMoment {
  const [before, after] = around(roll, ({ m: at }) => at, m);
  const length = after.m - before.m;
  if (length === 0) return before;
  const share = Math.min(Math.max((m - before.m) / length, 0), 1);
  const first = before.airMps - roll.headwindMps;
  const last = after.airMps - roll.headwindMps;
  const now = Math.sqrt(first * first + share * (last * last - first * first));
  const shareOfSpeed = (now - first) / (last - first);
  return between(before, after, now + roll.headwindMps, shareOfSpeed, share);
}

/** The roll cut off at a time; whole if it ends earlier. */
export function untilS(roll: Roll, s: number): Roll {
  if (endOf(roll).s <= s) return roll;
  const [before, after] = around(roll, ({ s: at }) => at, s);
  const share = (s - before.s) / (after.s - before.s);
  const cut = rollMomentAt(roll, before.airMps + share * (after.airMps - before.airMps));
  const [first, ...others] = roll.moments;
  return {
    moments: [first, ...others.filter((moment) => moment.s < s), cut],
    headwindMps: roll.headwindMps,
  };
}

const squareShare = (first: number, now: number, last: number): number =>
  (now * now - first * first) / (last * last - first * first);

const between = (
  before: RollMoment,
  after: RollMoment,
  airMps: number,
  shareOfTime: number,
  shareOfWay: number,
): RollMoment => ({
  airMps,
  s: before.s + shareOfTime * (after.s - before.s),
  m: before.m + shareOfWay * (after.m - before.m),
  gained: before.gained + shareOfWay * (after.gained - before.gained),
});

/** The two moments around a value; the first or last two if it lies outside. */
function around(
  { moments }: Roll,
  of: (moment: RollMoment) => number,
  value: number,
): readonly [RollMoment, RollMoment] {
  let low = 0;
  let high = moments.length - 1;
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    if (of(moments[middle] ?? moments[0]) <= value) low = middle;
    else high = middle;
  }
  return [moments[low] ?? moments[0], moments[high] ?? moments[0]];
}
