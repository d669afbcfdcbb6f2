/** The words for an aircraft without a procedure. */

export const words = {
  title: (aircraft: string) => `No procedure for the ${aircraft}`,
  close: 'Close',
  intro: 'Wind, Taxi and Numbers work without one.',
  write: 'Write one',
  writeHint:
    'Begins with one for this kind of aircraft, which can be flown at once. Change what you like.',
  copy: 'Copy one',
  copyHint: 'Steps for what this aircraft lacks are left out. Read it through before you fly.',
  copyOf: (name: string) => `Copy ${name}`,
  without: 'Fly without',
  withoutHint: 'Steps says so, and offers to write one whenever you like.',
  copied: (aircraft: string, name: string) => `${aircraft}, after ${name}`,
  making: 'One moment.',
  failed: 'That did not work. Try again.',
} as const;
