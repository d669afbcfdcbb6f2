/**
 * Writes the magnetic field models' coefficients into src/core/earth/coefficients, one module each.
 *
 *   apt-get download casacore-data-igrf && dpkg -x casacore-data-igrf_*.deb extracted
 *   node tools/coefficients.mjs extracted/usr/share/casacore/data/geodetic/IGRF/table.f0i
 *
 * Without an argument the table is looked for where Debian's package installs it. Inputs:
 *
 * - IGRF-12, 1900 to 2015, from Debian's package casacore-data-igrf (version 12-1). The package
 *   declares the coefficients public domain.
 * - WMM2015, WMM2015v2, WMM2020 and WMM2025 from the npm package geomagnetism in node_modules,
 *   which repeats NOAA's coefficient files. They are works of the US government, public domain.
 *
 * Both carry the models' published decimals, and so do the modules written: nothing is rounded.
 * Run again, it writes the same bytes.
 */

import { readFileSync, writeFileSync } from 'node:fs';

const IGRF_TABLE = process.argv[2] ?? '/usr/share/casacore/data/geodetic/IGRF/table.f0i';
const OUT = new URL('../src/core/earth/coefficients/', import.meta.url);
const WMM_DATA = new URL('../node_modules/geomagnetism/data/', import.meta.url);

/** g and h up to degree 13: 13 × 15. */
const NUMBERS_IN_RECORD = 195;
/** g and h up to degree 10, all the model has before 2000: 10 × 12. */
const NUMBERS_BEFORE_2000 = 120;

const assert = (holds, what) => {
  if (!holds) throw new Error(`coefficients: ${what}`);
};

/**
 * The records of a casacore incremental array file with arrays of 195 doubles: 12 bytes for the
 * file, then for each record four 32-bit integers, the last the number of doubles, and the doubles.
 */
function igrfRecords(bytes) {
  const records = [];
  for (let at = 12; at < bytes.length; ) {
    assert(bytes.readInt32LE(at + 12) === NUMBERS_IN_RECORD, `no record of 195 numbers at ${at}`);
    at += 16;
    records.push(
      Array.from({ length: NUMBERS_IN_RECORD }, (_, i) => bytes.readDoubleLE(at + 8 * i)),
    );
    at += 8 * NUMBERS_IN_RECORD;
  }
  return records;
}

/** Main fields from 1900 to 2015, five years apart. */
function igrfEpochs() {
  const records = igrfRecords(readFileSync(IGRF_TABLE));
  assert(records.length === 48, `${records.length} records, not 24 epochs of field and change`);
  const mainFields = records.filter((_, i) => i % 2 === 0);
  const changes = records.filter((_, i) => i % 2 === 1);
  // The yearly change stored beside a field must lead to the next field. This proves that the
  // records are in order and the epochs five years apart.
  mainFields.slice(1).forEach((next, i) => {
    next.forEach((value, k) => {
      const led = mainFields[i][k] + 5 * changes[i][k];
      assert(Math.abs(value - led) < 1e-6, `change at epoch ${i}, number ${k}, leads to ${led}`);
    });
  });
  return mainFields.map((field, i) => {
    if (1900 + 5 * i >= 2000) return field;
    assert(
      field.slice(NUMBERS_BEFORE_2000).every((value) => value === 0),
      `epoch ${i} goes beyond degree 10`,
    );
    return field.slice(0, NUMBERS_BEFORE_2000);
  });
}

/** g and h as usual (g10, g11, h11, g20, ...) from two arrays by n (n + 1) / 2 + m. */
function usualOrder(g, h, degree) {
  const numbers = [];
  for (let n = 1; n <= degree; n++) {
    for (let m = 0; m <= n; m++) {
      const i = (n * (n + 1)) / 2 + m;
      numbers.push(g[i]);
      if (m > 0) numbers.push(h[i]);
    }
  }
  assert(numbers.every(Number.isFinite), 'a coefficient is missing');
  return numbers;
}

/** Bracketed numbers, as many to a line as the formatter would set. */
function listed(numbers, indent = '') {
  const lines = [];
  let line = '';
  for (const number of numbers) {
    const word = `${number},`;
    if (line && indent.length + 2 + line.length + 1 + word.length > 100) {
      lines.push(line);
      line = word;
    } else {
      line = line ? `${line} ${word}` : word;
    }
  }
  lines.push(line);
  return `[\n${lines.map((text) => `${indent}  ${text}\n`).join('')}${indent}]`;
}

const write = (name, text) => writeFileSync(new URL(name, OUT), text);

function writeIgrf() {
  const rows = igrfEpochs().map((row) => `  ${listed(row, '  ')},\n`);
  write(
    'igrf12.ts',
    `/**
 * International Geomagnetic Reference Field, 12th generation, 1900 to 2015.
 *
 * IAGA Working Group V-MOD, Thébault et al. 2015, doi 10.1186/s40623-015-0228-9. Public domain, from
 * Debian's package casacore-data-igrf 12-1. Written by tools/coefficients.mjs; do not edit.
 */

/** Year of the first row. */
export const firstYear = 1900;

/** Years from one row to the next. */
export const yearsApart = 5;

/** Main field at each epoch, nT: g10, g11, h11, g20, ... to degree 10 before 2000, 13 from then on. */
export const mainFields: readonly (readonly number[])[] = [
${rows.join('')}];
`,
  );
}

function writeWmm(data, name, dated) {
  const { epoch, n_max: degree } = data;
  const main = usualOrder(data.main_field_coeff_g, data.main_field_coeff_h, degree);
  const change = usualOrder(data.secular_var_coeff_g, data.secular_var_coeff_h, degree);
  write(
    `${name.toLowerCase()}.ts`,
    `/**
 * World Magnetic Model ${name}, coefficient file of ${dated}.
 *
 * NOAA National Centers for Environmental Information and British Geological Survey. A work of the
 * US government, public domain, from the npm package geomagnetism. Written by
 * tools/coefficients.mjs; do not edit.
 */

/** Year the main field is given for. */
export const epoch = ${epoch};

/** Main field at the epoch, nT: g10, g11, h11, g20, ... to degree ${degree}. */
export const mainField: readonly number[] = ${listed(main)};

/** Its yearly change, nT a year, in the same order. */
export const changePerYear: readonly number[] = ${listed(change)};
`,
  );
}

writeIgrf();
for (const file of ['wmm-2015', 'wmm-2015v2', 'wmm-2020', 'wmm-2025']) {
  const data = JSON.parse(readFileSync(new URL(`${file}.json`, WMM_DATA), 'utf8'));
  writeWmm(data, data.name.replace('-', ''), data.start_date.slice(0, 10));
}
