/** A handbook's table, as an aircraft's document keeps it. */

import type { Aircraft } from './aircraft';

/** The handbook's figures that physics is fitted to. */
export type Handbook = NonNullable<Aircraft['handbook']>;

/** A row of its table: the conditions, and any of the figures printed for them. */
export type HandbookRow = Handbook['rows'][number];

/** More than this left over, as a share of the book's figure, is said wherever numbers are shown. */
export const WELL_WITHIN = 0.03;
