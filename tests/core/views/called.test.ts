/** What points and stretches of a taxi plan are called; the plans are the demo's. */

import { describe, expect, test } from 'vitest';
import type { Field } from '../../../src/core';
import { endsCalled, pointCalled } from '../../../src/views/taxi/called';
import { words } from '../../../src/views/taxi/words.en';
import { readCatalogue } from '../../../tools/catalogue';

const FIELDS = readCatalogue(new URL('../../../airfields-demo', import.meta.url).pathname)
  .filter(({ kind }) => kind === 'field')
  .map(({ document }) => document as Field);

const twice = (all: readonly string[]) => all.filter((one, at) => all.indexOf(one) !== at);

describe.each(FIELDS.map((field) => [field.code, field.taxi] as const))('at %s', (_, taxi) => {
  const stretches = taxi.edges.map((edge) =>
    words.stretchName(edge.name, ...endsCalled(edge, taxi)),
  );

  test('no two stretches are called the same', () => {
    expect(twice(stretches)).toEqual([]);
  });

  test('nothing is called by its name in the document, but a bend where nothing meets', () => {
    const bends = taxi.nodes.filter(({ id, name, kind }) => {
      const here = taxi.edges.filter(({ from, to }) => from === id || to === id);
      return (
        name === undefined && kind === 'junction' && new Set(here.map((e) => e.name)).size === 1
      );
    });
    const unseen = taxi.nodes.filter((node) => node.name === undefined && !bends.includes(node));
    for (const { id } of unseen)
      for (const called of stretches) expect(called.split(/, | to |\//)).not.toContain(id);
  });
});

test('a point is called by what is painted, the ends that begin there, what meets there, or its stand', () => {
  const field = FIELDS.find(({ code }) => code === 'XHAR');
  if (field === undefined) throw new Error('no XHAR');
  const called = (id: string) => {
    const node = field.taxi.nodes.find((one) => one.id === id);
    return node && pointCalled(node, field.taxi);
  };
  expect(called('B1')).toBe('B1');
  expect(called('r10')).toBe('10');
  expect(called('p1')).toBe('C');
  expect(called('p2')).toBe('Stand 2');
});
