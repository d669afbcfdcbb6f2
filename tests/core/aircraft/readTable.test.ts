/** Tables as pilots paste them: separators, decimal signs, headings in two languages, units. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { COLUMNS, MOST_ROWS, readTable } from '../../../src/core/aircraft/make/readTable';

const METRIC = { length: 'm', mass: 'kg' } as const;
const IMPERIAL = { length: 'ft', mass: 'lb' } as const;

describe('one table, written six ways', () => {
  const rows = [
    { massKg: 1043, pressureAltitudeFt: 0, temperatureC: 12.5, runM: 1200 },
    { massKg: 1043, pressureAltitudeFt: 2000, temperatureC: -5, runM: 1350 },
  ];
  test.each([
    ['tabs', 'Mass\tAltitude\tTemp\tRun\n1043\t0\t12.5\t1200\n1043\t2000\t-5\t1350'],
    [
      'semicolons and decimal commas',
      'Masse;Höhe;Temp.;Startlauf\n1043;0;12,5;1200\n1043;2000;−5;1350',
    ],
    ['commas', 'mass,alt,oat,ground roll\n1043,0,12.5,1200\n1043,2000,-5,1350\n'],
    ['gaps', 'Mass   Pressure alt   OAT   Run\n1043   0   12,5   1200\n1043   2000   -5   1350'],
    ['thousands apart', 'Mass\tAltitude\tTemp\tRun\n1,043\t0\t12.5\t1,200\n1.043\t2000\t-5\t1 350'],
    [
      'units in the cells',
      'Mass\tAlt\tOAT\tRun\r\n1043 kg\t0 ft\t12.5 °C\t1200 m\r\n1043\t2000\t-5\t1350',
    ],
  ])('%s', (_, text) => {
    expect(readTable(text, METRIC)).toMatchObject({ rows, problems: [] });
  });
});

test('columns stand in any order, and say their own units', () => {
  const text =
    'Total to clear 50 ft obs (ft)\tGround roll (ft)\tWeight (lb)\tOAT (°F)\tPress alt (ft)\n1300\t720\t2300\t59\t1000';
  const { rows, columns } = readTable(text, METRIC);
  expect(columns).toEqual(['to50ftM', 'runM', 'massKg', 'temperatureC', 'pressureAltitudeFt']);
  const [row] = rows;
  expect(row?.to50ftM).toBeCloseTo(396.24, 2);
  expect(row?.runM).toBeCloseTo(219.456, 3);
  expect(row?.massKg).toBeCloseTo(1043.26, 2);
  expect(row?.temperatureC).toBeCloseTo(15, 6);
});

test('take-off and landing stand side by side', () => {
  const text =
    'T/O run;Distance 50 ft;Climb ft/min;Landing roll;Landing distance\n200;400;700;150;380';
  expect(readTable(text, METRIC).rows).toEqual([
    { runM: 200, to50ftM: 400, climbFtMin: 700, landingRunM: 150, landingM: 380 },
  ]);
  const german =
    'Startrollstrecke;Startstrecke;Steigrate;Landerollstrecke;Landestrecke\n200;400;700;150;380';
  expect(readTable(german, METRIC).columns).toEqual([
    'runM',
    'to50ftM',
    'climbFtMin',
    'landingRunM',
    'landingM',
  ]);
});

test('without a heading the columns stand in the order of the form, in the pilot’s units', () => {
  const { rows } = readTable('2300\t0\t15\t0\t720\t1300', IMPERIAL);
  expect(rows[0]?.massKg).toBeCloseTo(1043.26, 2);
  expect(rows[0]?.to50ftM).toBeCloseTo(396.24, 2);
});

test('what can’t be read is left empty and named with its line', () => {
  const { rows, problems } = readTable('Mass\tRun\n1043\tsee note\n1043\t99999\n1043\t300', METRIC);
  expect(rows).toEqual([{ massKg: 1043 }, { massKg: 1043 }, { massKg: 1043, runM: 300 }]);
  expect(problems).toEqual([
    { code: 'no-number', line: 2, column: 'runM', text: 'see note' },
    { code: 'out-of-range', line: 3, column: 'runM', text: '99999' },
  ]);
});

test('a heading that means nothing, and one that stands twice, are named', () => {
  const { problems } = readTable('Mass\tColour\tRun\tGround roll\n900\t3\t200\t210', METRIC);
  expect(problems).toEqual([
    { code: 'column-unknown', text: 'Colour' },
    { code: 'column-twice', text: 'Ground roll' },
  ]);
});

test('too many rows, too long a text, and nothing at all are said', () => {
  const many = Array.from({ length: MOST_ROWS + 5 }, () => '900\t0').join('\n');
  expect(readTable(many, METRIC).rows).toHaveLength(MOST_ROWS);
  expect(readTable(many, METRIC).problems).toEqual([{ code: 'too-many-rows' }]);
  expect(readTable('x'.repeat(30_000), METRIC).problems).toEqual([{ code: 'too-long' }]);
  expect(readTable(' \n', METRIC).problems).toEqual([{ code: 'no-rows' }]);
});

test('any text is read without failing, into numbers within bounds', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme', maxLength: 300 }), (text) => {
      for (const row of readTable(text, METRIC).rows) {
        for (const column of COLUMNS) expect(Number.isFinite(row[column] ?? 0)).toBe(true);
      }
    }),
  );
});
