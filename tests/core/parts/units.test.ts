/** Numbers with their units in words: a pressure setting is read out digit by digit, a temperature has a blank. */

import { beforeAll, describe, expect, test } from 'vitest';
import { speak } from '../../../src/parts/catalogues';
import { words as warum } from '../../../src/views/why/words.de';
import { words as why } from '../../../src/views/why/words.en';
import { words as bedeutung } from '../../../src/views/wind/report/meaningWords.de';
import { words as meaning } from '../../../src/views/wind/report/meaningWords.en';

beforeAll(() => speak('en'));

const QNH = { code: 'pressure', given: 'hPa', qnhHpa: 1013.2, qnhInHg: null } as const;

describe.each([
  ['English', meaning, why],
  ['German', bedeutung, warum],
])('in %s', (_, { meaning: said }, { units }) => {
  test('a QNH has no gap between its thousands', () => {
    expect(said(QNH)).toBe('QNH 1013 hPa');
  });

  test('a blank that never breaks stands before degrees Celsius, and none before degrees', () => {
    expect(units.degC).toBe('\u00a0°C');
    expect(units.deg).toBe('°');
  });
});
