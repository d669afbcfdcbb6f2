import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { lineBetween } from '../../../src/core/earth/geodesic';
import { slipsIn } from '../../../src/core/found';
import { nearestFields } from '../../../src/core/world/nearest';
import { readWorld, type World } from '../../../src/core/world/readWorld';
import { eachWithSlips, worldSearch } from '../../../src/core/world/search';
import { PER_DEGREE, type WorldKind } from '../../../src/core/world/worldField';
import { bytesOf, field, finished, textOf, WORLD } from './invented';

function worldOf(fields: typeof WORLD): World {
  const world = readWorld(bytesOf(fields), textOf);
  if (world === null) throw new Error('not read');
  return world;
}

const world = worldOf(WORLD);
const find = finished(worldSearch(world));
const AERODROMES: ReadonlySet<WorldKind> = new Set<WorldKind>(['aerodrome']);
const codesFor = (typed: string, kinds = AERODROMES, most = 10) =>
  find(typed, { kinds, most }).map((index) => world.codes[index]);

describe('a field of the world is found', () => {
  test('by its code, in any case, and by the beginning of it', () => {
    expect(codesFor('xaab')).toEqual(['XAAB']);
    expect(codesFor('XBB')).toEqual(['XBBC']);
  });

  test('by another code of it', () => {
    expect(codesFor('a12')).toEqual(['XAAB']);
  });

  test('by a code with a hyphen, with it and without', () => {
    expect(codesFor('RU-10046')).toEqual(['RU-10046']);
    expect(codesFor('10046')).toEqual(['RU-10046']);
  });

  test('by name and town, in any order', () => {
    expect(codesFor('port bay marlow')).toEqual(['XAAB']);
    expect(codesFor('bay port')).toEqual(['XAAB']);
  });

  test('without its accents', () => {
    expect(codesFor('sao braun')).toEqual(['XBBC']);
  });

  test('with a slip of the finger', () => {
    expect(codesFor('nrodwick')).toEqual(['RU-10046']);
    expect(codesFor('nordwik')).toEqual(['RU-10046']);
    expect(codesFor('bordwick')).toEqual(['RU-10046']);
  });

  test('the larger one first where two match alike', () => {
    expect(codesFor('marlow')).toEqual(['XAAB', 'XDDE']);
  });

  test('a heliport only when asked for', () => {
    expect(codesFor('hospital')).toEqual([]);
    expect(codesFor('hospital', new Set<WorldKind>(['heliport']))).toEqual(['XCCD']);
  });

  test('no more than are wanted, and none where nothing is typed or nothing matches', () => {
    expect(codesFor('x', AERODROMES, 2)).toHaveLength(2);
    expect(codesFor(' - ')).toEqual([]);
    expect(codesFor('marlow xyzzy')).toEqual([]);
  });
});

test('slips are counted as elsewhere', () => {
  const letters = fc.string({
    unit: fc.constantFrom('a', 'b', 'c', 'd'),
    minLength: 1,
    maxLength: 9,
  });
  fc.assert(
    fc.property(
      fc.uniqueArray(letters, { maxLength: 30 }),
      letters,
      fc.nat(2),
      (some, typed, most) => {
        const words = [...some].sort();
        const shared = Uint8Array.from(words, (word, place) => {
          const before = words[place - 1] ?? '';
          let alike = 0;
          while (alike < word.length && word[alike] === before[alike]) alike += 1;
          return alike;
        });
        const told = new Map<string, number>();
        eachWithSlips({ words, shared }, typed, most, (place, slips) =>
          told.set(words[place] ?? '', slips),
        );
        for (const word of words) expect(told.get(word) ?? null).toBe(slipsIn(typed, word, most));
      },
    ),
    { numRuns: 500 },
  );
});

test('the nearest fields are those at the least distance, over the antimeridian too', () => {
  const degrees = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
  const places = fc.array(fc.record({ latDeg: degrees(80), lonDeg: degrees(180) }), {
    minLength: 1,
    maxLength: 12,
  });
  fc.assert(
    fc.property(places, (some) => {
      const fields = some.map((place, index) =>
        field({ code: `X${index}`, name: 'Any', place: { ...place, elevationFt: 0 } }),
      );
      const here = worldOf(fields);
      const to = { latDeg: 0.5, lonDeg: 179.9 };
      const nearest = nearestFields(here, to, { kinds: AERODROMES, most: 5 });
      const away = [...here.lats].map((lat, index) => {
        const there = { latDeg: lat / PER_DEGREE, lonDeg: (here.lons[index] ?? 0) / PER_DEGREE };
        return lineBetween(to, there)?.distanceM ?? Number.POSITIVE_INFINITY;
      });
      expect(nearest.map(({ awayM }) => awayM)).toEqual(away.sort((a, b) => a - b).slice(0, 5));
    }),
  );
});
