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
  kg: (kg: string) => `${kg}${NO_BREAK_SPACE}kg`,
  metres: (m: string) => `${m}${NO_BREAK_SPACE}m`,

  takeoff: 'Take-off',
  landing: 'Landing',
  zeroFuel: 'Without fuel',
  of: (limit: string) => `of ${limit}${NO_BREAK_SPACE}kg`,
  bar: (name: string, kg: string, limit: string) => `${name}: ${kg} kg, limit ${limit} kg`,
  because: {
    'no-fuel': 'no fuel',
    'not-in-aircraft': 'not given',
  } as Record<string, string>,

  within: 'Within the limits given: masses, tanks, stations.',
  withinEnvelope: 'Within the limits given: masses, tanks, stations, envelope.',
  takeoffOver: (kg: string) => `The take-off mass is ${kg}${NO_BREAK_SPACE}kg over its limit.`,
  landingOver: (kg: string) => `The landing mass is ${kg}${NO_BREAK_SPACE}kg over its limit.`,
  fuelOver: (kg: string) => `The fuel is ${kg}${NO_BREAK_SPACE}kg more than the tanks hold.`,
  fuelShort: (kg: string) => `The fuel is ${kg}${NO_BREAK_SPACE}kg less than it is to land with.`,
  noFuel: 'There is no fuel aboard, so there is no mass to take off with.',
  stationOver: (station: string, kg: string) =>
    `${station}: ${kg}${NO_BREAK_SPACE}kg more than may be there.`,
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
  fuelKg: 'Fuel, kg',
  tanks: (max: string, landing: string) =>
    `The tanks hold ${max}${NO_BREAK_SPACE}kg; ${landing}${NO_BREAK_SPACE}kg are to be left at landing.`,
  litres: (litres: string) => `${litres}${NO_BREAK_SPACE}L`,
  numberBad: 'A mass is a number of kilograms from 0 to 99 999.',
  empty: 'none',
  nothing: 'None',
  nobody: 'None',
  each: (kg: string) => `${kg}${NO_BREAK_SPACE}kg each`,
  upTo: (kg: string) => `up to ${kg}${NO_BREAK_SPACE}kg`,
  choice: (name: string, kg: string) => `${name}, ${kg}`,
  people: 'People',
  peopleBad: 'How many people is a whole number.',
  stationKg: (name: string) => `${name}, kg`,

  envelope: 'Centre of gravity',
  noArms: 'The aircraft’s document gives no arms: the centre of gravity is not worked out.',
  noEnvelope: 'The aircraft’s document gives no envelope to hold it against.',
  aftOfDatum: 'Metres aft of the datum, and kilograms. The line is the fuel burning off.',
  stays: 'Within the envelope from take-off to landing.',
  envelopeLabel: (told: string, takeoff: string, landing: string) =>
    `Envelope. ${told} Take-off: ${takeoff}. Landing: ${landing}.`,
  point: (m: string, kg: string) => `${m} m at ${kg} kg`,

  sheet: 'Adds up',
  emptyAircraft: 'Empty aircraft',
  item: 'Item',
  mass: 'kg',
  arm: 'Arm, m',
} as const;
