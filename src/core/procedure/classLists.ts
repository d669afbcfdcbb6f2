/** The lists that a new procedure has for when something goes wrong, by kind of cockpit. */

import type { Aircraft } from '../aircraft/aircraft';
import { type CockpitKind, cockpitOf } from './cockpit';
import type { AbnormalList, Phase, Step } from './procedure';

type Leads = 'end' | 'return' | 'recovery' | 'ramp';

interface ListSpec {
  readonly group: NonNullable<AbnormalList['group']>;
  readonly phases: readonly Phase[];
  readonly leads: Leads;
}

const ALOFT: readonly Phase[] = ['climb', 'recovery'];
const GROUND: readonly Phase[] = ['ramp', 'taxi', 'line-up', 'after'];

const LISTS = {
  'engine-low': { group: 'emergency', phases: ['climb'], leads: 'end' },
  'engine-out': { group: 'emergency', phases: ['climb'], leads: 'recovery' },
  'engine-high': { group: 'emergency', phases: ALOFT, leads: 'return' },
  'fire-ground': { group: 'emergency', phases: GROUND, leads: 'end' },
  'fire-flight': { group: 'emergency', phases: ALOFT, leads: 'recovery' },
  'one-engine-landing': { group: 'emergency', phases: ['recovery'], leads: 'return' },
  smoke: { group: 'emergency', phases: ALOFT, leads: 'recovery' },
  'another-try': { group: 'malfunction', phases: ['after'], leads: 'ramp' },
  'gear-unsafe': { group: 'malfunction', phases: ALOFT, leads: 'return' },
  generator: { group: 'malfunction', phases: ALOFT, leads: 'return' },
  'go-around': { group: 'go-around', phases: ['recovery'], leads: 'recovery' },
} as const satisfies Record<string, ListSpec>;

type ListName = keyof typeof LISTS;

const SINGLE = [
  'engine-low',
  'engine-high',
  'fire-ground',
  'fire-flight',
  'smoke',
  'another-try',
  'gear-unsafe',
  'generator',
  'go-around',
] as const;

const AFTER_ENGINES = [
  'one-engine-landing',
  'fire-ground',
  'fire-flight',
  'smoke',
  'another-try',
  'gear-unsafe',
  'generator',
  'go-around',
] as const;

/** The lists of a kind, in the order they are offered. */
const KIND_LISTS = {
  piston: SINGLE,
  'piston-twin': ['engine-out', ...AFTER_ENGINES],
  turboprop: SINGLE,
  jet: SINGLE,
  'twin-jet': ['engine-out', 'engine-high', ...AFTER_ENGINES],
} as const satisfies Readonly<Record<CockpitKind, readonly ListName[]>>;

/** What a list says: its title, then the item and the response of each step. */
export interface ListWords {
  readonly title: string;
  readonly steps: readonly (readonly [item: string, response: string])[];
}

/** The words of every list of every kind. */
export type KindWords = {
  readonly [K in CockpitKind]: Readonly<Record<(typeof KIND_LISTS)[K][number], ListWords>>;
};

/** Steps that want the key held, by their place: shutting down the wrong engine kills. */
const CRITICAL: Readonly<Partial<Record<ListName, readonly number[]>>> = {
  'engine-out': [3],
  'another-try': [0],
};

const END_OF: Readonly<Record<Leads, AbnormalList['then']>> = {
  end: 'end',
  return: 'return',
  recovery: { phase: 'recovery', reopen: ['recovery'] },
  ramp: { phase: 'ramp', reopen: ['ramp', 'taxi', 'line-up', 'roll', 'after'] },
};

/** The lists for an aircraft; none for a gear that stays down. */
export function classLists(
  aircraft: Parameters<typeof cockpitOf>[0] & Pick<Aircraft, 'limits'>,
  words: KindWords,
): readonly AbnormalList[] {
  const kind = cockpitOf(aircraft);
  const ofKind: Readonly<Partial<Record<ListName, ListWords>>> = words[kind];
  return KIND_LISTS[kind]
    .filter((name) => name !== 'gear-unsafe' || aircraft.limits.gearKt !== undefined)
    .flatMap((name): readonly AbnormalList[] => {
      const said = ofKind[name];
      if (said === undefined) return [];
      const { group, phases, leads }: ListSpec = LISTS[name];
      return [
        {
          id: name,
          title: said.title,
          group,
          phases: [...phases],
          steps: said.steps.map(
            ([item, response], place): Step => ({
              id: `${name}-${place + 1}`,
              kind: 'do',
              item,
              response,
              ...(CRITICAL[name]?.includes(place) ? { critical: true } : {}),
            }),
          ),
          // biome-ignore lint/suspicious/noThenProperty: where it leads; no promise is made of it.
          then: END_OF[leads],
        },
      ];
    });
}
