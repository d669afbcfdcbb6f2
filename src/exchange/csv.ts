/**
 * Tables as comma-separated values, RFC 4180, which a spreadsheet opens without executing anything.
 */

/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

/**
 * A table with its heading row. Lines end in CR LF; a cell that contains a separator, a quote or a
 * line break is quoted, its quotes doubled. RFC 4180, section 2. Numbers stay numbers, negative
 * ones too; a number that isn't finite becomes an empty cell.
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
 * Where a spreadsheet would start to read a formula: = + - @ and their full-width forms, after
 * nothing visible. Also after a cell or line separator, because quotes count only at the start of a
 * cell, and a spreadsheet set to other separators sees a start elsewhere.
 */
const FORMULA = /(^|[",;\t\r\n])(?=[\s\p{C}"]*[=+\-@＝＋－＠])/gu;

/**
 * A text that starts with a tab or a line break, which a spreadsheet drops along with what precedes
 * a formula.
 */
const BREAK = /^[\t\r\n]/;

/**
 * A text in which nothing reads as a formula, thanks to a leading apostrophe. OWASP, CSV Injection.
 */
const harmless = (text: string): string =>
  (BREAK.test(text) ? `'${text}` : text).replace(FORMULA, "$1'");
