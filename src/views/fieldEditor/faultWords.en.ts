/** What can be wrong with a field's document, as sentences for whoever draws it. */

import type { FieldFault, TextFault, ValueFault } from '../../core';

const sentences: Readonly<Record<FieldFault | TextFault | ValueFault, string>> = {
  'designator-twice': 'two ends have one number.',
  'ends-not-opposite': 'the numbers of the two ends are not opposite.',
  'ends-at-one-point': 'both ends lie at one point.',
  'toda-below-tora': 'TODA is less than TORA.',
  'asda-below-tora': 'ASDA is less than TORA.',
  'threshold-beyond-runway': 'the threshold lies beyond the far end.',
  'end-unknown': 'a runway end is named that the field does not have.',
  'runway-unknown': 'a runway is named that the field does not have.',
  'needs-version-2': 'something in it is not known, which only version 2 of a field can say.',
  'node-twice': 'two points have one name.',
  'node-unknown': 'a stretch leads to a point that is not there.',
  'edge-to-itself': 'a stretch leads to where it begins.',
  'text-missing': 'an entry is empty that must not be.',
  'text-too-long': 'a text is too long.',
  'text-not-of-kind': 'a text is not written as it must be.',
  'text-control': 'a text holds a line break or another control character.',
  'text-direction': 'a text holds a character that turns the order of others about.',
  'text-invisible': 'a text holds a character that cannot be seen, or nothing that can.',
  'text-marks': 'a text holds marks stacked on one letter, or a mark on none.',
  'number-out-of-range': 'a number is out of range.',
  'too-few': 'something is missing.',
  'too-many': 'there is more of something than a field can hold.',
  'not-of-shape': 'something is there that no field has.',
};

const faults: Readonly<Record<string, string | undefined>> = sentences;

export const words = {
  /** A fault as a sentence about a runway, or about the field if the name is empty. */
  of: (runway: string, code: string): string => {
    const fault = faults[code] ?? code;
    return runway === ''
      ? fault.charAt(0).toUpperCase() + fault.slice(1)
      : `Runway ${runway}: ${fault}`;
  },
} as const;
