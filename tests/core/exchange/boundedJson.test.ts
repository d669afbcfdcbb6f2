/** JSON from outside is parsed only where it is bounded. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boundedJson } from '../../../src/exchange/boundedJson';

const MOST_MB = 50_000_000;

describe('what would take the tab down is refused before it is parsed', () => {
  test.each([
    ['45 MB of brackets', '['.repeat(45_000_000), 'too-deep'],
    ['as many braces', '{"a":'.repeat(9_000_000), 'too-deep'],
    ['65 levels, well formed', `${'['.repeat(65)}${']'.repeat(65)}`, 'too-deep'],
    ['a row of 16 million rows', `[${'[],'.repeat(16_000_000)}[]]`, 'too-many'],
    ['a row of 25 million numbers', `[${'1,'.repeat(24_999_998)}1]`, 'too-many'],
  ])('%s', (_, text, problem) => {
    expect(text.length).toBeLessThanOrEqual(MOST_MB);
    const parse = JSON.parse;
    JSON.parse = () => expect.unreachable('it was parsed');
    try {
      expect(boundedJson(text)).toEqual({ value: null, problem });
    } finally {
      JSON.parse = parse;
    }
  });
});

test('brackets, braces and commas within a text are none', () => {
  const text = `["${'[{,:'.repeat(1000)}\\"[[["]`;
  expect(boundedJson(text).value).toEqual(JSON.parse(text));
});

test('64 levels are parsed, and what is no JSON is told so', () => {
  const text = `${'['.repeat(64)}${']'.repeat(64)}`;
  expect(boundedJson(text).value).toEqual(JSON.parse(text));
  for (const broken of ['', '[', ']', '"', '"\\', '{"a"}', 'see you at the pond'])
    expect(boundedJson(broken)).toEqual({ value: null, problem: 'not-json' });
});

test('whatever is bounded is parsed as it would be', () => {
  fc.assert(
    fc.property(fc.json({ maxDepth: 20 }), (text) => {
      expect(boundedJson(text)).toEqual({ value: JSON.parse(text), problem: null });
    }),
  );
});
