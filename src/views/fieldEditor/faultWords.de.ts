/** What can be wrong with a field, as German sentences for whoever draws it. */

import type { FieldFault, TextFault, ValueFault } from '../../core';
import type { Translated } from '../../parts/translated';
import type { words as english } from './faultWords.en';

const sentences: Readonly<Record<FieldFault | TextFault | ValueFault, string>> = {
  'designator-twice': 'Zwei Enden haben dieselbe Nummer.',
  'ends-not-opposite': 'Die Nummern der beiden Enden liegen einander nicht gegenüber.',
  'ends-at-one-point': 'Beide Enden liegen am selben Punkt.',
  'toda-below-tora': 'TODA ist kleiner als TORA.',
  'asda-below-tora': 'ASDA ist kleiner als TORA.',
  'threshold-beyond-runway': 'Die Schwelle liegt hinter dem anderen Ende.',
  'end-unknown': 'Ein Pistenende ist genannt, das der Platz nicht hat.',
  'runway-unknown': 'Eine Piste ist genannt, die der Platz nicht hat.',
  'needs-version-2': 'Etwas darin ist unbekannt, was erst Version 2 eines Platzes sagen kann.',
  'node-twice': 'Zwei Punkte haben denselben Namen.',
  'node-unknown': 'Ein Wegstück führt zu einem Punkt, den es nicht gibt.',
  'edge-to-itself': 'Ein Wegstück führt dorthin, wo es beginnt.',
  'text-missing': 'Ein Eintrag ist leer, der es nicht sein darf.',
  'text-too-long': 'Ein Text ist zu lang.',
  'text-not-of-kind': 'Ein Text hat nicht die Form, die er haben muss.',
  'text-control': 'In einem Text steht ein Zeilenumbruch oder ein anderes Steuerzeichen.',
  'text-direction': 'In einem Text steht ein Zeichen, das die Reihenfolge anderer umkehrt.',
  'text-invisible': 'In einem Text steht ein unsichtbares Zeichen, oder gar nichts Sichtbares.',
  'text-marks':
    'In einem Text stapeln sich Zeichen auf einem Buchstaben, oder eines steht auf keinem.',
  'number-out-of-range': 'Eine Zahl liegt außerhalb des Bereichs.',
  'too-few': 'Etwas fehlt.',
  'too-many': 'Von etwas gibt es mehr, als ein Platz fasst.',
  'not-of-shape': 'Etwas steht darin, das kein Platz hat.',
};

const faults: Readonly<Record<string, string | undefined>> = sentences;

export const words: Translated<typeof english> = {
  of: (runway, code) => {
    const fault = faults[code] ?? code;
    return runway === '' ? fault : `Piste ${runway}: ${fault}`;
  },
};
