/** Lengths that a field's document declares, as figures. */

import type { End } from '../airfield/ends';
import { degreesOf, toMagnetic } from '../angle';
import { type Figure, type Known, known } from '../figure';

/** The declared distances of ICAO Annex 14, 2.8. */
export type Declared = 'tora' | 'toda' | 'asda' | 'lda';

/** A declared distance of a runway end, m: as the document gives it, or as the pilot shortened it. */
export const declared = (of: Declared, lengthM: number): Known<'m'> =>
  known(lengthM, 'm', { formula: of, inputs: { given: lengthM }, source: 'field' });

/** What a runway end offers: its declared distances, m, and its magnetic heading, degrees. */
export interface DeclaredFigures {
  readonly toraM: Figure<'m'>;
  readonly todaM: Figure<'m'>;
  readonly asdaM: Figure<'m'>;
  readonly ldaM: Figure<'m'>;
  /** Unknown if the variation is. */
  readonly headingMagnetic: Figure<'deg'>;
}

/** The figures of an end as its document has them. */
export function declaredFigures(
  { given, heading }: End,
  variation: Figure<'deg'>,
): DeclaredFigures {
  return {
    toraM: declared('tora', given.toraM),
    todaM: declared('toda', given.todaM),
    asdaM: declared('asda', given.asdaM),
    ldaM: declared('lda', given.ldaM),
    headingMagnetic:
      variation.value === null
        ? variation
        : known(degreesOf(toMagnetic(heading, variation.value)), 'deg', {
            formula: 'magnetic',
            inputs: { runwayTrueDeg: degreesOf(heading), variation },
            source: 'field',
          }),
  };
}
