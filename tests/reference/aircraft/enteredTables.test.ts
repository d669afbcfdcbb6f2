/**
 * The handbooks' take-off tables entered as a pilot enters them, pasted in feet and pounds, against
 * the same rows fitted by `npm run fit`.
 */

import { expect, test } from 'vitest';
import { fitAircraft } from '../../../src/core/aircraft/fit/fitAircraft';
import { fitToBook } from '../../../src/core/aircraft/fit/fitToBook';
import { fitQuestion } from '../../../src/core/aircraft/make/begun';
import type { AircraftEdit } from '../../../src/core/aircraft/make/edit';
import { editedAircraft } from '../../../src/core/aircraft/make/edit';
import { readTable } from '../../../src/core/aircraft/make/readTable';
import { flying } from '../../core/aircraft/invented';
import { BOOKS } from './takeoffBooks';

const FT = 0.3048;

test.each(BOOKS)('$name has the same fit either way', ({ aircraft, rows, massKg, stallKt }) => {
  const cells = rows.flatMap(([ft, ...columns]) =>
    columns.map(([run, to50ft], index) => [ft, 10 * index, run, to50ft] as const),
  );
  const text = [
    'Press alt\tOAT °C\tGround roll\tTo clear 50 ft',
    ...cells.map((row) => row.join('\t')),
  ].join('\n');
  const table = readTable(text, { length: 'ft', mass: 'lb' });
  expect(table.problems).toEqual([]);
  const edits: readonly AircraftEdit[] = [
    { kind: 'figure', name: 'handbook.takeoffStallKt', to: stallKt },
    { kind: 'rows', part: null, to: table.rows },
  ];
  const question = fitQuestion(edits.reduce(editedAircraft, aircraft));
  const entered = question && fitAircraft(question.aircraft, question.guesses);
  const tool = fitToBook(
    flying(aircraft),
    cells.map(([pressureAltitudeFt, temperatureC, run, to50ft]) => ({
      massKg,
      pressureAltitudeFt,
      temperatureC,
      runM: run * FT,
      to50ftM: to50ft * FT,
      takeoffStallKt: stallKt,
    })),
  );
  expect(entered?.performance).toEqual(tool.performance);
  expect(entered?.figures.map(({ found }) => found)).toEqual(
    tool.figures.map(({ found }) => found),
  );
});
