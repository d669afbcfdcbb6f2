/** What keeps an aircraft from being saved, as sentences for whoever types it. */

/** A fault's place, by name, and the figures that contradict each other, with their units. */
export interface FaultTold {
  readonly place: string;
  readonly one: string;
  readonly other: string;
}

export const faults: Readonly<Partial<Record<string, (told: FaultTold) => string>>> = {
  'name-missing': () => 'It has no name.',
  'text-missing': ({ place }) => `${place}: it is empty.`,
  'text-too-long': ({ place }) => `${place}: the text is too long.`,
  'text-not-of-kind': ({ place }) => `${place}: it is not written as it must be.`,
  'text-control': ({ place }) => `${place}: it holds a control character.`,
  'text-direction': ({ place }) =>
    `${place}: it holds a character that turns the order of others about.`,
  'text-invisible': ({ place }) => `${place}: it holds nothing that can be seen.`,
  'text-marks': ({ place }) => `${place}: it holds stacked marks.`,
  'number-out-of-range': ({ place }) => `${place}: the number is out of range.`,
  'too-few': ({ place }) => `${place}: something is missing.`,
  'too-many': ({ place }) => `${place}: there are too many.`,
  'out-of-order': ({ place, one, other }) =>
    `${place}: ${one} is less than ${other}, which it must reach.`,
  'limit-grows': ({ place, one, other }) =>
    `${place}: ${one} is more than the ${other} on a better surface.`,
  'gate-above-limit': ({ place, one, other }) => `${place}: ${one} is above the limit of ${other}.`,
  'gate-without-limit': ({ place }) => `${place}: give both this and the gear limit, or neither.`,
  'reheat-without-engine': ({ place }) => `${place}: only reheat needs it, and reheat does.`,
  'arm-missing': ({ place }) => `${place}: the arm is missing.`,
  'envelope-without-arms': () => 'Envelope: it needs the arms of all masses.',
  'envelope-not-simple': () => 'Envelope: its edges cross. Put the corners in order, once round.',
  'beyond-station': ({ place, one, other }) =>
    `${place}: ${one} is more than the ${other} it carries.`,
  'choice-twice': ({ place }) => `${place}: two choices weigh the same.`,
  'not-a-choice': ({ place }) => `${place}: it cannot carry just that much in the usual load.`,
  'preset-not-within': () =>
    'Usual load: it is over a limit or outside the envelope. Put more on the stations, or mend the usual take-off mass.',
  'not-usual': ({ one, other }) =>
    `Usual load: it adds up to ${one}, and the usual mass is ${other}.`,
  'landing-fuel-over': ({ one, other }) =>
    `Fuel to land with: ${one}, and the tanks hold ${other}.`,
  'no-usual-fuel': () =>
    'Usual load: crew and stations leave no mass for fuel. Mend the usual take-off mass or the empty mass.',
  'no-landing-fuel': () =>
    'Usual load: crew and stations leave no mass for fuel at landing. Mend the usual landing mass.',
  'run-not-of-book': ({ one, other }) =>
    `Take-off run: the table makes it ${one}, and ${other} is given. They must agree to 5 %: mend one, or leave the run empty.`,
  'landing-run-not-of-book': ({ one, other }) =>
    `Landing run: the table makes it ${one}, and ${other} is given. They must agree to 5 %: mend one, or leave the run empty.`,
  'rotates-below-control': ({ one, other }) =>
    `Rotate: ${one} is below ${other}, which is 1.05 of the minimum control speed.`,
  'rotates-below-stall': ({ one, other }) =>
    `Rotate: ${one} is below ${other}, which is 1.05 of the stall with take-off flaps.`,
  'stall-above-lift-off': ({ one, other }) =>
    `Lift-off: it would stall at ${one}, and lifts off at ${other}.`,
  'approach-not-of-wing': ({ one, other }) =>
    `Approach speed: the wing gives ${one}, and ${other} is given. Check wing area and masses.`,
};

/** What has no sentence of its own. */
export const otherFault = (place: string): string => `${place}: check this against the handbook.`;

export const places = {
  whole: 'The aircraft',
  physics: 'The physics found from the table',
  crew: 'Crew',
  fuel: 'Fuel',
  emptyArm: 'Empty aircraft',
  envelope: 'Envelope',
  usual: 'Usual load',
  table: 'The table',
} as const;
