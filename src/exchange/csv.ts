/** Tables as comma-separated values, RFC 4180, which a spreadsheet opens without running anything. */

/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

/**
 * A table with its heading. Lines end with CR LF; a cell that holds a separator, a quote or a line
 * break is quoted, its quotes doubled. RFC 4180, section 2. A number stays one, also a negative one;
 * what is no finite number is left empty.
 */
export function csv(table: readonly (readonly Cell[])[]): string {
  return table.map((cells) => `${cells.map(written).join(',')}\r\n`).join('');
}

function written(cell: Cell): string {
  if (cell === null) return '';
  if (typeof cell === 'number') return Number.isFinite(cell) ? String(cell) : '';
  const text = harmless(cell);
  return /[",;\t\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * Where a spreadsheet would begin to read a formula: = + - @ and their full-width forms, behind
 * nothing it would show. Also behind a mark that separates cells or lines, because quotes only count
 * at the beginning of a cell, and a spreadsheet that is set to other separators sees that elsewhere.
 */
const FORMULA = /(^|[",;\t\r\n])(?=[\s\p{C}"]*[=+\-@＝＋－＠])/gu;

/** A text that begins with a tab or a line break, which a spreadsheet drops with what is before a formula. */
const BREAK = /^[\t\r\n]/;

/** A text in which nothing is taken for a formula: an apostrophe stands before it. OWASP, CSV Injection. */
const harmless = (text: string): string =>
  (BREAK.test(text) ? `'${text}` : text).replace(FORMULA, "$1'");
