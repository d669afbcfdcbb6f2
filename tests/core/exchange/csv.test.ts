import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Cell, csv } from '../../../src/exchange/csv';

// RFC 4180, section 2: rules 1, 6 and 7, with the cells of their examples.
test.each<[string, readonly Cell[], string]>([
  ['plain cells', ['aaa', 'bbb', 'ccc'], 'aaa,bbb,ccc\r\n'],
  ['a line break', ['aaa', 'b \r\nbb', 'ccc'], 'aaa,"b \r\nbb",ccc\r\n'],
  ['a double quote', ['aaa', 'b"bb', 'ccc'], 'aaa,"b""bb",ccc\r\n'],
  ['a comma', ['a,b', 'c'], '"a,b",c\r\n'],
  ['nothing, and numbers', [null, 0, -3.5], ',0,-3.5\r\n'],
])('%s in a line', (_, cells, line) => {
  expect(csv([cells])).toBe(line);
});

// OWASP, CSV Injection: these beginnings make a spreadsheet take a cell for a formula. The full-width
// forms are taken for the others where the spreadsheet is set to Japanese or Chinese.
test.each([
  '=1+1',
  '+1',
  '-1',
  '@SUM(A1)',
  '\tx',
  '\rx',
  '\nx',
  '＝1+1',
  '＋1',
  '－1',
  '＠SUM(A1)',
  ' =1+1',
  '\u200b=1+1',
  '=cmd|"/c calc"!A1',
])('a text that begins as a formula, %j, does not stand there as one', (text) => {
  const written = csv([[text]]);
  expect(written.replace(/^"/, '').trimStart().startsWith("'")).toBe(true);
});

/**
 * The cells as a spreadsheet may see them that is set to any separator and does not know our quotes:
 * the worst reading of them all.
 */
const worstRead = (text: string): string[] =>
  text.split(/[,;\t\r\n]/).map((cell) => cell.replace(/^[\s\p{C}"]+/u, ''));

// OWASP, CSV Injection: separators and quotes within a text can begin another cell.
test.each(['a;=1+1', 'a; -2', 'a\n=1+1', 'a\t@x', 'a",=1', 'a;"=1"', 'a;\u00a0＝1'])(
  'no formula begins within %j, whatever the separator it is read with',
  (text) => {
    for (const cell of worstRead(csv([['first', text, 'last']]))) {
      expect(cell).not.toMatch(/^[=+\-@＝＋－＠]/);
    }
  },
);

test('no text begins a formula anywhere, whatever the separator it is read with', () => {
  const text = fc.string({
    unit: fc.constantFrom(...'=+-@＝＋－＠;,"\t\r\n \u200bax'),
    maxLength: 12,
  });
  fc.assert(
    fc.property(fc.array(text, { minLength: 1, maxLength: 4 }), (cells) => {
      for (const cell of worstRead(csv([cells]))) expect(cell).not.toMatch(/^[=+\-@＝＋－＠]/);
    }),
  );
});

test('a number stays one, and what is none is left empty', () => {
  expect(csv([[-3.5, 0, 12, -7, Number.NaN, Number.NEGATIVE_INFINITY]])).toBe('-3.5,0,12,-7,,\r\n');
});

/** Reads a table by RFC 4180's grammar, one character after the other. */
function read(text: string): string[][] {
  const table: string[][] = [];
  let row: string[] = [];
  let cell = '';
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const character = text[at] ?? '';
    if (quoted) {
      if (character !== '"') cell += character;
      else if (text[at + 1] === '"') cell += text[++at] ?? '';
      else quoted = false;
    } else if (character === '"') quoted = true;
    else if (character === ',' || character === '\r') {
      row.push(cell);
      cell = '';
      if (character === '\r') {
        at += 1;
        table.push(row);
        row = [];
      }
    } else cell += character;
  }
  return table;
}

test('whatever the texts, the table is read back cell by cell', () => {
  const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', ';', '\n', '\r', '=', ' ', 'é') });
  const plain = (table: readonly (readonly string[])[]) =>
    table.map((row) => row.map((text) => text.replaceAll("'", '')));
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { maxLength: 4 }),
      (table) => {
        expect(plain(read(csv(table)))).toEqual(table);
      },
    ),
  );
});
