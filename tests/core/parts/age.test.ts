import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { ageText } from '../../../src/parts/age';
import { ago } from '../../../src/parts/ago';
import { speak } from '../../../src/parts/catalogues';

beforeAll(() => speak('en'));

const MINUTE = 60_000;
const HOUR = 60 * MINUTE;
const DAY = 24 * HOUR;

test.each([
  [0, 'just now'],
  [59_999, 'just now'],
  [MINUTE, '1 min ago'],
  [119 * MINUTE, '119 min ago'],
  [2 * HOUR, '2 h ago'],
  [2 * DAY - 1, '47 h ago'],
  [2 * DAY, '2 days ago'],
  [-5 * MINUTE, 'just now'],
  [-6 * MINUTE, 'at an unknown time'],
  [-3 * HOUR, 'at an unknown time'],
])('%i ms ago is %s', (ms, said) => {
  expect(ago(ms)).toBe(said);
});

test('the age of a wind is said in the same measure', () => {
  expect(ageText(6 * MINUTE)).toBe('6 min old');
  expect(ageText(-1)).toBe('just now');
  // A clock that was set back makes nothing fresh.
  expect(ageText(-2 * HOUR)).toBe('age unknown');
});

test('what is said never makes a thing older than it is, and is off by less than its unit', () => {
  const unitMs: Record<string, number> = { min: MINUTE, h: HOUR, days: DAY };
  fc.assert(
    fc.property(fc.integer({ min: MINUTE, max: 400 * DAY }), (ms) => {
      const [number, unit = ''] = ago(ms).split(' ');
      const said = Number(number) * (unitMs[unit] ?? Number.NaN);
      expect(said).toBeLessThanOrEqual(ms);
      expect(ms - said).toBeLessThan(unitMs[unit] ?? 0);
    }),
  );
});
