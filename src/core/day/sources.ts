/** What a day is worked out from. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field } from '../airfield/field';
import type { North } from '../angle';
import type { VariationTable } from '../earth/variationTable';
import type { Procedure } from '../procedure/procedure';
import type { Sortie } from '../sortie/fold';

/** A wind as typed or pasted, and the north it was given to where the text does not say. */
export interface WindText {
  readonly text: string;
  readonly north: North;
}

/** The documents in use; null while they are not chosen, or not loaded yet. */
export interface Documents {
  readonly field: Field | null;
  readonly aircraft: Aircraft | null;
  readonly procedure: Procedure | null;
}

/** Code or tables that come after the first answer. */
export type LatePart<T> = 'loading' | 'failed' | T;

/** The parts by name, as their modules export them. Types only: loading them is the caller's. */
export interface LateParts {
  /** Reads whole reports, and says what they mean. */
  readonly reports: typeof import('./wholeReports');
  /** Works out today's numbers. */
  readonly physics: typeof import('./performance');
  /** Finds the way on the ground. */
  readonly taxi: typeof import('../taxi/taxi');
  readonly sun: typeof import('../earth/sunlight');
  /** The magnetic model of the date; failed also for a date that none covers. */
  readonly variation: VariationTable;
}

/** A getter for each. */
export type Getters<T> = { readonly [Name in keyof T]: () => T[Name] };

/** What a day is worked out from, as getters. */
export interface Sources {
  readonly sortie: () => Sortie;
  readonly documents: Getters<Documents>;
  /** The sortie's own time, UTC, at its last whole minute, ms. */
  readonly minuteMs: () => number;
  /** The device's clock at its last whole second, ms. */
  readonly secondMs: () => number;
  readonly parts: Getters<{ readonly [Name in keyof LateParts]: LatePart<LateParts[Name]> }>;
}

/** A part once it is there; null while it is loading, and where it failed to load. */
export const present = <T extends object>(part: LatePart<T>): T | null =>
  typeof part === 'string' ? null : part;
