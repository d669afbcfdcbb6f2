/** The German words of a new procedure. */

import type { StarterWords } from '../../core';
import type { Translated } from '../translated';
import { lists } from './listWords.de';
import type * as english from './words.en';

export const starter: Omit<StarterWords, 'calls'> = {
  about:
    'Ein Verfahren für den Anfang, für jedes Flugzeug dieser Art. Das Flughandbuch geht vor: Trag seine Worte und Schritte ein und lies die Listen vor dem Flug dagegen.',
  rejected: 'Startabbruch',
  toStop: 'Abbruch',
  steps: {
    'brakes-parked': ['Parkbremse', 'gezogen'],
    'controls-free': ['Steuerung', 'voller Weg, leichtgängig'],
    'doors-shut': ['Türen und Gurte', 'verriegelt, geschlossen'],
    'canopy-shut': ['Haube und Gurte', 'verriegelt, stramm'],
    fuel: ['Kraftstoff', '{fuelKg} kg'],
    altimeter: ['Höhenmesser', 'gestellt, zeigt den Platz'],
    'mixture-rich': ['Gemisch', 'reich'],
    'engine-runs': ['Triebwerk', 'läuft, alles grün'],
    'engines-run': ['Triebwerke', 'beide laufen, alles grün'],
    'lights-on': ['Lichter', 'an'],
    'taxi-call-ground': ['Rollmeldung', 'Piste {runway} erbitten'],
    'taxi-call-traffic': ['Rollmeldung', 'an Verkehr, Piste {runway}'],
    'brakes-rolling': ['Bremsen im Rollen', 'beide greifen'],
    crossing: ['{crossing} kreuzen', 'Anweisung zurückgelesen'],
    'crossing-traffic': ['{crossing} kreuzen', 'gemeldet, leer beidseits'],
    'flaps-take-off': ['Klappen', 'Start'],
    'trim-take-off': ['Trimmung', 'Start'],
    magnetos: ['Magnete', 'Abfall in den Grenzen'],
    'carb-heat-cold': ['Vergaservorwärmung', 'geprüft, wieder kalt'],
    'propeller-fine': ['Propeller', 'ganz auf klein'],
    'fuel-pump-on': ['Kraftstoffpumpe', 'ein'],
    'speed-brake-in': ['Bremsklappen', 'ein'],
    'take-off-brief': ['Startbriefing', '{runway}, Abbruch bis wohin'],
    transponder: ['Transponder', 'Code, ein, mit Höhe'],
    'before-runway': ['Aufrollprüfung', 'nichts offen'],
    'ready-call-tower': ['Funk', 'abflugbereit, Piste {runway}'],
    'ready-call-traffic': ['Funk', 'Aufrollmeldung, {runway}'],
    'line-up-heard': ['Aufrollen', 'gehört, zurückgelesen'],
    'line-up-traffic': ['Aufrollen', 'Anflug frei, gemeldet'],
    heading: ['Steuerkurs', '{runwayMagnetic}'],
    'runway-empty': ['Piste voraus', '{runway}, leer'],
    'take-off-heard': ['Startfreigabe', 'gehört, zurückgelesen'],
    'take-off-traffic': ['Start', 'Anflug frei, gemeldet'],
    'power-set': ['Leistung', 'gesetzt, alles grün'],
    'brakes-off': ['Bremsen', 'los, Fersen am Boden'],
    'gear-up': ['Fahrwerk', 'oben, Lampen aus'],
    'flaps-up': ['Klappen', 'eingefahren'],
    'reheat-off': ['Nachbrenner', 'aus'],
    'climb-set': ['Steigflug', '{climbKt} kt'],
    'landing-runway': ['Landepiste', '{runway}, Kurs {runwayMagnetic}'],
    'altimeter-home': ['Höhenmesser', 'auf den Platz gestellt'],
    'belts-home': ['Gurte', 'stramm'],
    'mixture-home': ['Gemisch', 'reich'],
    'join-call-tower': ['Funk', 'Einflug für {runway} erbitten'],
    'join-call-traffic': ['Funk', 'Einflug für {runway} melden'],
    'gear-down': ['Fahrwerk', 'unten, alles grün'],
    'flaps-land': ['Klappen', 'Landung'],
    'approach-speed': ['Anflug', '{approachKt} kt'],
    'vacated-call': ['Funk', 'Piste {runway} verlassen'],
    'flaps-in': ['Klappen', 'eingefahren'],
    'brakes-parked-home': ['Parkbremse', 'gezogen'],
    'engine-off': ['Triebwerk', 'aus'],
    'magnetos-off': ['Magnete', 'aus, Schlüssel in der Hand'],
  },
  lists,
};

export const starterName: Translated<typeof english>['starterName'] = (aircraft) =>
  `${aircraft}, eigenes Verfahren`;
