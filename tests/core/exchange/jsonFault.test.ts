/**
 * Where a text stops being JSON, and why. Each text is refused by `JSON.parse` too, which reads RFC
 * 8259; the places were counted by hand.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { jsonFault } from '../../../src/exchange/jsonFault';

describe('what a hand leaves in a file', () => {
  test.each([
    ['nothing', '', 'json-none', 1, 1],
    ['a sentence', 'see you at the pond', 'json-none', 1, 1],
    ['a page of the web', '<!doctype html>', 'json-none', 1, 1],
    ['its second half', '"x": 1 }', 'json-none', 1, 1],
    ['its first half', '{\n  "a": 1,\n  "b": [1, 2', 'json-cut-short', 3, 13],
    ['its first half, up to a colon', '{\n  "a":', 'json-cut-short', 2, 7],
    ['its first half, up to a comma', '{ "a": 1,', 'json-cut-short', 1, 10],
    ['curly quotation marks about a name', '{\n  “a”: 1\n}', 'json-curly-quotes', 2, 3],
    ['curly quotation marks about a text', '{\n  "a": „b“\n}', 'json-curly-quotes', 2, 8],
    ['single quotation marks', "{ 'a': 1 }", 'json-single-quotes', 1, 3],
    ['a decimal comma', '{\n  "a": 1,5,\n  "b": 2\n}', 'json-decimal-comma', 2, 9],
    ['a decimal comma at the end', '{ "a": 0,25 }', 'json-decimal-comma', 1, 9],
    ['a comma missing between lines', '{\n  "a": 1\n  "b": 2\n}', 'json-comma-missing', 2, 9],
    ['a comma missing in a row', '[1 2]', 'json-comma-missing', 1, 3],
    ['a comma missing between groups', '[{}\n{}]', 'json-comma-missing', 1, 4],
    ['a comma before the end', '{\n  "a": 1,\n}', 'json-comma-too-many', 2, 9],
    ['a comma before the end of a row', '[1, 2, ]', 'json-comma-too-many', 1, 6],
    ['two commas', '{ "a": 1,, "b": 2 }', 'json-comma-too-many', 1, 10],
    ['a colon missing', '{ "a" 1 }', 'json-colon-missing', 1, 6],
    ['an equals sign', '{ "a" = 1 }', 'json-colon-missing', 1, 6],
    ['a quotation mark missing', '{\n  "a": "b,\n  "c": 1\n}', 'json-quote-missing', 2, 8],
    ['a quotation mark missing before the end', '{ "a": "b }', 'json-quote-missing', 1, 8],
    ['its first half, within a text', '{ "a": 1,\n  "b": "ab', 'json-cut-short', 2, 11],
    ['a name without quotation marks', '{ a: 1 }', 'json-name-bare', 1, 3],
    ['a value missing', '{ "a": , "b": 1 }', 'json-value-missing', 1, 8],
    ['a value missing at the end', '{ "a": }', 'json-value-missing', 1, 8],
    ['a word that is no value', '{ "a": yes }', 'json-word', 1, 8],
    ['another language’s nothing', '{ "a": None }', 'json-word', 1, 8],
    ['a number without its zero', '{ "a": .5 }', 'json-number', 1, 8],
    ['a number with a plus', '{ "a": +5 }', 'json-number', 1, 8],
    ['a comment', '{\n  // of mine\n  "a": 1\n}', 'json-comment', 2, 3],
    ['a bracket of the wrong kind', '{ "a": [1, 2} }', 'json-bracket', 1, 13],
    ['a bracket too many', '{ "a": 1 }}', 'json-bracket', 1, 11],
    ['a backslash', '{ "a": "C:\\data" }', 'json-backslash', 1, 8],
    ['two documents', '{ "a": 1 }\n{ "b": 2 }', 'json-after-end', 2, 1],
    ['lines as old files have them', '{\r\n  "a": 1\r\n  "b": 2\r\n}', 'json-comma-missing', 2, 9],
  ])('%s', (_, text, code, line, column) => {
    expect(() => JSON.parse(text)).toThrow();
    expect(jsonFault(text)).toEqual({ code, line, column });
  });
});

test('whatever is cut out of a document, a place within the text is named', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 4 }), fc.nat(), fc.nat(3), (text, from, length) => {
      const at = from % (text.length + 1);
      const cut = text.slice(0, at) + text.slice(at + length);
      try {
        JSON.parse(cut);
        return;
      } catch {
        const { line, column } = jsonFault(cut) ?? expect.unreachable(cut);
        const lines = cut.split(/\r\n|\r|\n/);
        expect(line).toBeLessThanOrEqual(lines.length);
        expect(column).toBeLessThanOrEqual((lines[line - 1] ?? '').length + 1);
      }
    }),
  );
});
