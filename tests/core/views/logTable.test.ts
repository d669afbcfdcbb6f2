/** The log's line and its table tell what went wrong: a rejected take-off, lists, going on outside limits. */

import { beforeAll, expect, test } from 'vitest';
import { logOf } from '../../../src/core/sortie/log';
import { summaryOf } from '../../../src/core/sortie/logSummary';
import { speak } from '../../../src/parts/catalogues';
import { words as verdict } from '../../../src/parts/verdict/words.en';
import { heading, lineOf } from '../../../src/views/log/table';
import { words } from '../../../src/views/log/words.en';
import { OPEN_LIST, RUN, written } from '../sortie/recorder';

beforeAll(() => speak('en'));

const CAUTION = { code: 'crosswind', value: 27, limit: 24 } as const;
const STOPPED = written(
  { kind: 'begun', run: RUN, phase: 'line-up' },
  { kind: 'accepted', end: '28', purpose: 'take-off', cautions: [CAUTION] },
  { kind: 'stamp', what: 'brakes released' },
  { kind: 'stamp', what: 'stopping' },
  OPEN_LIST,
);

const logged = logOf(STOPPED, () => null) ?? expect.unreachable('no sortie');

test('the line counts rejected take-offs, and says that limits were gone beyond', () => {
  expect(summaryOf(logged)).toMatchObject({ rejected: 1, outside: true });
  const quiet = logOf(written({ kind: 'stamp', what: 'off chocks' }), () => null);
  expect(quiet && summaryOf(quiet)).toMatchObject({ rejected: 0, outside: false });
});

test('the table has columns for them', () => {
  const told = { blockMinutes: null, flightMinutes: null, field: 'XHAR', aircraft: 'Sleet' };
  const line = lineOf(logged, told);
  const head = heading();
  expect(line).toHaveLength(head.length);
  const cell = (name: string) => line[head.indexOf(name)];
  expect(cell(words.csv.lists)).toBe(OPEN_LIST.list);
  expect(cell(words.csv.begun)).toBe(words.phases['line-up']);
  expect(cell(words.csv.outside)).toBe('28 Crosswind 27, limit 24');
});

test('another runway mends only where one is within limits', () => {
  expect(verdict.mend('crosswind', true)).toContain('Another runway');
  for (const code of ['crosswind', 'tora', 'lda', 'tyres', 'narrow', 'no-lights'] as const) {
    expect(verdict.mend(code, false)).not.toMatch(/Another runway|Choose another runway/);
    expect(verdict.mend(code, false)).not.toBe('');
  }
});
