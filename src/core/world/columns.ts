/**
 * The columns of the world's fields: all values of one kind together, because like goes with like
 * when it is packed. A column is its length in bytes (32 bits, the lowest byte first) and as many
 * bytes: text as UTF-8, a line for each row; numbers as one byte that says how many bytes each has,
 * then the lowest byte of every row, the next of every row, and so on. A number's sign is its lowest
 * bit.
 */

/** A whole number as it is stored: 0, −1, 1, −2, 2 … as 0, 1, 2, 3, 4 … */
export const signLast = (value: number): number => (value < 0 ? -2 * value - 1 : 2 * value);

const signFirst = (stored: number): number => (stored % 2 === 1 ? -(stored + 1) / 2 : stored / 2);

/** Numbers have at most so many bytes. */
const MOST_BYTES = 4;

/** Reads UTF-8; core has no decoder of its own. */
export type TextOf = (bytes: Uint8Array) => string;

/** Reads columns one after the other; each is null if what is there is none of so many rows. */
export class Columns {
  readonly #bytes: Uint8Array;
  readonly #textOf: TextOf;
  #at: number;

  /** Begins at the first byte of the first column. */
  constructor(bytes: Uint8Array, at: number, textOf: TextOf) {
    this.#bytes = bytes;
    this.#textOf = textOf;
    this.#at = at;
  }

  #next(): Uint8Array | null {
    const start = this.#at + 4;
    if (start > this.#bytes.length) return null;
    const view = new DataView(this.#bytes.buffer, this.#bytes.byteOffset + this.#at, 4);
    const end = start + view.getUint32(0, true);
    if (end > this.#bytes.length) return null;
    this.#at = end;
    return this.#bytes.subarray(start, end);
  }

  /** Lines of text. */
  texts(rows: number): readonly string[] | null {
    const column = this.#next();
    if (column === null) return null;
    const lines = this.#textOf(column).split('\n');
    return lines.length === rows ? lines : null;
  }

  /** Whole numbers. */
  numbers(rows: number): Int32Array | null {
    const column = this.#next();
    const size = column?.[0] ?? MOST_BYTES + 1;
    if (column === null || size > MOST_BYTES || column.length !== 1 + size * rows) return null;
    const numbers = new Int32Array(rows);
    for (let row = 0; row < rows; row++) {
      let stored = 0;
      for (let byte = size - 1; byte >= 0; byte--)
        stored = stored * 256 + (column[1 + byte * rows + row] ?? 0);
      numbers[row] = signFirst(stored);
    }
    return numbers;
  }

  /** Whether every byte has been read. */
  get isAtEnd(): boolean {
    return this.#at === this.#bytes.length;
  }
}
