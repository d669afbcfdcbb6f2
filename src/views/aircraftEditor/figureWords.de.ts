/** The German words for the figures of an aircraft. */

import type { Translated } from '../../parts/translated';
import type * as english from './figureWords.en';

export const figures: Translated<typeof english>['figures'] = {
  'masses.maxTakeoffKg': { name: 'Höchste Startmasse', about: 'Wird nie überschritten.' },
  'masses.emptyKg': { name: 'Leermasse', about: 'Ohne Besatzung, Kraftstoff und Zuladung.' },
  'masses.usualTakeoffKg': {
    name: 'Übliche Startmasse',
    about: 'Für diese Masse gelten Startgeschwindigkeiten und Rollstrecke.',
  },
  'masses.maxLandingKg': {
    name: 'Höchste Landemasse',
    about: 'Wird bei der Landung nie überschritten.',
  },
  'masses.usualLandingKg': {
    name: 'Übliche Landemasse',
    about: 'Für diese Masse gelten Anfluggeschwindigkeit und Landerollstrecke.',
  },
  'limits.crosswindKt.dry': { name: 'Seitenwindgrenze', about: 'Auf trockener Piste, mit Böen.' },
  'limits.crosswindKt.wet': { name: 'Seitenwindgrenze, nass', about: 'Mit Böen.' },
  'limits.crosswindKt.contaminated': {
    name: 'Seitenwindgrenze, Schnee oder Eis',
    about: 'Mit Böen.',
  },
  'limits.tailwindKt.dry': { name: 'Rückenwindgrenze', about: 'Auf trockener Piste, mit Böen.' },
  'limits.tailwindKt.wet': { name: 'Rückenwindgrenze, nass', about: 'Mit Böen.' },
  'limits.tailwindKt.contaminated': {
    name: 'Rückenwindgrenze, Schnee oder Eis',
    about: 'Mit Böen.',
  },
  'limits.demonstratedCrosswindKt': {
    name: 'Nachgewiesener Seitenwind',
    about: 'Was der Hersteller gezeigt hat, wenn es weniger ist als die Grenze.',
    empty: 'Leer: Bis zur Grenze wird nichts gesagt.',
  },
  'limits.flapsKt': { name: 'Klappengrenze', about: 'Vorher müssen die Klappen ein sein.' },
  'limits.gearKt': {
    name: 'Fahrwerksgrenze',
    about: 'Vorher muss das Fahrwerk ein sein.',
    empty: 'Leer: Das Fahrwerk bleibt draußen.',
  },
  'limits.tyreKt': {
    name: 'Reifengrenze',
    about: 'Höchste Geschwindigkeit am Boden auf den Rädern.',
    empty: 'Leer: wird nicht überwacht.',
  },
  'limits.tyrePsi': {
    name: 'Reifendruck, Hauptfahrwerk',
    about: 'Sagt, ab wann die Reifen auf Wasser aufschwimmen können.',
    empty: 'Leer: wird nicht gesagt.',
  },
  'limits.brakesCoolMin': {
    name: 'Bremsen abkühlen',
    about: 'Wie lange vor dem nächsten Start, nach Landung oder Startabbruch.',
    empty: 'Leer: wird nicht überwacht.',
  },
  'limits.leastWidthM': {
    name: 'Mindestbreite der Piste',
    about: 'Eine schmalere wird abgelehnt.',
    empty: 'Leer: jede Breite.',
  },
  'takeoff.rotateKt': { name: 'Rotieren', about: 'Angezeigt, bei üblicher Startmasse.' },
  'takeoff.liftOffKt': { name: 'Abheben', about: 'Angezeigt, bei üblicher Startmasse.' },
  'takeoff.runM': {
    name: 'Startrollstrecke',
    about: 'Bei üblicher Masse: Meereshöhe, 15 °C, windstill, trocken und eben.',
    empty: 'Leer: aus der Tabelle, sonst gilt keine Piste als lang genug.',
  },
  'climb.flapsUpByKt': { name: 'Klappen ein bis', about: 'Mit Abstand zur Grenze.' },
  'climb.gearUpByKt': { name: 'Fahrwerk ein bis', about: 'Mit Abstand zur Grenze.' },
  'climb.speedKt.0': { name: 'Steiggeschwindigkeit, kleinste', about: 'Angezeigt.' },
  'climb.speedKt.1': {
    name: 'Steiggeschwindigkeit, größte',
    about: 'Dieselbe, wenn es nur eine gibt.',
  },
  'climb.reheatOffKt': { name: 'Nachbrenner aus bei', about: 'Im Steigflug.' },
  'climb.pitchDeg.0': {
    name: 'Nase im Steigflug, kleinste',
    about: 'Über dem Horizont.',
    empty: 'Leer: wird nicht gezeigt.',
  },
  'climb.pitchDeg.1': {
    name: 'Nase im Steigflug, größte',
    about: 'Dieselbe, wenn es nur eine gibt.',
    empty: 'Leer: wird nicht gezeigt.',
  },
  'landing.approachKt': {
    name: 'Anfluggeschwindigkeit',
    about: 'Angezeigt, über der Schwelle, bei üblicher Landemasse.',
  },
  'landing.runM': {
    name: 'Landerollstrecke',
    about: 'Ab dem Aufsetzen, bei üblicher Landemasse: Meereshöhe, windstill, trocken und eben.',
    empty: 'Leer: aus der Tabelle, sonst gilt keine Piste als lang genug.',
  },
  'taxi.maxKt': { name: 'Rolltempo geradeaus', about: 'Wird nicht überschritten.' },
  'taxi.turnKt': { name: 'Rolltempo in enger Kurve', about: 'Wird nicht überschritten.' },
  'taxi.power.breakaway': {
    name: 'Leistung zum Anrollen',
    about: 'Auf ebenem Vorfeld.',
    empty: 'Leer: „Rollen“ zeigt keine.',
  },
  'taxi.power.keepRolling.0': {
    name: 'Leistung zum Weiterrollen, kleinste',
    about: 'Bei Rolltempo.',
    empty: 'Leer: „Rollen“ zeigt keine.',
  },
  'taxi.power.keepRolling.1': {
    name: 'Leistung zum Weiterrollen, größte',
    about: 'Dieselbe, wenn es nur eine gibt.',
    empty: 'Leer: „Rollen“ zeigt keine.',
  },
  'handbook.takeoffStallKt': {
    name: 'Überziehen mit Startklappen',
    about: 'Angezeigt, bei üblicher Startmasse.',
    empty: 'Leer: ein Zehntel unter dem Rotieren angenommen.',
  },
  'handbook.wingAreaM2': {
    name: 'Flügelfläche',
    about: 'Des ganzen Flügels.',
    empty: 'Leer: wie bei Klasse und Masse üblich.',
  },
  'handbook.powerKw': {
    name: 'Motorleistung',
    about: 'Startleistung aller Motoren zusammen.',
    empty: 'Leer: wird aus der Tabelle errechnet.',
  },
  'handbook.thrustKn': {
    name: 'Schub',
    about: 'Aller Triebwerke zusammen im Stand, ohne Nachbrenner.',
    empty: 'Leer: wird aus der Tabelle errechnet.',
  },
  'handbook.reheatKn': {
    name: 'Schub mit Nachbrenner',
    about: 'Aller Triebwerke zusammen im Stand.',
    empty: 'Leer: wird aus der Tabelle errechnet.',
  },
  'handbook.minimumControlKt': {
    name: 'Mindestgeschwindigkeit für Steuerbarkeit',
    about: 'In der Luft mit einem ausgefallenen Triebwerk (VMCA).',
    empty: 'Leer: Über einen Weiterstart mit einem Triebwerk wird nichts gesagt.',
  },
};
