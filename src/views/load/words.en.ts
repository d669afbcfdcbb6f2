/** The words of the load sheet. */

import type { Exceeded } from '../../core';
import { NO_BREAK_SPACE } from '../../parts/format';

type Outside = Extract<Exceeded, { code: 'outside-envelope' }>;

const when: Record<Outside['at'], string> = {
  'take-off': 'at take-off',
  landing: 'at landing',
  between: 'as the fuel burns',
};

export const words = {
  title: (aircraft: string) => `Load, ${aircraft}`,
  close: 'Close',
  undo: 'Undo',
  none: 'Choose an aircraft in Sortie.',
  noLoading:
    'The aircraft’s document says nothing of its loading: its usual masses are what it is taken to weigh.',
  ask: 'opens where this number comes from',

  takeoff: 'Take-off',
  landing: 'Landing',
  zeroFuel: 'Zero fuel',
  of: (limit: string) => `of ${limit}`,
  bar: (name: string, mass: string, limit: string) => `${name}: ${mass}, limit ${limit}`,
  because: {
    'no-fuel': 'no fuel',
    'not-in-aircraft': 'not given',
  } as Record<string, string>,

  within: 'Within the limits given: masses, tanks, stations.',
  withinEnvelope: 'Within the limits given: masses, tanks, stations, envelope.',
  takeoffOver: (mass: string) => `The take-off mass is ${mass} over its limit.`,
  landingOver: (mass: string) => `The landing mass is ${mass} over its limit.`,
  fuelOver: (mass: string) => `The fuel is ${mass} more than the tanks hold.`,
  fuelShort: (mass: string) => `The fuel is ${mass} less than it is to land with.`,
  noFuel: 'There is no fuel aboard, so there is no mass to take off with.',
  stationOver: (station: string, mass: string) => `${station}: ${mass} more than may be there.`,
  outside: ({ at, side }: Outside) => {
    switch (side) {
      case 'aft':
        return `The centre of gravity is too far aft ${when[at]}.`;
      case 'forward':
        return `The centre of gravity is too far forward ${when[at]}.`;
      case 'heavy':
        return `The mass is above the envelope ${when[at]}.`;
      case 'light':
        return `The mass is below the envelope ${when[at]}.`;
      case null:
        return `The centre of gravity is outside its envelope ${when[at]}.`;
    }
  },

  presets: 'Load as',
  fuel: 'Fuel',
  fuelIn: (unit: string) => `Fuel, ${unit}`,
  bingo: 'Bingo fuel',
  bingoIn: (unit: string) => `Bingo, ${unit}`,
  notSettled: 'not settled',
  bingoHint: 'The fuel at which you turn back.',
  tanks: (max: string, landing: string) =>
    `The tanks hold ${max}; ${landing} are to be left at landing.`,
  litres: (litres: string) => `${litres}${NO_BREAK_SPACE}L`,
  massBad: (least: string, most: string, unit: string) =>
    `A mass is a number from ${least} to ${most} ${unit}.`,
  empty: 'none',
  nothing: 'None',
  nobody: 'None',
  each: (mass: string) => `${mass} each`,
  upTo: (mass: string) => `up to ${mass}`,
  choice: (name: string, mass: string) => `${name}, ${mass}`,
  people: 'People',
  peopleBad: 'How many people is a whole number.',
  stationIn: (name: string, unit: string) => `${name}, ${unit}`,

  envelope: 'Centre of gravity',
  noArms: 'The aircraft’s document gives no arms: the centre of gravity is not worked out.',
  noEnvelope: 'The aircraft’s document gives no envelope to hold it against.',
  aftOfDatum: (unit: string) =>
    `Metres aft of the datum, and ${unit}. The line is the fuel burning off.`,
  stays: 'Within the envelope from take-off to landing.',
  envelopeLabel: (told: string, takeoff: string, landing: string) =>
    `Envelope. ${told} Take-off: ${takeoff}. Landing: ${landing}.`,
  point: (arm: string, mass: string) => `${arm} at ${mass}`,

  sheet: 'Adds up',
  emptyAircraft: 'Empty aircraft',
  item: 'Item',
  arm: 'Arm, m',
} as const;
