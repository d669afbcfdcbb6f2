/** What a catalogue in another language must hold. */

/** The same names as in a catalogue, and functions of the same facts; the words may be any. */
export type Translated<T> = T extends string
  ? string
  : T extends (...facts: infer Facts) => infer Said
    ? (...facts: Facts) => Translated<Said>
    : { readonly [Name in keyof T]: Translated<T[Name]> };
