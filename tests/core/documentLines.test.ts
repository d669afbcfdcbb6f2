import { expect, test } from 'vitest';
import {
  besideLine,
  documentLines,
  inOrder,
  lineOf,
  nextPlace,
  type OwnedDocument,
} from '../../src/core';

/** A field of the pilot's own. */
const field = (hash: string, more: Partial<OwnedDocument> = {}, code = 'XHAR'): OwnedDocument => ({
  hash,
  kind: 'field',
  content: { code },
  ...more,
});

const procedure = (hash: string, content: object): OwnedDocument => ({
  hash,
  kind: 'procedure',
  content: { code: 'sleet-usual', aircraft: 'sleet', ...content },
});

const shown = (documents: readonly OwnedDocument[]) =>
  documentLines(documents).map(({ versions }) => versions.map(({ hash }) => hash));

test('two fields of one code are versions of one, whatever they are called', () => {
  expect(shown([field('a', { place: 1 }), field('b', { place: 2 })])).toEqual([['a', 'b']]);
  expect(shown([field('a'), field('b', {}, 'XLIN')])).toEqual([['a'], ['b']]);
});

test('a field and an aircraft are never versions of one', () => {
  expect(lineOf(field('a'))).not.toBe(lineOf({ ...field('a'), kind: 'aircraft' }));
});

test('a procedure for another aircraft or in another language is another procedure', () => {
  const usual = procedure('a', {});
  expect(lineOf(procedure('b', { name: 'Mine' }))).toBe(lineOf(usual));
  expect(lineOf(procedure('b', { language: 'en' }))).toBe(lineOf(usual));
  expect(lineOf(procedure('b', { language: 'de' }))).not.toBe(lineOf(usual));
  expect(lineOf(procedure('b', { aircraft: 'tussock' }))).not.toBe(lineOf(usual));
});

test('what came from elsewhere stands by itself until it is chosen, and beside where it was put', () => {
  const own = field('a', { place: 1 });
  expect(shown([own, field('b', { received: true })])).toEqual([['a'], ['b']]);
  const beside = field('b', { line: besideLine(field('b')), place: 1 });
  expect(shown([own, beside])).toEqual([['a'], ['b']]);
  const over = field('b', { place: 2 });
  expect(shown([own, over])).toEqual([['a', 'b']]);
});

test('the newest is the one kept last, though a clock went back and hashes sort otherwise', () => {
  const first = field('z', { place: 1, keptMs: 2_000 });
  const second = field('a', { place: 2, keptMs: 1_000 });
  expect(shown([second, first])).toEqual([['z', 'a']]);
  expect(nextPlace([second, first])).toBe(3);
});

test('versions of earlier releases, which have no place, come before all that is kept since', () => {
  const old = procedure('z', { edition: { number: 9, keptAt: '2026-01-01T00:00:00Z' } });
  const older = procedure('b', { edition: { number: 8, keptAt: '2027-01-01T00:00:00Z' } });
  const fresh = { ...procedure('a', {}), place: nextPlace([old, older]) };
  expect(inOrder([fresh, old, older]).map(({ hash }) => hash)).toEqual(['b', 'z', 'a']);
});

test('two kept at once in two windows stand in the same order in both', () => {
  const [one, other] = [field('a', { place: 2 }), field('b', { place: 2 })];
  expect(inOrder([one, other])).toEqual(inOrder([other, one]));
});

test('what was deleted is in no list, and keeps its place for when it is brought back', () => {
  const [first, second] = [field('a', { place: 1 }), field('b', { place: 2, deletedMs: 5 })];
  expect(shown([first, second])).toEqual([['a']]);
  expect(nextPlace([first, second])).toBe(3);
  expect(shown([{ ...second, deletedMs: undefined }, first])).toEqual([['a', 'b']]);
  expect(shown([second])).toEqual([]);
});
