/** The words of Taxi. */

import { durationWords } from '../../parts/pace.en';

const hand = (deg: number) => (deg > 0 ? 'right' : 'left');

export const words = {
  noAircraft: 'Choose an aircraft in Sortie.',
  noField: 'Choose a field on Wind.',
  openWind: 'Open Wind',
  whereIAm: 'Where I am',
  chooseStand: 'Choose stand',
  doNotExceed: 'Do not exceed',
  inTurns: (kt: string) => `${kt} kt in sharp turns`,
  getRolling: 'Get rolling',
  afterwards: (what: string) => `then ${what}`,
  keepRolling: 'Keep rolling',
  kt: 'kt',
  ask: 'opens where this number comes from',

  sayOn: (mhz: string, at: string | null) =>
    at === null ? `Say on ${mhz}` : `At ${at}, say on ${mhz}`,
  say: 'Say',
  noRadio: 'No frequency known here. Say to yourself:',
  allCalls: 'All calls',

  time: durationWords,
  plan: (field: string) => `Plan of ${field}`,
  bigCard: 'Big card',
  northUp: 'North up',
  wayUp: 'Track up',
  route: 'Route',
  hotSpots: 'Hot spots',
  planWords: {
    north: 'N',
    ahead: (runway: string) => `Runway ${runway} ahead`,
    hold: (name: string) => `Hold ${name}`,
    whole: 'Fit',
  },

  at: (point: string) => `At ${point}`,
  notYet: 'Not yet',
  mark: (kind: string) => (kind === 'hold' ? 'the hold' : kind === 'stand' ? 'the stand' : 'here'),
  noSpeed: 'no speed',
  speed: (kt: string) => `${kt} kt`,
  speedBetween: (least: string, most: string) => `${least} to ${most} kt`,
  over: (kt: string) => `over ${kt} kt`,
  stretch: (from: string, to: string, length: string, seconds: string) =>
    `${from} to ${to}, ${length} in ${seconds}`,
  give: (kt: string) => `timing error ±${kt} kt`,
  giveNone: 'too short to time',
  atSpeed: (duration: string, kt: string) => `${duration} at ${kt} kt`,
  soFar: (elapsed: string, expected: string) => `${elapsed} gone, ${expected} expected`,
  toGo: (length: string, duration: string) => `${length} to go, ${duration}`,
  device: (kt: string, age: string, length: string) => `Device ${kt} kt, ${age} old, ± ${length}`,
  deviceNoSpeed: (age: string, length: string) =>
    `Device gives no speed; position ${age} old, ± ${length}`,
  deviceRefused: 'The device’s position was refused: the stopwatch goes on.',
  deviceNone: 'This device gives no position.',
  deviceWaiting: 'Waiting for the device’s position',
  useDevice: 'Use the device’s position',
  leaveDevice: 'Leave the device’s position',
  deviceAbout: 'Ground speed from this device, with its age and accuracy. Only while you want it.',

  here: 'I am here',
  leaveIt: 'Cancel',
  closer: 'Larger',
  closeIt: 'Close today',
  openIt: 'Open again',
  stretchName: (name: string, from: string, to: string) =>
    from === to ? `${name}, ${from}` : `${name}, ${from} to ${to}`,
  junction: (names: string) => `Where ${names} meet`,
  points: {
    by: (what: string, near: string | undefined) =>
      near === undefined ? what : `${what} by ${near}`,
    runway: (ends: string) => `Runway ${ends}`,
    bend: 'bend',
  },

  close: 'Close',
  sheet: 'Route',
  fromTitle: 'Stand',
  told: {
    key: 'Taxi via',
    using: (text: string) => `Via ${text}`,
    title: 'Taxi via',
    label: 'As the controller says it',
    hint: (example: string) => `Tap the letters, or type: ${example}.`,
    taxiways: 'Taxiways',
    runways: 'Runways and stands',
    atRunway: { 'hold short': 'Hold short', cross: 'Cross', backtrack: 'Backtrack' },
    takeBack: 'Delete last',
    use: 'Use this route',
    drop: 'Use the plan’s route',
    meant: 'Did you mean',
    unsaid: (names: string) => `By ${names}, which was not said.`,
    noLonger: (why: string) =>
      `The route you were told doesn’t fit: ${why} The plan’s own is drawn.`,
  },
  toTitle: 'To stand',
  taxiThere: 'Taxi there',
  noStands: 'The plan has no stand. Where are you?',
  pointsTitle: 'Or at a point',
  entryTitle: (end: string) => `Into runway ${end}`,
  wholeRun: (hold: string, length: string) => `${hold}: the whole run, ${length}`,
  backtrack: (hold: string, length: string, back: string) =>
    `${hold}: the whole run, ${length}, after a backtrack of ${back}`,
  intersection: (hold: string, length: string) => `${hold}: ${length} of run from there`,
  runNeeded: (needed: string, left: string) => `today needs ${needed}: margin ${left}`,
  runShort: (needed: string, short: string) => `today needs ${needed}: ${short} short`,
  runUnknown: 'what today needs is not known',
  taxiDistance: (length: string) => `${length} of taxi`,
  routesTitle: 'Routes',
  way: (names: string, length: string) => `${names}, ${length}`,
  crossesRunways: (runways: string) => `crosses ${runways}`,
  routesNone: 'No other route is within a tenth of this one.',
  inWords: 'In words',
  exitAt: (name: string, length: string) =>
    `Today’s landing is likely to leave at ${name}, ${length} from the threshold.`,
  exitBack: (name: string, back: string) =>
    `Today’s landing runs past the last exit: backtrack ${back} to ${name}.`,
  runwayUsed: (length: string) =>
    `There is no other way: backtrack ${length} of runway. Hold before it, say so, look both ways.`,
  backtrackNote: (hold: string, end: string, length: string) =>
    `Hold at ${hold}; then backtrack ${length} of runway ${end}.`,
  tightNote: (turn: string) => `This route can’t be taxied: ${turn}.`,
  holdsAssumed: (count: number) =>
    count === 1
      ? 'The map has no holding point here: where to hold is assumed. Look for the sign.'
      : `The map lacks ${count} holding points on this route: where to hold is assumed. Look for the signs.`,
  assumedHold: 'Holding point, assumed: the map has none',
  closed: (names: string) => `Closed today: ${names}.`,
  closedTitle: 'Closed today',
  closedHint: 'What is down here is closed. A tap on the plan closes a stretch too.',
  turnsTitle: 'Turns',
  turn: (deg: number, onto: string, kt: string) =>
    `${Math.round(Math.abs(deg))}° ${hand(deg)} onto ${onto}: ${kt} kt,`,
  turnRadius: (length: string) => `radius ${length}`,
  turnBound: {
    comfort: 'for comfort',
    tipping: 'so as not to tip',
    sharp: 'sharp turn, by the aircraft’s document',
    limit: 'the straight limit',
  },

  calls: 'Calls',
  callsign: 'Your callsign is set in Sortie.',
  readBack: 'Read back',
  to: (name: string, mhz: string) => `${name}, ${mhz}`,
  direction: 'Departing to the',
  ownWords: 'In my own words',
  ownFor: (call: string) => `My own words for: ${call}`,
  usualWords: 'The usual words',
  placeholders: (names: string) => `Filled in where you write them: ${names}`,
} as const;
