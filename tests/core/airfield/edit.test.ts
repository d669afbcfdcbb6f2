/** Drawing a field: what a change does to the rest of it. Lengths and places are worked out by hand beside the check. */

import { describe, expect, test } from 'vitest';
import { editedField } from '../../../src/core/airfield/edit';
import { endsOf } from '../../../src/core/airfield/ends';
import type { Field } from '../../../src/core/airfield/field';
import { findEnd } from '../../../src/core/airfield/findEnd';
import { centreOf } from '../../../src/core/airfield/runwayLine';
import { degreesOf } from '../../../src/core/angle';
import { readDocument } from '../../../src/core/readDocument.schema';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { drawnBy, led, MIDDLE, put, STRIP, small, spot } from './drawing';

const node = (field: Field, name: string) => {
  const found = field.taxi.nodes.find((one) => one.name === name || one.id === name);
  if (found === undefined) throw new Error(`there is no point ${name}`);
  return found;
};

const stretches = (field: Field, on: 'taxiway' | 'apron' | 'runway') =>
  field.taxi.edges.filter((edge) => edge.on === on);

describe('a runway', () => {
  test('given by its middle, bearing and length lies there', () => {
    const [west, east] = endsOf(STRIP);
    expect(west?.lengthM).toBeCloseTo(1000, 1);
    // 500 m west of the middle at 60° N a meridian leans by 500 m tan 60° / 6 380 km = 0.008°.
    expect(west && degreesOf(west.heading)).toBeCloseTo(90 - 0.008, 2);
    expect(east?.designator).toBe('27');
    const runway = STRIP.runways[0];
    const centre = runway ? centreOf(runway) : null;
    expect(centre?.centre.latDeg).toBeCloseTo(MIDDLE.latDeg, 6);
    expect(centre?.bearingTrueDeg).toBeCloseTo(90, 3);
  });

  test('declares its length in every distance, until something else is declared', () => {
    const { toraM, todaM, asdaM, ldaM } = findEnd(STRIP, '09')?.given ?? {};
    expect([toraM, todaM, asdaM, ldaM]).toEqual([1000, 1000, 1000, 1000]);
  });

  test('laid longer keeps its clearway, and its displaced threshold', () => {
    const field = drawnBy(
      STRIP,
      { kind: 'end', index: 0, side: 0, set: { todaM: 1150 } },
      { kind: 'end', index: 0, side: 0, set: { displacedM: 80 } },
      {
        kind: 'line',
        index: 0,
        line: { by: 'centre', centre: MIDDLE, bearingTrueDeg: 90, lengthM: 1200 },
      },
    );
    // 200 m more of each; the clearway of 150 m and the 80 m before the threshold stay.
    const { toraM, todaM, ldaM } = findEnd(field, '09')?.given ?? {};
    expect([toraM, todaM, ldaM]).toEqual([1200, 1350, 1120]);
  });

  test('given another number is called so by holding points, stretches and calm wind', () => {
    const field = drawnBy(
      small(),
      { kind: 'calm-wind', end: '27' },
      { kind: 'number', index: 0, side: 0, designator: '10' },
    );
    expect(field.calmWindEnd).toBe('28');
    expect(endsOf(field).map(({ designator }) => designator)).toEqual(['10', '28']);
    expect(node(field, 'A1').ends).toEqual(['10']);
    expect(stretches(field, 'runway').map(({ name }) => name)).toEqual(['10/28']);
  });

  test('taken away takes along what leads along it, and what names it', () => {
    const field = drawnBy(small(), { kind: 'runway-removed', index: 0 });
    expect(stretches(field, 'runway')).toEqual([]);
    expect(field.taxi.nodes.filter(({ kind }) => kind === 'runway')).toEqual([]);
    expect(node(field, 'A1').ends).toBeUndefined();
  });
});

describe('a taxiway', () => {
  test('led to a centreline meets the runway there, and the points there are joined along it', () => {
    const [along, ...more] = stretches(small(), 'runway');
    expect(more).toEqual([]);
    expect(along?.name).toBe('09/27');
    const { ends } = node(small(), along?.from ?? '');
    expect(ends).toEqual(['09']);
  });

  test('led across a runway says that it crosses it', () => {
    const field = led(STRIP, 'B', [
      [200, -150],
      [200, 150],
    ]);
    expect(field.taxi.edges).toHaveLength(1);
    expect(field.taxi.edges[0]?.crosses).toBe('09/27');
  });

  test('is divided by a holding point that is put on it, which is called by its letter', () => {
    const field = put(
      led(STRIP, 'C', [
        [-400, -150],
        [-400, 0],
      ]),
      'hold',
      -398,
      -80,
    );
    expect(stretches(field, 'taxiway')).toHaveLength(2);
    expect(node(field, 'C1')).toMatchObject({ kind: 'hold', xM: -400, ends: ['09'] });
  });

  test('is whole again when the point that divides it is taken away', () => {
    const before = led(STRIP, 'C', [
      [-400, -150],
      [-400, 0],
    ]);
    const divided = put(before, 'hold', -400, -80);
    const after = editedField(divided, { kind: 'node-removed', id: node(divided, 'C1').id });
    expect(stretches(after, 'taxiway')).toHaveLength(1);
    expect(after.taxi.nodes).toEqual(before.taxi.nodes);
  });

  test('moved off the runway that it crosses no longer says so', () => {
    const across = led(STRIP, 'B', [
      [200, -150],
      [200, 150],
    ]);
    const id = across.taxi.nodes[1]?.id ?? '';
    const field = editedField(across, { kind: 'node', id, set: { at: { xM: 300, yM: -150 } } });
    expect(field.taxi.edges[0]?.crosses).toBeUndefined();
  });

  test('one-way from the other point is turned about', () => {
    const field = small();
    const [edge] = stretches(field, 'apron');
    if (!edge) throw new Error('an apron expected');
    const id = `${[edge.from, edge.to].sort().join('~')}`;
    const turned = editedField(field, { kind: 'stretch', id, set: { onlyFrom: edge.to } });
    const [after] = stretches(turned, 'apron');
    expect(after).toMatchObject({ from: edge.to, to: edge.from, oneWay: true });
  });
});

test('a reference point moved a little leaves the plan where it lies on the earth', () => {
  // One hundredth of a minute of latitude is 18.57 m at 60° N (the arc of 1° there is 111 412 m,
  // FAA-H-8083-25 gives a minute as a nautical mile; value from memory).
  const latDeg = MIDDLE.latDeg + 0.01 / 60;
  const field = editedField(small(), { kind: 'place', at: { ...MIDDLE, latDeg } });
  expect(node(field, 'Stand 1').yM).toBeCloseTo(-220 - 18.57, 1);
});

test('a field drawn from nothing passes its schema, and leads from the stand to both ends', () => {
  const field = small();
  expect(readDocument(JSON.stringify(field)).problems).toBeNull();
  const from = node(field, 'Stand 1').id;
  for (const end of ['09', '27']) {
    const way = findRouteOut({
      field,
      from,
      end,
      rules: { closed: [], neededWidthM: null },
      entry: null,
      via: null,
    });
    expect(way.fault).toBeNull();
    // 70 m of apron, 490 m along, 75 m up to the holding point.
    expect(way.route?.lengthM).toBeCloseTo(70 + 490 + 75, 0);
  }
});

test('a stand is put down where nothing is near, with the next number', () => {
  const field = editedField(small(), { kind: 'placed', what: 'stand', at: spot(60, -220) });
  expect(node(field, 'Stand 2')).toMatchObject({ kind: 'stand', xM: 60, yM: -220 });
});
