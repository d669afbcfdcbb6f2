/** Tables as comma-separated values, RFC 4180, which a spreadsheet opens without running anything. */

/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

/**
 * A table with its heading. Lines end with CR LF; a cell that holds a comma, a quote or a line break
 * is quoted, its quotes doubled. RFC 4180, section 2.
 */
export function csv(table: readonly (readonly Cell[])[]): string {
  return table.map((cells) => `${cells.map(written).join(',')}\r\n`).join('');
}

function written(cell: Cell): string {
  if (cell === null) return '';
  const text = typeof cell === 'number' ? String(cell) : harmless(cell);
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text;
}

/**
 * A text that a spreadsheet would take for a formula is given an apostrophe in front. OWASP, CSV
 * Injection: cells that begin with = + - @, a tab or a carriage return.
 */
const harmless = (text: string): string => (/^[=+\-@\t\r]/.test(text) ? `'${text}` : text);
