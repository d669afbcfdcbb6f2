import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readReport } from '../../../src/core/weather/readReport';
import { type PadKey, press, ROWS, UNITS } from '../../../src/parts/keypad/keys';

/** What stands in the entry after these keys. */
const typed = (...keys: readonly PadKey[]) => keys.reduce(press, '');

/** The digits of a number, as keys. */
const digits = (number: string) => [...number].map((digit) => digit as PadKey);

test.each<[string, readonly PadKey[], object]>([
  ['24012', digits('24012'), { fromDeg: 240, speedKt: 12 }],
  ['24012G20', [...digits('24012'), 'G', '2', '0'], { fromDeg: 240, speedKt: 12, gustKt: 20 }],
  ['240/12', [...digits('240'), '/', '1', '2'], { fromDeg: 240, speedKt: 12 }],
  ['240 12', [...digits('240'), 'space', '1', '2'], { fromDeg: 240, speedKt: 12 }],
  ['VRB03', ['VRB', '0', '3'], { variable: true, speedKt: 3 }],
  ['CALM', ['calm'], { speedKt: 0 }],
  ['24012KT', [...digits('24012'), 'unit'], { fromDeg: 240, speedKt: 12 }],
  // 10 m/s is 19.44 kt: 1 m/s = 3600/1852 kt, ICAO Annex 5.
  ['24010MPS', [...digits('24010'), 'unit', 'unit'], { speedKt: expect.closeTo(19.438, 3) }],
  // 37 km/h is 19.98 kt: 1 km/h = 1/1.852 kt, ICAO Annex 5.
  [
    '24037KMH',
    [...digits('24037'), 'unit', 'unit', 'unit'],
    { speedKt: expect.closeTo(19.978, 3) },
  ],
  [
    '24012KT 210V270',
    [...digits('24012'), 'unit', ...digits('210'), 'V', ...digits('270')],
    { fromDeg: 240, sectorDeg: [210, 270] },
  ],
  ['240P49KT', [...digits('240'), 'P', '4', '9', 'unit'], { speedKt: 49, speedIsMinimum: true }],
])('%s takes a key for each of its parts, and is read', (text, keys, wind) => {
  expect(typed(...keys)).toBe(text);
  expect(readReport(text).wind).toMatchObject(wind);
});

test('a wind with gust and swing never takes more keys than it has characters', () => {
  const three = fc.integer({ min: 1, max: 360 }).map((deg) => String(deg).padStart(3, '0'));
  const two = fc.integer({ min: 10, max: 99 }).map(String);
  fc.assert(
    fc.property(three, two, two, three, three, (from, speed, gust, first, second) => {
      const keys: PadKey[] = [
        ...digits(from + speed),
        'G',
        ...digits(gust),
        'unit',
        ...digits(first),
        'V',
        ...digits(second),
      ];
      const text = typed(...keys);
      expect(text).toBe(`${from}${speed}G${gust}KT ${first}V${second}`);
      expect(keys.length).toBeLessThanOrEqual(text.length);
    }),
  );
});

const ALL = ROWS.flat();

test('every key stands once on the pad, in rows of the same length', () => {
  expect(new Set(ALL).size).toBe(ALL.length);
  expect(new Set(ROWS.map(({ length }) => length))).toEqual(new Set([5]));
  expect(ALL).toEqual(expect.arrayContaining(digits('0123456789')));
});

test('the unit key goes round the units, and puts none down where there is no wind', () => {
  expect(typed('unit')).toBe('');
  expect(typed(...digits('24012'), 'space', 'unit')).toBe('24012KT');
  const rounds = [...UNITS, ...UNITS].map((_, index) =>
    typed(...digits('24012'), ...Array.from({ length: index + 1 }, () => 'unit' as const)),
  );
  expect(rounds).toEqual([...UNITS, ...UNITS].map((unit) => `24012${unit}`));
});

test('what a key put down in one go goes in one go', () => {
  const before = digits('24012');
  for (const key of ALL.filter((one) => !['erase', 'clear', 'calm'].includes(one))) {
    expect([key, typed(...before, key, 'erase')]).toEqual([key, '24012']);
  }
  for (const [index] of UNITS.entries()) {
    const unit = Array.from({ length: index + 1 }, () => 'unit' as const);
    expect(typed(...before, ...unit, 'erase')).toBe('24012');
  }
  expect(typed('calm', 'erase')).toBe('');
  expect(typed('VRB', 'erase')).toBe('');
});

test('erase takes something away until nothing is left, and then does no harm', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...ALL), { maxLength: 20 }), (keys) => {
      let text = typed(...keys);
      while (text !== '') {
        const shorter = press(text, 'erase');
        expect(shorter.length).toBeLessThan(text.length);
        expect(text.startsWith(shorter)).toBe(true);
        text = shorter;
      }
      expect(press('', 'erase')).toBe('');
    }),
  );
});

test('clear leaves nothing, and no key leaves two blanks or one in front', () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom(...ALL), { maxLength: 20 }), (keys) => {
      const text = typed(...keys);
      expect(press(text, 'clear')).toBe('');
      expect(text).not.toMatch(/ {2}|^ /);
    }),
  );
});
