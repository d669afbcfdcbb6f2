/** Faults of documents, as German sentences; the schema's own words cover the rest. */

import { filled } from '../../parts/filled';
import type { Translated } from '../../parts/translated';
import type { faults as englishFaults, words as englishWords } from './documentWords.en';

export const faults: Translated<typeof englishFaults> = {
  'too-long': 'Die Datei ist größer als jeder Platz, jedes Flugzeug und jedes Verfahren.',
  'not-json': 'Die Datei ist kein JSON oder abgeschnitten.',
  'too-deep': 'Ihre Teile sind tiefer verschachtelt als in jeder Datei von Lapstrip.',
  'too-many': 'Sie hat mehr Teile als jede Datei von Lapstrip.',
  'too-slow': 'Das Lesen dauerte zu lange und wurde abgebrochen.',
  'not-ours': 'Die Datei sagt nicht, ob sie ein Platz, ein Flugzeug oder ein Verfahren ist.',
  'not-read': 'Die Datei ließ sich nicht lesen.',
  'link-cut':
    'Der Link ist abgeschnitten oder beschädigt. Noch einmal um ihn bitten, oder um die Datei.',
  'record-too-large': 'Die Datei ist größer als 50 MB; so groß ist kein Flugbuch von Lapstrip.',
  'record-version': 'Das Flugbuch hat eine andere Version von Lapstrip geschrieben.',
  'record-damaged':
    'Das Flugbuch ist beschädigt: Etwas darin ist weder ein Eintrag noch ein Dokument.',
  'text-control': 'Der Text enthält einen Zeilenumbruch oder ein anderes Steuerzeichen',
  'text-direction': 'Der Text enthält ein Zeichen, das die Reihenfolge anderer umkehrt',
  'text-invisible': 'Der Text enthält ein unsichtbares Zeichen, oder gar nichts Sichtbares',
  'text-marks': 'Im Text stapeln sich Zeichen auf einem Buchstaben, oder eines steht auf keinem',
  'designator-twice': 'Zwei Enden haben dieselbe Bezeichnung',
  'ends-not-opposite': 'Die Nummern der beiden Enden liegen einander nicht gegenüber',
  'ends-at-one-point': 'Beide Enden liegen am selben Punkt',
  'toda-below-tora': 'TODA ist kleiner als TORA',
  'asda-below-tora': 'ASDA ist kleiner als TORA',
  'threshold-beyond-runway': 'Die Schwelle liegt hinter dem anderen Ende',
  'end-unknown': 'Dieses Pistenende hat der Platz nicht',
  'runway-unknown': 'Diese Piste hat der Platz nicht',
  'node-twice': 'Zwei Punkte haben denselben Namen',
  'node-unknown': 'Diesen Punkt gibt es nicht',
  'edge-to-itself': 'Eine Rollbahn führt dorthin, wo sie beginnt',
  'out-of-order': 'Die Zahlen stehen nicht in der richtigen Reihenfolge',
  'limit-grows': 'Die Grenze ist bei schlechterer Oberfläche höher',
  'gate-above-limit': 'Die Geschwindigkeit liegt über ihrer Grenze',
  'gate-without-limit': 'Die Geschwindigkeit hat keine Grenze',
  'reheat-without-engine': 'Das Triebwerk hat keinen Nachbrenner',
  'arm-missing': 'Der Hebelarm fehlt, und andere Massen haben einen',
  'envelope-without-arms': 'Es gibt einen Schwerpunktbereich, aber keine Masse hat einen Hebelarm',
  'envelope-not-simple':
    'Die Kanten des Schwerpunktbereichs kreuzen sich oder schließen nichts ein',
  'station-twice': 'Zwei Stationen haben denselben Namen',
  'station-unknown': 'Diese Station gibt es nicht',
  'choice-twice': 'Zwei Möglichkeiten der Station wiegen gleich viel',
  'beyond-station': 'Das ist mehr, als die Station trägt',
  'not-a-choice': 'Genau so viel kann die Station nicht tragen',
  'preset-not-within':
    'Die Vorlage überschreitet eine Grenze oder liegt außerhalb des Schwerpunktbereichs',
  'not-usual': 'Das ergibt zusammen nicht die übliche Masse',
  'landing-fuel-over': 'So viel fassen die Tanks nicht',
  'thrust-not-of-engine': 'Der Schub passt nicht zu einem solchen Triebwerk',
  'thrust-out-of-order': 'Die Geschwindigkeiten des Schubs steigen nicht an',
  'thrust-too-short':
    'Der Schub ist nicht bis zu den Geschwindigkeiten angegeben, die geflogen werden',
  'stall-above-lift-off': 'Die Überziehgeschwindigkeit ist {0} kt, abgehoben wird mit {1} kt',
  'approach-not-of-wing':
    'Der Flügel ergibt eine Anfluggeschwindigkeit von {0} kt, das Handbuch nennt {1}: über 3 % Unterschied',
  'rotates-downwards': 'Der Wert nach dem Rotieren ist kleiner als im Stand',
  'braking-grows': 'Die Bremsen greifen bei schlechterer Oberfläche besser',
  'gear-without-limit': 'Das Fahrwerk fährt ein und hat keine Höchstgeschwindigkeit',
  'gear-tips': 'So, wie es steht, würde es kippen',
  'run-not-of-book':
    'Die Physik ergibt einen Startlauf von {0} m, das Handbuch nennt {1} m: über 5 % Unterschied',
  'landing-run-not-of-book':
    'Die Physik ergibt eine Ausrollstrecke von {0} m, das Handbuch nennt {1} m: über 5 % Unterschied',
  'rotates-below-control':
    'Es rotiert bei {0} kt, unter {1}, dem 1,05-Fachen der Mindeststeuergeschwindigkeit',
  'rotates-below-stall':
    'Es rotiert bei {0} kt, unter {1}, dem 1,05-Fachen der Überziehgeschwindigkeit',
  'phase-twice': 'Der Abschnitt steht zweimal da',
  'phase-out-of-order':
    'Die Abschnitte stehen nicht in der Reihenfolge, in der sie geflogen werden',
  'list-twice': 'Die Liste steht zweimal da',
  'step-twice': 'Zwei Schritte haben denselben Namen',
  'live-name-unknown': 'Einen aktuellen Wert dieses Namens gibt es nicht',
  'gate-without-speed': 'Eine Marke braucht ihre Geschwindigkeit oder ihre Höhe',
  'gate-twice': 'Eine Marke hat eine Geschwindigkeit oder eine Höhe, nicht beides',
  'speed-without-gate': 'Nur eine Marke hat eine Geschwindigkeit oder eine Höhe',
  'call-without-say': 'Nur was gesagt wird, hat einen Funkspruch',
  'fact-unknown': 'Nach einer Tatsache dieses Namens lässt sich nicht fragen',
  'condition-unknown':
    'Das ist keine Bedingung: Sie fragt nach einer Tatsache, einem Wind oder einer Option oder verbindet mehrere',
  'condition-too-deep': 'Die Bedingungen sind zu tief ineinander verschachtelt',
  'name-reserved': 'Unter diesem Namen lässt sich keine Option und keine Station speichern',
  'option-twice': 'Zwei Optionen haben denselben Namen',
  'option-unknown': 'Diese Option nennt das Verfahren nicht',
  'barrier-in-motion': 'Im Startlauf und im Steigflug kann niemand an einer Aufrollprüfung warten',
  'barrier-in-list':
    'Eine Liste hat keine Aufrollprüfung: Nichts in ihr wird durchgelassen oder aufgehalten',
  'barrier-first': 'Vor der Aufrollprüfung steht nichts',
  'tied-off-roll': 'Nur ein Schritt des Startlaufs gehört zum Lösen der Bremsen',
  'until-before':
    'Er zählt bis zu einem Abschnitt, der schon vorbei ist, wenn der Schritt erreicht wird',
  'needs-unknown': 'Den Schritt, auf dem er aufbaut, hat kein Abschnitt',
  'needs-in-phase': 'Nur ein Schritt einer Liste baut auf einem anderen auf',
  'time-without-wait': 'Nur ein Warteschritt hat eine Dauer',
};

/** A fault's code as a sentence with its figures; the schema's own words stay as they are. */
function said(what: string): string {
  const [code = '', ...figures] = what.split(' ');
  const sentence = faults[code as keyof typeof faults];
  return sentence === undefined ? what : filled(sentence, figures);
}

export const words: Translated<typeof englishWords> = {
  hint: 'Ein Platz, ein Flugzeug oder ein Verfahren als JSON-Datei, ein ganzes Flugbuch oder ein Flugplatz, aus OpenStreetMap gespeichert. Die Datei lässt sich auch ins Fenster ziehen. Es bleibt auf diesem Gerät.',
  choose: 'Datei ansehen',
  paste: 'Link oder Code einfügen',
  lookAtPasted: 'Ansehen',
  nothingPasted: 'Darin steht kein Link oder Code von Lapstrip.',
  problem: (at, what) => (at === '' ? '' : `${at}: `) + said(what),
};
