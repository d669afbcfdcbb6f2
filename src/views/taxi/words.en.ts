/** The words of Taxi. */

export const words = {
  place: 'Taxi',
  to: (end: string) => `To runway ${end}`,
  heading: (deg: string) => `runway heading ${deg} magnetic`,
  headingUnknown: 'heading not known: no magnetic model for this date',
  noEnd: 'No end in use yet',
  chooseEnd: 'Open Wind',
  noAircraft: 'Choose an aircraft in Sortie.',
  doNotExceed: 'Do not exceed',
  inTurns: (kt: string) => `${kt} kt in sharp turns`,
  getRolling: 'Get rolling',
  afterwards: (what: string) => `then ${what}`,
  keepRolling: 'Keep rolling',
  kt: 'kt',
  call: (name: string) => `Call ${name}`,
  noRadio: 'No radio here',
  traffic: 'No controller: say who you are, where, and what you do next.',
  controlled: 'Ask before you move, and read back the runway and every hold.',
  holdings: 'Runways on the way',
  crossing: (runways: string) => `Runways here: ${runways}`,
  hold: 'At any runway: stop at its holding point unless told to cross. Look both ways.',
  holdUncontrolled:
    'At any runway: stop, look both ways, say that you cross, then cross without stopping.',
  layout: (end: string) => `The runways as they lie; runway ${end} is in use.`,
  northLetters: { n: 'N', e: 'E', s: 'S', w: 'W' },
  ask: 'opens where this number comes from',
} as const;
