import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readReport, readReports } from '../../../src/core/weather/readReport';
import { readWind } from '../../../src/core/weather/readWind';
import { MOST_CHARACTERS } from '../../../src/core/weather/tokens';
import { faultOf, fuzzReports } from '../../bench/reports';
import { codesOf, windOf } from './winds';

describe('whatever the text, the answer does not contradict itself', () => {
  test('with characters of every script', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        expect(faultOf(readWind(text), text)).toBeNull();
      }),
      { numRuns: 2000 },
    );
  });

  test('with halves of surrogate pairs', () => {
    const units = fc.array(fc.integer({ min: 0, max: 0xffff }), { maxLength: 60 });
    fc.assert(
      fc.property(units, (codes) => {
        const text = String.fromCharCode(...codes);
        expect(faultOf(readWind(text), text)).toBeNull();
      }),
    );
  });

  test('with reports that have slips in them', () => {
    fuzzReports(20_000, 20_261_124);
  });

  test('the spans of all reports together cover the text', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: fc.constantFrom(...'24012KTMETAR =/\nZ'), maxLength: 80 }),
        (text) => {
          const [first] = readReports(text);
          if (!first) return;
          const spans = readReports(text).flatMap((report) => report.spans);
          expect(faultOf({ ...first, spans }, text)).toBeNull();
        },
      ),
    );
  });
});

describe('a text beyond the bound', () => {
  const report = 'METAR XHAR 011250Z 24012KT 9999 FEW030 15/08 Q1013=\n';
  const long = report.repeat(Math.ceil(1_000_000 / report.length));

  test('is answered from what was read, and says so', () => {
    expect(windOf(long)).toBe('240/12');
    expect(codesOf(readWind(long))).toEqual(['too-long']);
    expect(faultOf(readWind(long), long)).toBeNull();
    expect(codesOf(readWind('24012 '.padEnd(MOST_CHARACTERS)))).toEqual([]);
  });

  test('does not have its last group read by halves', () => {
    const cut = `${'x '.repeat(MOST_CHARACTERS / 2 - 4)}24012G20KT`;
    expect(cut.length).toBeGreaterThan(MOST_CHARACTERS);
    expect(windOf(cut)).toBe('none');
    expect(codesOf(readWind(cut))).toEqual(['no-wind', 'too-long']);
  });

  test.each([
    'a',
    'a ',
    '=',
    'a = ',
    '240 ',
    '240 1 ',
    'V ',
    '.',
    '.a',
    '2',
    '24012G ',
    '🛫',
    '240 degrees at ',
    '\u200b',
    'RMK PK WND ',
    'TEMPO FM ',
    'R24/0600 ',
    'RAB05E30E05',
  ])('of a megabyte of %j keeps the screen waiting less than 50 ms', (piece) => {
    const junk = piece.repeat(Math.ceil(1_000_000 / piece.length));
    const bestOf = (read: (text: string) => unknown) => {
      const times = Array.from({ length: 7 }, () => {
        // The processor's time, not the clock's: other programs may hold the processor.
        const start = process.cpuUsage();
        read(junk);
        return process.cpuUsage(start).user / 1000;
      });
      return Math.min(...times);
    };
    // A quadratic reader would take minutes; 50 ms is the most that a screen may wait.
    expect(bestOf(readWind)).toBeLessThan(50);
    expect(bestOf(readReport)).toBeLessThan(50);
  });
});
