/** What is said of an aircraft being made: every trouble of its table and every fault has a sentence. */

import { beforeAll, describe, expect, test } from 'vitest';
import type { Apart } from '../../../src/core/aircraft/againstBook';
import type { Aircraft } from '../../../src/core/aircraft/aircraft';
import type { AircraftFault } from '../../../src/core/aircraft/faults';
import type { FitTrouble } from '../../../src/core/aircraft/fit/fitAircraft';
import type { LoadFault } from '../../../src/core/aircraft/loadFaults';
import { newAircraft } from '../../../src/core/aircraft/make/edit';
import { FIGURE_NAMES } from '../../../src/core/aircraft/make/figures';
import { speak } from '../../../src/parts/catalogues';
import { faults as germanFaults } from '../../../src/views/aircraftEditor/faultWords.de';
import { faults } from '../../../src/views/aircraftEditor/faultWords.en';
import { figures } from '../../../src/views/aircraftEditor/figureWords.en';
import { BOOK, ENGINE, GROUPS } from '../../../src/views/aircraftEditor/shown';
import { troubleSaid } from '../../../src/views/aircraftEditor/troubleSaid';

const AIRCRAFT: Aircraft = {
  ...newAircraft('piston-single', { language: 'en', stop: ['brakes'] }),
  handbook: { rows: [{}, {}, { runM: 480, to50ftM: 700 }] },
};

const at: Apart = { row: 2, figure: 'runM', by: -0.259 };

const TROUBLES: readonly (readonly [FitTrouble, RegExp])[] = [
  [{ code: 'distance-below-run', row: 2, figure: 'to50ftM' }, /columns swapped/],
  [{ ...at, code: 'row-apart', foretold: 336 }, /480 m.*336 m.*slip/],
  [{ ...at, code: 'thrust-apart', factor: 1.25 }, /25\.9 %.*25\.0 % more/],
  [{ ...at, code: 'thrust-apart', factor: 0.8 }, /20\.0 % less/],
  [{ ...at, code: 'rows-apart' }, /contradict/],
  [{ code: 'no-figure', row: 2, figure: 'runM', because: 'over-mass' }, /over the maximum/],
  [{ code: 'no-figure', row: 2, figure: 'runM', because: 'never-lifts-off' }, /not lift off/],
];

describe('in English', () => {
  beforeAll(() => speak('en'));

  test.each(TROUBLES)('%j is told with its row, its figure and what would mend it', (one, says) => {
    const said = troubleSaid(one, AIRCRAFT).replace(/\u00a0/g, ' ');
    expect(said).toMatch(one.figure === 'runM' ? /^Row 3, take-off run/ : /^Row 3, take-off dist/);
    expect(said).toMatch(says);
  });
});

describe('in German', () => {
  beforeAll(async () => {
    await speak('de');
    return () => speak('en');
  });

  test.each(TROUBLES)('%j too', (one) => {
    expect(troubleSaid(one, AIRCRAFT)).toMatch(/^Zeile 3, Start/);
  });
});

/** Faults that only typing can't make: stations and presets have no ids of their own to type. */
const OF_FILES = ['station-twice', 'name-reserved', 'station-unknown'];

const FAULTS: Readonly<Record<AircraftFault | LoadFault, true>> = {
  'out-of-order': true,
  'limit-grows': true,
  'gate-above-limit': true,
  'gate-without-limit': true,
  'reheat-without-engine': true,
  'arm-missing': true,
  'envelope-without-arms': true,
  'envelope-not-simple': true,
  'station-twice': true,
  'name-reserved': true,
  'station-unknown': true,
  'choice-twice': true,
  'beyond-station': true,
  'not-a-choice': true,
  'preset-not-within': true,
  'not-usual': true,
  'landing-fuel-over': true,
};

test('every fault that can be typed has a sentence in both languages', () => {
  for (const code of Object.keys(FAULTS).filter((one) => !OF_FILES.includes(one))) {
    expect(faults[code], code).toBeDefined();
    expect(germanFaults[code], code).toBeDefined();
  }
});

test('every figure stands in one group, and what is empty says what happens', () => {
  const shown = [...BOOK, ...Object.values(GROUPS).flat(), ...ENGINE];
  expect([...shown].sort()).toEqual([...FIGURE_NAMES].sort());
  const assumed = new Set<string>(AIRCRAFT.madeFrom?.assumed);
  for (const name of FIGURE_NAMES.filter((one) => !assumed.has(one)))
    expect(figures[name].empty, name).toBeDefined();
});
