/** What each group of a report means, in words. */

import type {
  Distance,
  HourOfDay,
  Meaning,
  PresentWeather,
  RemarkKind,
  RunwayState,
  Wind,
} from '../../../core';
import { decimal, direction, wholeNumber } from '../../../parts/format';
import { words as windWords } from '../words.en';

const PHENOMENA: Record<string, string> = {
  DZ: 'drizzle',
  RA: 'rain',
  SN: 'snow',
  SG: 'snow grains',
  IC: 'ice crystals',
  PL: 'ice pellets',
  GR: 'hail',
  GS: 'small hail or snow pellets',
  UP: 'precipitation of unknown kind',
  BR: 'mist',
  FG: 'fog',
  FU: 'smoke',
  VA: 'volcanic ash',
  DU: 'dust',
  SA: 'sand',
  HZ: 'haze',
  PY: 'spray',
  PO: 'dust whirls',
  SQ: 'squalls',
  FC: 'funnel cloud',
  SS: 'sandstorm',
  DS: 'duststorm',
};

const DESCRIPTORS: Record<string, string> = {
  MI: 'shallow',
  PR: 'partial',
  BC: 'patches of',
  DR: 'low drifting',
  BL: 'blowing',
  SH: 'showers of',
  TS: 'thunderstorm with',
  FZ: 'freezing',
};

/** A descriptor that stands alone. */
const ALONE: Record<string, string> = { SH: 'showers', TS: 'thunderstorm' };

const AMOUNTS = {
  FEW: 'Few clouds, 1 to 2 eighths',
  SCT: 'Scattered cloud, 3 to 4 eighths',
  BKN: 'Broken cloud, 5 to 7 eighths',
  OVC: 'Overcast',
} as const;

const NO_CLOUD = {
  NSC: 'No significant cloud',
  NCD: 'No cloud detected by the automatic station',
  SKC: 'Sky clear',
  CLR: 'No cloud below 12 000 ft, automatic',
} as const;

const BOUNDS = {
  exact: '',
  'at-least': ' or more',
  above: 'more than ',
  below: 'less than ',
} as const;

/** 800 m, 10 km or more, less than 1/4 statute mile (400 m). */
function distanceWords({ distanceM, value, unit, bound }: Distance): string {
  const metres =
    distanceM >= 5000
      ? `${decimal(distanceM / 1000, distanceM % 1000 === 0 ? 0 : 1)} km`
      : `${wholeNumber(distanceM)} m`;
  const given =
    unit === 'SM'
      ? `${value} statute ${value === 1 ? 'mile' : 'miles'} (${metres})`
      : unit === 'ft'
        ? `${wholeNumber(value)} ft (${metres})`
        : metres;
  return bound === 'at-least' ? given + BOUNDS[bound] : BOUNDS[bound] + given;
}

const runwayWords = (runway: string) => (runway === 'all' ? 'all runways' : `runway ${runway}`);

function weatherWords(weather: PresentWeather): string {
  const { observed, recent, vicinity, intensity, descriptor, phenomena } = weather;
  if (!observed) return 'Weather not observed by the automatic station';
  // With a plus it is a phenomenon of its own. WMO-No. 306, table 4678.
  if (intensity === 'heavy' && phenomena.join('') === 'FC') {
    return capital(`${recent ? 'recent ' : ''}tornado or waterspout`);
  }
  const things = phenomena.map((code) => PHENOMENA[code] ?? code).join(' and ');
  const what =
    descriptor === null
      ? things
      : things === ''
        ? (ALONE[descriptor] ?? DESCRIPTORS[descriptor] ?? descriptor)
        : `${DESCRIPTORS[descriptor]} ${things}`;
  const strength = intensity === null || intensity === 'moderate' ? '' : `${intensity} `;
  return capital(
    `${recent ? 'recent ' : ''}${strength}${what}${vicinity ? ' in the vicinity, not at the field' : ''}`,
  );
}

const DEPOSITS: Record<string, string> = {
  'clear-and-dry': 'clear and dry',
  damp: 'damp',
  wet: 'wet',
  rime: 'rime or frost',
  'dry-snow': 'dry snow',
  'wet-snow': 'wet snow',
  slush: 'slush',
  ice: 'ice',
  'compacted-snow': 'compacted snow',
  'frozen-ruts': 'frozen ruts',
};

function runwayStateWords(state: RunwayState): string {
  const parts = [
    state.closed ? 'not in use' : null,
    state.cleared ? 'deposits removed' : null,
    state.deposit && (DEPOSITS[state.deposit] ?? null),
    state.coveredPercent && `${state.coveredPercent[0]} to ${state.coveredPercent[1]} % covered`,
    state.depth && `${wholeNumber(state.depth.depthMm)} mm deep`,
    typeof state.braking === 'number'
      ? `friction ${decimal(state.braking, 2)}`
      : state.braking && `braking ${state.braking}`,
  ].filter((part) => part !== null && part !== '');
  const where =
    state.runway === 'repeated' ? 'As reported before' : capital(runwayWords(state.runway));
  return `${where}: ${parts.join(', ') || 'nothing reported'}`;
}

const REMARKS: Record<RemarkKind, string> = {
  'station-kind': 'Kind of automatic station',
  'sensor-out': 'A sensor is out of service',
  'pressure-rising-rapidly': 'Pressure rising rapidly',
  'pressure-falling-rapidly': 'Pressure falling rapidly',
  'pressure-tendency': 'Pressure over three hours',
  precipitation: 'Amount of precipitation',
  'snow-depth': 'Depth of snow',
  'temperature-extremes': 'Highest or lowest temperature',
  'weather-times': 'When weather began or ended',
  'wind-shift': 'Wind shift',
  lightning: 'Lightning',
  'field-pressure': 'Pressure at the field',
  'cloud-kinds': 'Kinds of cloud',
};

const TRENDS = {
  NOSIG: 'No significant change expected in two hours',
  BECMG: 'Becoming, expected',
  TEMPO: 'Temporarily, expected',
  INTER: 'Intermittently, expected',
  PROB: 'Probability',
  FM: 'From then on, expected',
} as const;

const MODIFIERS = {
  automatic: 'From an automatic station, no observer',
  corrected: 'A corrected report',
  amended: 'An amended report',
  late: 'A late report',
  missing: 'The report is missing',
} as const;

const ORDINAL_RULES = new Intl.PluralRules('en', { type: 'ordinal' });
const ORDINALS: Readonly<Record<Intl.LDMLPluralRule, string>> = {
  one: 'st',
  two: 'nd',
  few: 'rd',
  other: 'th',
  many: 'th',
  zero: 'th',
};

const two = (value: number) => String(value).padStart(2, '0');

/** 1st, 22nd, 30th. */
const ordinal = (day: number) => `${day}${ORDINALS[ORDINAL_RULES.select(day)]}`;

const hourWords = ({ day, hour, minute }: HourOfDay) =>
  `${two(hour)}${two(minute)}Z${day === null ? '' : ` on the ${ordinal(day)}`}`;

const celsius = (value: number) => `${decimal(value, Number.isInteger(value) ? 0 : 1)} °C`;

function temperatureWords(airC: number | null, dewPointC: number | null): string {
  const air = airC === null ? 'Temperature not observed' : `Temperature ${celsius(airC)}`;
  return dewPointC === null ? air : `${air}, dew point ${celsius(dewPointC)}`;
}

const expectedWind = (wind: Wind) => windWords.windWords(wind, wind.fromDeg, null);

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** The sentence for a meaning. */
function meaning(is: Meaning): string {
  switch (is.code) {
    case 'bulletin':
      return 'Heading of a bulletin';
    case 'type':
      return is.type === 'SPECI'
        ? 'Special report, between the routine ones'
        : is.type === 'TAF'
          ? 'Aerodrome forecast'
          : 'Routine report';
    case 'station':
      return `Station ${is.station}`;
    case 'issued':
      return `Observed on the ${ordinal(is.day)} at ${two(is.hour)}${two(is.minute)}Z`;
    case 'modifier':
      return MODIFIERS[is.modifier];
    case 'wind':
      return expectedWind(is.wind);
    case 'swing':
      return `Swinging from ${direction(is.sectorDeg[0])} to ${direction(is.sectorDeg[1])}`;
    case 'visibility': {
      if (is.distance === null) return 'Visibility not observed';
      const towards = is.towards === null ? '' : ` towards ${is.towards}`;
      return `Visibility ${distanceWords(is.distance)}${towards}`;
    }
    case 'cavok':
      return 'Visibility 10 km or more, no significant cloud, no significant weather';
    case 'runway-visual-range': {
      if (is.distance === null) return `Runway ${is.runway}: visual range not observed`;
      const upTo = is.upTo === null ? '' : ` to ${distanceWords(is.upTo)}`;
      const tendency = is.tendency === null ? '' : `, ${is.tendency}`;
      return `Runway ${is.runway}: visual range ${distanceWords(is.distance)}${upTo}${tendency}`;
    }
    case 'weather':
      return weatherWords(is);
    case 'no-significant-weather':
      return 'Weather ended';
    case 'cloud': {
      const amount = is.amount === null ? 'Cloud' : AMOUNTS[is.amount];
      const base = is.baseFt === null ? '' : `, base ${wholeNumber(is.baseFt)} ft`;
      const kind =
        is.convective === 'CB'
          ? ', cumulonimbus'
          : is.convective === 'TCU'
            ? ', towering cumulus'
            : '';
      return amount + base + kind;
    }
    case 'vertical-visibility':
      return is.heightFt === null
        ? 'Sky obscured'
        : `Sky obscured, vertical visibility ${wholeNumber(is.heightFt)} ft`;
    case 'no-cloud':
      return NO_CLOUD[is.as];
    case 'temperature':
    case 'temperature-tenths':
      return temperatureWords(is.airC, is.dewPointC);
    case 'pressure':
      return is.qnhHpa === null
        ? 'QNH not observed'
        : `QNH ${is.qnhHpa.toFixed(0)} hPa${is.qnhInHg === null ? '' : `, ${decimal(is.qnhInHg, 2)} inHg`}`;
    case 'wind-shear':
      return `Wind shear${is.path === null ? '' : ` on ${is.path}`}${is.runway === null ? '' : `, ${runwayWords(is.runway)}`}`;
    case 'shear-aloft':
      return `Wind shear: above ${wholeNumber(is.heightFt)} ft ${direction(is.fromDeg)} at ${wholeNumber(is.speedKt)} kt`;
    case 'sea':
      return `Sea${is.waterC === null ? '' : `, water ${celsius(is.waterC)}`}${is.wavesM === null ? '' : `, waves ${decimal(is.wavesM, 1)} m`}`;
    case 'runway-state':
      return runwayStateWords(is);
    case 'snow-closed':
      return is.runway === 'all' ? 'Closed by snow' : `Runway ${is.runway} closed by snow`;
    case 'colour-state':
      return 'Colour state of a military field';
    case 'maintenance':
      return 'Station flags maintenance';
    case 'trend':
      return `${TRENDS[is.trend]}${is.percent === null ? '' : `, ${is.percent} %`}`;
    case 'time':
      return `${{ FM: 'From', TL: 'Until', AT: 'At' }[is.is]} ${hourWords(is)}`;
    case 'validity':
      return `Valid from ${hourWords(is.from)} to ${hourWords(is.to)}`;
    case 'extreme':
      return `${is.is === 'TX' ? 'Highest' : 'Lowest'} ${celsius(is.airC)} at ${hourWords(is)}`;
    case 'remarks':
      return 'Remarks: not the weather now';
    case 'peak-wind':
      return `Peak wind since the last hour: ${direction(is.fromDeg)} at ${wholeNumber(is.speedKt)} kt; not the wind now`;
    case 'sea-level-pressure':
      return is.seaLevelHpa === null
        ? 'Sea-level pressure not available'
        : `Sea-level pressure ${decimal(is.seaLevelHpa, 1)} hPa`;
    case 'remark':
      return REMARKS[is.remark];
    case 'end':
      return 'End of the report';
  }
}

export const words = {
  meaning,
  groupByGroup: 'Group by group',
  title: 'The report, group by group',
  close: 'Close',
  notRead: 'Not read',
  another: 'From another report',
  noMeaning: 'Recognised, not read further',
  expected: 'Expected, not now',
  remark: 'Remark',
  otherReports: 'Other reports in the text',
  useThis: 'Use this one',
} as const;
