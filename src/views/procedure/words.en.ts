/** The words for an aircraft without a procedure, and for the short one it can begin with. */

import type { StarterWords } from '../../core';

/** A short procedure, in the words of any panel. */
const starter: StarterWords = {
  about: 'A short procedure to begin with. Put your own panel’s words and steps into it.',
  rejected: 'Rejected take-off',
  toStop: 'Stop',
  steps: {
    'brakes-parked': ['Parking brake', 'parked'],
    'controls-free': ['Controls', 'full travel, free'],
    fuel: ['Fuel', '{fuelKg} kg'],
    altimeter: ['Altimeter', 'set, shows the field'],
    'brakes-rolling': ['Brakes, rolling', 'both bite'],
    'flaps-take-off': ['Flaps', 'take-off'],
    'trim-take-off': ['Trim', 'take-off'],
    'before-runway': ['Runway check', 'nothing outstanding'],
    heading: ['Heading', '{runwayMagnetic}'],
    'runway-empty': ['Runway ahead', '{runway}, empty'],
    'brakes-off': ['Brakes', 'off, heels on the floor'],
    'gear-up': ['Gear', 'up, lights out'],
    'flaps-up': ['Flaps', 'up'],
    'reheat-off': ['Reheat', 'out'],
    'climb-set': ['Climb', '{climbKt} kt'],
    'landing-runway': ['Landing runway', '{runway}, heading {runwayMagnetic}'],
    'altimeter-home': ['Altimeter', 'set for the field'],
    'gear-down': ['Gear', 'down, all green'],
    'flaps-land': ['Flaps', 'landing'],
    'approach-speed': ['Approach', '{approachKt} kt'],
    'flaps-in': ['Flaps', 'up'],
    'brakes-parked-home': ['Parking brake', 'parked'],
    'engine-off': ['Engine', 'off'],
  },
};

export const words = {
  title: (aircraft: string) => `No procedure for the ${aircraft}`,
  close: 'Close',
  intro: 'Wind, Taxi and Numbers work without one.',
  write: 'Write one',
  writeHint: 'Begins with a short one that can be flown at once. Change what you like.',
  copy: 'Copy one',
  copyHint: 'Steps for what this aircraft lacks are left out. Read it through before you fly.',
  copyOf: (name: string) => `Copy ${name}`,
  without: 'Fly without',
  withoutHint: 'Steps says so, and offers to write one whenever you like.',
  named: (aircraft: string) => `${aircraft}, own procedure`,
  copied: (aircraft: string, name: string) => `${aircraft}, after ${name}`,
  making: 'One moment.',
  failed: 'That did not work. Try again.',
  starter,
} as const;
