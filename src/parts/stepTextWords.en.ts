/** The words for what a step is and when it applies, the same wherever they stand. */

import type { ConditionFact, EnteredAt, LiveName, Step } from '../core';

const kinds: Readonly<Record<Step['kind'], string>> = {
  do: 'Do',
  check: 'Check',
  wait: 'Wait',
  say: 'Say',
  gate: 'Gate',
  note: 'Note',
  barrier: 'Runway check',
};

const facts: Readonly<Record<ConditionFact, readonly [yes: string, no: string]>> = {
  night: ['night', 'not night'],
  lights: ['the sun is down', 'the sun is up'],
  wet: ['the surface is not dry', 'the surface is dry'],
  controlled: ['the field is controlled', 'there is no controller'],
  lightWind: ['the wind is light', 'the wind is 5 kt or more'],
  crossesRunway: ['the way crosses a runway', 'the way crosses no runway'],
  supersonic: ['supersonic flight is planned', 'no supersonic flight is planned'],
  stores: ['stores are carried', 'no stores are carried'],
  passengers: ['passengers are aboard', 'no passengers are aboard'],
  cable: ['a cable lies across the runway', 'no cable lies across the runway'],
};

/** What is put in for a live number, whatever its value. */
const live: Readonly<Record<LiveName, string>> = {
  runway: 'Selected runway',
  runwayMagnetic: 'Heading of it, magnetic',
  wind: 'Wind',
  windKt: 'Wind speed, or its gust',
  headwindKt: 'Headwind',
  crosswindKt: 'Crosswind',
  field: 'Field',
  callsign: 'Callsign',
  ground: 'Ground station',
  tower: 'Tower station',
  crossing: 'Runway to cross',
  crossingAt: 'Holding point before it',
  options: 'Equipment',
  qnh: 'QNH',
  temperatureC: 'Temperature',
  densityAltitudeFt: 'Density altitude',
  massKg: 'Take-off mass',
  landingMassKg: 'Landing mass',
  fuelKg: 'Fuel',
  taxiKt: 'Taxi speed',
  turnKt: 'Speed in turns',
  breakaway: 'Power to get rolling',
  keepRolling: 'Power to keep rolling',
  markM: 'Check mark',
  markKt: 'Speed at the mark',
  markLeastKt: 'Least speed at the mark',
  lastStopKt: 'Max abort speed',
  goOnKt: 'Min go speed',
  rotateKt: 'Rotate',
  liftOffKt: 'Lift-off',
  runM: 'Take-off run',
  gearKt: 'Gear up by',
  flapsKt: 'Flaps up by',
  reheatOffKt: 'Reheat off by',
  climbKt: 'Climb speed',
  climbPitch: 'Climb pitch',
  referenceKt: 'Reference speed',
  approachKt: 'Approach speed',
  landingM: 'Landing distance',
};

/** The key that opens where a live number is entered. */
const supply: Readonly<Record<EnteredAt, string>> = {
  wind: 'Open Wind',
  keypad: 'Enter the wind',
  sortie: 'Open Sortie',
  load: 'Open Load',
  numbers: 'Open Numbers',
};

export const stepWords = {
  kinds,
  facts,
  live,
  supply,
  notKnown: (name: string) => `Not known: ${name}`,
  putIn: (name: string) => `[${name}]`,
  critical: 'critical',
  when: (condition: string) => `if ${condition}`,
  expect: (time: string) => `about ${time}`,
  wind: (kt: string) => [`the wind is above ${kt} kt`, `the wind is not above ${kt} kt`],
  option: (name: string) => [`${name} is fitted`, `${name} is not fitted`],
  and: ' and ',
  or: ' or ',
  not: (condition: string) => `not (${condition})`,
} as const;
