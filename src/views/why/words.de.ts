/** The words of Why, in German: formulas in one line, names of their inputs, sources, causes. */

import type { EndFigures } from '../../core';
import { decimal } from '../../parts/format';
import type { Translated } from '../../parts/translated';
import type { words as english } from './words.en';

/** One-line formulas; inputs go by their {@link inputNames}. */
const formulas: Record<string, string> = {
  'as-given': 'wie angegeben',
  'as-set': 'wie von dir gesetzt',
  'smaller-limit': 'die kleinere der beiden Grenzen',
  variation: 'Winkel von rechtweisend zu missweisend Nord im Feld des Modells, Ost positiv',
  headwind: 'Windgeschwindigkeit × cos (Windrichtung − Pistenrichtung)',
  'headwind-least':
    'Windgeschwindigkeit × cos (Winkel), beim Winkel der Schwankung, der am weitesten von der Piste abweicht',
  crosswind: 'Windgeschwindigkeit × sin (Windrichtung − Pistenrichtung)',
  'crosswind-worst':
    'stärkster Wind × sin (Winkel), beim Winkel der Schwankung, der 90° am nächsten kommt',
  'tailwind-worst':
    'stärkster Wind × −cos (Winkel), beim Winkel der Schwankung, der am weitesten von der Piste abweicht; nicht unter 0',
  magnetic: 'Pistenrichtung − Ortsmissweisung',
  'pressure-altitude': 'Platzhöhe + Höhe des Drucks QNH in der Standardatmosphäre',
  'density-altitude': 'Höhe in der Standardatmosphäre, in der die Luft diese Dichte hat',
  'density-altitude-moist':
    'Höhe in der Standardatmosphäre, in der die Luft die Dichte der nach dem Taupunkt feuchten Luft hat',
  'gust-spread': 'Bö − mittlerer Wind',
  'smaller-spare': 'die kleinere der beiden Seiten',
  'limit-speed': 'Windgeschwindigkeit × Grenze ÷ jetziger Höchstwert, die Bö wächst mit dem Wind',
  'sun-height': 'Höhe des Sonnenmittelpunkts, Refraktion eingeschlossen',
  'zero-fuel-mass': 'leeres Flugzeug + Besatzung + Zuladung der Stationen',
  'mass-with-fuel': 'Masse ohne Kraftstoff + Kraftstoff',
  'centre-of-gravity': 'Summe aus jeder Masse × ihrem Hebelarm, ÷ Masse',
  'standard-temperature': `15 °C − ${decimal(6.5, 1)} °C je Kilometer Druckhöhe`,
  'root-of-mass': 'Handbuchwert × √(Masse ÷ übliche Masse)',
  'safety-speed': `die größere von Abhebegeschwindigkeit und ${decimal(1.2, 1)} × Überziehgeschwindigkeit`,
  'climb-speed':
    'Mitte der beiden Handbuchwerte × √(Masse ÷ übliche Masse), zwischen kleinstem und größtem',
  run: `Masse × (Geschwindigkeit über Grund)² ÷ (2 × (Schub − Widerstand − Reibung − Hangabtrieb)): jede Kraft als Mittel längs der Strecke; 1 kt sind ${decimal(0.5144, 4)} m/s`,
  'run-and-climb': 'Rollstrecke + Weg vom Abheben bis 50 ft',
  'left-over': 'verfügbar − Beginn des Startlaufs − benötigt',
  'smallest-of': 'der kleinste der erlaubten Werte',
  'accelerate-stop': `Rollstrecke bis zu dieser Geschwindigkeit + Geschwindigkeit über Grund × Zeit, bis die Bremsen greifen, + Bremsen bis zum Stillstand; 1 kt sind ${decimal(0.5144, 4)} m/s`,
  'speed-at-mark': `(√(2 × Strecke × (Schub − Widerstand − Reibung − Hangabtrieb) ÷ Masse) + Gegenwind) × √(Dichteverhältnis), als angezeigte Geschwindigkeit: jede Kraft als Mittel bis zur Prüfmarke; 1 m/s sind ${decimal(1.944, 3)} kt`,
  'greatest-of': 'die größte von ihnen',
  'engine-out-run': `(√(2 × (was bis zum Abheben da ist − was ein Triebwerk braucht) × (Schub − Widerstand − Reibung − Hangabtrieb) ÷ Masse) + Gegenwind) × √(Dichteverhältnis), als angezeigte Geschwindigkeit: was beide Triebwerke bis dort erreichen; 1 m/s sind ${decimal(1.944, 3)} kt`,
  'limit-less-speed': 'Grenze − Geschwindigkeit über Grund beim Abheben',
  'ground-gradient':
    'Steiggradient × wahre Fahrt ÷ Fahrt über Grund: wahre Fahrt längs des Wegs − Gegenwind',
  'climb-gradient': '100 × (Schub − Widerstand) ÷ (Gewichtskraft × Faktor für den Fahrtgewinn)',
  pitch: 'Steigwinkel, arcsin (Steiggradient ÷ 100), + Anstellwinkel',
  'climb-rate': `wahre Fluggeschwindigkeit × Sinus des Steigwinkels, in ft/min: ${decimal(101.27, 2)} für einen Knoten`,
  'reference-speed': 'Faktor × Überziehgeschwindigkeit',
  'approach-half-gust': 'Referenzgeschwindigkeit + halbe Bö über dem Wind',
  'approach-half-wind-and-gust':
    'Referenzgeschwindigkeit + halber Gegenwind + Bö über dem Wind, höchstens 20 kt Zuschlag',
  'share-of-approach': 'Anteil × Anfluggeschwindigkeit',
  'landing-air': `Radius des Abfangens R = (Geschwindigkeit dabei)² ÷ (${decimal(0.2, 1)} × ${decimal(9.807, 3)} m/s²); auf dem Gleitweg (${decimal(15.24, 2)} m − R × (1 − cos Gleitwinkel)) ÷ tan Gleitwinkel; Abfangen R × sin Gleitwinkel, oder, wenn das länger ist, Masse × (Fluggeschwindigkeit auf dem Gleitweg² − beim Aufsetzen²) ÷ (2 × (Widerstand − Schub)); jeweils × (1 − Gegenwind ÷ Fluggeschwindigkeit)`,
  'landing-run': `Geschwindigkeit über Grund × Zeit, bis die Bremsen greifen, + Masse × (Geschwindigkeit über Grund)² ÷ (2 × (Bremsen + Widerstand + Hangabtrieb − Schub)): jede Kraft als Mittel von da bis zum Stillstand; 1 kt sind ${decimal(0.5144, 4)} m/s`,
  sum: 'die Summe der beiden',
  'times-factor': 'benötigt × Faktor',
  'left-of-lda': 'verfügbar − benötigt',
  'left-of-end':
    'ausgewiesene Strecke mit dem kleinsten Spielraum − was heute davon benötigt wird, geplant; bis das berechnet ist, die Strecke aus dem Handbuch',
  'path-sink': `Geschwindigkeit über Grund im Anflug × tan (Gleitwinkel) × ${decimal(101.27, 2)}: bei 3° ${decimal(5.3, 1)} ft/min je Knoten`,
  'go-around':
    '100 × (Schub − Widerstand) ÷ Gewichtskraft bei Anfluggeschwindigkeit, Fahrwerk ausgefahren, Klappen wie beim Start',
  tora: 'verfügbare Startlaufstrecke, wie ausgewiesen',
  toda: 'verfügbare Startstrecke, wie ausgewiesen',
  asda: 'verfügbare Startabbruchstrecke, wie ausgewiesen',
  lda: 'verfügbare Landestrecke, wie ausgewiesen',
};

const inputNames: Record<string, string> = {
  given: 'angegeben',
  set: 'gesetzt',
  aircraftKt: 'Grenze des Flugzeugs',
  ownKt: 'deine eigene Grenze',
  latDeg: 'Breite',
  lonDeg: 'Länge',
  elevationM: 'Platzhöhe',
  date: 'Datum',
  speedKt: 'Windgeschwindigkeit',
  windTrueDeg: 'Windrichtung, rechtweisend',
  runwayTrueDeg: 'Pistenrichtung, rechtweisend',
  strongestKt: 'stärkster Wind, Bö eingeschlossen',
  angleDeg: 'Winkel',
  variation: 'Ortsmissweisung, Ost positiv',
  qnhHpa: 'QNH',
  elevationFt: 'Platzhöhe',
  pressureAltitude: 'Druckhöhe',
  temperatureC: 'Temperatur',
  dewPointC: 'Taupunkt',
  gustKt: 'Bö',
  spareLeftDeg: 'Spielraum, wenn er nach links dreht',
  spareRightDeg: 'Spielraum, wenn er nach rechts dreht',
  limitKt: 'Grenze',
  worstKt: 'jetziger Höchstwert',
  time: 'Zeit, UTC',
  emptyKg: 'leeres Flugzeug',
  crewKg: 'Besatzung',
  carriedKg: 'Zuladung der Stationen',
  zeroFuelMass: 'Masse ohne Kraftstoff',
  fuelKg: 'Kraftstoff',
  momentKgM: 'Summe aus jeder Masse × ihrem Hebelarm',
  mass: 'Masse',
  bookKt: 'Handbuchwert',
  massKg: 'Masse',
  usualMassKg: 'übliche Masse',
  stallKt: 'Überziehgeschwindigkeit',
  liftOff: 'Abhebegeschwindigkeit',
  leastKt: 'kleinste',
  mostKt: 'größte',
  groundKt: 'Geschwindigkeit über Grund',
  run: 'Rollstrecke',
  airM: 'vom Abheben bis 50 ft',
  toraM: 'TORA',
  todaM: 'TODA',
  ldaM: 'LDA',
  availableM: 'verfügbar',
  rollsFromM: 'Beginn des Startlaufs',
  needed: 'benötigt',
  neededM: 'benötigt',
  fieldAllowsKt: 'erlaubt die Piste',
  brakesAllowKt: 'erlaubt die Bremsenergie',
  tyresAllowKt: 'erlauben die Reifen',
  parachuteAllowsKt: 'erlaubt der Bremsschirm',
  rotationKt: 'Rotieren',
  fromKt: 'Abbruch bei',
  toSpeedM: 'Rollstrecke bis zu dieser Geschwindigkeit',
  heldS: 'bis die Bremsen greifen',
  brakingM: 'Bremsen',
  distanceM: 'bis zur Prüfmarke',
  headwindKt: 'angerechneter Gegenwind',
  densityRatio: 'Dichte geteilt durch die auf Meereshöhe',
  leastInWindKt: 'im heutigen Wind: 5 kt unter der erwarteten Fahrt, oder was noch passt',
  leastForRunKt: 'damit der Startlauf noch passt',
  leastForStopKt: 'damit der Abbruch noch passt',
  withinM: 'bis zum Abheben, was TORA und TODA lassen',
  onwardM: 'vom Ausfall bis zum Abheben mit einem Triebwerk',
  minimumControlKt: 'kleinste, bei der das Seitenruder ein ausgefallenes Triebwerk ausgleicht',
  standingKt: 'zeigt der Wind allein',
  thrustN: 'Schub',
  dragN: 'Widerstand',
  frictionN: 'Reibung der Räder',
  slopeN: 'Hangabtrieb, bergauf positiv',
  brakesN: 'Bremsen',
  weightN: 'Gewichtskraft',
  gradient: 'Steiggradient',
  accelerationFactor: 'Faktor für den Gewinn an wahrer Fahrt im Steigen',
  alphaDeg: 'Anstellwinkel',
  trueKt: 'wahre Fluggeschwindigkeit',
  factor: 'Faktor',
  reference: 'Referenzgeschwindigkeit',
  pathDeg: 'Gleitwinkel',
  gustSpreadKt: 'Bö über dem Wind',
  approach: 'Anfluggeschwindigkeit',
  share: 'Anteil',
  air: 'in der Luft',
  approachTrueKt: 'wahre Fluggeschwindigkeit auf dem Gleitweg',
  flareTrueKt: 'wahre Fluggeschwindigkeit beim Abfangen',
  touchdownTrueKt: 'wahre Fluggeschwindigkeit beim Aufsetzen',
};

/** Published titles stay as published. */
const sources: Record<string, string> = {
  pilot: 'Du, unter „Flug“.',
  aircraft: 'Das Dokument des Flugzeugs.',
  load: 'Das Dokument des Flugzeugs und deine Beladung.',
  'weight-and-balance':
    'FAA-H-8083-25, Pilot’s Handbook of Aeronautical Knowledge, Kap. 10: Masse und Schwerpunkt.',
  field: 'Das Dokument des Platzes.',
  report: 'Die benutzte Meldung.',
  'turned-by-degrees':
    'Der Wind, Grad um Grad gedreht, bei gleicher Stärke und Schwankung, bis eine andere Piste die beste ist.',
  'lift-equation':
    'Bei gleichem Anstellwinkel wächst der Auftrieb mit dem Quadrat der Geschwindigkeit: Sie geht also mit der Wurzel der Masse.',
  '14-cfr-23-53': '14 CFR 23.53 in der Fassung bis 2017.',
  'equation-of-motion':
    'm dV/dt = Schub − Widerstand − Reibung × (Gewichtskraft − Auftrieb) − Gewichtskraft längs der Neigung, in kleinen Schritten summiert.',
  'equation-of-motion-by-density':
    'm dV/dt = Schub − Widerstand − Reibung × (Gewichtskraft − Auftrieb) − Gewichtskraft längs der Neigung, in kleinen Schritten summiert. Das Dokument des Flugzeugs sagt nicht, was Hitze vom Schub nimmt: Er fällt nur mit der Dichte, an heißen Tagen also zu wenig.',
  'accelerate-stop':
    '14 CFR 25.109: zwei Sekunden bei dieser Geschwindigkeit, dann Bremsen. Von da an Leerlaufschub.',
  'takeoff-factor':
    'Der Faktor aus dem Dokument des Flugzeugs oder der gewählte: 1,15 für Jets (14 CFR 25.113), 1,33 für leichte Flugzeuge (UK CAA Safety Sense Leaflet 7c).',
  'landing-factor':
    'Der Faktor aus dem Dokument des Flugzeugs oder der gewählte: 1,43 für leichte Flugzeuge (UK CAA Safety Sense Leaflet 7c), 1,67 für Jets (14 CFR 121.195: innerhalb von 0,6 der LDA); wo es nicht trocken ist, 1,15 mehr (ebenda, aus dem Gedächtnis).',
  'scaled-thrust':
    'Schub so weit verringert, dass der Startlauf gerade in die TORA und der Abbruch gerade in die ASDA passt.',
  'arc-of-flare':
    'Anderson, Aircraft Performance and Design, 6.8.1 und 6.8.2: ein gerader Weg und ein Bogen mit 1,2 g; m dV/dt = Schub − Widerstand für die Fahrt, die dabei abnimmt.',
  'far-23-73': 'Frühere FAR 23.73.',
  'cs-25-125': 'CS 25.125.',
  'faa-8083-3': 'FAA-H-8083-3, Airplane Flying Handbook, Kap. 8.',
  'planned-length':
    'Das Dokument des Platzes und die heutige Strecke mit der Hälfte des Gegenwinds oder dem Anderthalbfachen des Rückenwinds: 14 CFR 25.105(d)(1).',
  practice: 'Übliche Praxis, keine veröffentlichte Quelle.',
  suncalc: 'suncalc, nach Meeus, Astronomical Algorithms.',
  isa: 'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere.',
  'wind-components':
    'FAA-H-8083-25, Pilot’s Handbook of Aeronautical Knowledge, Kap. 11: Windkomponenten.',
  'IGRF-12': 'IGRF-12, International Geomagnetic Reference Field, IAGA.',
  WMM2015: 'World Magnetic Model 2015, NOAA und BGS.',
  WMM2015v2: 'World Magnetic Model 2015, Version 2, NOAA und BGS.',
  WMM2020: 'World Magnetic Model 2020, NOAA und BGS.',
  WMM2025: 'World Magnetic Model 2025, NOAA und BGS.',
};

const causes: Record<string, string> = {
  'no-field': 'Kein Platz ist gewählt.',
  'no-aircraft': 'Kein Flugzeug ist gewählt.',
  'no-magnetic-model': 'Kein Magnetfeldmodell gilt für das Datum des Flugs: nur für 1900 bis 2029.',
  'not-firm': 'Das hat nur die beste Piste, bei einem Wind mit Richtung.',
  'never-changes': 'Sie bleibt aus jeder Richtung die beste.',
  'no-limit-reached': 'Dieser Wind erreicht bei keiner Stärke eine Grenze.',
  'no-low-sun': 'Keine tiefe Sonne steht voraus.',
  'no-qnh': 'In der Meldung steht kein QNH.',
  'no-temperature': 'In der Meldung steht keine Temperatur.',
  'no-gust': 'In der Meldung steht keine Bö.',
  'beyond-atmosphere': 'Es liegt außerhalb dessen, was die Standardatmosphäre hier abdeckt.',
  'no-speed': 'Die Windgeschwindigkeit wurde nicht gemeldet.',
  'no-direction': 'Der Wind hat keine Richtung.',
  'no-fuel': 'Es ist kein Kraftstoff an Bord.',
  'no-length-needed': 'Was benötigt wird, ist nicht bekannt.',
  'no-end': 'Keine Piste ist gewählt.',
  'no-mark': 'Keine Prüfmarke ist gesetzt.',
  'mark-behind': 'Die Prüfmarke liegt am Beginn des Startlaufs oder davor.',
  'mark-beyond-stop': 'Dort ist das Flugzeug schon zu schnell für einen Abbruch.',
  'mark-beyond-run': 'Das Flugzeug hebt vor der Prüfmarke ab.',
  'runway-too-short': 'Die Piste ist dafür zu kurz.',
  'cannot-climb': 'Das Flugzeug kann nicht steigen.',
  'one-engine': 'Das Flugzeug hat nur ein Triebwerk.',
  'not-in-aircraft': 'Im Dokument des Flugzeugs steht es nicht.',
};

/** Titles of a runway end's figures that the frame's words lack. */
const titles: Partial<Record<keyof EndFigures, string>> = {
  headingMagnetic: 'Pistenrichtung, missweisend',
  left: 'Reserve',
  spare: 'Wie weit der Wind noch drehen kann',
  tailwindWorst: 'Rückenwind',
};

const title: (typeof english)['title'] = (name, purpose) =>
  name === 'available'
    ? purpose === 'take-off'
      ? 'Verfügbare Startlaufstrecke'
      : 'Verfügbare Landestrecke'
    : (titles[name] ?? '');

export const words: Translated<typeof english> = {
  close: 'Schließen',
  title,
  formulas,
  inputNames,
  sources,
  causes,
  inputs: 'Aus',
  formula: 'Formel',
  source: 'Quelle',
  noValue: 'nicht bekannt',
};
