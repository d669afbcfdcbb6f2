/** What a plan lacks for a way, each found where it was broken on purpose. */

import { describe, expect, test } from 'vitest';
import { editedField } from '../../../src/core/airfield/edit';
import type { Field } from '../../../src/core/airfield/field';
import { routeGaps } from '../../../src/core/airfield/routeGaps';
import { stretchId } from '../../../src/core/taxi/rules';
import { demoFields } from '../documents/demo';
import { led, put, STRIP, small } from './drawing';

const named = (field: Field, name: string) =>
  field.taxi.nodes.find((node) => node.name === name)?.id ?? '';

test.each(demoFields.map((field) => [field.code, field] as const))(
  '%s lacks nothing',
  (_, field) => {
    expect(routeGaps(field)).toEqual([]);
  },
);

test('a small field with one stand and two holding points lacks nothing', () => {
  expect(routeGaps(small())).toEqual([]);
});

describe('lacks', () => {
  test('a stand, holding points and a way off the runway, where nothing is drawn', () => {
    expect(routeGaps(STRIP)).toEqual([
      { code: 'no-stand' },
      { code: 'end-without-hold', end: '09' },
      { code: 'end-without-hold', end: '27' },
      { code: 'runway-without-exit', runway: '09/27' },
    ]);
  });

  test('the holding point of an end that was taken away, but not that of a closed one', () => {
    const field = editedField(small(), { kind: 'node-removed', id: named(small(), 'A2') });
    const unguarded = { code: 'runway-unguarded', stretch: expect.any(String), runway: '09/27' };
    expect(routeGaps(field)).toEqual([{ code: 'end-without-hold', end: '27' }, unguarded]);
    const closed = editedField(field, { kind: 'closed', index: 0, side: 1, why: 'Works' });
    expect(routeGaps(closed)).toEqual([unguarded]);
  });

  test('what joins a stand to the rest, and says which points are apart', () => {
    const field = put(small(), 'stand', 100, -300);
    expect(routeGaps(field)).toEqual([{ code: 'in-pieces', nodes: [named(field, 'Stand 2')] }]);
  });

  test('the word that a stretch crosses a runway, and has one too many', () => {
    const across = led(small(), 'B', [
      [200, -150],
      [200, 150],
    ]);
    const edge = across.taxi.edges.find(({ crosses }) => crosses !== undefined);
    if (!edge) throw new Error('a crossing expected');
    const stretch = stretchId(edge);
    const unsaid = editedField(across, { kind: 'stretch', id: stretch, set: { crosses: null } });
    const unguarded = { code: 'runway-unguarded', stretch, runway: '09/27' };
    expect(routeGaps(unsaid)).toEqual([
      { code: 'crosses-unsaid', stretch, runway: '09/27' },
      unguarded,
    ]);
    // The same runway by its other name is the same runway.
    const other = editedField(across, { kind: 'stretch', id: stretch, set: { crosses: '27/09' } });
    expect(routeGaps(other)).toEqual([unguarded]);
    const apron = small().taxi.edges.find(({ on }) => on === 'apron');
    const vain = stretchId(apron ?? edge);
    const said = editedField(small(), { kind: 'stretch', id: vain, set: { crosses: '09/27' } });
    expect(routeGaps(said)).toEqual([{ code: 'crosses-not', stretch: vain, runway: '09/27' }]);
  });

  describe('a holding point on each way on to a runway, as ICAO Annex 14 Vol. I, 3.12.2 wants it', () => {
    const across = led(small(), 'B', [
      [200, -150],
      [200, 150],
    ]);
    const stretches = (field: Field) =>
      routeGaps(field).flatMap((gap) => (gap.code === 'runway-unguarded' ? [gap.stretch] : []));

    test('where a taxiway crosses: on both sides', () => {
      expect(stretches(across)).toHaveLength(1);
      const south = put(across, 'hold', 200, -75);
      expect(stretches(south)).toHaveLength(1);
      expect(routeGaps(put(south, 'hold', 200, 75))).toEqual([]);
    });

    test('where it crosses by a point on the runway: each side by itself', () => {
      const field = led(small(), 'B', [
        [200, -150],
        [200, 0],
        [200, 150],
      ]);
      expect(stretches(field)).toHaveLength(2);
      const south = put(field, 'hold', 200, -75);
      expect(stretches(south)).toHaveLength(1);
      expect(routeGaps(put(south, 'hold', 200, 75))).toEqual([]);
    });

    test('but not where one only leaves the runway', () => {
      const exit = led(small(), 'C', [
        [100, 0],
        [100, -150],
      ]);
      const [stretch = ''] = stretches(exit);
      const onRunway = exit.taxi.nodes.find(({ xM, yM }) => xM === 100 && yM === 0)?.id ?? '';
      const set = { onlyFrom: onRunway };
      expect(routeGaps(editedField(exit, { kind: 'stretch', id: stretch, set }))).toEqual([]);
    });

    test('but not at a turn pad beside the runway', () => {
      const pad = led(small(), 'P', [
        [0, 0],
        [0, 28],
      ]);
      expect(stretches(pad)).toEqual([]);
    });

    test('and one further off than 250 m is for no such runway', () => {
      const far = led(STRIP, 'A', [
        [0, 0],
        [0, -400],
      ]);
      expect(stretches(put(far, 'hold', 0, -300))).toHaveLength(1);
      expect(stretches(put(far, 'hold', 0, -90))).toEqual([]);
    });
  });

  test('a way out of a stand that can only be rolled on to', () => {
    const stand = named(small(), 'Stand 1');
    const apron = small().taxi.edges.find(({ from, to }) => from === stand || to === stand);
    if (!apron) throw new Error('an apron expected');
    const onlyFrom = apron.from === stand ? apron.to : apron.from;
    const field = editedField(small(), {
      kind: 'stretch',
      id: stretchId(apron),
      set: { onlyFrom },
    });
    expect(routeGaps(field)).toEqual([
      { code: 'no-way', stand, end: '09' },
      { code: 'no-way', stand, end: '27' },
    ]);
  });
});

test('a plan of ten thousand stretches is gone through while one waits', () => {
  const side = 70;
  const id = (x: number, y: number) => `n${x}-${y}`;
  const cells = Array.from(
    { length: side * side },
    (_, i) => [i % side, Math.floor(i / side)] as const,
  );
  const nodes = cells.map(([x, y]) => ({
    id: id(x, y),
    xM: -600 + 18 * x,
    yM: -100 - 18 * y,
    kind: y === side - 1 ? ('stand' as const) : ('junction' as const),
  }));
  const edge = (from: string, to: string) => ({ from, to, name: 'T', on: 'taxiway' as const });
  const edges = cells.flatMap(([x, y]) => [
    ...(x + 1 < side ? [edge(id(x, y), id(x + 1, y))] : []),
    ...(y + 1 < side ? [edge(id(x, y), id(x, y + 1))] : []),
  ]);
  const field = { ...STRIP, taxi: { nodes, edges } };
  const before = performance.now();
  expect(routeGaps(field).map(({ code }) => code)).toEqual([
    'end-without-hold',
    'end-without-hold',
    'runway-without-exit',
  ]);
  // Some 20 ms on a quiet machine; gone through again for each stretch it would be a minute.
  expect(performance.now() - before).toBeLessThan(3000);
});
