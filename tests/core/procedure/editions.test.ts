import { expect, test } from 'vitest';
import { editionsInOrder, nextEdition } from '../../../src/core/procedure/editions';
import type { Procedure } from '../../../src/core/procedure/procedure';

const ORIGINAL = 'original';

/** A version by its number, when its clock said that it was kept, and what it was made from. */
const version = (hash: string, number: number, keptAt: string, from = ORIGINAL) => ({
  hash,
  content: { edition: { number, keptAt }, basedOn: { code: 'own', hash: from } } as Procedure,
});

const inOrder = (...versions: ReturnType<typeof version>[]) =>
  editionsInOrder(versions).map(({ hash }) => hash);

test('a version kept while the clock stood in 2031 is older than the next one', () => {
  const first = version('f', 1, '2031-01-01T00:00:00Z');
  const second = version('a', 2, '2026-11-30T12:00:00Z');
  expect(inOrder(second, first)).toEqual(['f', 'a']);
  expect(inOrder(first, second)).toEqual(['f', 'a']);
});

test('a received one of the year 9999 is older than what is kept after it', () => {
  const received = version('f', 4, '9999-12-31T23:59:59Z');
  expect(nextEdition([received])).toBe(5);
  expect(inOrder(version('a', 5, '2026-11-30T12:00:00Z'), received)).toEqual(['f', 'a']);
});

test('a number that nobody counts to comes before all others, and does not stop the next', () => {
  const received = version('f', Number.MAX_SAFE_INTEGER, '2026-11-30T12:00:00Z');
  expect(nextEdition([received])).toBe(1);
  expect(inOrder(version('a', 1, '2026-11-30T12:00:00Z'), received)).toEqual(['f', 'a']);
});

test('one that is made from another comes after it, whatever their numbers', () => {
  const from = version('f', 7, '2026-11-30T12:00:00Z');
  expect(inOrder(version('a', 2, '2026-11-30T12:00:00Z', 'f'), from)).toEqual(['f', 'a']);
});

test('two of one number stand in the same order on every device', () => {
  const [one, other] = [
    version('a', 2, '2026-11-30T12:00:00Z'),
    version('b', 2, '2025-01-01T00:00:00Z'),
  ];
  expect(inOrder(one, other)).toEqual(['a', 'b']);
  expect(inOrder(other, one)).toEqual(['a', 'b']);
});
