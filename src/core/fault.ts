/**
 * What can be wrong with a document whose shape is right.
 *
 * The shape says that a taxiway's end is a name; only the whole document says whether a point of
 * that name exists. Plain functions find such faults, both while a document is being edited and
 * when one arrives.
 */

/** A property's name or an index in a list. */
export type FaultKey = string | number;

/** Where and how a document fails to hold together. */
export interface Fault<Code extends string = string> {
  /** The path from the document's root to the fault. */
  readonly path: readonly [FaultKey, ...FaultKey[]];
  /** What is wrong; its sentence lives with the views. */
  readonly code: Code;
  /** The figures that contradict each other, for the sentence. */
  readonly values?: readonly number[];
}

/**
 * A fault of a document being written or drawn: where, and a fault's code or a {@link ValueFault}.
 */
export interface DocumentFault {
  readonly path: readonly FaultKey[];
  readonly code: string;
  /** The figures that contradict each other, in the document's units; absent if none do. */
  readonly figures?: readonly string[];
}

/** What can be wrong with a value by itself, judged by the bounds of its schema. */
export type ValueFault =
  /** Nothing is entered where something must be. */
  | 'text-missing'
  | 'text-too-long'
  /** Not in the form of texts of its kind, such as a code or a frequency. */
  | 'text-not-of-kind'
  | 'number-out-of-range'
  | 'too-few'
  | 'too-many'
  /** Another type of value altogether, which no editor produces. */
  | 'not-of-shape';

/** The index of every item that repeats an earlier one. */
export function repeats(names: readonly string[]): number[] {
  return names.flatMap((name, index) => (names.indexOf(name) < index ? [index] : []));
}
