/** A taxi plan from elsewhere is laid over the runways that are there. */

import { describe, expect, test } from 'vitest';
import { mayBeOne, withPlan } from '../../../src/core/airfield/addPlan';
import { fieldFaults } from '../../../src/core/airfield/faults';
import type { Field } from '../../../src/core/airfield/field';
import { findRouteOut } from '../../../src/core/taxi/routeOut';
import { demoField } from '../documents/demo';
import { drawn, FREE, node, stretch } from '../taxi/drawn';

const planned = demoField('XHAR');

/** The field without its plan, as a list of the world's runways would have it. */
const bare = (field: Field): Field => ({ ...field, taxi: { nodes: [], edges: [] } });

describe('a plan laid over the field it is of', () => {
  test('leaves runways, radio and texts as they are, and leads to the runway', () => {
    const { field } = withPlan({ ...bare(planned), name: 'Mine' }, planned);
    if (field === null) throw new Error('not laid');
    expect(field.runways).toEqual(planned.runways);
    expect(field.radio).toEqual(planned.radio);
    expect(field.name).toBe('Mine');
    expect(fieldFaults(field)).toEqual([]);
    const stand = field.taxi.nodes.find(({ kind }) => kind === 'stand');
    const { route } = findRouteOut({ field, from: stand?.id ?? '', end: '28', rules: FREE });
    expect(route).not.toBeNull();
  });

  test('whose reference point lies elsewhere is moved with it', () => {
    // A minute of latitude is 1 852 m to within 10 m (its first definition); 1/60 of it 30.9 m.
    const place = { ...planned.place, latDeg: planned.place.latDeg + 1 / 3600 };
    const { field } = withPlan({ ...bare(planned), place }, planned);
    const [before, after] = [planned.taxi.nodes[0], field?.taxi.nodes[0]];
    expect((after?.yM ?? 0) - (before?.yM ?? 0)).toBeCloseTo(-30.9, 0);
    expect((after?.xM ?? 0) - (before?.xM ?? 0)).toBeCloseTo(0, 0);
  });

  test('whose runways were renumbered is told in the numbers of the field', () => {
    const renumber = new Map([
      ['10', '09'],
      ['28', '27'],
    ]);
    const runways = planned.runways.map((runway) => ({
      ...runway,
      ends: runway.ends.map((end) => ({
        ...end,
        designator: renumber.get(end.designator) ?? end.designator,
      })) as (typeof runway)['ends'],
    }));
    const { calmWindEnd: _calm, preferredEnds: _preferred, ...others } = bare(planned);
    const { field } = withPlan({ ...others, runways }, planned);
    if (field === null) throw new Error('not laid');
    expect(fieldFaults(field)).toEqual([]);
    const ends = field.taxi.nodes.flatMap((one) => one.ends ?? []);
    expect(ends).toContain('27');
    expect(ends).not.toContain('28');
  });

  test('with a runway the field lacks is refused, and the runway named', () => {
    const { misfit } = withPlan(
      { ...bare(planned), runways: planned.runways.slice(0, 1) },
      planned,
    );
    expect(misfit?.kind).toBe('runway-missing');
  });

  test('that has the runway 50 m beside it is refused: ways would end on the grass', () => {
    const laid = (fromNorthM: number) =>
      drawn(
        [node('a', 0, -200, 'stand'), node('r', 0, fromNorthM, 'runway', { ends: ['09'] })],
        [stretch('A', 'a', 'r')],
        [{ ends: ['09', '27'], from: [0, fromNorthM], headingDeg: 90, lengthM: 1000 }],
      );
    expect(withPlan(laid(0), laid(10)).misfit).toBeNull();
    const { misfit } = withPlan(laid(0), laid(50));
    expect(misfit).toMatchObject({ kind: 'runway-beside', runway: '09/27' });
    expect(misfit?.kind === 'runway-beside' ? misfit.offM : 0).toBeCloseTo(50, 0);
  });
});

describe('two fields may be one', () => {
  const at = (code: string, latDeg: number) => ({ code, place: { latDeg, lonDeg: 6 } });

  // A minute of latitude is a sea mile, 1 852 m.
  test.each([
    ['within 3 km, whatever their codes', 'ELLX', 'LU01', 1.5 / 60, true],
    ['further apart with other codes', 'ELLX', 'LU01', 2 / 60, false],
    ['by their code, a few kilometres apart', 'ELLX', 'ELLX', 3 / 60, true],
    ['not by their code alone', 'ELLX', 'ELLX', 2, false],
  ])('%s', (_what, one, other, apartDeg, answer) => {
    expect(mayBeOne(at(one, 49.6), at(other, 49.6 + apartDeg))).toBe(answer);
  });
});
