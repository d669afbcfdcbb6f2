import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Aircraft, Field } from '../../../src/core';
import { aircraftDifference, fieldDifference } from '../../../src/exchange/facts';

const read = (name: string) =>
  JSON.parse(
    readFileSync(new URL(`../../../airfields-demo/${name}.json`, import.meta.url), 'utf8'),
  );
const harrow: Field = read('fields/XHAR');
const sleet: Aircraft = read('aircraft/sleet');

/** The field with its first runway changed. */
function withRunway(change: (runway: Field['runways'][number]) => void): Field {
  const changed = structuredClone(harrow);
  const [runway] = changed.runways;
  if (runway !== undefined) change(runway);
  return changed;
}

const [first] = harrow.runways;
const runway = first?.ends
  .map(({ designator }) => designator)
  .sort()
  .join('/');

test('a document differs from itself in nothing', () => {
  expect(fieldDifference(harrow, harrow)).toEqual({ facts: [], parts: [] });
  expect(aircraftDifference(sleet, sleet)).toEqual({ facts: [], parts: [] });
});

test('a shorter run is told of the end it belongs to, with both lengths', () => {
  const end = first?.ends[0];
  const changed = withRunway(({ ends }) => {
    ends[0].toraM = 800;
  });
  expect(fieldDifference(harrow, changed).facts).toEqual([
    {
      of: runway,
      what: 'tora',
      end: end?.designator,
      before: { value: end?.toraM, unit: 'm' },
      after: { value: 800, unit: 'm' },
      movedM: null,
    },
  ]);
});

test('the ends in another order are no difference, an end somewhere else is told by how far', () => {
  const turned = withRunway(({ ends }) => ends.reverse());
  expect(fieldDifference(harrow, turned).facts).toEqual([]);
  // A minute of latitude is a nautical mile, by its old definition; at 60° north 1 857 m.
  const moved = withRunway(({ ends }) => {
    ends[0].at.latDeg += 0.01 / 60;
  });
  const [fact] = fieldDifference(harrow, moved).facts;
  expect(fact?.what).toBe('at');
  expect(fact?.movedM).toBeCloseTo(18.6, 0);
});

test('of a runway that only one has, nothing but that is told', () => {
  const without = { ...harrow, runways: harrow.runways.slice(1) };
  expect(fieldDifference(harrow, without).facts.map(({ what, of }) => [what, of])).toEqual([
    ['runway', runway],
  ]);
  expect(fieldDifference(without, harrow).facts[0]?.before).toBeNull();
});

test('limits and masses of an aircraft are told by name, and its physics as a part', () => {
  const changed = structuredClone(sleet);
  changed.limits.crosswindKt.wet = 15;
  changed.masses.maxTakeoffKg += 100;
  if (changed.performance) changed.performance.wing.areaM2 += 1;
  const { facts, parts } = aircraftDifference(sleet, changed);
  expect(facts.map(({ what }) => what)).toEqual(['maxTakeoffMass', 'crosswindWet']);
  expect(facts[1]?.after).toEqual({ value: 15, unit: 'kt' });
  expect(parts).toEqual(['performance']);
});
