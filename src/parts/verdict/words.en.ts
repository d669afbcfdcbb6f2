/** What speaks against the runway in use, in words: a figure and its limit, and what would mend it. */

import type { CautionCode } from '../../core';
import { wholeNumber } from '../format';
import { length } from '../units';
import { available, beyond, feet, kg, kt, needed, number, seen, type Told } from './told';

const noNumbers: Readonly<Record<string, string>> = {
  'under-empty': 'Lighter than the empty aircraft',
  'never-lifts-off': 'Cannot lift off here today',
  'never-stops': 'Cannot stop here today',
  'slope-unreasonable': 'Runway steeper than 10 %',
  'wind-unreasonable': 'More than 80 kt along the runway',
};

const short = (what: string, of: string) => (told: Told) =>
  `Too short: ${what} ${needed(told)}, ${of} ${available(told)}`;

const sentences: Readonly<Record<CautionCode, (told: Told) => string>> = {
  'no-field': () => 'No field chosen',
  'no-end': ({ value }) => `Runway ${value ?? ''} is not at this field`,
  closed: ({ value }) => `Closed: ${value ?? ''}`,
  'closed-by-report': () => 'Closed, by the report',
  'closed-today': () => 'Closed today',
  'not-for-purpose': ({ value }) => (value === 'landing' ? 'Not for landing' : 'Not for take-off'),
  'no-numbers': ({ value }) => noNumbers[String(value)] ?? 'No numbers for today',
  'no-run': () => 'No run given for this aircraft',
  'over-mass': () => 'Over the greatest mass',
  'over-max-take-off': ({ value }) => `Over maximum take-off mass by ${kg(value)}`,
  'over-max-landing': ({ value }) => `Over maximum landing mass by ${kg(value)}`,
  'no-fuel': () => 'No fuel on board',
  'outside-envelope': () => 'Centre of gravity outside its limits',
  'fuel-over': ({ value }) => `Fuel over the tanks by ${kg(value)}`,
  'station-over': ({ value, limit }) => `Too much in ${limit ?? ''}: ${kg(value)} over`,
  'cannot-climb': () => 'Cannot climb to 50 ft here today',
  tora: short('run', 'TORA'),
  toda: short('50 ft at', 'TODA'),
  asda: short('stop at', 'ASDA'),
  lda: short('landing', 'LDA'),
  'go-above-stop': ({ value, limit }) =>
    value === null
      ? 'Too short to go on with an engine out'
      : `Min go speed ${kt(value)} above max abort ${kt(limit)}`,
  tyres: ({ value, limit }) =>
    value === null
      ? 'Tyre limit'
      : `Tyre limit: ${beyond({ code: 'tyres', value, limit })} kt over ground, limit ${kt(limit)}`,
  'brake-energy': ({ value, limit }) =>
    value === null
      ? 'Brake energy beyond the limit'
      : `Brake energy ${beyond({ code: 'brake-energy', value, limit })} MJ, limit ${kt(limit)}`,
  'brakes-hot': ({ value, limit }) => `Brakes hot: cooled ${kt(value)} of ${kt(limit)} min`,
  parachute: () => 'Touch-down above the parachute speed',
  'parachute-used': () => 'Parachute used, not packed',
  crosswind: (told) => `Crosswind ${beyond(told)}, limit ${kt(told.limit)}`,
  tailwind: (told) => `Tailwind ${beyond(told)}, limit ${kt(told.limit)}`,
  'gust-spread': (told) => `Gust ${beyond(told)} kt above the wind, limit ${kt(told.limit)}`,
  'speed-unbounded': () => 'Wind speed only known to be above a number',
  'speed-not-known': () => 'Wind speed not reported',
  'no-wind': () => 'No wind entered',
  'no-limits': () => 'No wind limits: no aircraft chosen',
  'no-variation': () => 'Variation unknown: a magnetic wind cannot be used',
  'none-within-limits': () => 'No runway within limits',
  'below-landing-fuel': ({ value }) => `Fuel ${kg(value)} below the landing fuel`,
  bingo: ({ value, limit }) => `Fuel ${kg(value)}, bingo ${kg(limit)}`,
  narrow: ({ value, limit }) =>
    `Runway ${length(number(value))} wide, ${length(number(limit))} needed`,
  visibility: ({ value, limit }) => `Visibility ${seen(value)}, your minimum ${seen(limit)}`,
  ceiling: ({ value, limit }) => `Ceiling ${feet(value)}, your minimum ${feet(limit)}`,
  'no-lights': () => 'Night, and no runway lights',
  thunderstorm: () => 'Thunderstorm reported',
  'wind-shear': () => 'Wind shear reported',
  icing: () => 'Freezing precipitation',
  'forecast-crosswind': (told) => `Forecast crosswind ${beyond(told)}, limit ${kt(told.limit)}`,
  'forecast-tailwind': (told) => `Forecast tailwind ${beyond(told)}, limit ${kt(told.limit)}`,
  'forecast-gust-spread': (told) =>
    `Forecast gust ${beyond(told)} kt above the wind, limit ${kt(told.limit)}`,
  'forecast-visibility': ({ value, limit }) =>
    `Forecast visibility ${seen(value)}, your minimum ${seen(limit)}`,
  'forecast-ceiling': ({ value, limit }) =>
    `Forecast ceiling ${feet(value)}, your minimum ${feet(limit)}`,
  'near-length': (told) => `Runway nearly used up: ${needed(told)} of ${available(told)}`,
  'near-crosswind': (told) => `Crosswind ${kt(told.value)}, near the limit of ${kt(told.limit)}`,
  'demonstrated-crosswind': (told) =>
    `Crosswind ${beyond(told)}, demonstrated only to ${kt(told.limit)}`,
  'near-tailwind': (told) => `Tailwind ${kt(told.value)}, near the limit of ${kt(told.limit)}`,
  'near-tyres': (told) => `Lift-off ${kt(told.value)} kt over ground, near the tyre limit`,
  'wet-tailwind': ({ value }) => `Not dry, and a tailwind of ${kt(value)}`,
  aquaplaning: ({ value }) => `Aquaplaning from ${kt(value)} kt`,
  cable: ({ value }) => `Cable ${length(number(value))} along`,
  surface: ({ value }) => (value === 'wet' ? 'Runway wet' : 'Runway contaminated'),
  'wind-old': ({ value }) => `Wind ${wholeNumber(number(value))} min old`,
  'density-altitude': ({ value, limit }) =>
    `Density altitude ${wholeNumber(Math.round(number(value) / 100) * 100)} ft, field ${wholeNumber(number(limit))} ft`,
  'low-sun': () => 'Low sun ahead',
  'off-book': ({ value }) =>
    `Worked-out lengths up to ${wholeNumber(Math.ceil(number(value)))} % off the handbook`,
  'lights-unknown': () => 'Night, and not known whether the runway is lit',
  'width-unknown': () => 'Runway width not known',
  'surface-unknown': () => 'Surface not known: numbers are for asphalt',
  'slope-unknown': () => 'Slope not known: numbers are for a level runway',
  'lengths-unknown': () => 'Declared distances not known: pavement length used',
  doubtful: ({ value }) => doubts[String(value)] ?? 'Runway data doubtful',
  'not-best': ({ limit }) => `Best runway ${limit ?? ''}`,
};

const doubts: Readonly<Record<string, string>> = {
  swapped: 'Runway numbers swapped in the source',
  number: 'Runway number doubtful',
  length: 'Runway length doubtful: the shorter used',
  heading: 'Runway heading doubtful: from its coordinates',
  'one-end': 'Far end of the runway worked out',
  elevation: 'Runway elevation doubtful',
  displaced: 'Displaced threshold doubtful',
};

/** What would mend a caution; absent where nothing in the app would. */
const mends: Readonly<Partial<Record<CautionCode, string>>> = {
  'no-end': 'Choose another runway.',
  closed: 'Choose another runway.',
  'closed-by-report': 'Choose another runway.',
  'closed-today': 'Choose another runway, or open it again in its details.',
  'not-for-purpose': 'Choose another runway.',
  'no-numbers': 'Take less mass, or another runway.',
  'no-run': 'Enter its runs, or its handbook’s table, in the Library.',
  'over-mass': 'Take less fuel or less load.',
  'over-max-take-off': 'Take less fuel or less load.',
  'over-max-landing': 'Land with less fuel or less load.',
  'no-fuel': 'Enter the fuel in the load.',
  'outside-envelope': 'Move or change the load.',
  'fuel-over': 'Take less fuel.',
  'station-over': 'Take less there.',
  'cannot-climb': 'Take less mass, or wait for cooler air.',
  tora: 'Another runway, its whole length, less mass, or cooler air.',
  toda: 'Another runway, its whole length, less mass, or cooler air.',
  asda: 'Another runway, its whole length, or less mass.',
  lda: 'Another runway, or less mass at landing.',
  'go-above-stop': 'Another runway, its whole length, or less mass.',
  tyres: 'Another runway, more headwind, or less mass.',
  'brake-energy': 'Another runway, or less mass.',
  'brakes-hot': 'Wait until they are cool.',
  parachute: 'Land with less mass, or do not count on it.',
  'parachute-used': 'Pack it and tick its step again, or fly without it.',
  crosswind: 'Another runway, or wait for the wind.',
  tailwind: 'Another runway, or wait for the wind.',
  'gust-spread': 'Wait for the wind.',
  'speed-unbounded': 'Ask for the wind.',
  'speed-not-known': 'Ask for the wind.',
  'no-wind': 'Enter the wind.',
  'no-limits': 'Choose an aircraft.',
  'none-within-limits': 'Less mass, another field, or wait for the wind.',
  'below-landing-fuel': 'Take more fuel.',
  bingo: 'Take more fuel, or set bingo lower.',
  visibility: 'Wait for the weather, or another field.',
  ceiling: 'Wait for the weather, or another field.',
  'forecast-visibility': 'Another time, or another field.',
  'forecast-ceiling': 'Another time, or another field.',
  'forecast-crosswind': 'Another runway, or another time.',
  'forecast-tailwind': 'Another runway, or another time.',
  'forecast-gust-spread': 'Another time.',
  narrow: 'Choose another runway.',
  'no-lights': 'Choose another runway.',
  'off-book': 'Look at the table in the aircraft, in the Library.',
  'wind-old': 'Ask for the wind.',
};

/** The same where no other runway is within limits. */
const alone: Readonly<Partial<Record<CautionCode, string>>> = {
  'no-end': 'No other runway is within limits.',
  closed: 'No other runway is within limits.',
  'closed-by-report': 'No other runway is within limits.',
  'closed-today': 'Open it again in its details.',
  'not-for-purpose': 'No other runway is within limits.',
  'no-numbers': 'Take less mass.',
  tora: 'Its whole length, less mass, or cooler air.',
  toda: 'Its whole length, less mass, or cooler air.',
  asda: 'Its whole length, or less mass.',
  lda: 'Less mass at landing.',
  'go-above-stop': 'Its whole length, or less mass.',
  tyres: 'More headwind, or less mass.',
  'brake-energy': 'Less mass.',
  crosswind: 'Wait for the wind.',
  tailwind: 'Wait for the wind.',
  'forecast-crosswind': 'Another time.',
  'forecast-tailwind': 'Another time.',
  narrow: 'No other runway is within limits.',
  'no-lights': 'No other runway is within limits.',
};

export const words = {
  said: (told: Told) => sentences[told.code](told),
  /** What would mend a caution; another runway is named only if one is within limits. */
  mend: (code: CautionCode, isOther: boolean) =>
    (isOther ? mends[code] : (alone[code] ?? mends[code])) ?? '',
  more: (count: number) => `${count} more`,
  opens: 'opens what speaks against this runway',
  title: (end: string | null) => (end === null ? 'Cautions' : `Cautions, runway ${end}`),
  none: 'Within the limits given.',
  close: 'Close',
  stops: 'Outside limits',
  inAWord: 'Also',
  toWatch: 'To watch',
  accepted: (time: string) => `Continued outside limits at ${time}`,
  went: 'Continued outside limits',
  openWind: 'Open Wind',
  openLoad: 'Open the load',
  goOn: 'Continue outside limits',
  hold: 'Press and hold',
} as const;
