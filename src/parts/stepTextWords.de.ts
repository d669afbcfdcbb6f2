/** The words for what a step is and when it applies, in German. */

import type { ConditionFact, EnteredAt, LiveName, Step } from '../core';
import type { stepWords as english } from './stepTextWords.en';
import type { Translated } from './translated';

const kinds: Readonly<Record<Step['kind'], string>> = {
  do: 'Tun',
  check: 'Prüfen',
  wait: 'Warten',
  say: 'Sagen',
  gate: 'Marke',
  note: 'Hinweis',
  barrier: 'Aufrollprüfung',
};

/** Without a verb, to fit after “falls” as well as alone. */
const facts: Readonly<Record<ConditionFact, readonly [yes: string, no: string]>> = {
  night: ['Nacht', 'keine Nacht'],
  lights: ['Sonne untergegangen', 'Sonne am Himmel'],
  wet: ['Piste nicht trocken', 'Piste trocken'],
  controlled: ['Platz kontrolliert', 'Platz unkontrolliert'],
  lightWind: ['Wind schwach', 'Wind 5 kt oder mehr'],
  crossesRunway: ['Piste zu kreuzen', 'keine Piste zu kreuzen'],
  supersonic: ['Überschallflug geplant', 'kein Überschallflug geplant'],
  stores: ['Außenlasten angehängt', 'keine Außenlasten angehängt'],
  passengers: ['Fluggäste an Bord', 'keine Fluggäste an Bord'],
  cable: ['ein Fangseil liegt über der Piste', 'kein Fangseil liegt über der Piste'],
};

/** What stands for a live number, whatever its value. */
const live: Readonly<Record<LiveName, string>> = {
  runway: 'Gewählte Piste',
  runwayMagnetic: 'Pistenrichtung, missweisend',
  wind: 'Wind',
  windKt: 'Windgeschwindigkeit oder Bö',
  headwindKt: 'Gegenwind',
  crosswindKt: 'Seitenwind',
  field: 'Platz',
  callsign: 'Rufzeichen',
  ground: 'Station am Boden',
  tower: 'Station an der Piste',
  crossing: 'Zu querende Piste',
  crossingAt: 'Rollhalt davor',
  options: 'Ausrüstung',
  qnh: 'QNH',
  temperatureC: 'Temperatur',
  densityAltitudeFt: 'Dichtehöhe',
  massKg: 'Startmasse',
  landingMassKg: 'Landemasse',
  fuelKg: 'Kraftstoff',
  taxiKt: 'Rollgeschwindigkeit',
  turnKt: 'Geschwindigkeit in Kurven',
  breakaway: 'Leistung zum Anrollen',
  keepRolling: 'Leistung zum Weiterrollen',
  markM: 'Prüfmarke',
  markKt: 'Geschwindigkeit an der Prüfmarke',
  markLeastKt: 'Mindestgeschwindigkeit an der Prüfmarke',
  lastStopKt: 'Abbruch bis',
  goOnKt: 'Weiterstart ab',
  rotateKt: 'Rotieren',
  liftOffKt: 'Abheben',
  runM: 'Startlauf',
  gearKt: 'Fahrwerk ein bis',
  flapsKt: 'Klappen ein bis',
  reheatOffKt: 'Nachbrenner aus bis',
  climbKt: 'Steigfluggeschwindigkeit',
  climbPitch: 'Längsneigung im Steigflug',
  referenceKt: 'Referenzgeschwindigkeit',
  approachKt: 'Anfluggeschwindigkeit',
  landingM: 'Landestrecke',
};

/** The key that opens where a live number is entered. */
const supply: Readonly<Record<EnteredAt, string>> = {
  wind: 'Wind öffnen',
  keypad: 'Wind eingeben',
  sortie: 'Flug öffnen',
  load: 'Beladung öffnen',
  numbers: 'Werte öffnen',
};

export const stepWords: Translated<typeof english> = {
  kinds,
  facts,
  live,
  supply,
  notKnown: (name) => `Nicht bekannt: ${name}`,
  putIn: (name) => `[${name}]`,
  critical: 'kritisch',
  when: (condition) => `falls ${condition}`,
  expect: (time) => `etwa ${time}`,
  wind: (kt) => [`Wind über ${kt} kt`, `Wind nicht über ${kt} kt`],
  option: (name) => [`mit „${name}“`, `ohne „${name}“`],
  and: ' und ',
  or: ' oder ',
  not: (condition) => `nicht (${condition})`,
};
