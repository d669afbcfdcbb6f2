/** What the figures of an aircraft are called, what they mean, and what happens without them. */

import type { FigureName } from '../../core';

export interface FigureWords {
  readonly name: string;
  readonly about: string;
  /** What happens if it is left empty; absent where its class has a starting value. */
  readonly empty?: string;
}

export const figures: Readonly<Record<FigureName, FigureWords>> = {
  'masses.maxTakeoffKg': { name: 'Maximum take-off mass', about: 'Never exceeded.' },
  'masses.emptyKg': { name: 'Empty mass', about: 'Without crew, fuel or load.' },
  'masses.usualTakeoffKg': {
    name: 'Usual take-off mass',
    about: 'The take-off speeds and the run are for this mass.',
  },
  'masses.maxLandingKg': { name: 'Maximum landing mass', about: 'Never exceeded at landing.' },
  'masses.usualLandingKg': {
    name: 'Usual landing mass',
    about: 'The approach speed and the landing run are for this mass.',
  },
  'limits.crosswindKt.dry': {
    name: 'Crosswind limit',
    about: 'On a dry runway, gusts included.',
  },
  'limits.crosswindKt.wet': { name: 'Crosswind limit, wet', about: 'Gusts included.' },
  'limits.crosswindKt.contaminated': {
    name: 'Crosswind limit, snow or ice',
    about: 'Gusts included.',
  },
  'limits.tailwindKt.dry': { name: 'Tailwind limit', about: 'On a dry runway, gusts included.' },
  'limits.tailwindKt.wet': { name: 'Tailwind limit, wet', about: 'Gusts included.' },
  'limits.tailwindKt.contaminated': {
    name: 'Tailwind limit, snow or ice',
    about: 'Gusts included.',
  },
  'limits.demonstratedCrosswindKt': {
    name: 'Demonstrated crosswind',
    about: 'What the maker has shown, if that is less than the limit.',
    empty: 'Empty: nothing is said between it and the limit.',
  },
  'limits.flapsKt': {
    name: 'Flaps limit speed',
    about: 'Flaps must be up before this.',
  },
  'limits.gearKt': {
    name: 'Gear limit speed',
    about: 'Gear must be up before this.',
    empty: 'Empty: the gear stays down.',
  },
  'limits.tyreKt': {
    name: 'Tyre limit',
    about: 'Greatest speed over the ground on its wheels.',
    empty: 'Empty: not watched.',
  },
  'limits.tyrePsi': {
    name: 'Tyre pressure, main wheels',
    about: 'Says from what speed the tyres may float on water.',
    empty: 'Empty: not said.',
  },
  'limits.brakesCoolMin': {
    name: 'Brake cooling',
    about: 'How long before the next take-off, after a landing or a rejected one.',
    empty: 'Empty: not watched.',
  },
  'limits.leastWidthM': {
    name: 'Least runway width',
    about: 'A narrower one is refused.',
    empty: 'Empty: any width.',
  },
  'takeoff.rotateKt': { name: 'Rotate', about: 'Indicated, at the usual take-off mass.' },
  'takeoff.liftOffKt': { name: 'Lift-off', about: 'Indicated, at the usual take-off mass.' },
  'takeoff.runM': {
    name: 'Take-off run',
    about: 'At the usual mass: sea level, 15 °C, no wind, dry and level.',
    empty: 'Empty: from the table, or no runway counts as long enough.',
  },
  'climb.flapsUpByKt': { name: 'Flaps up by', about: 'Kept clear below the limit.' },
  'climb.gearUpByKt': { name: 'Gear up by', about: 'Kept clear below the limit.' },
  'climb.speedKt.0': { name: 'Climb speed, least', about: 'Indicated.' },
  'climb.speedKt.1': { name: 'Climb speed, greatest', about: 'The same if there is only one.' },
  'climb.reheatOffKt': { name: 'Reheat off at', about: 'In the climb.' },
  'climb.pitchDeg.0': {
    name: 'Nose in the climb, least',
    about: 'Above the horizon.',
    empty: 'Empty: not shown.',
  },
  'climb.pitchDeg.1': {
    name: 'Nose in the climb, greatest',
    about: 'The same if there is only one.',
    empty: 'Empty: not shown.',
  },
  'landing.approachKt': {
    name: 'Approach speed',
    about: 'Indicated, over the threshold, at the usual landing mass.',
  },
  'landing.runM': {
    name: 'Landing run',
    about: 'From touch-down, at the usual landing mass: sea level, no wind, dry and level.',
    empty: 'Empty: from the table, or no runway counts as long enough.',
  },
  'taxi.maxKt': { name: 'Taxi speed, straight', about: 'Not to be exceeded.' },
  'taxi.turnKt': { name: 'Taxi speed in a sharp turn', about: 'Not to be exceeded.' },
  'taxi.power.breakaway': {
    name: 'Power to get rolling',
    about: 'On a level apron.',
    empty: 'Empty: Taxi shows none.',
  },
  'taxi.power.keepRolling.0': {
    name: 'Power to keep rolling, least',
    about: 'At taxi speed.',
    empty: 'Empty: Taxi shows none.',
  },
  'taxi.power.keepRolling.1': {
    name: 'Power to keep rolling, greatest',
    about: 'The same if there is only one.',
    empty: 'Empty: Taxi shows none.',
  },
  'handbook.takeoffStallKt': {
    name: 'Stall with take-off flaps',
    about: 'Indicated, at the usual take-off mass.',
    empty: 'Empty: taken as a tenth below rotation.',
  },
  'handbook.wingAreaM2': {
    name: 'Wing area',
    about: 'Of the whole wing.',
    empty: 'Empty: as is usual for its class and mass.',
  },
  'handbook.powerKw': {
    name: 'Engine power',
    about: 'Take-off power of all engines together.',
    empty: 'Empty: worked out from the table.',
  },
  'handbook.thrustKn': {
    name: 'Thrust',
    about: 'Of all engines together at rest, reheat off.',
    empty: 'Empty: worked out from the table.',
  },
  'handbook.reheatKn': {
    name: 'Thrust with reheat',
    about: 'Of all engines together at rest.',
    empty: 'Empty: worked out from the table.',
  },
  'handbook.minimumControlKt': {
    name: 'Minimum control speed',
    about: 'In the air with one engine out (VMCA).',
    empty: 'Empty: nothing is said for going on with one engine.',
  },
};
