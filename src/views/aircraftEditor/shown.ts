/** Which part of the aircraft is shown, and which group of figures is unfolded. */

import { signal } from '@preact/signals';
import type { FigureName } from '../../core';

export const PARTS = ['figures', 'table', 'load'] as const;
export type PartName = (typeof PARTS)[number];

/** The groups of figures that are folded until they are wanted. */
export type GroupName = 'masses' | 'wind' | 'limits' | 'climb' | 'taxi' | 'words';

/** The figures that book figures need, always in sight. */
export const BOOK: readonly FigureName[] = [
  'masses.maxTakeoffKg',
  'masses.emptyKg',
  'takeoff.rotateKt',
  'takeoff.liftOffKt',
  'takeoff.runM',
  'climb.speedKt.0',
  'climb.speedKt.1',
  'landing.approachKt',
  'landing.runM',
  'limits.crosswindKt.dry',
];

export const GROUPS: Readonly<Record<Exclude<GroupName, 'words'>, readonly FigureName[]>> = {
  masses: ['masses.usualTakeoffKg', 'masses.maxLandingKg', 'masses.usualLandingKg'],
  wind: [
    'limits.crosswindKt.wet',
    'limits.crosswindKt.contaminated',
    'limits.demonstratedCrosswindKt',
    'limits.tailwindKt.dry',
    'limits.tailwindKt.wet',
    'limits.tailwindKt.contaminated',
  ],
  limits: [
    'limits.flapsKt',
    'limits.gearKt',
    'limits.tyreKt',
    'limits.tyrePsi',
    'limits.brakesCoolMin',
    'limits.leastWidthM',
  ],
  climb: [
    'climb.flapsUpByKt',
    'climb.gearUpByKt',
    'climb.reheatOffKt',
    'climb.pitchDeg.0',
    'climb.pitchDeg.1',
  ],
  taxi: [
    'taxi.maxKt',
    'taxi.turnKt',
    'taxi.power.breakaway',
    'taxi.power.keepRolling.0',
    'taxi.power.keepRolling.1',
  ],
};

export const ENGINE: readonly FigureName[] = [
  'handbook.powerKw',
  'handbook.thrustKn',
  'handbook.reheatKn',
  'handbook.wingAreaM2',
  'handbook.takeoffStallKt',
  'handbook.minimumControlKt',
];

export const partShown = signal<PartName>('figures');

/** The group that is unfolded because something in it wants mending. */
export const groupShown = signal<GroupName | null>(null);

const groupOf = (name: string): GroupName | null =>
  (Object.keys(GROUPS) as (keyof typeof GROUPS)[]).find((group) =>
    GROUPS[group].some((one) => one === name),
  ) ?? null;

/** Goes to the box of a figure. */
export function goToFigure(name: string): void {
  partShown.value = name.startsWith('handbook') ? 'table' : 'figures';
  groupShown.value = groupOf(name);
  // Once it is drawn.
  requestAnimationFrame(() =>
    document.querySelector<HTMLElement>(`[data-figure="${CSS.escape(name)}"] input`)?.focus(),
  );
}
