/** What a day is worked out from. */

import type { Aircraft } from '../aircraft/aircraft';
import type { Field } from '../airfield/field';
import type { North } from '../angle';
import type { VariationTable } from '../earth/variationTable';
import type { Procedure } from '../procedure/procedure';
import type { Hash } from '../sortie/entry';
import type { Sortie } from '../sortie/fold';

/** A wind as typed or pasted, and its north where the text doesn't say. */
export interface WindText {
  readonly text: string;
  readonly north: North;
}

/** Documents in use; null until chosen and loaded. */
export interface Documents {
  readonly field: Field | null;
  readonly aircraft: Aircraft | null;
  readonly procedure: Procedure | null;
}

/** Code or tables that load after the first answer. */
export type LatePart<T> = 'loading' | 'failed' | T;

/** Parts by name, as their modules export them. Types only: the caller loads them. */
export interface LateParts {
  readonly reports: typeof import('./wholeReports');
  readonly physics: typeof import('./performance');
  readonly taxi: typeof import('../taxi/taxi');
  readonly sun: typeof import('../earth/sunlight');
  /** The magnetic model for the date; failed too if none covers it. */
  readonly variation: VariationTable;
}

export type Getters<T> = { readonly [Name in keyof T]: () => T[Name] };

/** What a day is worked out from, as getters. */
export interface Sources {
  readonly sortie: () => Sortie;
  readonly documents: Getters<Documents>;
  /** The code of any field, not only the one in use; null until it is loaded. */
  readonly fieldCode: (field: Hash) => string | null;
  /** Sortie time, UTC, at the last whole minute, ms. */
  readonly minuteMs: () => number;
  /** Device clock at the last whole second, ms. */
  readonly secondMs: () => number;
  readonly parts: Getters<{ readonly [Name in keyof LateParts]: LatePart<LateParts[Name]> }>;
}

/** A loaded part; null while loading or if it failed. */
export const present = <T extends object>(part: LatePart<T>): T | null =>
  typeof part === 'string' ? null : part;
