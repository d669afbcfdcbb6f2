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

// OWASP, CSV Injection: these beginnings make a spreadsheet take a cell for a formula.
test.each(['=1+1', '+1', '-1', '@SUM(A1)', '\tx', '\rx', '=cmd|"/c calc"!A1'])(
  'a text that begins as a formula, %j, does not stand there as one',
  (text) => {
    const written = csv([[text]]);
    expect(written.replace(/^"/, '').startsWith("'")).toBe(true);
  },
);

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
  const cell = fc.string({ unit: fc.constantFrom('a', '"', ',', '\n', '\r', '=', ' ', 'é') });
  fc.assert(
    fc.property(
      fc.array(fc.array(cell, { minLength: 2, maxLength: 4 }), { maxLength: 4 }),
      (table) => {
        const plain = read(csv(table)).map((row) => row.map((text) => text.replace(/^'/, '')));
        expect(plain).toEqual(table.map((row) => row.map((text) => text.replace(/^'/, ''))));
      },
    ),
  );
});
