/** What can be wrong with a document from outside, as German sentences. */

import type { FormProblem, ShapeProblem } from '../../core';
import type { JsonFaultCode } from '../../exchange/jsonFault';
import type { Translated } from '../translated';
import { type ProblemWords, problemTold } from './told';
import type { faults as englishFaults, words as englishWords } from './words.en';

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
  'lesson-too-long': 'Die Lektion ist größer als jede, die Lapstrip macht.',
  'record-damaged':
    'Das Flugbuch ist beschädigt: Etwas darin ist weder ein Eintrag noch ein Dokument.',
  'text-control': 'Der Text enthält einen Zeilenumbruch oder ein anderes Steuerzeichen',
  'text-direction': 'Der Text enthält ein Zeichen, das die Reihenfolge anderer umkehrt',
  'text-invisible': 'Der Text enthält ein unsichtbares Zeichen, oder gar nichts Sichtbares',
  'text-marks': 'Im Text stapeln sich Zeichen auf einem Buchstaben, oder eines steht auf keinem',
  'designator-twice': 'Zwei Enden haben dieselbe Bezeichnung',
  'ends-not-opposite': 'Die Nummern der beiden Enden liegen einander nicht gegenüber',
  'ends-at-one-point': 'Beide Enden liegen am selben Punkt',
  'toda-below-tora': 'TODA ist mit {0} m kleiner als TORA mit {1} m',
  'asda-below-tora': 'ASDA ist mit {0} m kleiner als TORA mit {1} m',
  'threshold-beyond-runway': 'Die Schwelle liegt bei {0} m, hinter dem anderen Ende bei {1} m',
  'end-unknown': 'Dieses Pistenende hat der Platz nicht',
  'runway-unknown': 'Diese Piste hat der Platz nicht',
  'needs-version-2':
    'Etwas ist als unbekannt, zweifelhaft oder angenommen weggelassen: „"version": 2“ schreiben',
  'node-twice': 'Zwei Punkte haben denselben Namen',
  'node-unknown': 'Diesen Punkt gibt es nicht',
  'edge-to-itself': 'Eine Rollbahn führt dorthin, wo sie beginnt',
  'out-of-order': '{0} ist weniger als die {1}, die es mindestens sein müssen',
  'limit-grows': 'Die Grenze ist mit {0} kt höher als die {1} kt auf besserem Belag',
  'gate-above-limit': '{0} kt liegt über der Grenze von {1} kt',
  'gate-without-limit': 'Die Geschwindigkeit hat keine Grenze',
  'reheat-without-engine': 'Das Triebwerk hat keinen Nachbrenner',
  'arm-missing': 'Der Hebelarm fehlt, und andere Massen haben einen',
  'envelope-without-arms': 'Es gibt einen Schwerpunktbereich, aber keine Masse hat einen Hebelarm',
  'envelope-not-simple':
    'Die Kanten des Schwerpunktbereichs kreuzen sich oder schließen nichts ein',
  'station-twice': 'Zwei Stationen haben denselben Namen',
  'station-unknown': 'Diese Station gibt es nicht',
  'choice-twice': 'Zwei Möglichkeiten der Station wiegen gleich viel',
  'beyond-station': '{0} kg sind mehr als die {1} kg, die der Platz trägt',
  'not-a-choice': 'Genau so viel kann die Station nicht tragen',
  'preset-not-within':
    'Die Vorlage überschreitet eine Grenze oder liegt außerhalb des Schwerpunktbereichs',
  'not-usual': 'Das ergibt {0} kg, und die übliche Masse ist {1} kg',
  'landing-fuel-over': '{0} kg sind mehr als die {1} kg, die in die Tanks passen',
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

const shapes: Readonly<Record<ShapeProblem | FormProblem, string>> = {
  'shape-missing': 'Das fehlt',
  'shape-unknown-name': 'Etwas mit diesem Namen gehört dort nicht hin',
  'shape-not-number': 'Das muss eine Zahl sein',
  'shape-not-text': 'Das muss ein Text in Anführungszeichen sein',
  'shape-not-list': 'Das muss eine Liste sein, in [ ]',
  'shape-not-group': 'Das muss eine Gruppe sein, in { }',
  'shape-not-yes-no': 'Das muss true oder false sein',
  'shape-not-one-of': 'Das muss {allowed} sein',
  'shape-too-low': 'Das muss mindestens {allowed} sein',
  'shape-too-high': 'Das darf höchstens {allowed} sein',
  'shape-not-whole': 'Das muss eine ganze Zahl sein',
  'shape-empty': 'Das darf nicht leer sein',
  'shape-too-long': 'Das darf nicht länger als {allowed} Zeichen sein',
  'shape-too-few': 'Davon muss es mindestens {allowed} geben',
  'shape-too-many': 'Davon darf es höchstens {allowed} geben',
  'shape-not-of-form': 'Das ist nicht so geschrieben, wie es sein muss',
  'form-point': 'Der Name eines Punkts hat bis zu 16 Buchstaben, Ziffern und Bindestriche',
  'form-frequency': 'Eine Frequenz wird in MHz mit einem Punkt geschrieben: "118.705"',
  'form-field-code': 'Das Kürzel eines Platzes besteht aus Großbuchstaben und Ziffern, etwa "XHAR"',
  'form-name': 'Ein Kurzname hat nur Kleinbuchstaben, Ziffern und Bindestriche: "seat-pins"',
  'form-hash': 'Das müssen die 16 Zeichen sein, 0 bis 9 und a bis f, die das Original benennen',
  'form-designator':
    'Ein Bahnende wird 01 bis 36 geschrieben, bei Parallelbahnen mit L, C oder R: "09L"',
  'form-language': 'Eine Sprache wird "de" oder "pt-BR" geschrieben',
  'form-time': 'Eine Zeit wird "1987-04-05T18:50:00Z" geschrieben',
  'leads-nowhere':
    'Das muss "return" (zurück, wo man war), "end" (Ende des Flugs) oder {"phase": …, "reopen": […]} sein',
};

const broken: Readonly<Record<JsonFaultCode, string>> = {
  'json-none': 'Das ist kein JSON; eine Datei von Lapstrip beginnt mit {',
  'json-cut-short':
    'Hier endet die Datei, bevor ihre Klammern geschlossen sind: Sie ist abgeschnitten',
  'json-curly-quotes': 'Dieses Anführungszeichen ist geschwungen; es muss gerade sein: "',
  'json-single-quotes': 'Dieses Anführungszeichen ist einfach; es muss doppelt sein: "',
  'json-decimal-comma': 'Das ist ein Dezimalkomma; es muss ein Punkt sein',
  'json-comma-missing': 'Hier fehlt ein Komma',
  'json-comma-too-many': 'Dieses Komma ist zu viel',
  'json-colon-missing': 'Hier fehlt ein Doppelpunkt',
  'json-quote-missing':
    'Hier beginnt ein Text, dessen zweites Anführungszeichen in der Zeile fehlt',
  'json-name-bare': 'Dieser Name muss in Anführungszeichen stehen',
  'json-value-missing': 'Hier fehlt ein Wert',
  'json-word': 'Das muss true, false, null, eine Zahl oder ein Text in Anführungszeichen sein',
  'json-number': 'Diese Zahl muss wie 120, 0.5 oder -3 geschrieben sein',
  'json-comment': 'Das ist ein Kommentar, den es in JSON nicht gibt; er muss weg',
  'json-bracket': 'Diese Klammer schließt nicht die, die offen ist',
  'json-backslash':
    'In diesem Text steht ein Backslash, der nichts bedeutet; er muss doppelt stehen',
  'json-control': 'In diesem Text steht ein Tabulator oder ein anderes Steuerzeichen; es muss weg',
  'json-after-end': 'Davor war die Datei zu Ende; was folgt, muss weg',
  'json-wrong': 'Das ist kein JSON',
};

const told: ProblemWords = {
  language: 'de',
  sentences: { ...faults, ...shapes, ...broken },
  line: (line) => `Zeile ${line}`,
  character: (character) => `Zeichen ${character}`,
  instead: (given) => `, nicht ${given}`,
};

export const words: Translated<typeof englishWords> = {
  problem: (problem) => problemTold(problem, told),
};
