/** What each group of a report means, in German words. */

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
import type { Translated } from '../../../parts/translated';
import { words as windWords } from '../words.de';
import type { words as english } from './meaningWords.en';

/** Endings of an adjective before a noun. */
const ENDINGS = {
  masculine: { nominative: 'er', dative: 'em' },
  feminine: { nominative: 'e', dative: 'er' },
  neuter: { nominative: 'es', dative: 'em' },
  plural: { nominative: 'e', dative: 'en' },
} as const;

type Case = 'nominative' | 'dative';

/** A noun, and its dative if that differs. */
type Noun = readonly [gender: keyof typeof ENDINGS, nominative: string, dative?: string];

/** Phenomena, and combinations for which German has one word. */
const NOUNS: Readonly<Record<string, Noun>> = {
  DZ: ['masculine', 'Sprühregen'],
  RA: ['masculine', 'Regen'],
  SN: ['masculine', 'Schneefall'],
  SG: ['masculine', 'Schneegriesel'],
  IC: ['plural', 'Eisnadeln'],
  PL: ['plural', 'Eiskörner', 'Eiskörnern'],
  GR: ['masculine', 'Hagel'],
  GS: ['masculine', 'Graupel'],
  UP: ['masculine', 'Niederschlag unbekannter Art'],
  BR: ['masculine', 'feuchter Dunst', 'feuchtem Dunst'],
  FG: ['masculine', 'Nebel'],
  FU: ['masculine', 'Rauch'],
  VA: ['feminine', 'Vulkanasche'],
  DU: ['masculine', 'Staub'],
  SA: ['masculine', 'Sand'],
  HZ: ['masculine', 'trockener Dunst', 'trockenem Dunst'],
  PY: ['feminine', 'Gischt'],
  PO: ['plural', 'Staubwirbel', 'Staubwirbeln'],
  SQ: ['plural', 'heftige Böen', 'heftigen Böen'],
  FC: ['feminine', 'Trichterwolke'],
  SS: ['masculine', 'Sandsturm'],
  DS: ['masculine', 'Staubsturm'],
  RASN: ['masculine', 'Schneeregen'],
  SNRA: ['masculine', 'Schneeregen'],
  SH: ['plural', 'Schauer'],
  SHRA: ['plural', 'Regenschauer'],
  SHSN: ['plural', 'Schneeschauer'],
  SHRASN: ['plural', 'Schneeregenschauer'],
  SHSNRA: ['plural', 'Schneeregenschauer'],
  SHGR: ['plural', 'Hagelschauer'],
  SHGS: ['plural', 'Graupelschauer'],
  TS: ['neuter', 'Gewitter'],
  BCFG: ['plural', 'Nebelschwaden'],
  DRSN: ['neuter', 'Schneefegen'],
  DRSA: ['neuter', 'Sandfegen'],
  DRDU: ['neuter', 'Staubfegen'],
  BLSN: ['neuter', 'Schneetreiben'],
  BLSA: ['neuter', 'Sandtreiben'],
  BLDU: ['neuter', 'Staubtreiben'],
};

/** Descriptors that become an adjective. */
const ADJECTIVES: Readonly<Record<string, string>> = {
  MI: 'flach',
  DR: 'fegend',
  BL: 'treibend',
  FZ: 'gefrierend',
};

/** Descriptors that become an adverb. */
const ADVERBS: Readonly<Record<string, string>> = { PR: 'teilweise', BC: 'stellenweise' };

/** Descriptors that put the phenomenon in the dative. */
const BRINGING: Readonly<Record<string, string>> = { SH: 'Schauer mit', TS: 'Gewitter mit' };

const STRENGTHS = { light: ['leicht'], moderate: [], heavy: ['stark'] } as const;

const list = new Intl.ListFormat('de');

/** Nouns in a case, the adjectives before the first: `leichter gefrierender Regen und Nebel`. */
function nounPhrase(nouns: readonly Noun[], adjectives: readonly string[], is: Case): string {
  const said = nouns.map(([, nominative, dative]) =>
    is === 'dative' ? (dative ?? nominative) : nominative,
  );
  const [first] = nouns;
  const ending = first === undefined ? '' : ENDINGS[first[0]][is];
  return [...adjectives.map((adjective) => adjective + ending), list.format(said)].join(' ');
}

/** The phenomenon, without when and where. */
function whatThereIs({ intensity, descriptor, phenomena }: PresentWeather): string {
  const strength = intensity === null ? [] : STRENGTHS[intensity];
  const together = phenomena.join('');
  // With a plus it is a phenomenon of its own. WMO-No. 306, table 4678.
  if (intensity === 'heavy' && together === 'FC') return 'Tornado oder Wasserhose';
  const one = NOUNS[(descriptor ?? '') + together];
  if (one) return nounPhrase([one], strength, 'nominative');
  const both = NOUNS[together];
  const nouns: readonly Noun[] = both
    ? [both]
    : phenomena.map((code) => NOUNS[code] ?? ['masculine', code]);
  const bringing = descriptor && BRINGING[descriptor];
  if (bringing) return `${bringing} ${nounPhrase(nouns, strength, 'dative')}`;
  const adjective = descriptor === null ? undefined : ADJECTIVES[descriptor];
  const said = nounPhrase(nouns, adjective ? [...strength, adjective] : strength, 'nominative');
  const adverb = descriptor && ADVERBS[descriptor];
  return adverb ? `${adverb} ${said}` : said;
}

function weatherWords(weather: PresentWeather): string {
  const { observed, recent, vicinity } = weather;
  if (!observed) return 'Wetter von der automatischen Station nicht erfasst';
  return capital(
    `${recent ? 'kürzlich ' : ''}${whatThereIs(weather)}${vicinity ? ' in der Umgebung, nicht am Platz' : ''}`,
  );
}

const AMOUNTS = {
  FEW: 'Geringe Bewölkung, 1 bis 2 Achtel',
  SCT: 'Aufgelockerte Bewölkung, 3 bis 4 Achtel',
  BKN: 'Durchbrochene Bewölkung, 5 bis 7 Achtel',
  OVC: 'Bedeckt',
} as const;

const NO_CLOUD = {
  NSC: 'Keine Wolken von Bedeutung',
  NCD: 'Automatische Station erkennt keine Wolken',
  SKC: 'Wolkenlos',
  CLR: `Keine Wolken unter ${wholeNumber(12_000)} ft, automatisch`,
} as const;

/** 800 m, 10 km oder mehr, weniger als 0.25 Landmeilen (402 m). */
function distanceWords({ distanceM, value, unit, bound }: Distance): string {
  const metres =
    distanceM >= 5000
      ? `${decimal(distanceM / 1000, distanceM % 1000 === 0 ? 0 : 1)} km`
      : `${wholeNumber(distanceM)} m`;
  const given =
    unit === 'SM'
      ? `${value} ${value === 1 ? 'Landmeile' : 'Landmeilen'} (${metres})`
      : unit === 'ft'
        ? `${wholeNumber(value)} ft (${metres})`
        : metres;
  switch (bound) {
    case 'exact':
      return given;
    case 'at-least':
      return `${given} oder mehr`;
    case 'above':
      return `mehr als ${given}`;
    case 'below':
      return `weniger als ${given}`;
  }
}

const runwayWords = (runway: string) => (runway === 'all' ? 'alle Pisten' : `Piste ${runway}`);

const DEPOSITS: Record<string, string> = {
  'clear-and-dry': 'frei und trocken',
  damp: 'feucht',
  wet: 'nass',
  rime: 'Raureif oder Reif',
  'dry-snow': 'trockener Schnee',
  'wet-snow': 'nasser Schnee',
  slush: 'Schneematsch',
  ice: 'Eis',
  'compacted-snow': 'verdichteter Schnee',
  'frozen-ruts': 'gefrorene Spurrinnen',
};

const BRAKING = {
  poor: 'Bremswirkung schlecht',
  'medium-poor': 'Bremswirkung mittel bis schlecht',
  medium: 'Bremswirkung mittel',
  'medium-good': 'Bremswirkung mittel bis gut',
  good: 'Bremswirkung gut',
  unreliable: 'Bremswirkung nicht verlässlich',
} as const;

function runwayStateWords(state: RunwayState): string {
  const parts = [
    state.closed ? 'nicht in Betrieb' : null,
    state.cleared ? 'Ablagerungen verschwunden' : null,
    state.deposit && (DEPOSITS[state.deposit] ?? null),
    state.coveredPercent && `${state.coveredPercent[0]} bis ${state.coveredPercent[1]} % bedeckt`,
    state.depth && `${wholeNumber(state.depth.depthMm)} mm tief`,
    typeof state.braking === 'number'
      ? `Reibungswert ${decimal(state.braking, 2)}`
      : state.braking && BRAKING[state.braking],
  ].filter((part) => part !== null);
  const where =
    state.runway === 'repeated' ? 'Wie zuvor gemeldet' : capital(runwayWords(state.runway));
  return `${where}: ${parts.join(', ') || 'nichts gemeldet'}`;
}

const REMARKS: Record<RemarkKind, string> = {
  'station-kind': 'Art der automatischen Station',
  'sensor-out': 'Ein Sensor ist außer Betrieb',
  'pressure-rising-rapidly': 'Luftdruck steigt rasch',
  'pressure-falling-rapidly': 'Luftdruck fällt rasch',
  'pressure-tendency': 'Luftdruck über drei Stunden',
  precipitation: 'Niederschlagsmenge',
  'snow-depth': 'Schneehöhe',
  'temperature-extremes': 'Höchste oder tiefste Temperatur',
  'weather-times': 'Wann Wetter begann oder endete',
  'wind-shift': 'Windsprung',
  lightning: 'Blitze',
  'field-pressure': 'Luftdruck am Platz',
  'cloud-kinds': 'Wolkenarten',
};

const TRENDS = {
  NOSIG: 'Keine wesentliche Änderung in zwei Stunden erwartet',
  BECMG: 'Übergang erwartet',
  TEMPO: 'Zeitweise erwartet',
  INTER: 'Mit Unterbrechungen erwartet',
  PROB: 'Wahrscheinlichkeit',
  FM: 'Ab dann erwartet',
} as const;

const MODIFIERS = {
  automatic: 'Von einer automatischen Station, ohne Beobachter',
  corrected: 'Eine berichtigte Meldung',
  amended: 'Eine geänderte Meldung',
  late: 'Eine verspätete Meldung',
  missing: 'Die Meldung fehlt',
} as const;

const TENDENCIES = {
  rising: 'zunehmend',
  falling: 'abnehmend',
  steady: 'gleichbleibend',
} as const;

const two = (value: number) => String(value).padStart(2, '0');

/** `ab 1400Z`, or with the day `ab dem 5. um 1400Z`, each with its own preposition. */
function timeWords({ day, hour, minute }: HourOfDay, before: string, beforeDay: string): string {
  const time = `${two(hour)}${two(minute)}Z`;
  return day === null ? `${before} ${time}` : `${beforeDay} ${wholeNumber(day)}. um ${time}`;
}

/** Prepositions before a time and before a day. */
const SINCE_UNTIL_AT = {
  FM: ['Ab', 'Ab dem'],
  TL: ['Bis', 'Bis zum'],
  AT: ['Um', 'Am'],
} as const;

const celsius = (value: number) => `${decimal(value, Number.isInteger(value) ? 0 : 1)} °C`;

function temperatureWords(airC: number | null, dewPointC: number | null): string {
  const air = airC === null ? 'Temperatur nicht gemessen' : `Temperatur ${celsius(airC)}`;
  return dewPointC === null ? air : `${air}, Taupunkt ${celsius(dewPointC)}`;
}

const expectedWind = (wind: Wind) => windWords.windWords(wind, wind.fromDeg, null);

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function meaning(is: Meaning): string {
  switch (is.code) {
    case 'bulletin':
      return 'Kopfzeile eines Bulletins';
    case 'type':
      return is.type === 'SPECI'
        ? 'Sondermeldung zwischen den Routinemeldungen'
        : is.type === 'TAF'
          ? 'Flugplatzwettervorhersage'
          : 'Routinemeldung';
    case 'station':
      return `Station ${is.station}`;
    case 'issued':
      return `Beobachtet am ${is.day}. um ${two(is.hour)}${two(is.minute)}Z`;
    case 'modifier':
      return MODIFIERS[is.modifier];
    case 'wind':
      return expectedWind(is.wind);
    case 'swing':
      return `Schwankt von ${direction(is.sectorDeg[0])} bis ${direction(is.sectorDeg[1])}`;
    case 'visibility': {
      if (is.distance === null) return 'Sicht nicht gemessen';
      const towards = is.towards === null ? '' : ` in Richtung ${is.towards}`;
      return `Sicht ${distanceWords(is.distance)}${towards}`;
    }
    case 'cavok':
      return 'Sicht 10 km oder mehr, keine Wolken von Bedeutung, kein Wetter';
    case 'runway-visual-range': {
      if (is.distance === null) return `Piste ${is.runway}: Pistensichtweite nicht gemessen`;
      const upTo = is.upTo === null ? '' : ` bis ${distanceWords(is.upTo)}`;
      const tendency = is.tendency === null ? '' : `, ${TENDENCIES[is.tendency]}`;
      return `Piste ${is.runway}: Pistensichtweite ${distanceWords(is.distance)}${upTo}${tendency}`;
    }
    case 'weather':
      return weatherWords(is);
    case 'no-significant-weather':
      return 'Wetter vorbei';
    case 'cloud': {
      const amount = is.amount === null ? 'Bewölkung' : AMOUNTS[is.amount];
      const base = is.baseFt === null ? '' : `, Untergrenze ${wholeNumber(is.baseFt)} ft`;
      const kind =
        is.convective === 'CB'
          ? ', Cumulonimbus'
          : is.convective === 'TCU'
            ? ', aufgetürmte Cumulus'
            : '';
      return amount + base + kind;
    }
    case 'vertical-visibility':
      return is.heightFt === null
        ? 'Himmel nicht erkennbar'
        : `Himmel nicht erkennbar, Vertikalsicht ${wholeNumber(is.heightFt)} ft`;
    case 'no-cloud':
      return NO_CLOUD[is.as];
    case 'temperature':
    case 'temperature-tenths':
      return temperatureWords(is.airC, is.dewPointC);
    case 'pressure':
      return is.qnhHpa === null
        ? 'QNH nicht gemessen'
        : `QNH ${is.qnhHpa.toFixed(0)} hPa${is.qnhInHg === null ? '' : `, ${decimal(is.qnhInHg, 2)} inHg`}`;
    case 'wind-shear': {
      const path =
        is.path === null ? '' : is.path === 'take-off' ? ' beim Start' : ' bei der Landung';
      return `Windscherung${path}${is.runway === null ? '' : `, ${runwayWords(is.runway)}`}`;
    }
    case 'shear-aloft':
      return `Windscherung: über ${wholeNumber(is.heightFt)} ft ${direction(is.fromDeg)} mit ${wholeNumber(is.speedKt)} kt`;
    case 'sea':
      return `See${is.waterC === null ? '' : `, Wasser ${celsius(is.waterC)}`}${is.wavesM === null ? '' : `, Wellen ${decimal(is.wavesM, 1)} m`}`;
    case 'runway-state':
      return runwayStateWords(is);
    case 'snow-closed':
      return is.runway === 'all'
        ? 'Wegen Schnee geschlossen'
        : `Piste ${is.runway} wegen Schnee geschlossen`;
    case 'colour-state':
      return 'Farbcode eines Militärplatzes';
    case 'maintenance':
      return 'Station meldet Wartungsbedarf';
    case 'trend':
      return `${TRENDS[is.trend]}${is.percent === null ? '' : `, ${is.percent} %`}`;
    case 'time': {
      const [before, beforeDay] = SINCE_UNTIL_AT[is.is];
      return timeWords(is, before, beforeDay);
    }
    case 'validity':
      return `Gültig ${timeWords(is.from, 'von', 'vom')} ${timeWords(is.to, 'bis', 'bis zum')}`;
    case 'extreme':
      return `${is.is === 'TX' ? 'Höchstwert' : 'Tiefstwert'} ${celsius(is.airC)} ${timeWords(is, 'um', 'am')}`;
    case 'remarks':
      return 'Bemerkungen: nicht das Wetter von jetzt';
    case 'peak-wind':
      return `Stärkster Wind seit der letzten Stunde: ${direction(is.fromDeg)} mit ${wholeNumber(is.speedKt)} kt; nicht der Wind von jetzt`;
    case 'sea-level-pressure':
      return is.seaLevelHpa === null
        ? 'Luftdruck auf Meereshöhe nicht verfügbar'
        : `Luftdruck auf Meereshöhe ${decimal(is.seaLevelHpa, 1)} hPa`;
    case 'remark':
      return REMARKS[is.remark];
    case 'end':
      return 'Ende der Meldung';
  }
}

export const words: Translated<typeof english> = {
  meaning,
  groupByGroup: 'Gruppe für Gruppe',
  title: 'Die Meldung, Gruppe für Gruppe',
  close: 'Schließen',
  notRead: 'Nicht gelesen',
  another: 'Aus einer anderen Meldung',
  noMeaning: 'Erkannt, aber nicht weiter gelesen',
  expected: 'Erwartet, nicht jetzt',
  remark: 'Bemerkung',
  otherReports: 'Weitere Meldungen im Text',
  useThis: 'Diese nehmen',
};
