/** What points and stretches of a taxi plan are called; the plans are the demo's. */

import { beforeAll, describe, expect, test } from 'vitest';
import type { Field } from '../../../src/core';
import { speak } from '../../../src/parts/catalogues';
import { endsCalled, pointCalled } from '../../../src/views/taxi/called';
import { words } from '../../../src/views/taxi/words.en';
import { readCatalogue } from '../../../tools/catalogue';

beforeAll(() => speak('en'));

const FIELDS = readCatalogue(new URL('../../../airfields-demo', import.meta.url).pathname)
  .filter(({ kind }) => kind === 'field')
  .map(({ document }) => document as Field);

const twice = (all: readonly string[]) => all.filter((one, at) => all.indexOf(one) !== at);

describe.each(FIELDS.map((field) => [field.code, field.taxi] as const))('at %s', (_, taxi) => {
  const stretches = taxi.edges.map((edge) =>
    words.stretchName(edge.name, ...endsCalled(edge, taxi, words.points)),
  );

  test('no two stretches are called the same', () => {
    expect(twice(stretches)).toEqual([]);
  });

  test('no two points are called the same', () => {
    const points = taxi.nodes.map((node) => pointCalled(node, taxi, words.points));
    expect(twice(points)).toEqual([]);
  });

  test('nothing is called by its name in the document', () => {
    const points = taxi.nodes.map((node) => pointCalled(node, taxi, words.points));
    const unseen = taxi.nodes.filter(({ name }) => name === undefined).map(({ id }) => id);
    for (const called of [...stretches, ...points])
      for (const id of unseen) expect(called.split(/, | to | by |\//)).not.toContain(id);
  });
});

test('a point is called by what is painted, the ends that begin there, what meets there, or what is near', () => {
  const field = FIELDS.find(({ code }) => code === 'XHAR');
  if (field === undefined) throw new Error('no XHAR');
  const called = (id: string) => {
    const node = field.taxi.nodes.find((one) => one.id === id);
    return node && pointCalled(node, field.taxi, words.points);
  };
  expect(called('B1')).toBe('B1');
  expect(called('r10')).toBe('Runway 10');
  expect(called('k')).toBe('K/F');
  expect(called('p1')).toBe('C by Stand 1');
  expect(called('p2')).toBe('apron by Stand 2');
});
