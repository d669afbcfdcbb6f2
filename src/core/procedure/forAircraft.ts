/** A first procedure for an aircraft that has none: a short one, or another aircraft's adapted. */

import type { Aircraft } from '../aircraft/aircraft';
import { classLists, type KindWords } from './classLists';
import { type CockpitKind, cockpitOf } from './cockpit';
import { optionsIn } from './condition';
import { type LiveName, liveNamesIn } from './facts';
import { PHASES } from './phases';
import type { Phase, Procedure, Step, StepId } from './procedure';

/** What tells a new procedure from all others. */
export interface Naming {
  readonly code: string;
  readonly name: string;
}

type Equipment = Pick<Aircraft, 'engine' | 'limits' | 'climb' | 'taxi' | 'takeoff' | 'performance'>;

const WITHOUT_PHYSICS: readonly LiveName[] = [
  'markKt',
  'markLeastKt',
  'lastStopKt',
  'goOnKt',
  'referenceKt',
  'landingM',
];

/** The live numbers that an aircraft has on no day, by its document. */
function lacking({ limits, climb, taxi, takeoff, performance }: Equipment): ReadonlySet<string> {
  const isPlain = performance === undefined;
  const lacks: readonly (readonly [LiveName, boolean])[] = [
    ['gearKt', climb.gearUpByKt === undefined && limits.gearKt === undefined],
    ['reheatOffKt', climb.reheatOffKt === undefined],
    ['goOnKt', performance?.oneEngineOut === undefined],
    ['breakaway', taxi.power === undefined],
    ['keepRolling', taxi.power === undefined],
    ['climbPitch', isPlain && climb.pitchDeg === undefined],
    ['runM', isPlain && takeoff.runM === undefined],
    ...WITHOUT_PHYSICS.map((name) => [name, isPlain] as const),
  ];
  return new Set(lacks.flatMap(([name, isLacking]) => (isLacking ? [name] : [])));
}

/** Lists for what only some aircraft have. */
const isListOf = (id: string, { engine, limits }: Equipment): boolean =>
  (id !== 'reheat-fails' || engine === 'jet with reheat') &&
  (id !== 'gear-unsafe' || limits.gearKt !== undefined);

/** Without the note or the call that names what the aircraft lacks; the step stays. */
function trimmed(step: Step, names: (text: string) => boolean): Step {
  const { note, call, ...rest } = step;
  return {
    ...rest,
    ...(note === undefined || names(note) ? {} : { note }),
    ...(call === undefined || names(call) ? {} : { call }),
  };
}

/**
 * A procedure of one aircraft as one for another: without the steps that ask for what that one
 * lacks, such as gates of a gear that stays down, or a brake parachute. Its words stay as they are,
 * so whoever flies it must read it through. `from` is the aircraft it was for; null if unknown.
 */
export function adapted(
  { basedOn: _from, edition: _edition, ...procedure }: Procedure,
  from: (Equipment & Pick<Aircraft, 'code'>) | null,
  to: Equipment & Pick<Aircraft, 'code'>,
  naming: Naming,
): Procedure {
  const lacks = lacking(to);
  const names = (text: string) => liveNamesIn(text).some((name) => lacks.has(name));
  const parachute = from?.performance?.parachute?.option;
  const dropped = parachute === to.performance?.parachute?.option ? undefined : parachute;
  const isHad = ({ gate, item, response, when }: Step) =>
    (gate === undefined || !lacks.has(gate)) &&
    !names(item) &&
    !names(response) &&
    (dropped === undefined || when === undefined || !optionsIn(when).includes(dropped));
  const kept = (steps: readonly Step[]) => steps.filter(isHad).map((step) => trimmed(step, names));
  const phases = procedure.phases.map(({ phase, steps }) => ({ phase, steps: kept(steps) }));
  const there = new Set(phases.flatMap(({ steps }) => steps.map(({ id }) => id)));
  const lists = procedure.lists
    .filter(({ id }) => isListOf(id, to))
    .map((list) => ({
      ...list,
      steps: kept(list.steps).filter(({ needs }) => needs === undefined || there.has(needs)),
    }))
    .filter(({ steps }) => steps.length > 0);
  const { options, ...rest } = procedure;
  const fitted = options?.filter(({ id }) => id !== dropped) ?? [];
  return {
    ...rest,
    ...naming,
    aircraft: to.code,
    ...(fitted.length === 0 ? {} : { options: fitted }),
    phases,
    lists,
  };
}

/** A step's words: its item and its response. */
type StepWords = readonly [item: string, response: string];

/** The words of a new procedure; those of the stop come from the aircraft. */
export interface StarterWords {
  readonly about: string;
  readonly rejected: string;
  /** The item of each thing to do to stop. */
  readonly toStop: string;
  readonly steps: Readonly<Record<StarterStep, StepWords>>;
  /** What is said on the radio. */
  readonly calls: Readonly<Partial<Record<StarterStep, string>>>;
  readonly lists: KindWords;
}

interface StarterSpec extends Omit<Step, 'id' | 'item' | 'response' | 'call'> {
  /** The cockpits that have it; all if absent. */
  readonly of?: readonly CockpitKind[];
}

const PISTONS: readonly CockpitKind[] = ['piston', 'piston-twin'];
const PROPELLERS: readonly CockpitKind[] = [...PISTONS, 'turboprop'];
const JETS: readonly CockpitKind[] = ['jet', 'twin-jet'];
const SINGLES: readonly CockpitKind[] = ['piston', 'turboprop', 'jet'];
const TWINS: readonly CockpitKind[] = ['piston-twin', 'twin-jet'];

const CONTROLLED = { fact: 'controlled' } as const;
const UNCONTROLLED = { not: CONTROLLED } as const;
const CROSSES = { fact: 'crossesRunway' } as const;

const DO = { kind: 'do' } as const;
const CHECK = { kind: 'check' } as const;
const SAY = { kind: 'say' } as const;
const MUST_DO = { kind: 'do', critical: true } as const;
const MUST_CHECK = { kind: 'check', critical: true } as const;

/**
 * The steps of a new procedure, apart from their words. What comes before the runway stands in the
 * order of the demo's: brief, transponder, runway check, and only then "ready".
 */
const STARTER = {
  ramp: {
    'brakes-parked': MUST_DO,
    'controls-free': MUST_CHECK,
    'doors-shut': { ...DO, of: PROPELLERS },
    'canopy-shut': { ...DO, of: JETS },
    fuel: CHECK,
    altimeter: DO,
    'mixture-rich': { ...DO, of: PISTONS },
    'engine-runs': { ...CHECK, of: SINGLES },
    'engines-run': { ...CHECK, of: TWINS },
    'lights-on': { ...DO, when: { fact: 'lights' }, until: 'line-up' },
  },
  taxi: {
    'taxi-call-ground': { ...SAY, when: CONTROLLED, until: 'line-up' },
    'taxi-call-traffic': { ...SAY, when: UNCONTROLLED, until: 'line-up' },
    'brakes-rolling': MUST_CHECK,
    crossing: { ...MUST_CHECK, when: { all: [CROSSES, CONTROLLED] } },
    'crossing-traffic': { ...MUST_CHECK, when: { all: [CROSSES, UNCONTROLLED] } },
    'flaps-take-off': MUST_DO,
    'trim-take-off': MUST_DO,
    magnetos: { ...CHECK, of: PISTONS },
    'carb-heat-cold': { ...CHECK, of: ['piston'] },
    'propeller-fine': { ...DO, of: ['piston-twin', 'turboprop'] },
    'fuel-pump-on': { ...DO, of: PISTONS },
    'speed-brake-in': { ...CHECK, of: JETS },
    'take-off-brief': SAY,
    transponder: DO,
    'before-runway': { kind: 'barrier' },
    'ready-call-tower': { ...SAY, when: CONTROLLED },
    'ready-call-traffic': { ...SAY, when: UNCONTROLLED },
  },
  'line-up': {
    'line-up-heard': { ...MUST_CHECK, when: CONTROLLED },
    'line-up-traffic': { ...MUST_CHECK, when: UNCONTROLLED },
    heading: MUST_CHECK,
    'runway-empty': MUST_CHECK,
    'take-off-heard': { ...MUST_CHECK, when: CONTROLLED },
    'take-off-traffic': { ...MUST_CHECK, when: UNCONTROLLED },
    'power-set': CHECK,
  },
  roll: { 'brakes-off': { ...DO, tiedTo: 'brakes released' } },
  climb: {
    'gear-up': { kind: 'gate', gate: 'gearKt' },
    'flaps-up': { kind: 'gate', gate: 'flapsKt' },
    'reheat-off': { kind: 'gate', gate: 'reheatOffKt' },
    'climb-set': { kind: 'gate', gate: 'climbKt' },
  },
  recovery: {
    'landing-runway': MUST_CHECK,
    'altimeter-home': DO,
    'belts-home': CHECK,
    'mixture-home': { ...DO, of: PISTONS },
    'join-call-tower': { ...SAY, when: CONTROLLED },
    'join-call-traffic': { ...SAY, when: UNCONTROLLED },
    'gear-down': MUST_DO,
    'flaps-land': MUST_DO,
    'approach-speed': CHECK,
  },
  after: {
    'vacated-call': SAY,
    'flaps-in': DO,
    'brakes-parked-home': DO,
    'engine-off': DO,
    'magnetos-off': { ...MUST_DO, of: PISTONS },
  },
} as const satisfies Readonly<Record<Phase, Readonly<Record<string, StarterSpec>>>>;

type StarterStep = { [P in Phase]: keyof (typeof STARTER)[P] }[Phase];

const stepsIn = (phase: Phase) =>
  Object.entries<StarterSpec>(STARTER[phase]) as [StarterStep, StarterSpec][];

/**
 * A procedure that works at once, from parked brakes to parked brakes, for an aircraft's kind of
 * cockpit, with what the aircraft says to do to stop; to be changed by whoever flies it. `language` is
 * that of the words.
 */
export function starter(
  aircraft: Equipment & Pick<Aircraft, 'code' | 'load' | 'madeFrom'>,
  stop: readonly string[],
  { about, rejected, toStop, steps, calls, lists }: StarterWords,
  language: string,
  naming: Naming,
): Procedure {
  const lacks = lacking(aircraft);
  const cockpit = cockpitOf(aircraft);
  const none: ReadonlySet<StepId> = new Set([
    ...(aircraft.load === undefined ? ['fuel'] : []),
    ...(lacks.has('gearKt') ? ['gear-down'] : []),
  ]);
  const isHad = (id: StepId, { gate, of }: StarterSpec) =>
    !none.has(id) &&
    (gate === undefined || !lacks.has(gate)) &&
    (of === undefined || of.includes(cockpit));
  const phases = PHASES.map((phase) => ({
    phase,
    steps: stepsIn(phase)
      .filter(([id, spec]) => isHad(id, spec))
      .map(([id, { of: _, ...rest }]): Step => {
        const [item, response] = steps[id];
        const { [id]: call } = calls;
        return { id, item, response, ...(call === undefined ? {} : { call }), ...rest };
      }),
  }));
  return {
    lapstrip: 'procedure',
    version: 1,
    ...naming,
    language,
    aircraft: aircraft.code,
    about,
    phases,
    lists: [
      {
        id: 'rejected-takeoff',
        title: rejected,
        group: 'emergency',
        phases: ['roll'],
        steps: stop.map((response, place) => ({
          id: `stop-${place + 1}`,
          kind: 'do',
          item: toStop,
          response,
        })),
        // biome-ignore lint/suspicious/noThenProperty: where it leads; no promise is made of it.
        then: { phase: 'after', reopen: [] },
      },
      ...classLists(aircraft, lists),
    ],
  };
}
