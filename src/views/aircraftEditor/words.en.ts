/** The words of making and editing an aircraft. */

import type { AircraftClass, BookFigure, Column, TableProblem } from '../../core';

/** The columns of a handbook's table, short enough to head them. */
const columns: Readonly<Record<Column, string>> = {
  massKg: 'Mass',
  pressureAltitudeFt: 'Altitude',
  temperatureC: 'Temp.',
  headwindKt: 'Headwind',
  runM: 'T-O run',
  to50ftM: 'T-O 50 ft',
  climbFtMin: 'Climb',
  landingRunM: 'Ldg run',
  landingM: 'Ldg 50 ft',
};

/** The same within a sentence. */
const figuresSaid: Readonly<Record<BookFigure, string>> = {
  runM: 'take-off run',
  to50ftM: 'take-off distance to 50 ft',
  climbFtMin: 'rate of climb',
  landingRunM: 'landing run',
  landingM: 'landing distance from 50 ft',
};

const classes: Readonly<Record<AircraftClass, string>> = {
  'piston-single': 'Piston single',
  'piston-twin': 'Piston twin',
  turboprop: 'Turboprop',
  jet: 'Jet',
  'jet-with-reheat': 'Jet with reheat',
  'twin-jet': 'Twin jet',
};

export const words = {
  make: 'Make an aircraft',
  edit: (name: string) => `Edit ${name}`,
  close: 'Close',
  loading: 'One moment.',
  failed: 'The aircraft could not be loaded. Close this and try again.',
  undo: 'Undo',
  redo: 'Redo',
  whichPart: 'Part of the aircraft',
  parts: { figures: 'Figures', table: 'Table', load: 'Load' },
  forgets: 'This device stores nothing more: what is typed now is lost when the window closes.',

  startTitle: 'Start from',
  startHint:
    'Anything you leave empty is taken from it. Its values are typical of a class, of no type: the handbook’s are better.',
  classes,
  atHand: 'Or from an aircraft at hand',
  noneAtHand: 'Choose one',
  name: 'Name',
  nameHint: 'as you call it',
  nameBad: 'A name is up to 80 characters.',
  bookTitle: 'From the handbook',
  bookHint:
    'These are enough for book figures. With the table as well, today’s numbers are worked out.',
  groups: {
    masses: 'Other masses',
    wind: 'Wind limits',
    limits: 'Gear, flaps, tyres, runway',
    climb: 'Climb',
    taxi: 'Taxiing',
    words: 'In words',
  },
  named: (name: string, unit: string) => `${name}, ${unit}`,
  asClass: (value: string) => `Empty: ${value}, as its class.`,
  valueBad: (least: string, most: string, unit: string) => `From ${least} to ${most} ${unit}.`,
  powerUnit: 'Power is read in',
  powerUnits: { '%': '%', rpm: 'rpm' },
  texts: {
    rotateTo: { name: 'Rotate to', hint: 'for instance: 8° nose up' },
    afterBreakaway: { name: 'Once it rolls', hint: 'for instance: straight back' },
    steering: { name: 'Steered by', hint: 'for instance: pedals' },
  },
  textBad: 'Up to 80 characters.',
  about: 'What to know of it',
  aboutBad: 'Up to 600 characters.',
  stop: 'To stop, in order, a line each',
  stopBad: 'One to six lines of up to 80 characters.',
  stopAtFirst: ['throttle idle', 'brakes'],

  tableTitle: 'The handbook’s table',
  tableHint:
    'Rows of the performance pages: dry, level, hard runway, no factors. Leave empty what a row does not print. From eight rows on, today’s numbers follow the book.',
  withoutTable:
    'Without a table the book figures are shown as they are, on any day and at any mass.',
  paste: 'Paste from a spreadsheet',
  pasteHint: (length: string, mass: string) =>
    `Columns in any order, with their headings. Without a unit in the heading, lengths are in ${length} and masses in ${mass}.`,
  pasteExample: 'Altitude ft; Temp °C; Run; To 50 ft; Landing run',
  take: (rows: number) => (rows === 1 ? 'Take this row' : `Take these ${rows} rows`),
  understood: (columns: string) => `Understood: ${columns}.`,
  rowsTitle: 'Rows',
  row: 'Row',
  addRow: 'Add a row',
  removeRow: (number: number) => `Remove row ${number}`,
  columns,
  otherColumns: 'More columns',
  cell: (row: number, column: string) => `Row ${row}, ${column}`,
  cellBad: (row: number, column: string, least: string, most: string) =>
    `Row ${row}, ${column}: from ${least} to ${most}.`,
  emptyCells: (mass: string) =>
    `Empty: ${mass} or the usual landing mass, sea level, standard temperature, no wind.`,
  moreTitle: 'Engine and wing, for a closer fit',

  fitTitle: 'Book against computed',
  fitting: 'Working it out.',
  stopFit: 'Stop',
  fitAgain: 'Work it out',
  fitFailed: {
    'too-slow': 'It took too long and was stopped.',
    'not-worked-out': 'It could not be worked out.',
    stopped: 'It was stopped.',
  },
  fits: (most: string) => `Every row is met within ${most}.`,
  fitsNot: (most: string) =>
    `Up to ${most} off the book. Wherever numbers are shown, Lapstrip says so.`,
  bookAxis: (unit: string) => `Book, ${unit}`,
  foundAxis: (unit: string) => `Computed, ${unit}`,
  plotLabel: (figures: number, within: number) =>
    `Book against computed: ${figures} figures, ${within} of them within 3 %.`,
  band: 'Between the lines: within 3 %.',
  marks: figuresSaid,
  noFigure: 'none',
  off: (percent: string) => `${percent} %`,

  loadTitle: 'Load sheet',
  withoutLoad:
    'Without a load sheet the numbers are for the usual masses, and no centre of gravity is worked out.',
  addLoad: 'Add a load sheet',
  removeLoad: 'Remove the load sheet',
  fuelTitle: 'Fuel',
  tanks: 'Tanks hold',
  landingFuel: 'Fuel to land with',
  density: 'Density, kg/L',
  densityHint: 'not shown in litres',
  armsTitle: 'Centre of gravity',
  arms: { no: 'Not worked out', yes: 'Worked out' },
  arm: (of: string, unit: string) => `${of}, ${unit} aft of datum`,
  emptyArm: (unit: string) => `Empty aircraft, ${unit} aft of datum`,
  armBad: (least: string, most: string) => `From ${least} to ${most}.`,
  crewTitle: 'Crew',
  crewName: 'Who',
  crewMass: 'Mass with gear',
  addCrew: 'Add crew',
  remove: (name: string) => `Remove ${name}`,
  stationsTitle: 'Seats, baggage, stores',
  station: (name: string) => `Station ${name}`,
  stationName: 'As on the panel',
  stationKind: 'What it carries',
  stationKinds: { people: 'People', baggage: 'Baggage', stores: 'Stores' },
  stationMost: 'At most',
  each: 'One person is taken as',
  aboard: 'Aboard in the usual load',
  aboardHint: 'nothing',
  choiceName: 'What',
  choiceMass: 'Mass',
  addChoice: 'Add a choice',
  addStation: 'Add a station',
  newStation: (number: number) => `Station ${number}`,
  newCrew: (number: number) => `Crew ${number}`,
  newChoice: (number: number) => `Store ${number}`,
  pilot: 'Pilot',
  usual: 'Usual',
  usualLoad: (fuel: string, takeoff: string, landing: string) =>
    `The usual load has ${fuel} of fuel: ${takeoff} at take-off, ${landing} at landing.`,
  envelopeTitle: 'Envelope',
  envelopeHint: 'Its corners in order, once round.',
  corner: (number: number) => `Corner ${number}`,
  cornerMass: 'Mass',
  addCorner: 'Add a corner',
  envelopeLabel: (corners: number) => `Envelope of ${corners} corners, with the usual load.`,
  inEnvelope: 'Disc: usual take-off. Square: usual landing.',

  must: 'Before it can be saved',
  nothingMissing: 'Nothing is missing.',
  assumed: (count: number) =>
    count === 1
      ? 'One figure is still its class’s. Check it against the handbook.'
      : `${count} figures are still its class’s. Check them against the handbook.`,
  keep: 'Save',
  anew: 'Start over',
  kept: (name: string) => `${name} is saved as one of your own aircraft.`,
  keptWithProcedure: (name: string) =>
    `${name} is saved as one of your own aircraft, with a procedure for its class. Read that through against the flight manual, and make it your own.`,
  use: (name: string) => `Use ${name}`,
  refused: 'It was not saved:',
} as const;

/** A row of the table and what stands in it, within a sentence. */
export interface TroubleTold {
  readonly row: number;
  readonly figure: BookFigure;
  /** What the book prints. */
  readonly book: string;
  /** What all other rows foretell, or nothing. */
  readonly foretold: string;
  /** How far off, in whole percent. */
  readonly percent: string;
  /** How much more or less thrust would fit, in percent. */
  readonly thrust: string;
  readonly isMore: boolean;
}

const at = ({ row, figure }: TroubleTold) => `Row ${row}, ${figuresSaid[figure]}`;

/** What does not fit, and what would mend it. */
export const troubles = {
  'distance-below-run': (told: TroubleTold) =>
    `${at(told)}: ${told.book} is no longer than the run in the same row. Are two columns swapped?`,
  'row-apart': (told: TroubleTold) =>
    `${at(told)}: the book has ${told.book}, and all the other rows foretell ${told.foretold}. Check it for a slip, another flap setting or another runway surface.`,
  'thrust-apart': (told: TroubleTold) =>
    `${at(told)} is ${told.percent} off. Everything would fit with ${told.thrust} ${told.isMore ? 'more' : 'less'} power or thrust: check the engine’s, or leave it empty.`,
  'rows-apart': (told: TroubleTold) =>
    `${at(told)}: ${told.book} is ${told.percent} off, and no single row explains it. The rows contradict each other or the speeds: check for rows of another mass, flap setting or surface.`,
  'over-mass': (told: TroubleTold) => `${at(told)}: its mass is over the maximum.`,
  'under-empty': (told: TroubleTold) => `${at(told)}: its mass is below the empty mass.`,
  'never-stops': (told: TroubleTold) =>
    `${at(told)}: it would never stop. Check the approach speed and the landing figures.`,
  'cannot-climb': (told: TroubleTold) =>
    `${at(told)}: it would not climb there. Check the engine’s power and the row’s mass and altitude.`,
  'no-figure': (told: TroubleTold) =>
    `${at(told)}: it would not lift off there. Check the engine’s power and the row’s mass and altitude.`,
} as const;

/** What could not be read of a pasted table. */
export function tableProblem(problem: TableProblem): string {
  switch (problem.code) {
    case 'too-long':
      return 'That is more than any table.';
    case 'too-many-rows':
      return 'Only the first 60 rows are taken.';
    case 'no-rows':
      return 'No row of numbers was found.';
    case 'column-unknown':
      return `The column “${problem.text}” is not understood, and is left out.`;
    case 'column-twice':
      return `The column “${problem.text}” means what another does, and is left out.`;
    case 'no-number':
      return `Line ${problem.line}, ${columns[problem.column]}: “${problem.text}” is no number, and is left out.`;
    case 'out-of-range':
      return `Line ${problem.line}, ${columns[problem.column]}: “${problem.text}” cannot be, and is left out. Is it in another unit?`;
  }
}
