/** Look-up tables for today's aircraft, mass, wind and end. */

import { landing } from '../aircraft/landing';
import { climbSpeedKt, takeoffSpeeds } from '../aircraft/speeds';
import type { Designator } from '../airfield/field';
import { sinDeg } from '../angle';
import { known } from '../figure';
import type { DayGiven } from './today';
import { todayStage } from './today';

/** Null where a cell has no value. */
export interface LookUp {
  readonly columns: readonly number[];
  readonly rows: readonly { readonly of: number; readonly cells: readonly (number | null)[] }[];
  /** The cell nearest to today; null if today is unknown or outside. */
  readonly today: readonly [row: number, column: number] | null;
}

const ANGLES_DEG = [10, 20, 30, 40, 50, 60, 70, 80, 90];
const SPEEDS_KT = [5, 10, 15, 20, 25, 30, 35, 40];

/** Crosswind, kt, by degrees off the runway (rows) and wind speed (columns). */
export function crosswindTable(offDeg: number | null, speedKt: number | null): LookUp {
  const off = offDeg === null ? null : offDeg > 90 ? 180 - offDeg : offDeg;
  return {
    columns: SPEEDS_KT,
    rows: ANGLES_DEG.map((of) => ({
      of,
      cells: SPEEDS_KT.map((kt) => withoutNoise(kt * sinDeg(of))),
    })),
    today: nearestCell(ANGLES_DEG, off, SPEEDS_KT, speedKt),
  };
}

/** The sine of 30° is a bit short of a half, which must not turn a 3 into a 2. */
const withoutNoise = (value: number): number => Math.round(value * 1e9) / 1e9;

const TEMPERATURES_C = [-20, -10, 0, 10, 20, 30, 40];
const ALTITUDES_FT = [0, 1000, 2000, 3000, 4000, 5000, 6000, 8000];

/** Planned run, m, by temperature, °C (rows), and pressure altitude, ft (columns), as today. */
export function runTable(
  given: DayGiven,
  end: Designator | null,
  headwindKt: number | null,
): LookUp {
  const cell = (temperatureC: number, pressureAltitudeFt: number) => {
    const air = {
      pressureAltitude: asked(pressureAltitudeFt, 'ft'),
      temperature: asked(temperatureC, 'degC'),
      dewPointC: null,
      standard: [],
      overruled: [],
    } as const;
    const { planned } = todayStage({ ...given, air }, end, headwindKt, 0).takeoff;
    return planned.because === null ? planned.figures.runM.value : null;
  };
  const { temperature, pressureAltitude } = given.air;
  return {
    columns: ALTITUDES_FT,
    rows: TEMPERATURES_C.map((of) => ({ of, cells: ALTITUDES_FT.map((ft) => cell(of, ft)) })),
    today: nearestCell(TEMPERATURES_C, temperature.value, ALTITUDES_FT, pressureAltitude.value),
  };
}

const asked = <U extends 'ft' | 'degC'>(value: number, unit: U) =>
  known(value, unit, { formula: 'as-given', inputs: { given: value }, source: 'pilot' });

/** Speeds by mass, in column order. */
export const SPEED_COLUMNS = ['rotate', 'lift-off', 'safety', 'climb', 'approach'] as const;

const MASS_ROWS = 7;

/** Indicated speeds, kt, by mass, kg (rows); columns as {@link SPEED_COLUMNS}. */
export function speedTable({ aircraft, load }: DayGiven): LookUp | null {
  const { performance, masses } = aircraft;
  if (performance === undefined) return null;
  const stepKg = roundStep((masses.maxTakeoffKg - masses.emptyKg) / (MASS_ROWS - 1));
  const kg: number[] = [];
  for (let m = Math.ceil(masses.emptyKg / stepKg) * stepKg; m <= masses.maxTakeoffKg; m += stepKg) {
    kg.push(m);
  }
  return {
    columns: SPEED_COLUMNS.map((_, i) => i),
    rows: kg.map((of) => {
      const { rotateKt, liftOffKt, safetyKt } = takeoffSpeeds(aircraft, performance, of);
      const approachKt = approachAt(aircraft, of);
      return { of, cells: [rotateKt, liftOffKt, safetyKt, climbSpeedKt(aircraft, of), approachKt] };
    }),
    today: nearestCell(kg, load.takeoffMassKg.value, [0], 0),
  };
}

/** Approach speed in still air at sea level; null above the maximum landing mass. */
function approachAt(aircraft: DayGiven['aircraft'], massKg: number): number | null {
  const answer = landing({
    aircraft,
    massKg,
    air: { pressureAltitudeFt: 0, temperatureC: 15 },
    headwindKt: 0,
    slopePercent: 0,
    surface: 'dry',
    ground: 'asphalt',
    gustSpreadKt: 0,
  });
  return answer.kind === 'cannot' ? null : answer.speeds.approachKt;
}

/** Rounds up to 1, 2 or 5 times a power of ten. */
function roundStep(least: number): number {
  const power = 10 ** Math.floor(Math.log10(least));
  return (([1, 2, 5, 10] as const).find((n) => n * power >= least) ?? 10) * power;
}

/** The nearest cell; null if a value is unknown or over half a step outside. */
function nearestCell(
  rows: readonly number[],
  row: number | null,
  columns: readonly number[],
  column: number | null,
): readonly [number, number] | null {
  const [r, c] = [nearest(rows, row), nearest(columns, column)];
  return r === null || c === null ? null : [r, c];
}

function nearest(of: readonly number[], value: number | null): number | null {
  if (value === null || of.length === 0) return null;
  const apart = of.map((one) => Math.abs(one - value));
  const index = apart.indexOf(Math.min(...apart));
  const step = Math.abs((of[1] ?? 1) - (of[0] ?? 0));
  return (apart[index] ?? 0) > step ? null : index;
}
