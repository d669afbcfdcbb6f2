/**
 * What can be wrong with a document whose shape is right.
 *
 * A shape says that a taxiway's end is a name; only the whole document says whether a point of that
 * name exists. Such faults are found by plain functions, so that they can be asked for while a
 * document is being edited as well as when one arrives.
 */

/** A property's name or a place in a list. */
export type Key = string | number;

/** Where a document does not hold together, and how. */
export interface Fault<Code extends string = string> {
  /** The way from the document's root to what is wrong. */
  readonly path: readonly [Key, ...Key[]];
  /** What is wrong; the sentence for it lives with the views. */
  readonly code: Code;
  /** The figures that contradict each other, for the sentence. */
  readonly values?: readonly number[];
}

/** What is wrong in a document that is being written or drawn: where, and a fault's code or a {@link ValueFault}. */
export interface DocumentFault {
  readonly path: readonly Key[];
  readonly code: string;
}

/** What can be wrong with a value by itself, told by the bounds of its schema. */
export type ValueFault =
  /** Nothing is written where something must be. */
  | 'text-missing'
  | 'text-too-long'
  /** Not written as texts of its kind are, such as a code or a frequency. */
  | 'text-not-of-kind'
  | 'number-out-of-range'
  | 'too-few'
  | 'too-many'
  /** Another kind of value altogether, which no editor makes. */
  | 'not-of-shape';

/** For each thing that has been named before in the list: the place where it is named again. */
export function repeats(names: readonly string[]): number[] {
  return names.flatMap((name, index) => (names.indexOf(name) < index ? [index] : []));
}
