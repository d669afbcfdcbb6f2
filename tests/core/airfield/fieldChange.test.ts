/** What a change to a field is said to have done, and where. */

import { describe, expect, test } from 'vitest';
import { editedField, type FieldEdit } from '../../../src/core/airfield/edit';
import type { Field } from '../../../src/core/airfield/field';
import { fieldChange } from '../../../src/core/airfield/fieldChange';
import { stretchId } from '../../../src/core/taxi/rules';
import { RUNWAY, STRIP, small, spot } from './drawing';

const changeBy = (field: Field, edit: FieldEdit) =>
  fieldChange(edit, field, editedField(field, edit));

const named = (field: Field, name: string) =>
  field.taxi.nodes.find((node) => node.name === name)?.id ?? '';

describe('of the plan', () => {
  test('a stand put on the ground lies where it was put', () => {
    const change = changeBy(small(), { kind: 'placed', what: 'stand', at: spot(60, -300) });
    expect(change).toEqual({
      verb: 'added',
      what: { kind: 'node', node: expect.objectContaining({ name: 'Stand 2', kind: 'stand' }) },
      spots: [{ eastM: 60, northM: -300 }],
      lines: [],
    });
  });

  test('a holding point that divides a stretch is what was added, and not the stretches', () => {
    const edge = small().taxi.edges.find(({ name, on }) => name === 'A' && on === 'taxiway');
    const at = { on: 'stretch', id: edge ? stretchId(edge) : '', xM: 100, yM: -150 } as const;
    const change = changeBy(small(), { kind: 'placed', what: 'hold', at });
    expect(change).toMatchObject({ verb: 'added', what: { kind: 'node', node: { kind: 'hold' } } });
  });

  test('a point moved lies where it was and where it is', () => {
    const id = named(small(), 'Stand 1');
    const change = changeBy(small(), { kind: 'node', id, set: { at: { xM: 10, yM: -230 } } });
    expect(change).toMatchObject({ verb: 'moved', what: { kind: 'node', node: { id } } });
    expect(change.spots).toEqual([
      { eastM: 0, northM: -220 },
      { eastM: 10, northM: -230 },
    ]);
  });

  test('a point removed is what went, with the stretches that led to it', () => {
    const id = named(small(), 'Stand 1');
    const change = changeBy(small(), { kind: 'node-removed', id });
    expect(change).toMatchObject({ verb: 'removed', what: { kind: 'node', node: { id } } });
    expect(change.lines).toHaveLength(1);
  });

  test('a stretch laid between two points that were there, and one removed', () => {
    const [from, to] = [named(small(), 'Stand 1'), named(small(), 'A1')];
    const at = { on: 'node', id: to, xM: -490, yM: -75 } as const;
    const laid: FieldEdit = { kind: 'laid', from, at, on: 'apron', name: 'apron' };
    const what = { kind: 'stretch', from: { id: from }, to: { id: to } };
    expect(changeBy(small(), laid)).toMatchObject({ verb: 'added', what });
    const field = editedField(small(), laid);
    const removed: FieldEdit = { kind: 'stretch-removed', id: stretchId({ from, to }) };
    expect(changeBy(field, removed)).toMatchObject({ verb: 'removed', what });
  });

  test('a stretch renamed is changed', () => {
    const [edge] = small().taxi.edges;
    if (!edge) throw new Error('a stretch expected');
    const edit: FieldEdit = { kind: 'stretch', id: stretchId(edge), set: { name: 'Q' } };
    expect(changeBy(small(), edit)).toMatchObject({
      verb: 'changed',
      what: { kind: 'stretch', edge: { name: 'Q' } },
    });
  });
});

describe('of runways', () => {
  test('one removed is named, and its line shown', () => {
    const change = changeBy(small(), { kind: 'runway-removed', index: 0 });
    expect(change).toMatchObject({ verb: 'removed', what: { kind: 'runway' } });
    expect(change.lines[0]?.map(({ eastM }) => Math.round(eastM)).sort((a, b) => a - b)).toEqual([
      -500, 500,
    ]);
  });

  test('one added, one moved, an end of one changed', () => {
    expect(changeBy(STRIP, RUNWAY)).toMatchObject({ verb: 'added', what: { kind: 'runway' } });
    const line = {
      by: 'centre',
      centre: { latDeg: 60, lonDeg: -5 },
      bearingTrueDeg: 80,
      lengthM: 900,
    } as const;
    const moved = changeBy(STRIP, { kind: 'line', index: 0, line });
    expect(moved).toMatchObject({ verb: 'moved', what: { kind: 'runway' } });
    expect(moved.lines).toHaveLength(2);
    expect(
      changeBy(STRIP, { kind: 'end', index: 0, side: 1, set: { elevationFt: 20 } }),
    ).toMatchObject({ verb: 'changed', what: { kind: 'end', end: '27' }, lines: [] });
  });
});

test('of the form: which entry, and nowhere on the plan', () => {
  expect(changeBy(STRIP, { kind: 'head', set: { name: 'Sorrel' } })).toEqual({
    verb: 'changed',
    what: { kind: 'entry', entry: 'name' },
    spots: [],
    lines: [],
  });
});
