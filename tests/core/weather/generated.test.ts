import fc from 'fast-check';
import { expect, test } from 'vitest';
import { GROUPS, isKnownGroup } from '../../../src/core/weather/groups';
import { readReport } from '../../../src/core/weather/readReport';
import type { ReportGroup } from '../../../src/core/weather/whole/groupTypes';
import { validGroup } from './winds';

/**
 * Reports made up field by field from the templates of WMO-No. 306 Vol. I.1, FM 15, and of FMH-1:
 * each group as it is written, beside what it says.
 */

type Written = readonly [text: string, says: Partial<ReportGroup>];

const digits = (length: number) => (n: number) => String(n).padStart(length, '0');
const two = digits(2);
const three = digits(3);
const signed = (c: number) => (c < 0 ? `M${two(-c)}` : two(c));
const int = (min: number, max: number) => fc.integer({ min, max });

const runway = fc
  .tuple(int(1, 36), fc.constantFrom('', 'L', 'C', 'R'))
  .map(([number, letter]) => two(number) + letter);

const COMPASS = ['N', 'NE', 'E', 'SE', 'S', 'SW', 'W', 'NW'] as const;
const metres = (m: number) => ({ distanceM: m, value: m, unit: 'm', bound: 'exact' }) as const;

const prevailing: fc.Arbitrary<Written> = fc.oneof(
  int(1, 99).map((fifties): Written => {
    const m = fifties * 50;
    return [digits(4)(m), { code: 'visibility', distance: metres(m), towards: null }];
  }),
  fc
    .record({
      whole: int(0, 9),
      half: fc.constantFrom([1, 2], [1, 4], [3, 4], [5, 8], [7, 16]),
      less: fc.boolean(),
    })
    .map(({ whole, half: [over, under], less }): Written => {
      const value = (less ? 0 : whole) + (over ?? 0) / (under ?? 1);
      const before = less ? 'M' : whole > 0 ? `${whole} ` : '';
      const bound = less ? 'below' : 'exact';
      // 1 statute mile is 1 609.344 m, ICAO Annex 5.
      const distance = { distanceM: value * 1609.344, value, unit: 'SM', bound } as const;
      return [`${before}${over}/${under}SM`, { code: 'visibility', distance, towards: null }];
    }),
);

const least: fc.Arbitrary<Written> = fc
  .tuple(int(1, 60), fc.constantFrom(...COMPASS))
  .map(([fifties, towards]) => [
    digits(4)(fifties * 50) + towards,
    { code: 'visibility', distance: metres(fifties * 50), towards },
  ]);

const BOUNDS = { '': 'exact', P: 'above', M: 'below' } as const;
const TENDENCIES = { '': null, U: 'rising', D: 'falling', N: 'steady' } as const;
const bound = fc.constantFrom('' as const, 'P' as const, 'M' as const);

const range: fc.Arbitrary<Written> = fc
  .record({
    runway,
    value: int(1, 40).map((n) => n * 50),
    bound,
    most: fc.option(
      fc.tuple(
        bound,
        int(41, 60).map((n) => n * 50),
      ),
    ),
    feet: fc.boolean(),
    tendency: fc.constantFrom('' as const, 'U' as const, 'D' as const, 'N' as const),
  })
  .map(({ runway: name, value, bound: mark, most, feet, tendency }) => {
    const distance = (n: number, sign: keyof typeof BOUNDS) =>
      ({
        // 1 ft is 0.3048 m, ICAO Annex 5.
        distanceM: feet ? n * 0.3048 : n,
        value: n,
        unit: feet ? 'ft' : 'm',
        bound: BOUNDS[sign],
      }) as const;
    const upTo = most ? `V${most[0]}${digits(4)(most[1])}` : '';
    const after = feet ? `FT${tendency && '/'}` : '';
    return [
      `R${name}/${mark}${digits(4)(value)}${upTo}${after}${tendency}`,
      {
        code: 'runway-visual-range',
        runway: name,
        distance: distance(value, mark),
        upTo: most ? distance(most[1], most[0]) : null,
        tendency: TENDENCIES[tendency],
      },
    ];
  });

/** What falls has a strength; what is only there has none. Table 4678. */
const falling: fc.Arbitrary<Written> = fc
  .record({
    sign: fc.constantFrom('' as const, '-' as const, '+' as const),
    descriptor: fc.constantFrom(null, 'SH' as const, 'TS' as const, 'FZ' as const),
    phenomena: fc.uniqueArray(fc.constantFrom('DZ', 'RA', 'SN', 'SG', 'PL', 'GR', 'GS', 'UP'), {
      minLength: 1,
      maxLength: 3,
    }),
  })
  .map(({ sign, descriptor, phenomena }) => [
    `${sign}${descriptor ?? ''}${phenomena.join('')}`,
    {
      code: 'weather',
      recent: false,
      vicinity: false,
      intensity: ({ '': 'moderate', '-': 'light', '+': 'heavy' } as const)[sign],
      descriptor,
      phenomena,
    } as Partial<ReportGroup>,
  ]);

const lying: fc.Arbitrary<Written> = fc
  .tuple(
    fc.constantFrom('', 'VC', 'RE'),
    fc.constantFrom(
      ['FG', 'BC'],
      ['FG', 'MI'],
      ['BR', null],
      ['HZ', null],
      ['SN', 'BL'],
      ['FG', 'FZ'],
    ),
  )
  .map(([where, [phenomenon, descriptor]]) => [
    `${where}${descriptor ?? ''}${phenomenon}`,
    {
      code: 'weather',
      recent: where === 'RE',
      vicinity: where === 'VC',
      intensity: null,
      descriptor,
      phenomena: [phenomenon],
    } as Partial<ReportGroup>,
  ]);

const cloud: fc.Arbitrary<Written> = fc
  .record({
    amount: fc.constantFrom('FEW' as const, 'SCT' as const, 'BKN' as const, 'OVC' as const, null),
    hundreds: fc.option(int(0, 400)),
    kind: fc.constantFrom('' as const, 'CB' as const, 'TCU' as const, '///' as const),
  })
  .map(({ amount, hundreds, kind }) => [
    `${amount ?? '///'}${hundreds === null ? '///' : three(hundreds)}${kind}`,
    {
      code: 'cloud',
      amount,
      baseFt: hundreds === null ? null : hundreds * 100,
      convective: kind === '///' ? 'not-observed' : kind || null,
    },
  ]);

const hidden: fc.Arbitrary<Written> = int(0, 20).map((hundreds) => [
  `VV${three(hundreds)}`,
  { code: 'vertical-visibility', heightFt: hundreds * 100 },
]);

const air: fc.Arbitrary<Written> = fc
  .tuple(fc.option(int(-60, 50)), fc.option(int(-70, 40)))
  .map(([airC, dewPointC]) => [
    `${airC === null ? '//' : signed(airC)}/${dewPointC === null ? '//' : signed(dewPointC)}`,
    { code: 'temperature', airC, dewPointC },
  ]);

const pressure: fc.Arbitrary<Written> = fc.oneof(
  int(870, 1084).map((qnhHpa): Written => [`Q${digits(4)(qnhHpa)}`, { code: 'pressure', qnhHpa }]),
  int(2600, 3200).map((n): Written => [`A${n}`, { code: 'pressure', qnhInHg: n / 100 }]),
);

const DEPOSITS = [
  ...['clear-and-dry', 'damp', 'wet', 'rime', 'dry-snow', 'wet-snow', 'slush', 'ice'],
  ...['compacted-snow', 'frozen-ruts'],
] as const;

const state: fc.Arbitrary<Written> = fc
  .record({ runway, deposit: int(0, 9), depth: int(1, 90), braking: int(0, 90) })
  .map(({ runway: name, deposit, depth, braking }) => [
    `R${name}/${deposit}5${two(depth)}${two(braking)}`,
    {
      code: 'runway-state',
      runway: name,
      deposit: DEPOSITS[deposit] ?? null,
      coveredPercent: [26, 50],
      depth: { depthMm: depth, bound: 'exact' },
      braking: braking / 100,
    } as Partial<ReportGroup>,
  ]);

const shear: fc.Arbitrary<Written> = fc
  .tuple(runway, fc.constantFrom('R', 'RWY', 'TKOF RWY', 'LDG RWY'))
  .map(([name, word]) => [
    `WS ${word}${name}`,
    {
      code: 'wind-shear',
      runway: name,
      path: word.startsWith('T') ? 'take-off' : word.startsWith('L') ? 'landing' : null,
    },
  ]);

const sea: fc.Arbitrary<Written> = fc
  .tuple(int(-2, 35), int(0, 120))
  .map(([waterC, decimetres]) => [
    `W${signed(waterC)}/H${decimetres}`,
    { code: 'sea', waterC, wavesM: decimetres / 10, state: null },
  ]);

const many = (one: fc.Arbitrary<Written>, most: number) => fc.array(one, { maxLength: most });

/** In the order of FM 15; all but the wind may be missing. */
const groups = fc
  .tuple(
    many(prevailing, 1),
    many(least, 1),
    many(range, 4),
    many(fc.oneof(falling, lying), 3),
    many(cloud, 4),
    many(hidden, 1),
    many(air, 1),
    many(pressure, 1),
    many(shear, 2),
    many(sea, 1),
    many(state, 3),
  )
  .map((parts) => parts.flat());

test('a report made up field by field comes back field for field, each group with its place', () => {
  fc.assert(
    fc.property(validGroup, groups, fc.boolean(), ({ text: windText, wind }, written, small) => {
      const body = written.map(([text]) => text).join(' ');
      const plain = `METAR XHAR 011250Z ${windText} ${body} NOSIG=`;
      const text = small ? plain.toLowerCase() : plain;
      const { spans, wind: read, problems } = readReport(text);
      expect(read).toEqual(wind);
      expect(problems).toEqual([]);
      const others = spans.filter(({ kind }) => kind === 'other');
      expect(others.map(({ at }) => plain.slice(...at))).toEqual(written.map(([group]) => group));
      for (const [i, [, says]] of written.entries()) {
        expect(others[i]?.meaning).toMatchObject(says);
      }
      expect(spans.map(({ kind }) => kind)).not.toContain('unread');
    }),
    { numRuns: 600 },
  );
});

test.each(Object.entries(GROUPS))('what has the shape of %s is known', (_, shape) => {
  fc.assert(
    fc.property(fc.stringMatching(new RegExp(`^(?:${shape})$`)), (text) => {
      fc.pre(text.length <= 24);
      expect(isKnownGroup(text, '')).toBe(true);
    }),
    { numRuns: 300 },
  );
});

// Words of wind shear mean something only together, and not every number is a pressure, a temperature or a fraction.
const { windShear: _shear, pressure: _pressure, temperature: _temperature, ...ALONE } = GROUPS;
const MILD = '(M?[0-5]\\d|//)/(M?[0-5]\\d|//)?';

test.each(Object.entries({ ...ALONE, temperature: MILD }))('and has a meaning: %s', (_, shape) => {
  fc.assert(
    fc.property(fc.stringMatching(new RegExp(`^(?:${shape})$`)), (text) => {
      fc.pre(text.length <= 24 && !/\/0+SM$/.test(text));
      const { spans } = readReport(`METAR XHAR 011250Z 24012KT ${text} NOSIG`);
      expect(spans.map(({ meaning }) => meaning?.code)).not.toContain(undefined);
      expect(spans).toHaveLength(6);
    }),
    { numRuns: 300 },
  );
});
