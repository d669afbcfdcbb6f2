/** What can be wrong with a field's document, as sentences for the one who draws it. */

import type { FieldFault } from '../../core';

const faults: Readonly<Record<FieldFault, string>> = {
  'designator-twice': 'two ends have one number.',
  'ends-not-opposite': 'the numbers of the two ends are not opposite.',
  'ends-at-one-point': 'both ends lie at one point.',
  'toda-below-tora': 'TODA is less than TORA.',
  'asda-below-tora': 'ASDA is less than TORA.',
  'threshold-beyond-runway': 'the threshold lies beyond the far end.',
  'end-unknown': 'an end is named that the field does not have.',
  'runway-unknown': 'a runway is named that the field does not have.',
  'node-twice': 'two points have one name.',
  'node-unknown': 'a stretch leads to a point that is not there.',
  'edge-to-itself': 'a stretch leads to where it begins.',
};

export const words = {
  faults: faults as Readonly<Record<string, string | undefined>>,
  /** A sentence about a runway, or about the field where the name is empty. */
  of: (runway: string, fault: string): string =>
    runway === '' ? fault.charAt(0).toUpperCase() + fault.slice(1) : `Runway ${runway}: ${fault}`,
} as const;
