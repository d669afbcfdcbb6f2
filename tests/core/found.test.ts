import { expect, test } from 'vitest';
import { found, matchOf, slipsIn } from '../../src/core';

const FIELDS = [
  { code: 'XHAR', name: 'Harrow Sound' },
  { code: 'XKEL', name: 'Kelder Ness' },
  { code: 'XSNA', name: 'Snæfell' },
  { code: 'XMUE', name: 'Mühlenau am See' },
];
const codes = (typed: string) =>
  found(typed, FIELDS, ({ code, name }) => ({ code, texts: [name] })).map(({ code }) => code);

test('a field is found by its code, by the beginning of a word, and in any order of words', () => {
  expect(codes('xhar')).toEqual(['XHAR']);
  expect(codes('sou')).toEqual(['XHAR']);
  expect(codes('sound harr')).toEqual(['XHAR']);
  expect(codes('')).toEqual(['XHAR', 'XKEL', 'XSNA', 'XMUE']);
});

test('accents need not be typed', () => {
  expect(codes('muhlenau')).toEqual(['XMUE']);
  expect(codes('snaefell')).toEqual(['XSNA']);
});

test('a slip of the finger is forgiven in four letters or more, and never in three', () => {
  expect(codes('harow')).toEqual(['XHAR']);
  expect(codes('hrraow')).toEqual([]);
  expect(codes('kedler')).toEqual(['XKEL']);
  expect(codes('kld')).toEqual([]);
});

test('every word typed has to be found', () => {
  expect(codes('harrow ness')).toEqual([]);
});

test('a code comes before a name that begins alike', () => {
  const fields = [
    { code: 'XABC', name: 'Xhar village' },
    { code: 'XHAR', name: 'Harrow Sound' },
  ];
  const order = found('xhar', fields, ({ code, name }) => ({ code, texts: [name] }));
  expect(order.map(({ code }) => code)).toEqual(['XHAR', 'XABC']);
  expect(matchOf('xhar', { code: 'XHAR', texts: [] })).toBe(0);
});

// The four kinds of slip that Damerau counts as one, CACM 7/3, 1964.
test.each([
  ['changed', 'harrpw'],
  ['added', 'harrrow'],
  ['left out', 'harow'],
  ['swapped', 'hrarow'],
])('a letter %s is one slip', (_, typed) => {
  expect(slipsIn(typed, 'harrow', 2)).toBe(1);
});
