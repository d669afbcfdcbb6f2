import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readWorld } from '../../../src/core/world/readWorld';
import { bytesOf, textOf, WORLD } from './invented';

test('what was packed is read again, field by field', () => {
  const world = readWorld(bytesOf(WORLD), textOf);
  expect(world?.date).toBe('2026-01-02');
  expect(WORLD.map((_, index) => world?.fieldAt(index))).toEqual(WORLD);
  expect(world?.fieldAt(WORLD.length)).toBeNull();
  expect(world?.fieldAt(-1)).toBeNull();
  expect([...(world?.longestFt ?? [])]).toEqual([3281, 15_748, 3281, 3281, 3281]);
});

test('a set cut short anywhere is refused', () => {
  const bytes = bytesOf(WORLD);
  for (let length = 0; length < bytes.length; length++)
    expect(readWorld(bytes.subarray(0, length), textOf)).toBeNull();
});

test('a set with something behind it is refused', () => {
  expect(readWorld(Uint8Array.of(...bytesOf(WORLD), 0), textOf)).toBeNull();
});

test('damaged bytes are read as some set or refused, never with an error', () => {
  const bytes = bytesOf(WORLD);
  fc.assert(
    fc.property(
      fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { minLength: 1, maxLength: 20 }),
      (changes) => {
        const damaged = bytes.slice();
        for (const [at, value] of changes) damaged[at] = value;
        const world = readWorld(damaged, textOf);
        for (let index = 0; index < WORLD.length; index++) world?.fieldAt(index);
      },
    ),
  );
});

test.each([
  '',
  '{}',
  '{"lapstrip":"world","version":2,"date":"2026-01-02","fields":1,"runways":1}',
  '{"lapstrip":"world","version":1,"date":"2026-01-02","fields":1000000000,"runways":1}',
  'null',
])('a head that is none is refused: %s', (head) => {
  expect(readWorld(new TextEncoder().encode(`${head}\n`), textOf)).toBeNull();
});
