/** What speaks against the runway in use, in German. */

import type { CautionCode } from '../../core';
import { wholeNumber } from '../format';
import type { Translated } from '../translated';
import { length } from '../units';
import { available, beyond, feet, kg, kt, needed, number, seen, type Told } from './told';
import type { words as english } from './words.en';

const noNumbers: Readonly<Record<string, string>> = {
  'under-empty': 'Leichter als das leere Flugzeug',
  'never-lifts-off': 'Hebt hier heute nicht ab',
  'never-stops': 'Kommt hier heute nicht zum Stehen',
  'slope-unreasonable': 'Piste steiler als 10 %',
  'wind-unreasonable': 'Über 80 kt längs der Piste',
};

const short = (what: string, of: string) => (told: Told) =>
  `Zu kurz: ${what} ${needed(told)}, ${of} ${available(told)}`;

const sentences: Readonly<Record<CautionCode, (told: Told) => string>> = {
  'no-field': () => 'Kein Platz gewählt',
  'no-end': ({ value }) => `Piste ${value ?? ''} gibt es an diesem Platz nicht`,
  closed: ({ value }) => `Gesperrt: ${value ?? ''}`,
  'closed-by-report': () => 'Laut Meldung gesperrt',
  'closed-today': () => 'Heute gesperrt',
  'not-for-purpose': ({ value }) => (value === 'landing' ? 'Nicht zur Landung' : 'Nicht zum Start'),
  'no-numbers': ({ value }) => noNumbers[String(value)] ?? 'Keine Werte für heute',
  'no-run': () => 'Für dieses Flugzeug ist keine Rollstrecke angegeben',
  'over-mass': () => 'Über der größten Masse',
  'over-max-take-off': ({ value }) => `${kg(value)} über der höchsten Startmasse`,
  'over-max-landing': ({ value }) => `${kg(value)} über der höchsten Landemasse`,
  'no-fuel': () => 'Kein Kraftstoff an Bord',
  'outside-envelope': () => 'Schwerpunkt außerhalb der Grenzen',
  'fuel-over': ({ value }) => `${kg(value)} Kraftstoff zu viel für die Tanks`,
  'station-over': ({ value, limit }) => `Zu viel in ${limit ?? ''}: ${kg(value)} darüber`,
  'cannot-climb': () => 'Steigt hier heute nicht auf 50 ft',
  tora: short('Rollstrecke', 'TORA'),
  toda: short('50 ft bei', 'TODA'),
  asda: short('Halt bei', 'ASDA'),
  lda: short('Landung', 'LDA'),
  'go-above-stop': ({ value, limit }) =>
    value === null
      ? 'Zu kurz für den Weiterstart nach Triebwerksausfall'
      : `Weiterstart ab ${kt(value)}, Abbruch bis ${kt(limit)}`,
  tyres: ({ value, limit }) =>
    value === null
      ? 'Reifengrenze'
      : `Reifen: ${beyond({ code: 'tyres', value, limit })} kt über Grund, Grenze ${kt(limit)}`,
  'brake-energy': ({ value, limit }) =>
    value === null
      ? 'Mehr Bremsenergie als zulässig'
      : `Bremsenergie ${beyond({ code: 'brake-energy', value, limit })} MJ, Grenze ${kt(limit)}`,
  'brakes-hot': ({ value, limit }) => `Bremsen heiß: ${kt(value)} von ${kt(limit)} min gekühlt`,
  parachute: () => 'Aufsetzen über der Schirmgeschwindigkeit',
  'parachute-used': () => 'Bremsschirm verbraucht, nicht gepackt',
  crosswind: (told) => `Seitenwind ${beyond(told)}, Grenze ${kt(told.limit)}`,
  tailwind: (told) => `Rückenwind ${beyond(told)}, Grenze ${kt(told.limit)}`,
  'gust-spread': (told) => `Bö ${beyond(told)} kt über dem Wind, Grenze ${kt(told.limit)}`,
  'speed-unbounded': () => 'Windgeschwindigkeit nur nach unten bekannt',
  'speed-not-known': () => 'Windgeschwindigkeit nicht gemeldet',
  'no-wind': () => 'Kein Wind eingegeben',
  'no-limits': () => 'Keine Windgrenzen: kein Flugzeug gewählt',
  'no-variation': () => 'Missweisung unbekannt: missweisender Wind unbrauchbar',
  'none-within-limits': () => 'Keine Piste innerhalb der Grenzen',
  'below-landing-fuel': ({ value }) => `${kg(value)} unter dem Landekraftstoff`,
  bingo: ({ value, limit }) => `Kraftstoff ${kg(value)}, Bingo ${kg(limit)}`,
  visibility: ({ value, limit }) => `Sicht ${seen(value)}, eigenes Minimum ${seen(limit)}`,
  ceiling: ({ value, limit }) => `Untergrenze ${feet(value)}, eigenes Minimum ${feet(limit)}`,
  narrow: ({ value, limit }) =>
    `Piste ${length(number(value))} breit, nötig ${length(number(limit))}`,
  'no-lights': () => 'Nacht, und keine Pistenlichter',
  thunderstorm: () => 'Gewitter gemeldet',
  'wind-shear': () => 'Windscherung gemeldet',
  icing: () => 'Gefrierender Niederschlag',
  'forecast-crosswind': (told) =>
    `Vorhergesagt: Seitenwind ${beyond(told)}, Grenze ${kt(told.limit)}`,
  'forecast-tailwind': (told) =>
    `Vorhergesagt: Rückenwind ${beyond(told)}, Grenze ${kt(told.limit)}`,
  'forecast-gust-spread': (told) =>
    `Vorhergesagt: Bö ${beyond(told)} kt über dem Wind, Grenze ${kt(told.limit)}`,
  'forecast-visibility': ({ value, limit }) =>
    `Vorhergesagte Sicht ${seen(value)}, eigenes Minimum ${seen(limit)}`,
  'forecast-ceiling': ({ value, limit }) =>
    `Vorhergesagte Untergrenze ${feet(value)}, eigenes Minimum ${feet(limit)}`,
  'demonstrated-crosswind': (told) =>
    `Seitenwind ${beyond(told)}, nur bis ${kt(told.limit)} erprobt`,
  'near-length': (told) => `Piste fast ausgenutzt: ${needed(told)} von ${available(told)}`,
  'near-crosswind': (told) => `Seitenwind ${kt(told.value)}, nahe der Grenze von ${kt(told.limit)}`,
  'near-tailwind': (told) => `Rückenwind ${kt(told.value)}, nahe der Grenze von ${kt(told.limit)}`,
  'near-tyres': (told) => `Abheben mit ${kt(told.value)} kt über Grund, nahe der Reifengrenze`,
  'wet-tailwind': ({ value }) => `Nicht trocken, und ${kt(value)} kt Rückenwind`,
  aquaplaning: ({ value }) => `Aquaplaning ab ${kt(value)} kt`,
  cable: ({ value }) => `Fangseil nach ${length(number(value))}`,
  surface: ({ value }) => (value === 'wet' ? 'Piste nass' : 'Piste kontaminiert'),
  'wind-old': ({ value }) => `Wind ${wholeNumber(number(value))} min alt`,
  'density-altitude': ({ value, limit }) =>
    `Dichtehöhe ${wholeNumber(Math.round(number(value) / 100) * 100)} ft, Platz ${wholeNumber(number(limit))} ft`,
  'low-sun': () => 'Tiefe Sonne voraus',
  'off-book': ({ value }) =>
    `Berechnete Strecken bis zu ${wholeNumber(Math.ceil(number(value)))} % neben dem Handbuch`,
  'lights-unknown': () => 'Nacht, und unbekannt, ob die Piste befeuert ist',
  'width-unknown': () => 'Pistenbreite unbekannt',
  'surface-unknown': () => 'Belag unbekannt: Werte für Asphalt',
  'slope-unknown': () => 'Neigung unbekannt: Werte für ebene Piste',
  'lengths-unknown': () => 'Strecken nicht veröffentlicht: Pistenlänge gilt',
  doubtful: ({ value }) => doubts[String(value)] ?? 'Pistendaten zweifelhaft',
  'not-best': ({ limit }) => `Beste Piste ${limit ?? ''}`,
};

const another = 'Andere Piste wählen.';
const lessLoad = 'Weniger Kraftstoff oder Ladung nehmen.';
const shorter = 'Andere Piste, ganze Länge, weniger Masse oder kühlere Luft.';
const forTheWind = 'Andere Piste, oder auf den Wind warten.';

const doubts: Readonly<Record<string, string>> = {
  swapped: 'Pistennummern in der Quelle vertauscht',
  number: 'Pistennummer zweifelhaft',
  length: 'Pistenlänge zweifelhaft: die kürzere gilt',
  heading: 'Pistenrichtung zweifelhaft: aus den Koordinaten',
  'one-end': 'Fernes Pistenende errechnet',
  elevation: 'Höhe der Piste zweifelhaft',
  displaced: 'Versetzte Schwelle zweifelhaft',
};

const mends: Readonly<Partial<Record<CautionCode, string>>> = {
  'no-end': another,
  closed: another,
  'closed-by-report': another,
  'closed-today': 'Andere Piste wählen, oder sie in ihren Einzelheiten wieder öffnen.',
  'not-for-purpose': another,
  'no-numbers': 'Weniger Masse, oder eine andere Piste.',
  'no-run': 'Rollstrecken oder Handbuchtabelle des Flugzeugs in der Bibliothek eintragen.',
  'over-mass': lessLoad,
  'over-max-take-off': lessLoad,
  'over-max-landing': 'Mit weniger Kraftstoff oder Ladung landen.',
  'no-fuel': 'Kraftstoff in der Ladung eingeben.',
  'outside-envelope': 'Ladung verschieben oder ändern.',
  'fuel-over': 'Weniger Kraftstoff nehmen.',
  'station-over': 'Dort weniger laden.',
  'cannot-climb': 'Weniger Masse, oder auf kühlere Luft warten.',
  tora: shorter,
  toda: shorter,
  asda: 'Andere Piste, ganze Länge oder weniger Masse.',
  lda: 'Andere Piste, oder weniger Landemasse.',
  'go-above-stop': 'Andere Piste, ganze Länge oder weniger Masse.',
  tyres: 'Andere Piste, mehr Gegenwind oder weniger Masse.',
  'brake-energy': 'Andere Piste, oder weniger Masse.',
  parachute: 'Mit weniger Masse landen, oder nicht mit ihm rechnen.',
  'brakes-hot': 'Warten, bis sie kühl sind.',
  'parachute-used': 'Packen und den Schritt neu abhaken, oder ohne ihn fliegen.',
  crosswind: forTheWind,
  tailwind: forTheWind,
  'gust-spread': 'Auf den Wind warten.',
  'speed-unbounded': 'Wind erfragen.',
  'speed-not-known': 'Wind erfragen.',
  'no-wind': 'Wind eingeben.',
  'no-limits': 'Flugzeug wählen.',
  'none-within-limits': 'Weniger Masse, anderer Platz, oder auf den Wind warten.',
  'below-landing-fuel': 'Mehr Kraftstoff nehmen.',
  'forecast-crosswind': 'Andere Piste, oder ein anderer Zeitpunkt.',
  'forecast-tailwind': 'Andere Piste, oder ein anderer Zeitpunkt.',
  'forecast-gust-spread': 'Ein anderer Zeitpunkt.',
  bingo: 'Mehr Kraftstoff nehmen oder Bingo tiefer setzen.',
  visibility: 'Auf das Wetter warten, oder ein anderer Platz.',
  ceiling: 'Auf das Wetter warten, oder ein anderer Platz.',
  'forecast-visibility': 'Ein anderer Zeitpunkt, oder ein anderer Platz.',
  'forecast-ceiling': 'Ein anderer Zeitpunkt, oder ein anderer Platz.',
  narrow: another,
  'no-lights': another,
  'off-book': 'Die Handbuchtabelle des Flugzeugs in der Bibliothek ansehen.',
  'wind-old': 'Wind erfragen.',
};

/** The same where no other runway is within limits. */
const noOther = 'Keine andere Piste liegt in den Grenzen.';
const alone: Readonly<Partial<Record<CautionCode, string>>> = {
  'no-end': noOther,
  closed: noOther,
  'closed-by-report': noOther,
  'closed-today': 'In ihren Einzelheiten wieder öffnen.',
  'not-for-purpose': noOther,
  'no-numbers': 'Weniger Masse.',
  tora: 'Ihre ganze Länge, weniger Masse oder kühlere Luft.',
  toda: 'Ihre ganze Länge, weniger Masse oder kühlere Luft.',
  asda: 'Ihre ganze Länge oder weniger Masse.',
  lda: 'Weniger Masse bei der Landung.',
  'go-above-stop': 'Ihre ganze Länge oder weniger Masse.',
  tyres: 'Mehr Gegenwind oder weniger Masse.',
  'brake-energy': 'Weniger Masse.',
  crosswind: 'Auf den Wind warten.',
  tailwind: 'Auf den Wind warten.',
  'forecast-crosswind': 'Ein anderer Zeitpunkt.',
  'forecast-tailwind': 'Ein anderer Zeitpunkt.',
  narrow: noOther,
  'no-lights': noOther,
};

export const words: Translated<typeof english> = {
  said: (told: Told) => sentences[told.code](told),
  mend: (code, isOther) => (isOther ? mends[code] : (alone[code] ?? mends[code])) ?? '',
  more: (count: number) => `${count} weitere`,
  opens: 'öffnet, was gegen diese Piste spricht',
  title: (end: string | null) => (end === null ? 'Hinweise' : `Hinweise, Piste ${end}`),
  none: 'Innerhalb der angegebenen Grenzen.',
  close: 'Schließen',
  stops: 'Außerhalb der Grenzen',
  inAWord: 'Außerdem',
  toWatch: 'Zu beachten',
  accepted: (time: string) => `Um ${time} außerhalb der Grenzen fortgesetzt`,
  went: 'Außerhalb der Grenzen fortgesetzt',
  openWind: 'Wind öffnen',
  openLoad: 'Ladung öffnen',
  goOn: 'Außerhalb der Grenzen fortsetzen',
  hold: 'Gedrückt halten',
};
