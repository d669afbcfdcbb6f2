/** What isn't known of a step, and where it is entered. */

import { expect, test } from 'vitest';
import { enteredAt, unknownIn } from '../../../src/core/procedure/unknown';
import { facts, step } from './invented';

test('what a step asks for is named once each, in order; its note and call keep nobody from it', () => {
  const asked = step('approach', {
    item: 'Approach {runway}',
    response: '{approachKt} kt for {runway}',
    note: 'QNH {qnh}',
    call: '{callsign}, final',
  });
  const nothing = facts({ runway: null, approachKt: null, qnh: null, callsign: null });
  expect(unknownIn(asked, nothing)).toEqual(['runway', 'approachKt']);
  expect(unknownIn(asked, facts())).toEqual([]);
  expect(unknownIn(step('flaps'), nothing)).toEqual([]);
  const gate = step('gear', { kind: 'gate', gate: 'gearKt' });
  expect(unknownIn(gate, facts({ gearKt: null }))).toEqual(['gearKt']);
});

test('each number leads to where its missing part is entered', () => {
  const at = (name: Parameters<typeof enteredAt>[0], more: Parameters<typeof facts>[0]) =>
    enteredAt(name, facts({ [name]: null, ...more }));
  expect(at('runway', {})).toBe('wind');
  expect(at('runway', { field: null })).toBe('sortie');
  expect(at('runwayMagnetic', {})).toBe('sortie');
  expect(at('runwayMagnetic', { runway: null })).toBe('wind');
  expect(at('wind', {})).toBe('keypad');
  expect(at('qnh', {})).toBe('numbers');
  expect(at('landingMassKg', {})).toBe('load');
  expect(at('approachKt', { runway: null })).toBe('wind');
});

test('what the documents do not give is entered nowhere', () => {
  const at = (name: Parameters<typeof enteredAt>[0], more: Parameters<typeof facts>[0]) =>
    enteredAt(name, facts({ [name]: null, ...more }));
  expect(at('approachKt', {})).toBeNull();
  expect(at('massKg', { fuelKg: null })).toBeNull();
  expect(at('breakaway', {})).toBeNull();
  expect(at('windKt', {})).toBeNull();
});
