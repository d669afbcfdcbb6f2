/** The words of Sortie. */

import type { Surface } from '../../core';

export const words = {
  close: 'Close',
  field: 'Field',
  aircraft: 'Aircraft',
  procedure: 'Procedure',
  inLanguage: (name: string, language: string) => `${name} (${language})`,
  planned: 'Equipment',
  supersonic: 'Supersonic',
  load: 'Load',
  loaded: (mass: string) => `Takes off at ${mass}.`,
  noMass: 'There is no fuel aboard.',
  loadOver: 'The load is not within the limits given.',
  openLoad: 'Load sheet',
  callsign: 'Callsign',
  callsignHint: 'as you say it',
  surface: 'Runway surface',
  surfaces: { dry: 'Dry', wet: 'Wet', contaminated: 'Contaminated' } satisfies Record<
    Surface,
    string
  >,
  clock: 'Clock, UTC',
  date: 'Date',
  time: 'Time',
  setClock: 'Set',
  now: 'Now',
  pause: 'Pause',
  run: 'Run',
  clockBad: 'Write the time as 1850 and the date as a day from 1900 to 2099.',
  limits: 'Your own limits',
  limitsHint: 'The smaller of these and the aircraft’s limits counts.',
  crosswind: 'Crosswind, kt',
  tailwind: 'Tailwind, kt',
  wetCrosswind: 'Crosswind when not dry, kt',
  asDry: 'as when dry',
  gustSpread: 'Gust above the wind, kt',
  anyGust: 'any',
  preference: 'Preferred runways',
  preferenceHint: (ends: string) =>
    `The field prefers ${ends} to spare its neighbours the noise: while it is dry and clear, with no more than 15 kt of crosswind and 5 kt of tailwind, gusts included (ICAO Doc 8168).`,
  preferences: { wind: 'Wind decides', follow: 'Prefer them' },
  limitBad: 'A limit is a number from 0 to 99.',
  aircraftLimit: (kt: string) => `aircraft: ${kt}`,
  north: 'North of a typed wind',
  norths: { true: 'True', magnetic: 'Magnetic' },
  northHint:
    'A tower or an ATIS speaks magnetic; a written report is true, and is always taken so.',
  variation: 'Variation, ° east, west negative',
  variationHint: (model: string) => `from the model: ${model}`,
  variationUnknown: 'no model for this date',
  variationBad: 'Variation is a number from −180 to 180.',
  end: 'End the sortie',
  endHint:
    'Seals the figures into the log and begins the next with the same field, aircraft and limits.',
  clear: 'Leave it to the aircraft',
} as const;
