/** Calls, against the forms of ICAO Doc 9432 and Doc 4444, ch. 12, and FAA AIM 4-1-9 (values from memory). */

import { beforeAll, expect, test } from 'vitest';
import {
  CALLS,
  type CallFacts,
  callFor,
  fieldCalled,
  type RadioStation,
} from '../../../src/core/radio/call';
import { readbackWords } from '../../../src/parts/calls.en';
import { speak } from '../../../src/parts/catalogues';
import { sayCall } from '../../../src/parts/radio/calls';
import { sayReadback } from '../../../src/parts/radio/readback';
import { demoFields } from '../documents/demo';

beforeAll(() => speak('en'));

const FACTS: CallFacts = {
  callsign: 'Tallow 12',
  field: 'Harrow Sound',
  stand: 'Stand 6',
  hold: 'K2',
  end: '28',
  via: ['B', 'K'],
  told: null,
  crossing: { runway: '01/19', on: 'B', hold: 'B1', along: false },
  crossed: ['01/19'],
  backtrack: false,
  intersection: false,
  departTo: 'w',
  qnhHpa: 1013,
};

const TRAFFIC: RadioStation = { name: 'Harrow traffic', mhz: '118.7', service: 'traffic' };
const GROUND: RadioStation = { name: 'Harrow ground', mhz: '121.9', service: 'ground' };
const TOWER: RadioStation = { name: 'Harrow tower', mhz: '118.3', service: 'tower' };
const INFORMATION: RadioStation = {
  name: 'Harrow information',
  mhz: '122.4',
  service: 'information',
};

const say = (
  kind: (typeof CALLS)[number],
  radio: readonly RadioStation[],
  more: Partial<CallFacts> = {},
) => sayCall(callFor(kind, radio, { ...FACTS, ...more }));

test.each([
  // AIM 4-1-9 g: "<field> traffic", who, where, what, the field again.
  [
    'taxi',
    'Harrow traffic, Tallow one two, stand six, taxiing to runway two eight via Bravo, Kilo, Harrow.',
  ],
  [
    'crossing',
    'Harrow traffic, Tallow one two, crossing runway zero one one nine on Bravo, Harrow.',
  ],
  [
    'line-up',
    'Harrow traffic, Tallow one two, lining up runway two eight, departing to the west, Harrow.',
  ],
  ['departure', 'Harrow traffic, Tallow one two, departing runway two eight to the west, Harrow.'],
  [
    'inbound',
    'Harrow traffic, Tallow one two, … your position and level …, inbound to land, runway two eight, Harrow.',
  ],
  [
    'vacated',
    'Harrow traffic, Tallow one two, runway two eight vacated, taxiing to stand six, Harrow.',
  ],
] as const)('to traffic: %s', (kind, said) => {
  expect(say(kind, [TRAFFIC])).toBe(said);
});

test.each([
  // Doc 9432, 4.4: "… STAND 8 REQUEST TAXI TO HOLDING POINT …", "APPROACHING HOLDING POINT …, REQUEST CROSS
  // RUNWAY …"; Doc 4444, 12.3.4: "READY FOR DEPARTURE", "FOR LANDING", "RUNWAY VACATED".
  [
    'taxi',
    'Harrow ground, Tallow one two, stand six, request taxi to holding point Kilo two, runway two eight.',
  ],
  [
    'crossing',
    'Harrow ground, Tallow one two, approaching holding point Bravo one, request cross runway zero one one nine.',
  ],
  [
    'line-up',
    'Harrow tower, Tallow one two, holding point Kilo two, runway two eight, ready for departure.',
  ],
  ['departure', 'Harrow tower, Tallow one two, airborne, turning to the west.'],
  ['inbound', 'Harrow tower, Tallow one two, … your position and level …, for landing.'],
  ['vacated', 'Harrow tower, Tallow one two, runway two eight vacated, request taxi to stand six.'],
] as const)('to a controller: %s', (kind, said) => {
  expect(say(kind, [TOWER, GROUND])).toBe(said);
});

test('an information officer is told, not asked, and the field is not said again', () => {
  expect(say('taxi', [INFORMATION])).toBe(
    'Harrow information, Tallow one two, stand six, taxiing to runway two eight via Bravo, Kilo.',
  );
});

test('who is called: ground on the ground and tower at the runway, where both are', () => {
  const called = (radio: readonly RadioStation[]) =>
    CALLS.map((kind) => callFor(kind, radio, FACTS).station?.service);
  expect(called([TOWER, GROUND])).toEqual(['ground', 'ground', 'tower', 'tower', 'tower', 'tower']);
  expect(new Set(called([TRAFFIC]))).toEqual(new Set(['traffic']));
  expect(new Set(called([]))).toEqual(new Set([undefined]));
});

test('rolling back and beginning at an intersection are said', () => {
  expect(say('line-up', [TRAFFIC], { backtrack: true })).toContain(
    'runway two eight after backtrack',
  );
  expect(say('line-up', [TOWER], { backtrack: true })).toContain('request backtrack');
  expect(say('line-up', [TRAFFIC], { intersection: true })).toContain('from Kilo two, departing');
});

test('a runway gone along is entered and backtracked, and the call says so', () => {
  const along = { runway: '01/19', on: 'B', hold: 'B1', along: true };
  expect(say('crossing', [GROUND], { crossing: along })).toBe(
    'Harrow ground, Tallow one two, approaching holding point Bravo one, request enter and backtrack runway zero one one nine.',
  );
  expect(say('crossing', [TRAFFIC], { crossing: along })).toBe(
    'Harrow traffic, Tallow one two, entering and backtracking runway zero one one nine on Bravo, Harrow.',
  );
  const back = callFor('crossing', [GROUND], { ...FACTS, crossing: along }).readback;
  expect(back.map(sayReadback)).toContain('backtrack runway zero one one nine');
  const via = ['B', '01/19', 'K'];
  expect(say('taxi', [GROUND], { via })).toContain('request backtrack runway zero one one nine');
  expect(say('taxi', [TRAFFIC], { via })).toContain(
    'via Bravo, backtrack runway zero one one nine, Kilo',
  );
});

test('a field goes by the name its stations have, and by its own where it has none', () => {
  expect(fieldCalled({ name: 'Marram Haven', radio: [GROUND, TOWER] })).toBe('Harrow');
  expect(fieldCalled({ name: 'Last Cairn', radio: [] })).toBe('Last Cairn');
  const camp: RadioStation = { name: 'Cairn Camp', mhz: '122.4', service: 'traffic' };
  expect(fieldCalled({ name: 'Last Cairn', radio: [camp] })).toBe('Last Cairn');
  for (const field of demoFields) {
    for (const { name } of field.radio)
      expect(name.startsWith(`${fieldCalled(field)} `)).toBe(true);
  }
});

test('what is not known is left unsaid, or asked of the pilot', () => {
  const said = say('taxi', [TRAFFIC], { callsign: null, stand: null, via: [] });
  expect(said).toBe('Harrow traffic, … your callsign …, taxiing to runway two eight, Harrow.');
});

test('runway, holding point, holding short and crossing are read back to a controller, and to nobody else', () => {
  // ICAO Annex 11, 3.7.3.1: to enter, land on, take off from, hold short of, cross, taxi and backtrack on any runway.
  const back = (kind: (typeof CALLS)[number]) =>
    callFor(kind, [TOWER, GROUND], { ...FACTS, backtrack: true })
      .readback.map((back) => readbackWords[back.code](sayReadback(back)))
      .join('; ');
  expect(back('taxi')).toBe(
    'holding point Kilo two; runway two eight; hold short runway zero one one nine, if told to; QNH one zero one three',
  );
  expect(back('crossing')).toContain('cross runway zero one one nine');
  // Altimeter settings are read back too: Annex 11, 3.7.3.1.1.
  expect(back('inbound')).toContain('QNH one zero one three');
  // In the air, nothing of the ground is left to read back.
  expect(back('departure')).toBe('');
  expect(back('line-up')).toContain('backtrack runway two eight');
  expect(CALLS.flatMap((kind) => callFor(kind, [TRAFFIC], FACTS).readback)).toEqual([]);
});

test('the app never says that something is cleared or safe', () => {
  for (const radio of [[TRAFFIC], [TOWER, GROUND], [INFORMATION], []]) {
    for (const kind of CALLS) {
      expect(say(kind, radio)).not.toMatch(/clear|safe|any traffic/i);
    }
  }
});

test('the pilot’s own words are said as written, with today’s runway in them', () => {
  const call = callFor('taxi', [TRAFFIC], FACTS);
  expect(sayCall(call, '{station}, {callsign} rolling to {runway} by {route}, {unknown}')).toBe(
    'Harrow traffic, Tallow one two rolling to runway two eight by Bravo, Kilo, {unknown}',
  );
  expect(sayCall(call, '   ')).toBe(sayCall(call));
});
