/** What can be wrong with a field's document, as sentences in German for the one who draws it. */

import type { FieldFault } from '../../core';
import type { Translated } from '../../parts/translated';
import type { words as english } from './faultWords.en';

const faults: Readonly<Record<FieldFault, string>> = {
  'designator-twice': 'Zwei Enden haben dieselbe Nummer.',
  'ends-not-opposite': 'Die Nummern der beiden Enden liegen einander nicht gegenüber.',
  'ends-at-one-point': 'Beide Enden liegen am selben Punkt.',
  'toda-below-tora': 'TODA ist kleiner als TORA.',
  'asda-below-tora': 'ASDA ist kleiner als TORA.',
  'threshold-beyond-runway': 'Die Schwelle liegt hinter dem anderen Ende.',
  'end-unknown': 'Ein Pistenende ist genannt, das der Platz nicht hat.',
  'runway-unknown': 'Eine Piste ist genannt, die der Platz nicht hat.',
  'node-twice': 'Zwei Punkte haben denselben Namen.',
  'node-unknown': 'Ein Wegstück führt zu einem Punkt, den es nicht gibt.',
  'edge-to-itself': 'Ein Wegstück führt dorthin, wo es beginnt.',
};

export const words: Translated<typeof english> = {
  faults,
  /** A sentence about a runway, or about the field where the name is empty. */
  of: (runway, fault) => (runway === '' ? fault : `Piste ${runway}: ${fault}`),
};
