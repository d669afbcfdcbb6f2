/** A sortie with one more wind, typed but not in the record. */

import type { North } from '../angle';
import type { Sortie } from './fold';

/** The sortie as it will be once that wind is set: as if one more entry were folded. */
export function withWind(sortie: Sortie, wind: { text: string; north: North }): Sortie {
  const at = sortie.lastAt ?? { wallMs: 0, sortieMs: 0 };
  return {
    ...sortie,
    winds: [...sortie.winds, { ...wind, id: 'typed', field: sortie.inputs.field, at }],
  };
}
