/** The words of Wind. Whole sentences; numbers come in as they are to be written. */

import type { NoRanking, Purpose, Reason, Wind } from '../../core';
import { direction, wholeNumber } from '../../parts/format';

/** The sentence for why there is no ranking. */
const noRanking: Record<NoRanking, string> = {
  'no-field': 'Choose a field.',
  'no-limits': 'Choose an aircraft, for its wind limits.',
  'no-wind': 'Type the wind, or paste a report.',
  'no-variation':
    'No magnetic model covers this date. Set the variation in Sortie, or type a true wind.',
};

const kt = (value: number) => `${wholeNumber(value)} kt`;

function speedWords(wind: Wind): string {
  if (wind.speedKt === null) return 'speed not reported';
  const steady = `${wind.speedIsMinimum ? 'above ' : ''}${wholeNumber(wind.speedKt)}`;
  if (wind.gustKt === null) return `at ${steady} kt`;
  return `at ${steady}, gusting ${wind.gustIsMinimum ? 'above ' : ''}${kt(wind.gustKt)}`;
}

/** A wind in words, with its direction to both norths. */
function windWords(wind: Wind, trueDeg: number | null, magneticDeg: number | null): string {
  if (wind.speedKt === 0 && wind.gustKt === null && !wind.speedIsMinimum) return 'Calm';
  const swing =
    wind.sectorDeg === null
      ? ''
      : `, swinging ${direction(wind.sectorDeg[0])} to ${direction(wind.sectorDeg[1])}`;
  if (wind.variable) return `Variable ${speedWords(wind)}${swing}`;
  if (wind.fromDeg === null) return `Direction not reported, ${speedWords(wind)}${swing}`;
  const both =
    trueDeg === null
      ? `${direction(wind.fromDeg)} magnetic`
      : magneticDeg === null
        ? `${direction(trueDeg)} true`
        : `${direction(trueDeg)} true (${direction(magneticDeg)} magnetic)`;
  return `From ${both} ${speedWords(wind)}${swing}`;
}

const forPurpose = (purpose: Purpose) =>
  purpose === 'take-off' ? 'Best runway' : 'Best for landing';

export const words = {
  noRanking,
  windWords,
  forecastNow: (wind: string) => `Forecast, not observed. ${wind}`,
  forecastWithout: 'Forecast: it gives no wind for now.',
  forecastBeside: 'Forecast: judged for the hour ahead; the wind in use stays.',
  incomplete: 'Go on typing: the wind is not complete yet.',
  forPurpose,
  entry: 'Wind or report',
  entryHint: 'Wind, or a report',
  paste: 'Paste',
  pasteByHand: 'Hold the box above, then choose Paste.',
  trueNorth: 'True north',
  magneticNorth: 'Magnetic north',
  northHint: 'Turns a typed wind to the other north. A whole report is true.',
  letters: 'ABC',
  set: 'Set wind',
  setAndClose: 'Close',
  drop: 'Undo typing',
  use: (end: string) => `Use ${end}`,
  inUse: (end: string) => `Runway ${end}, selected`,
  usingOther: (using: string, best: string) => `Selected ${using}, best ${best}`,
  none: 'None',
  old: 'For the previous wind',
  magnetic: (deg: string) => `${deg} mag`,
  headwind: 'Headwind',
  knots: kt,
  ofLimit: (worst: string, limit: string) => `${worst} of ${limit} kt`,
  across: (side: 'right' | 'left' | 'none', gust: boolean) =>
    `${side === 'none' ? 'Crosswind' : `Crosswind from ${side}`}${gust ? ', gust' : ''}`,
  acrossWorst: (gust: boolean) => (gust ? 'Crosswind at worst, gust' : 'Crosswind at worst'),
  tailWorst: (gust: boolean) => (gust ? 'Tailwind at worst, gust' : 'Tailwind at worst'),
  firm: (left: string, right: string) => `Best with wind ${left} to ${right}`,
  firmLeft: (left: string) => `Best with wind backing to ${left}`,
  firmRight: (right: string) => `Best with wind veering to ${right}`,
  toSpare: (deg: number) => `${deg}° to spare`,
  close: (deg: number) => `close: ${deg}°`,
  firmAlways: 'Wind from any direction',
  firmAlwaysValue: 'same runway',
  lightWind: 'Light wind: limits apply, the wind does not choose',
  anywhere: 'No direction: the longest run decides',
  upTo: {
    crosswind: 'Crosswind limit reached at',
    tailwind: 'Tailwind limit reached at',
    'gust-spread': 'Gust limit reached at',
  },
  reachedAt: (speed: number, gust: number | null) =>
    gust === null ? `${speed} kt` : `${speed} gust ${gust} kt`,
  decidedBy: 'Decided by',
  reason: {
    'only-one-within-limits': 'The only one within the limits given',
    'within-limits': 'Within the limits given; the next is not',
    preferred: 'Preferred by the field',
    'calm-wind-end': 'The field’s runway for light wind',
    'most-headwind': 'Most headwind',
    'least-crosswind-share': 'Least of the crosswind limit used',
    'most-runway-left': 'Largest margin',
    'shortest-taxi': 'Shortest taxi',
    'fails-least': 'Fails by least',
    'longest-runway': 'Longest runway',
    'most-aligned': 'Most nearly into wind',
    alike: 'No rule separates the first two',
  } satisfies Record<Reason['code'], string>,
  ask: 'opens where this number comes from',
  purpose: {
    'take-off': 'For take-off',
    landing: 'For landing',
    change: (now: Purpose) =>
      now === 'take-off'
        ? 'Judged for take-off; change to landing'
        : 'Judged for landing; change to take-off',
  },
  chooseField: 'Field',
  chooseAircraft: 'Aircraft',
  someUnread: 'Some of it could not be read; it is marked.',
  leftOver: (length: string, of: string) => `Margin ${length}, ${of}`,
  pad: {
    erase: 'Erase',
    clear: 'Clear',
    calm: 'Calm',
    space: 'space',
    unit: 'KT',
    spoken: {
      G: 'G, gust',
      V: 'V, swing to',
      VRB: 'VRB, variable',
      P: 'P, above',
      '/': 'slash',
      erase: 'erase the last',
      unit: 'unit: KT, again for MPS and KMH',
    },
  },
} as const;
