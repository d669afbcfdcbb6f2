/** A handbook's table as it is pasted: from a spreadsheet, or typed with separators. */

import { KG_PER_LB, M_PER_FT } from '../../units';
import type { HandbookRow } from '../handbook';

/** The columns of a table. */
export const COLUMNS = [
  'massKg',
  'pressureAltitudeFt',
  'temperatureC',
  'headwindKt',
  'runM',
  'to50ftM',
  'climbFtMin',
  'landingRunM',
  'landingM',
] as const;

export type Column = (typeof COLUMNS)[number];

/** What a column may hold, as documents have it. */
export const COLUMN_BOUNDS: Readonly<Record<Column, readonly [least: number, most: number]>> = {
  massKg: [1, 700_000],
  pressureAltitudeFt: [-1500, 20_000],
  temperatureC: [-80, 60],
  headwindKt: [-80, 80],
  runM: [0, 10_000],
  to50ftM: [0, 10_000],
  climbFtMin: [0, 50_000],
  landingRunM: [0, 10_000],
  landingM: [0, 10_000],
};

/** More rows than any table that is fitted. */
export const MOST_ROWS = 60;

/** Longer than any table, characters. */
const LONGEST = 20_000;

/** What the numbers are in where the table's heading doesn't say. */
export interface TableUnits {
  readonly length: 'm' | 'ft';
  readonly mass: 'kg' | 'lb';
}

export type TableProblem =
  | { readonly code: 'too-long' | 'too-many-rows' | 'no-rows' }
  /** A column whose heading isn't understood; it is left out. */
  | { readonly code: 'column-unknown'; readonly text: string }
  /** Two columns mean the same. */
  | { readonly code: 'column-twice'; readonly text: string }
  /** A cell that is no number, or beyond what can be; it is left empty. Line from 1. */
  | {
      readonly code: 'no-number' | 'out-of-range';
      readonly line: number;
      readonly column: Column;
      readonly text: string;
    };

export interface ReadTable {
  readonly rows: readonly HandbookRow[];
  /** What each column was taken for, in order; null for one left out. */
  readonly columns: readonly (Column | null)[];
  readonly problems: readonly TableProblem[];
}

interface Heading {
  readonly column: Column | null;
  /** What the heading says the numbers are in; empty if it doesn't. */
  readonly unit: string;
  readonly text: string;
}

/**
 * Reads a table with columns set apart by tabs, semicolons, bars, commas or wide gaps, with decimal
 * points or commas. With a heading, in English or German, the columns may stand in any order;
 * without, they stand in the order of {@link COLUMNS}.
 */
export function readTable(text: string, units: TableUnits): ReadTable {
  if (text.length > LONGEST) return { rows: [], columns: [], problems: [{ code: 'too-long' }] };
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line, index) => ({ line: line.trimEnd(), number: index + 1 }))
    .filter(({ line }) => line.trim() !== '');
  const split = splitterFor(lines.map(({ line }) => line));
  const [first] = lines;
  const hasHeading = first !== undefined && isHeading(split(first.line));
  const headings: readonly Heading[] = hasHeading
    ? split(first.line).map(headingOf)
    : COLUMNS.map((column) => ({ column, unit: '', text: '' }));
  const body = hasHeading ? lines.slice(1) : lines;
  const problems: TableProblem[] = hasHeading ? headingProblems(headings) : [];
  const rows = body.slice(0, MOST_ROWS).flatMap(({ line, number }): readonly HandbookRow[] => {
    const row: Partial<Record<Column, number>> = {};
    for (const [index, cell] of split(line).entries()) {
      const { column, unit } = headings[index] ?? NOTHING;
      if (column === null || cell === '' || row[column] !== undefined) continue;
      const value = numberIn(cell, column);
      const [least, most] = COLUMN_BOUNDS[column];
      const inCore = value === null ? null : toCore(value, column, unit, units);
      if (inCore !== null && inCore >= least && inCore <= most) row[column] = inCore;
      else {
        const code = inCore === null ? 'no-number' : 'out-of-range';
        problems.push({ code, line: number, column, text: cell.slice(0, 40) });
      }
    }
    return Object.keys(row).length === 0 ? [] : [row];
  });
  if (body.length > MOST_ROWS) problems.push({ code: 'too-many-rows' });
  if (rows.length === 0) problems.push({ code: 'no-rows' });
  return { rows, columns: headings.map(({ column }) => column), problems };
}

const NOTHING: Heading = { column: null, unit: '', text: '' };

const SEPARATORS = [/\t/, /;/, /\|/] as const;

/** What splits the lines: the first separator in use; a comma only where it can't be a decimal one. */
function splitterFor(lines: readonly string[]): (line: string) => readonly string[] {
  const by =
    SEPARATORS.find((separator) => lines.some((line) => separator.test(line))) ??
    (lines.every((line) => /^[^,]*(,[^,]*){2,}$/.test(line)) && !lines.some(hasGaps)
      ? /,/
      : /\s{2,}|(?<=\d)\s+(?=[\d-])/);
  return (line) =>
    line.split(by).map((cell) =>
      cell
        .trim()
        .replace(/^"(.*)"$/, '$1')
        .trim(),
    );
}

/** Whether numbers are set apart by gaps, so that a comma in them is a decimal one. */
const hasGaps = (line: string) => /\d\s{2,}[\d-]/.test(line);

const isHeading = (cells: readonly string[]): boolean =>
  cells.filter((cell) => /\p{L}{2}/u.test(cell)).length > cells.length / 2;

/** What headings are called, in English and German; the first that matches counts. */
const CALLED: readonly (readonly [Column, RegExp])[] = [
  ['climbFtMin', /climb|rate|steig|fpm|ft\/min|r\/c|\broc\b/],
  ['landingRunM', /(land|ldg).*(run|roll|ground)|(lande|aus)roll|landelauf/],
  ['landingM', /land|ldg/],
  ['to50ftM', /50|15 ?m\b|obstacle|hindernis|screen|total|startstrecke|take-?off distance|\btod\b/],
  ['runM', /run|roll|ground|startlauf|\btor\b/],
  ['headwindKt', /wind/],
  ['temperatureC', /temp|oat|°|\bc\b|celsius/],
  ['massKg', /mass|weight|gewicht|\bgw\b|\btom\b|\bkg\b|\blbs?\b/],
  ['pressureAltitudeFt', /alt|elev|h(ö|oe)he|\bpa\b|\bft\b/],
];

const UNIT =
  /(ft\/min|fpm|m\/s|°\s?[cf]|\bft\b|\bfeet\b|\bm\b|\blbs?\b|\bkg\b|\bkts?\b|\bkn\b|\bkm\/h\b)/g;

function headingOf(text: string): Heading {
  const said = text.toLowerCase();
  const column = CALLED.find(([, called]) => called.test(said))?.[0] ?? null;
  // Of "50 ft (m)" the last says what the numbers are in; "50 ft" alone says only how high.
  const height = said.replace(/50\s*(ft|feet)|15\s*m\b/, '');
  const unit = height.match(UNIT)?.at(-1) ?? '';
  return { column, unit, text: text.slice(0, 40) };
}

const headingProblems = (headings: readonly Heading[]): TableProblem[] =>
  headings.flatMap(({ column, text }, index): TableProblem[] => {
    if (column === null) return text === '' ? [] : [{ code: 'column-unknown', text }];
    const isSecond = headings.findIndex((one) => one.column === column) < index;
    return isSecond ? [{ code: 'column-twice', text }] : [];
  });

/** A number as people write it; null if it is none. 1,200 and 1.200 are a thousand two hundred. */
function numberIn(cell: string, column: Column): number | null {
  const plain = cell
    .replace(/−|–/g, '-')
    .replace(/[\s'’\u00a0\u202f]/g, '')
    .replace(/[a-z°/%]+$/i, '');
  if (!/^[-+]?\d[\d.,]*$/.test(plain)) return null;
  const isSmall = column === 'temperatureC' || column === 'headwindKt';
  if (!isSmall && /^[-+]?\d{1,3}([.,]\d{3})+$/.test(plain)) {
    return Number(plain.replace(/[.,]/g, ''));
  }
  // Of both signs the last is the decimal one.
  const last = Math.max(plain.lastIndexOf(','), plain.lastIndexOf('.'));
  const whole = last < 0 ? plain : plain.slice(0, last).replace(/[.,]/g, '');
  const value = Number(last < 0 ? whole : `${whole}.${plain.slice(last + 1)}`);
  return Number.isFinite(value) ? value : null;
}

const LENGTHS: readonly Column[] = ['runM', 'to50ftM', 'landingRunM', 'landingM'];

/** A number of a column as documents have it. */
function toCore(value: number, column: Column, unit: string, units: TableUnits): number {
  if (LENGTHS.includes(column)) {
    const isFeet = unit === '' || /kg|lb|kt|kn|°/.test(unit) ? units.length === 'ft' : unit !== 'm';
    return isFeet ? value * M_PER_FT : value;
  }
  switch (column) {
    case 'massKg': {
      const isPounds = /lb|kg/.test(unit) ? unit !== 'kg' : units.mass === 'lb';
      return isPounds ? value * KG_PER_LB : value;
    }
    case 'pressureAltitudeFt':
      return unit === 'm' ? value / M_PER_FT : value;
    case 'temperatureC':
      return /f$/.test(unit) ? ((value - 32) * 5) / 9 : value;
    case 'headwindKt':
      return unit === 'km/h' ? value / 1.852 : unit === 'm/s' ? value * 1.943844 : value;
    case 'climbFtMin':
      return unit === 'm/s' ? (value * 60) / M_PER_FT : value;
    default:
      return value;
  }
}
