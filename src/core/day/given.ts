/** Figures that a document gives as they are. */

import { type Figure, known, unknown } from '../figure';
import type { Unit } from '../units';

/** A figure that stands in the aircraft's document; where the document leaves it out, there is none. */
export function fromAircraft<U extends Unit>(value: number | undefined, unit: U): Figure<U> {
  return value === undefined
    ? unknown('not-in-aircraft')
    : known(value, unit, { formula: 'as-given', inputs: { given: value }, source: 'aircraft' });
}
