import { expect, test } from 'vitest';
import { offeredFields } from '../../../src/board/record/flownLast';
import type { Entry, SortieEvent } from '../../../src/core/sortie/entry';
import { fieldsFlown } from '../../../src/core/sortie/flown';
import { sortiesOf } from '../../../src/core/sortie/fold';
import { entry } from './recorder';

// Common practice, no published source: what was flown last is what is likely flown next.

/** Sorties one after the other, each by what happened in it. */
const flown = (...sorties: readonly (readonly SortieEvent[])[]) => {
  const entries: Entry[] = [];
  for (const [number, events] of sorties.entries()) {
    for (const event of events) {
      entries.push({ ...entry(event, entries.length + 1), sortie: `sortie-${number}` });
    }
  }
  return fieldsFlown(sortiesOf(entries));
};
const at = (field: string | null): SortieEvent => ({ kind: 'set', inputs: { field } });

test('fields flown last come first, each once', () => {
  expect(flown([at('a')], [at('b')], [at('a')], [at('c')])).toEqual(['c', 'a', 'b']);
});

test('a sortie counts by the field it came to, and not by one taken back or none', () => {
  expect(flown([at('a'), at('b')])).toEqual(['b']);
  expect(flown([at('a')], [at('b'), { kind: 'undo', target: 'id-2' }])).toEqual(['a']);
  expect(flown([at('a')], [at(null)])).toEqual(['a']);
  expect(flown()).toEqual([]);
});

test('five at most stand before the others, and those that are no longer listed do not count', () => {
  const listed = ['a', 'b', 'c', 'd', 'e', 'f', 'g'].map((hash) => ({
    kind: 'field' as const,
    hash,
    code: hash,
    name: hash,
    about: '',
    place: { latDeg: 0, lonDeg: 0, elevationFt: 0 },
    longestM: 0,
    load: () => Promise.reject(new Error('not asked for')),
  }));
  const order = (...hashes: string[]) =>
    offeredFields(listed, hashes)
      .map(({ hash }) => hash)
      .join('');
  expect(order()).toBe('abcdefg');
  expect(order('f', 'gone', 'b')).toBe('fbacdeg');
  expect(order('g', 'f', 'e', 'd', 'c', 'b')).toBe('gfedcab');
});
