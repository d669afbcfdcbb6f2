/**
 * Three landing tables with rows of their own for height and temperature, against profiles fitted by
 * `npm run fit` to one row of each: what is compared is how physics goes with the air, row by row. The
 * worst rows are +3.8 % of the roll (100 hp, 7 500 ft) and −2.4 % of the way from 50 ft (100 hp, 5 000 ft,
 * 38 °C). With a flare that is an arc alone they would be +5.0 and −8.4 %.
 */

import { describe, expect, test } from 'vitest';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import { fitToBook } from '../../../src/core/aircraft/fit/fitToBook';
import { landing } from '../../../src/core/aircraft/landing';
import { flying, inventedAircraft, landed, landingQuestion } from '../../core/aircraft/invented';
import { lightSingle } from './lightSingle';

const FT = 0.3048;

/** Pressure altitude, ft, and °C; then roll and way from 50 ft to rest, ft. */
type Row = readonly [ft: number, celsius: number, roll: number, from50ft: number];

interface Book {
  readonly name: string;
  readonly aircraft: Aircraft;
  /** The row that the profile is fitted to, and all the others. */
  readonly fittedTo: Row;
  readonly rows: readonly Row[];
}

/** A light single that approaches at a speed, 1.3 of its stall, down a path: steep, as without power. */
function single(massKg: number, areaM2: number, approachKt: number, pathDeg: number): Aircraft {
  const aircraft = inventedAircraft(
    lightSingle(
      [
        [0, 2000],
        [140, 700],
      ],
      areaM2,
      0.04,
    ),
    {
      engine: 'piston',
      masses: {
        emptyKg: massKg / 2,
        usualTakeoffKg: massKg,
        maxTakeoffKg: massKg,
        usualLandingKg: massKg,
        maxLandingKg: massKg,
      },
      landing: { approachKt, runM: 150 },
    },
  );
  const { performance } = aircraft;
  if (performance === undefined) throw new Error('no performance');
  const rule = { ...performance.landing, pathDeg };
  return { ...aircraft, performance: { ...performance, landing: rule } };
}

/** Rows of a table whose columns are 0, 10, 20, 30 and 40 °C. */
const table = (
  ...rows: readonly (readonly [number, ...(readonly [number, number])[]])[]
): readonly Row[] =>
  rows.flatMap(([ft, ...cells]) =>
    cells.map(([roll, from50ft], index): Row => [ft, 10 * index, roll, from50ft]),
  );

const BOOKS: readonly Book[] = [
  {
    // FAA-CT-8080-2, Airman Knowledge Testing Supplement, fig. 38: 1 600 lb, flaps 40°, no power, 60 mph,
    // standard air. 445, 470, 1 195 and 1 255 ft as worked with at flynorthaero.com (course quiz,
    // performance and limitations 1), the others from memory; so is its note of a tenth more for each
    // 60 °F above standard, which is the last row.
    name: 'a two-seater of 100 hp',
    aircraft: single(726, 14.6, 52, 7),
    fittedTo: [0, 15, 445, 1075],
    rows: [
      [2500, 10, 470, 1135],
      [5000, 5, 495, 1195],
      [7500, 0, 520, 1255],
      [5000, 38.3, 545, 1315],
    ],
  },
  {
    // Cessna 172N, Pilot's Operating Handbook 1978, short field, 2 300 lb, flaps 40°, no power, 60 kt
    // (values from memory).
    name: 'a four-seater of 160 hp',
    aircraft: single(1043, 16.2, 60, 7),
    fittedTo: [0, 10, 510, 1235],
    rows: table(
      [0, [495, 1205], [510, 1235], [530, 1265], [545, 1295], [565, 1330]],
      [1000, [510, 1235], [530, 1265], [550, 1300], [565, 1330], [585, 1365]],
      [2000, [530, 1265], [550, 1300], [570, 1335], [590, 1370], [610, 1405]],
      [3000, [550, 1300], [570, 1335], [590, 1370], [610, 1405], [630, 1440]],
      [4000, [570, 1335], [590, 1370], [615, 1410], [635, 1445], [655, 1480]],
    ),
  },
  {
    // Cessna 152, Pilot's Operating Handbook 1979, short field, 1 670 lb, flaps 30°, no power, 54 kt
    // (values from memory).
    name: 'a two-seater of 110 hp',
    aircraft: single(757, 14.9, 54, 6.5),
    fittedTo: [0, 10, 465, 1185],
    rows: table(
      [0, [450, 1160], [465, 1185], [485, 1215], [500, 1240], [515, 1265]],
      [1000, [465, 1185], [485, 1215], [500, 1240], [520, 1270], [535, 1295]],
      [2000, [485, 1215], [500, 1240], [520, 1270], [535, 1300], [555, 1330]],
      [3000, [500, 1240], [520, 1275], [540, 1305], [560, 1335], [575, 1360]],
      [4000, [520, 1275], [540, 1305], [560, 1335], [580, 1370], [600, 1400]],
    ),
  },
];

/** Every row's figures, worked out over printed. */
function compared({ aircraft, fittedTo, rows }: Book) {
  const massKg = aircraft.masses.usualLandingKg;
  const [pressureAltitudeFt, temperatureC, roll, from50ft] = fittedTo;
  const book = [
    { pressureAltitudeFt, temperatureC, massKg, landingRunM: roll * FT, landingM: from50ft * FT },
  ];
  const { performance } = fitToBook(flying(aircraft), book);
  const fitted = { ...aircraft, performance };
  return rows.map(([ft, celsius, printedRoll, printed50]) => {
    const air = { pressureAltitudeFt: ft, temperatureC: celsius };
    const { runM, neededM } = landed(landing(landingQuestion(fitted, { massKg, air })));
    return {
      row: `${ft} ft, ${celsius} °C`,
      roll: runM / FT / printedRoll - 1,
      from50ft: neededM / FT / printed50 - 1,
    };
  });
}

describe.each(BOOKS)('$name', (book) => {
  const rows = compared(book);

  test('rolls as long as its table says, in every row within 4 %', () => {
    for (const { row, roll } of rows) expect([row, Math.abs(roll) < 0.04]).toEqual([row, true]);
  });

  test('comes from 50 ft to rest as its table says, in every row within 3 %', () => {
    for (const { row, from50ft } of rows) {
      expect([row, Math.abs(from50ft) < 0.03]).toEqual([row, true]);
    }
  });
});
