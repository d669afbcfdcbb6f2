import { describe, expect, test } from 'vitest';
import type { AircraftShape } from '../../../src/core/aircraft/aircraft.schema';
import { loadFaults } from '../../../src/core/aircraft/loadFaults';
import { readDocument } from '../../../src/core/readDocument.schema';
import { demoAircraft, demoTexts } from '../documents/demo';

/** The text of a demo aircraft with the value at a path of its load sheet replaced; undefined takes it out. */
function changed(file: string, path: string, value: unknown): string {
  const document = JSON.parse(demoTexts('aircraft').get(file) ?? 'null');
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let inside = document.load;
  for (const key of keys) inside = inside[key];
  if (value === undefined) delete inside[last];
  else inside[last] = value;
  return JSON.stringify(document);
}

/** Each fault's place and code; the figures behind a code are told in documents/problems.test.ts. */
const refusals = (text: string) =>
  readDocument(text).problems?.map(({ at, what }) => `${at}: ${what.split(' ')[0]}`) ?? [];

test.each(demoAircraft.map((aircraft) => [aircraft.code, aircraft] as const))(
  'the load sheet of the %s holds together',
  (_, aircraft: AircraftShape) => {
    expect(loadFaults(aircraft)).toEqual([]);
  },
);

const TANGLED = [
  [1.9, 700],
  [2.15, 1110],
  [2.15, 700],
  [1.9, 1110],
];

describe('a load sheet is refused', () => {
  test.each([
    ['tussock.json', 'emptyArmM', undefined, 'emptyArmM: arm-missing'],
    ['tussock.json', 'fuel.armM', undefined, 'fuel.armM: arm-missing'],
    ['tussock.json', 'stations.1.armM', undefined, 'stations.1.armM: arm-missing'],
    ['sleet.json', 'crew.0.armM', 3, 'emptyArmM: arm-missing'],
    ['sleet.json', 'envelope', TANGLED, 'envelope: envelope-without-arms'],
    ['tussock.json', 'envelope', TANGLED, 'envelope: envelope-not-simple'],
    ['tussock.json', 'envelope.3.0', 2.05, 'presets.0: preset-not-within'],
    ['sleet.json', 'stations.1.id', 'wing-left', 'stations.1.id: station-twice'],
    ['sleet.json', 'stations.1.id', 'constructor', 'stations.1.id: name-reserved'],
    ['sleet.json', 'stations.0.choices.2.kg', 60, 'stations.0.choices.2.kg: choice-twice'],
    ['sleet.json', 'stations.2.choices.1.kg', 401, 'stations.2.choices.1.kg: beyond-station'],
    ['tussock.json', 'stations.0.eachKg', 111, 'stations.0.eachKg: beyond-station'],
    ['sleet.json', 'presets.1.stations.tail', 10, 'presets.1.stations.tail: station-unknown'],
    ['sleet.json', 'presets.2.stations.belly', 221, 'presets.2.stations.belly: not-a-choice'],
    ['tussock.json', 'presets.2.stations.front', 90, 'presets.2.stations.front: not-a-choice'],
    ['sleet.json', 'presets.3.fuelKg', 3201, 'presets.3: preset-not-within'],
    ['tussock.json', 'presets.3.stations.bags', 54, 'presets.3: preset-not-within'],
    ['sleet.json', 'presets.0.fuelKg', 2400, 'presets.0: not-usual'],
    ['sleet.json', 'fuel.landingKg', 500, 'fuel.landingKg: not-usual'],
    ['sleet.json', 'fuel.maxKg', 519, 'fuel.landingKg: landing-fuel-over'],
  ])('of %s at %s when that is %j', (file, path, value, told) => {
    expect(refusals(changed(file, path, value))).toContain(`load.${told}`);
  });

  test.each([
    ['presets', []],
    ['presets.0.fuelKg', 0],
    ['stations.0.kind', 'people'],
    ['stations.0.choices', []],
    ['fuel.densityKgPerL', 8],
    ['surprise', 1],
  ])('of the wrong shape at %s when that is %j', (path, value) => {
    expect(refusals(changed('sleet.json', path, value)).join()).toContain('load');
  });

  test('only once the masses themselves are in order', () => {
    const document = JSON.parse(demoTexts('aircraft').get('sleet.json') ?? 'null');
    document.masses.maxTakeoffKg = 9199;
    expect(refusals(JSON.stringify(document))).toEqual(['masses.maxTakeoffKg: out-of-order']);
  });
});

test('an aircraft without a load sheet is a whole aircraft', () => {
  const document = JSON.parse(demoTexts('aircraft').get('sleet.json') ?? 'null');
  delete document.load;
  expect(refusals(JSON.stringify(document))).toEqual([]);
});
