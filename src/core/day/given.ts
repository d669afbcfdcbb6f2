/** Figures taken straight from a document. */

import { type Figure, known, unknown } from '../figure';
import type { Unit } from '../units';

/** A figure from the aircraft's document; unknown if left out. */
export function fromAircraft<U extends Unit>(value: number | undefined, unit: U): Figure<U> {
  return value === undefined
    ? unknown('not-in-aircraft')
    : known(value, unit, { formula: 'as-given', inputs: { given: value }, source: 'aircraft' });
}

/** A figure from the field's document. */
export const fromField = <U extends Unit>(value: number, unit: U): Figure<U> =>
  known(value, unit, { formula: 'as-given', inputs: { given: value }, source: 'field' });
