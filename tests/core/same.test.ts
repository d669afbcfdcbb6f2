import { expect, test } from 'vitest';
import { sameData } from '../../src/core/same';

test.each([
  [1, 1],
  [Number.NaN, Number.NaN],
  [null, null],
  [
    [1, [2]],
    [1, [2]],
  ],
  [
    { a: 1, b: { c: [] } },
    { b: { c: [] }, a: 1 },
  ],
  [new Map([['a', { b: 1 }]]), new Map([['a', { b: 1 }]])],
  [new Set(['a', 'b']), new Set(['b', 'a'])],
  [new Date(5), new Date(5)],
])('%j says the same as %j', (a, b) => {
  expect(sameData(a, b)).toBe(true);
});

test.each([
  [1, 2],
  [1, '1'],
  [null, {}],
  [[], {}],
  [[1, 2], [1]],
  [{ a: undefined }, {}],
  [{ a: undefined }, { b: undefined }],
  // What JSON would not tell apart.
  [new Map([['a', 1]]), new Map([['a', 2]])],
  [new Map([['a', 1]]), new Map([['b', 1]])],
  [new Set(['a']), new Set(['b'])],
  [Number.POSITIVE_INFINITY, Number.NaN],
  [new Date(5), new Date(6)],
  [() => 1, () => 1],
])('%j does not say the same as %j', (a, b) => {
  expect(sameData(a, b)).toBe(false);
  expect(sameData(b, a)).toBe(false);
});
