/**
 * How numbers, letters and names are said. Examples of ICAO Annex 10, vol. II, 5.2.1.3 and 5.2.1.4,
 * and Doc 9432, ch. 2 (values from memory).
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  saidCallsign,
  saidDistance,
  saidEach,
  saidHundreds,
  saidPoint,
  saidRunway,
  saidStand,
} from '../../../src/parts/spoken.en';

test.each([
  // Doc 9432, 2.4: call signs, headings, runways and frequencies digit by digit.
  ['118.1', 'one one eight decimal one'],
  ['120.37', 'one two zero decimal three seven'],
  ['118.125', 'one one eight decimal one two five'],
  ['100', 'one zero zero'],
])('%s is said %s', (written, said) => {
  expect(saidEach(written)).toBe(said);
});

test.each([
  ['27', 'two seven'],
  ['30', 'three zero'],
  ['09L', 'zero nine left'],
  ['26C', 'two six centre'],
  ['10R', 'one zero right'],
  ['01/19', 'zero one one nine'],
  ['05R/23L', 'zero five right two three left'],
])('runway %s is said %s', (written, said) => {
  expect(saidRunway(written)).toBe(said);
});

test.each([
  // Annex 10, 5.2.1.4.1.2: whole hundreds and thousands.
  [400, 'four hundred'],
  [4500, 'four thousand five hundred'],
  [10000, 'one zero thousand'],
  [12000, 'one two thousand'],
])('%s metres are said %s', (metres, said) => {
  expect(saidHundreds(metres)).toBe(said);
});

test.each([
  // Annex 10, 5.2.1.7.2.1: a registration letter by letter; a telephony designator and a number.
  ['G-ABCD', 'Golf Alfa Bravo Charlie Delta'],
  ['N57826', 'November five seven eight two six'],
  ['FASTAIR 345', 'Fastair three four five'],
  ['Fastair 345', 'Fastair three four five'],
  ['Tallow 12', 'Tallow one two'],
])('callsign %s is said %s', (written, said) => {
  expect(saidCallsign(written)).toBe(said);
});

test('every letter has the word of the spelling alphabet that begins with it', () => {
  for (const letter of 'ABCDEFGHIJKLMNOPQRSTUVWXYZ') {
    expect(saidEach(letter).charAt(0)).toBe(letter);
    expect(saidEach(letter).length).toBeGreaterThan(3);
  }
  expect(['J', 'A', 'X', 'W'].map(saidEach)).toEqual(['Juliett', 'Alfa', 'X-ray', 'Whiskey']);
});

test('taxiways and holding points are spelled, and names stay names', () => {
  expect(['B', 'K2', 'AA', 'Link north'].map(saidPoint)).toEqual([
    'Bravo',
    'Kilo two',
    'Alfa Alfa',
    'Link north',
  ]);
  expect(['Stand 6', 'Stand 12', 'Camp west'].map(saidStand)).toEqual([
    'stand six',
    'stand one two',
    'Camp west',
  ]);
});

test('no digit is ever left as a digit', () => {
  fc.assert(
    fc.property(fc.stringMatching(/^[A-Z]{0,3}[ -]?[0-9]{1,4}[A-Z]?$/), (text) => {
      expect(saidCallsign(text)).not.toMatch(/\d/);
      expect(saidPoint(text)).toBe(saidPoint(text).trim());
    }),
  );
});

// ICAO Annex 10, vol. II, 5.2.1.4.1.1 and .2: digit by digit, but whole hundreds and thousands as such.
test.each([
  [750, 'seven five zero'],
  [800, 'eight hundred'],
  [1050, 'one zero five zero'],
  [2050, 'two zero five zero'],
  [1400, 'one thousand four hundred'],
  [10, 'one zero'],
])('a distance of %i m, as known: %s', (metres, said) => {
  expect(saidDistance(metres)).toBe(said);
});
