/** What may move while physics is fitted to a handbook: lift, drag, friction and, if asked, thrust. */

import type { BookFigure } from '../bookFigures';
import type { Performance } from '../performance';

/** A quantity of the physics that may be multiplied. */
export interface Term {
  /** Its path in the document. */
  readonly name: string;
  /** The figures it has a say in: it moves only for these. */
  readonly of: readonly BookFigure[];
  /** The most it is multiplied or divided by. */
  readonly most: number;
  /** What it is, 0 or undefined if the profile lacks it. */
  readonly read: (performance: Performance) => number | undefined;
  readonly written: (performance: Performance, value: number) => Performance;
}

type Wing = Performance['wing'];

const withWing = (performance: Performance, wing: Partial<Wing>): Performance => ({
  ...performance,
  wing: { ...performance.wing, ...wing },
});

/** With another drag at lift-off. */
export const withDragRotated = (performance: Performance, cd: number): Performance =>
  withWing(performance, { rotated: { ...performance.wing.rotated, cd } });

const TAKEOFF = ['runM', 'to50ftM'] as const;
const LANDING = ['landingRunM', 'landingM'] as const;

/** What always may move. Thrust may not: it is known, or it would explain everything. */
export const TERMS: readonly Term[] = [
  {
    name: 'wing.ground.cd',
    of: TAKEOFF,
    most: 2,
    read: ({ wing }) => wing.ground.cd,
    written: (p, cd) => withWing(p, { ground: { ...p.wing.ground, cd } }),
  },
  {
    name: 'wing.rotated.cd',
    of: TAKEOFF,
    most: 2,
    read: ({ wing }) => wing.rotated.cd,
    written: (p, cd) => withDragRotated(p, cd),
  },
  {
    name: 'wing.ground.cl',
    of: TAKEOFF,
    most: 1.5,
    read: ({ wing }) => wing.ground.cl,
    written: (p, cl) => withWing(p, { ground: { ...p.wing.ground, cl } }),
  },
  {
    name: 'rolling.dry',
    of: TAKEOFF,
    most: 2,
    read: ({ rolling }) => rolling.dry,
    written: (p, dry) => ({ ...p, rolling: { ...p.rolling, dry } }),
  },
  {
    name: 'wing.cleanCd',
    of: ['climbFtMin'],
    most: 2,
    read: ({ wing }) => wing.cleanCd,
    written: (p, cleanCd) => withWing(p, { cleanCd }),
  },
  {
    name: 'wing.induced',
    of: ['climbFtMin'],
    most: 2,
    read: ({ wing }) => wing.induced,
    written: (p, induced) => withWing(p, { induced }),
  },
  {
    name: 'wing.flapsCd',
    of: ['to50ftM'],
    most: 3,
    read: ({ wing }) => wing.flapsCd,
    written: (p, flapsCd) => withWing(p, { flapsCd }),
  },
  {
    name: 'brakes.friction.dry',
    of: LANDING,
    most: 2,
    read: ({ brakes }) => brakes.friction.dry,
    written: (p, dry) => ({
      ...p,
      brakes: { ...p.brakes, friction: { ...p.brakes.friction, dry } },
    }),
  },
  {
    name: 'wing.rollout.cd',
    of: LANDING,
    most: 2,
    read: ({ wing }) => wing.rollout.cd,
    written: (p, cd) => withWing(p, { rollout: { ...p.wing.rollout, cd } }),
  },
];

/** Thrust as a whole, by what it is at rest. */
const THRUST: Term = {
  name: 'thrust',
  of: ['runM', 'to50ftM', 'climbFtMin'],
  most: 1.8,
  read: ({ thrust }) => staticN(thrust),
  written: (p, value) => ({ ...p, thrust: timesThrust(p.thrust, value / staticN(p.thrust)) }),
};

/** The path to the threshold: its bounds are those of documents. */
const PATH: Term = {
  name: 'landing.pathDeg',
  of: ['landingM'],
  most: 2.5,
  read: ({ landing }) => landing.pathDeg,
  written: (p, pathDeg) => ({
    ...p,
    landing: { ...p.landing, pathDeg: Math.min(Math.max(pathDeg, 2), 7) },
  }),
};

/** What moves too where it is only guessed: by name. */
export const GUESSES = { thrust: THRUST, path: PATH } as const satisfies Record<string, Term>;

export type Guess = keyof typeof GUESSES;

type Thrust = Performance['thrust'];

const staticN = (thrust: Thrust): number =>
  (thrust.kind === 'propeller' ? thrust.fullN : thrust.dryN)[0]?.[1] ?? 0;

/** Every thrust but idle, multiplied. */
function timesThrust(thrust: Thrust, factor: number): Thrust {
  const times = (curve: readonly [number, number][]) =>
    curve.map(([kt, newtons]): [number, number] => [kt, Math.round(newtons * factor)]);
  if (thrust.kind === 'propeller') return { ...thrust, fullN: times(thrust.fullN) };
  const { dryN, reheatN } = thrust;
  return {
    ...thrust,
    dryN: times(dryN),
    ...(reheatN === undefined ? {} : { reheatN: times(reheatN) }),
  };
}
