/** The lists of a new procedure in German. */

import type { KindWords, ListWords } from '../../core';

const anotherTry: ListWords = {
  title: 'Noch ein Versuch nach Abbruch',
  steps: [
    ['Ursache', 'gefunden und behoben'],
    ['Bremsen', 'abgekühlt'],
    ['Reifen', 'rund, keine flache Stelle'],
    ['Werte', 'neu: {massKg} kg'],
  ],
};

const gearUnsafe: ListWords = {
  title: 'Fahrwerk nicht verriegelt',
  steps: [
    ['Fahrt', 'unter der Fahrwerksgrenze'],
    ['Fahrwerkhebel', 'ein, bis fünf zählen, aus'],
    ['Fahrwerkslampen', 'drei grün'],
    ['Notausfahren', 'nach Handbuch'],
    ['Funk', 'um einen Blick von unten bitten'],
    ['Gurte', 'verriegelt, stramm'],
  ],
};

const generator: ListWords = {
  title: 'Generatorlampe im Flug',
  steps: [
    ['Generator', 'aus, bis drei zählen, ein'],
    ['Lampe', 'aus'],
    ['Generator', 'aus, Lampe brennt noch'],
    ['Lichter und Funk', 'alles bis auf ein Gerät aus'],
    ['Landung', 'bald, auf einem nahen Platz'],
  ],
};

const pistonSmoke: ListWords = {
  title: 'Kabelbrand',
  steps: [
    ['Hauptschalter', 'aus'],
    ['Kabinenheizung', 'zu'],
    ['Feuerlöscher', 'auf die Flamme, kurze Stöße'],
    ['Fenster und Lüftung', 'auf, Feuer aus'],
    ['Schalter', 'alle aus'],
    ['Hauptschalter, ein Funk', 'ein, nur zur Landung'],
    ['Funk', 'Rauch, lande'],
  ],
};

const jetSmoke: ListWords = {
  title: 'Rauch im Cockpit',
  steps: [
    ['Sauerstoff', 'rein, Maske dicht'],
    ['Kabinenluft', 'zu, Stauluft auf'],
    ['Generator', 'vom Netz'],
    ['Rauch', 'wird weniger'],
    ['Funk', 'Mayday, lande sofort'],
  ],
};

const jetFireGround: ListWords = {
  title: 'Triebwerkbrand am Boden',
  steps: [
    ['Leistungshebel', 'aus'],
    ['Brandhahn', 'zu'],
    ['Löschflasche', 'ausgelöst'],
    ['Parkbremse', 'gezogen'],
    ['Funk', 'Feuer, wo du bist'],
    ['Batterie', 'aus'],
    ['Aussteigen', 'alle, gegen den Wind'],
  ],
};

export const lists: KindWords = {
  piston: {
    'engine-low': {
      title: 'Motorausfall unter 500 ft',
      steps: [
        ['Nase', 'runter, {approachKt} kt'],
        ['Landen', 'geradeaus, nur kleine Kurven'],
        ['Gemisch', 'zu'],
        ['Brandhahn', 'zu'],
        ['Magnete', 'aus'],
        ['Klappen', 'nach Bedarf'],
        ['Hauptschalter', 'aus, Türen entriegelt'],
      ],
    },
    'engine-high': {
      title: 'Motorausfall in der Höhe',
      steps: [
        ['Gleiten', 'beste Gleitfahrt, getrimmt'],
        ['Notlandefeld', 'gewählt, gegen den Wind'],
        ['Vergaservorwärmung', 'warm'],
        ['Tankwahl', 'anderer Tank'],
        ['Kraftstoffpumpe', 'ein'],
        ['Gemisch', 'reich'],
        ['Magnete', 'links, rechts, der bessere'],
        ['Funk', 'Mayday, 7700, wo'],
      ],
    },
    'fire-ground': {
      title: 'Motorbrand am Boden',
      steps: [
        ['Gemisch', 'zu'],
        ['Brandhahn', 'zu'],
        ['Anlasser', 'weiterdrehen lassen'],
        ['Magnete', 'aus'],
        ['Funk', 'Feuer, wo du bist'],
        ['Aussteigen', 'alle, gegen den Wind'],
      ],
    },
    'fire-flight': {
      title: 'Motorbrand im Flug',
      steps: [
        ['Gemisch', 'zu'],
        ['Brandhahn', 'zu'],
        ['Kabinenheizung', 'zu'],
        ['Nase', 'runter, Klappen ein'],
        ['Magnete', 'aus, kein Neustart'],
        ['Funk', 'Mayday, 7700, wo'],
        ['Notlandefeld', 'das nächste, gegen den Wind'],
      ],
    },
    smoke: pistonSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator,
    'go-around': {
      title: 'Durchstarten',
      steps: [
        ['Gas', 'voll'],
        ['Vergaservorwärmung', 'kalt'],
        ['Nase', 'am Horizont, {approachKt} kt'],
        ['Klappen', 'Start, dann stufenweise ein'],
        ['Steigflug', '{climbKt} kt'],
        ['Funk', 'starte durch'],
      ],
    },
  },
  'piston-twin': {
    'engine-out': {
      title: 'Motorausfall nach dem Abheben',
      steps: [
        ['Richtung halten', 'Pedale, fünf Grad Querlage'],
        ['Leistung', 'beide voll'],
        ['Fahrwerk und Klappen', 'ein'],
        ['Welcher', 'totes Bein, toter Motor'],
        ['Sein Gas', 'zu, zur Probe'],
        ['Sein Propeller', 'auf Segelstellung'],
        ['Sein Gemisch', 'zu'],
        ['Funk', 'komme mit einem zurück'],
      ],
    },
    'one-engine-landing': {
      title: 'Landung mit einem Motor',
      steps: [
        ['Platz', 'lang, gegen den Wind'],
        ['Fahrwerk', 'spät aus, alles grün'],
        ['Fahrt', 'nicht unter {approachKt} kt'],
        ['Landung sicher', 'landen, kein Durchstarten'],
        ['Gas', 'Leerlauf beim Abfangen'],
      ],
    },
    'fire-ground': {
      title: 'Motorbrand am Boden',
      steps: [
        ['Gemisch', 'beide zu'],
        ['Brandhähne', 'beide zu'],
        ['Parkbremse', 'gezogen'],
        ['Magnete', 'alle aus'],
        ['Funk', 'Feuer, wo du bist'],
        ['Hauptschalter', 'aus'],
        ['Aussteigen', 'alle, gegen den Wind'],
      ],
    },
    'fire-flight': {
      title: 'Motorbrand im Flug',
      steps: [
        ['Welcher', 'gesehen und laut benannt'],
        ['Sein Gas', 'zu'],
        ['Sein Propeller', 'auf Segelstellung'],
        ['Sein Gemisch', 'zu'],
        ['Sein Brandhahn', 'zu'],
        ['Kabinenheizung', 'zu'],
        ['Funk', 'Mayday, zurück mit einem'],
      ],
    },
    smoke: pistonSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator,
    'go-around': {
      title: 'Durchstarten',
      steps: [
        ['Leistung', 'beide voll'],
        ['Nase', 'hoch, {approachKt} kt'],
        ['Klappen', 'Start'],
        ['Fahrwerk', 'ein'],
        ['Klappen', 'ein'],
        ['Steigflug', '{climbKt} kt'],
        ['Funk', 'starte durch'],
      ],
    },
  },
  turboprop: {
    'engine-low': {
      title: 'Triebwerkausfall unter 500 ft',
      steps: [
        ['Nase', 'runter, {approachKt} kt'],
        ['Landen', 'geradeaus, nur kleine Kurven'],
        ['Propeller', 'auf Segelstellung'],
        ['Zustandshebel', 'aus'],
        ['Brandhahn', 'zu'],
        ['Klappen', 'nach Bedarf'],
        ['Batterie', 'aus'],
      ],
    },
    'engine-high': {
      title: 'Triebwerkausfall in der Höhe',
      steps: [
        ['Gleiten', 'beste Gleitfahrt, getrimmt'],
        ['Propeller', 'auf Segelstellung'],
        ['Notlandefeld', 'gewählt, gegen den Wind'],
        ['Zustandshebel', 'aus'],
        ['Kraftstoffpumpe', 'ein'],
        ['Neustart', 'einmal, in seinen Grenzen'],
        ['Funk', 'Mayday, 7700, wo'],
      ],
    },
    'fire-ground': {
      title: 'Triebwerkbrand am Boden',
      steps: [
        ['Zustandshebel', 'aus'],
        ['Brandhahn', 'zu'],
        ['Anlasser', 'durchdrehen, brennt es innen'],
        ['Funk', 'Feuer, wo du bist'],
        ['Batterie', 'aus'],
        ['Aussteigen', 'alle, gegen den Wind'],
      ],
    },
    'fire-flight': {
      title: 'Triebwerkbrand im Flug',
      steps: [
        ['Leistungshebel', 'Leerlauf'],
        ['Propeller', 'auf Segelstellung'],
        ['Zustandshebel', 'aus'],
        ['Brandhahn', 'zu'],
        ['Kabinenluft', 'zu'],
        ['Funk', 'Mayday, 7700, wo'],
        ['Notlandefeld', 'das nächste, gegen den Wind'],
      ],
    },
    smoke: pistonSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator,
    'go-around': {
      title: 'Durchstarten',
      steps: [
        ['Leistungshebel', 'Startleistung, in Grenzen'],
        ['Nase', 'hoch, {approachKt} kt'],
        ['Klappen', 'Start, dann ein'],
        ['Steigflug', '{climbKt} kt'],
        ['Funk', 'starte durch'],
      ],
    },
  },
  jet: {
    'engine-low': {
      title: 'Triebwerkausfall nach Abheben',
      steps: [
        ['Nase', 'hoch, Fahrt in Höhe'],
        ['Leistungshebel', 'Leerlauf'],
        ['Wiederzünden', 'einmal'],
        ['Drehzahl', 'steigt'],
        ['Zündet nicht', 'aussteigen oder geradeaus'],
      ],
    },
    'engine-high': {
      title: 'Flammabriss und Wiederzünden',
      steps: [
        ['Leistungshebel', 'Leerlauf'],
        ['Nase', 'runter, Zündfahrt'],
        ['Generator', 'vom Netz'],
        ['Wiederzünden', 'gedrückt'],
        ['Temperatur', 'steigt, dann die Drehzahl'],
        ['Generator', 'am Netz'],
        ['Funk', 'Mayday, wohin'],
      ],
    },
    'fire-ground': jetFireGround,
    'fire-flight': {
      title: 'Triebwerkbrand im Flug',
      steps: [
        ['Leistungshebel', 'Leerlauf'],
        ['Feuerlampe', 'aus im Leerlauf'],
        ['Brandhahn', 'zu, wenn sie noch brennt'],
        ['Löschflasche', 'ausgelöst'],
        ['Feuerlampe', 'aus'],
        ['Funk', 'Mayday, wohin'],
      ],
    },
    smoke: jetSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator,
    'go-around': {
      title: 'Durchstarten',
      steps: [
        ['Leistungshebel', 'voll'],
        ['Bremsklappen', 'ein'],
        ['Nase', 'hoch, Flügel gerade'],
        ['Fahrwerk', 'ein'],
        ['Klappen', 'Start'],
        ['Funk', 'starte durch'],
      ],
    },
  },
  'twin-jet': {
    'engine-out': {
      title: 'Triebwerkausfall ab Rotieren',
      steps: [
        ['Richtung halten', 'Pedale'],
        ['Leistungshebel', 'beide voll'],
        ['Fahrwerk', 'ein'],
        ['Welches', 'gesehen und laut benannt'],
        ['Sein Hebel', 'Leerlauf, über 400 ft aus'],
        ['Klappen', 'ein'],
        ['Funk', 'komme mit einem zurück'],
      ],
    },
    'engine-high': {
      title: 'Wiederzünden im Flug',
      steps: [
        ['Totes Triebwerk', 'kein Feuer, dreht frei'],
        ['Höhe und Fahrt', 'in den Zündgrenzen'],
        ['Brandhahn', 'auf'],
        ['Wiederzünden', 'gedrückt, Hebel Leerlauf'],
        ['Temperatur', 'steigt, dann die Drehzahl'],
        ['Generator', 'am Netz'],
      ],
    },
    'one-engine-landing': {
      title: 'Landung mit einem Triebwerk',
      steps: [
        ['Klappen', 'nach Handbuch'],
        ['Fahrwerk', 'aus, drei grün'],
        ['Fahrt', 'nicht unter {approachKt} kt'],
        ['Landung sicher', 'landen, kein Durchstarten'],
        ['Leistungshebel', 'Leerlauf beim Abfangen'],
      ],
    },
    'fire-ground': jetFireGround,
    'fire-flight': {
      title: 'Triebwerkbrand im Flug',
      steps: [
        ['Fahrt', 'sicher, Flügel gerade'],
        ['Welches', 'gesehen und laut benannt'],
        ['Sein Hebel', 'Leerlauf, dann aus'],
        ['Sein Brandhahn', 'zu'],
        ['Löschflasche', 'ausgelöst'],
        ['Feuerlampe', 'aus'],
        ['Funk', 'Mayday, zurück mit einem'],
      ],
    },
    smoke: jetSmoke,
    'another-try': anotherTry,
    'gear-unsafe': gearUnsafe,
    generator,
    'go-around': {
      title: 'Durchstarten',
      steps: [
        ['Leistungshebel', 'beide voll'],
        ['Bremsklappen', 'ein'],
        ['Nase', 'hoch, Flügel gerade'],
        ['Fahrwerk', 'ein'],
        ['Klappen', 'Start'],
        ['Funk', 'starte durch'],
      ],
    },
  },
};
