/** The fields around another, as far as they are listed. */

import type { ListedField } from 'virtual:lapstrip-catalogue';
import { lineBetween } from '../../core';
import { listedFields } from './documents';

/** Metres in a nautical mile. ICAO Annex 5, table 3-3. */
export const M_PER_NM = 1852;

/** A field, and how far away it is. */
export interface Nearby {
  readonly field: ListedField;
  readonly awayNm: number;
}

/** The fields nearest to another, which is left out, nearest first. */
export function nearbyFields(to: ListedField, most: number): readonly Nearby[] {
  return listedFields.value
    .filter(({ hash, code }) => hash !== to.hash && code !== to.code)
    .map((field) => ({
      field,
      awayNm:
        (lineBetween(to.place, field.place)?.distanceM ?? Number.POSITIVE_INFINITY) / M_PER_NM,
    }))
    .sort((a, b) => a.awayNm - b.awayNm)
    .slice(0, most);
}
