/** The words of Log. */

import type { Moment } from '../../core';

export const words = {
  place: 'Log',
  empty: 'No sortie yet. The first step you tick begins one, and it stands here as it goes.',
  now: 'now',
  sortie: (field: string, date: string) => `${field}, ${date}`,
  noField: 'no field',
  moments: {
    'off chocks': 'Off chocks',
    'brakes released': 'Brakes released',
    stopping: 'Stopping',
    airborne: 'Airborne',
    landed: 'Landed',
    'on chocks': 'On chocks',
  } satisfies Record<Moment, string>,
  ticked: (done: number) => `${done} ${done === 1 ? 'step' : 'steps'} done`,
  held: (held: number) => `${held} held back`,
  cannot: (count: number) => `${count} could not be done`,
  using: (end: string) => `Runway ${end}`,
  sealed: (moment: string) => `Figures as they were. ${moment}`,
  ended: 'Sortie ended',
  figures: {
    runway: 'Runway',
    wind: 'Wind',
    headwindKt: 'Headwind',
    crosswindWorstKt: 'Crosswind at worst',
    tailwindWorstKt: 'Tailwind at worst',
    variationDeg: 'Variation',
    rotateKt: 'Rotate',
    liftOffKt: 'Lift-off',
    approachKt: 'Approach',
  } as Record<string, string>,
} as const;
