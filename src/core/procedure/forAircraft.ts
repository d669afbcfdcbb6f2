/** A first procedure for an aircraft that has none: a short one, or another aircraft's adapted. */

import type { Aircraft } from '../aircraft/aircraft';
import { optionsIn } from './condition';
import { type LiveName, liveNamesIn } from './facts';
import { PHASES } from './phases';
import type { Phase, Procedure, Step, StepId } from './procedure';

/** What tells a new procedure from all others. */
export interface Naming {
  readonly code: string;
  readonly name: string;
}

type Equipment = Pick<Aircraft, 'engine' | 'limits' | 'climb' | 'performance'>;

const WITHOUT_PHYSICS: readonly LiveName[] = [
  'markKt',
  'markLeastKt',
  'lastStopKt',
  'goOnKt',
  'referenceKt',
  'landingM',
];

/** The live numbers that an aircraft has on no day, by its document. */
function lacking({ limits, climb, performance }: Equipment): ReadonlySet<string> {
  const lacks: readonly (readonly [LiveName, boolean])[] = [
    ['gearKt', climb.gearUpByKt === undefined && limits.gearKt === undefined],
    ['reheatOffKt', climb.reheatOffKt === undefined],
    ['goOnKt', performance?.oneEngineOut === undefined],
    ...WITHOUT_PHYSICS.map((name) => [name, performance === undefined] as const),
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

/** The words of a short procedure; those of the stop come from the aircraft. */
export interface StarterWords {
  readonly about: string;
  readonly rejected: string;
  /** The item of each thing to do to stop. */
  readonly toStop: string;
  readonly steps: Readonly<Record<StarterStep, StepWords>>;
}

type StarterStep =
  | 'brakes-parked'
  | 'controls-free'
  | 'fuel'
  | 'altimeter'
  | 'brakes-rolling'
  | 'flaps-take-off'
  | 'trim-take-off'
  | 'before-runway'
  | 'heading'
  | 'runway-empty'
  | 'brakes-off'
  | 'gear-up'
  | 'flaps-up'
  | 'reheat-off'
  | 'climb-set'
  | 'landing-runway'
  | 'altimeter-home'
  | 'gear-down'
  | 'flaps-land'
  | 'approach-speed'
  | 'flaps-in'
  | 'brakes-parked-home'
  | 'engine-off';

/** The steps of a short procedure, apart from their words. */
const STARTER: Readonly<
  Record<Phase, readonly (readonly [StarterStep, Omit<Step, 'id' | 'item' | 'response'>])[]>
> = {
  ramp: [
    ['brakes-parked', { kind: 'do', critical: true }],
    ['controls-free', { kind: 'check', critical: true }],
    ['fuel', { kind: 'check' }],
    ['altimeter', { kind: 'do' }],
  ],
  taxi: [
    ['brakes-rolling', { kind: 'check', critical: true }],
    ['flaps-take-off', { kind: 'do', critical: true }],
    ['trim-take-off', { kind: 'do', critical: true }],
    ['before-runway', { kind: 'barrier' }],
  ],
  'line-up': [
    ['heading', { kind: 'check', critical: true }],
    ['runway-empty', { kind: 'check', critical: true }],
  ],
  roll: [['brakes-off', { kind: 'do', tiedTo: 'brakes released' }]],
  climb: [
    ['gear-up', { kind: 'gate', gate: 'gearKt' }],
    ['flaps-up', { kind: 'gate', gate: 'flapsKt' }],
    ['reheat-off', { kind: 'gate', gate: 'reheatOffKt' }],
    ['climb-set', { kind: 'gate', gate: 'climbKt' }],
  ],
  recovery: [
    ['landing-runway', { kind: 'check', critical: true }],
    ['altimeter-home', { kind: 'do' }],
    ['gear-down', { kind: 'do', critical: true }],
    ['flaps-land', { kind: 'do', critical: true }],
    ['approach-speed', { kind: 'check' }],
  ],
  after: [
    ['flaps-in', { kind: 'do' }],
    ['brakes-parked-home', { kind: 'do' }],
    ['engine-off', { kind: 'do' }],
  ],
};

/**
 * A short procedure that works at once, from parked brakes to parked brakes, with what the aircraft
 * says to do to stop; to be changed by whoever flies it. `language` is that of the words.
 */
export function starter(
  aircraft: Equipment & Pick<Aircraft, 'code' | 'load'>,
  stop: readonly string[],
  { about, rejected, toStop, steps }: StarterWords,
  language: string,
  naming: Naming,
): Procedure {
  const lacks = lacking(aircraft);
  const none: ReadonlySet<StepId> = new Set([
    ...(aircraft.load === undefined ? ['fuel'] : []),
    ...(lacks.has('gearKt') ? ['gear-down'] : []),
  ]);
  const phases = PHASES.map((phase) => ({
    phase,
    steps: STARTER[phase]
      .filter(([id, { gate }]) => !none.has(id) && (gate === undefined || !lacks.has(gate)))
      .map(([id, rest]): Step => {
        const [item, response] = steps[id];
        return { id, item, response, ...rest };
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
    ],
  };
}
