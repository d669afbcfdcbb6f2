/** Where a field lies, and how long its longest runway is: what a list of fields shows. */

import type { FieldShape } from './field.schema';

/** What a list says of a field. */
export interface Whereabouts {
  /** Its reference point, and its elevation in feet. */
  readonly place: FieldShape['place'];
  /** The longest run that any of its ends offers, metres. */
  readonly longestM: number;
}

/** What a list says of it. */
export const whereabouts = ({
  place,
  runways,
}: Pick<FieldShape, 'place' | 'runways'>): Whereabouts => ({
  place,
  longestM: Math.max(0, ...runways.flatMap(({ ends }) => ends.map(({ toraM }) => toraM))),
});
