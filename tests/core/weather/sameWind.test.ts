import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readReport, readReports } from '../../../src/core/weather/readReport';
import { readTokens, readWind } from '../../../src/core/weather/readWind';
import type { Span, WindReport } from '../../../src/core/weather/report';
import { faultOf, textsFrom } from '../../bench/reports';

/** The kind of each character that is read as anything; blanks inside a stretch do not count. */
function painted(spans: readonly Span[], text: string): (string | undefined)[] {
  const kinds: (string | undefined)[] = [];
  for (const { at, kind } of spans) {
    for (let i = at[0]; i < at[1]; i++) if (!BLANK.test(text.charAt(i))) kinds[i] = kind;
  }
  return kinds;
}
const BLANK = /[\s\p{Cc}\p{Cf}]/u;

/** All but spans, and what only the whole reader gives. */
const windOnly = ({ kind, station, issued, wind, north, others, problems }: WindReport) => ({
  ...{ kind, station, issued, wind, north, others, problems },
});

function expectSame(text: string): void {
  const [whole, light] = [readReport(text), readWind(text)];
  // As one text each, because comparing piece by piece takes most of the time of these tests.
  const [ours, theirs] = [whole, light].map((report) =>
    JSON.stringify([windOnly(report), painted(report.spans, text)]),
  );
  expect(ours).toBe(theirs);
  expect(faultOf(whole, text)).toBeNull();
  expect(JSON.stringify(readReports(text).map(windOnly))).toBe(
    JSON.stringify(readTokens(text).reports.map(windOnly)),
  );
}

describe('the reader of whole reports says of the wind what the reader of winds says', () => {
  test('of reports with slips in them, and of pieces in any order', () => {
    const texts = textsFrom(20_261_125);
    for (let i = 0; i < 4000; i++) expectSame(texts.next().value);
  }, 30_000);

  test('of characters of every script', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 120 }), expectSame), {
      numRuns: 500,
    });
  });

  test('of a report from left to right, from right to left, and between pictures', () => {
    const report = 'METAR XHAR 011250Z 24012G20KT 9999 -SHRA FEW030CB 15/M02 Q1013 RMK SLP045';
    for (const text of [
      `\u202e${report}\u202c`,
      report.replaceAll(' ', '\u200f '),
      report.replaceAll(' ', ' \u200b'),
      `🛫 ${report} 🛬`,
      report.replaceAll(' ', '\ufeff'),
    ]) {
      expectSame(text);
      const { weather } = readReport(text);
      expect(weather.pressure?.qnhHpa).toBe(1013);
      expect(weather.remarks?.seaLevelHpa).toBe(1004.5);
    }
  });

  test('of a text beyond the bound', () => {
    expectSame('METAR XHAR 011250Z 24012KT 9999 FEW030 15/08 Q1013=\n'.repeat(600));
  });
});
