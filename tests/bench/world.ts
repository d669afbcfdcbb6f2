/** The world's fields: what is fetched, reading it, and finding one letter by letter. */

import { gunzipSync } from 'node:zlib';
import { readWorld } from '../../src/core/world/readWorld';
import { worldSearch } from '../../src/core/world/search';
import type { WorldKind } from '../../src/core/world/worldField';
import { worldFile } from '../../tools/world/file';
import { finished } from '../core/world/invented';
import { quantile, type Rows } from './row';

const KB = 1024;

/** What pilots type: codes, names, towns, in any order, with and without slips. */
const TYPED = [
  'eddf',
  'frankfurt main',
  'frankfrut',
  'luxenbourg',
  'paris gaulle',
  'seatle tacoma',
  'ru-10046',
  'sao paulo',
  'keflavik',
  'xqzwvkj',
  'san francisco',
  'st peter',
];

const AERODROMES: ReadonlySet<WorldKind> = new Set<WorldKind>(['aerodrome']);

export const rows: Rows = async () => {
  const { packed } = await worldFile();
  const decoder = new TextDecoder();
  const read = () => readWorld(gunzipSync(packed), (bytes) => decoder.decode(bytes));
  const timed = (work: () => unknown): number => {
    const start = performance.now();
    work();
    return performance.now() - start;
  };
  const times = (many: number, work: () => unknown) =>
    Array.from({ length: many }, () => timed(work));
  const world = read();
  if (world === null) throw new Error('the set was not read');
  const reading = times(9, read);
  const indexing = times(9, () => finished(worldSearch(world)));
  const find = finished(worldSearch(world));
  const letters = TYPED.flatMap((typed) =>
    Array.from({ length: typed.length }, (_, at) => typed.slice(0, at + 1)),
  );
  const ask = (typed: string) => find(typed, { kinds: AERODROMES, most: 40 });
  const first = letters.map((typed) => timed(() => ask(typed)));
  const again = letters.map((typed) => timed(() => ask(typed)));
  return [
    {
      what: 'the world’s fields, as they are fetched',
      measured: packed.length / KB,
      unit: 'KB',
      budget: { atMost: 480 },
      note: `${world.codes.length} fields`,
    },
    {
      what: 'the same: unpacked, read and made ready for the search, median',
      measured: (quantile(reading, 0.5) ?? 0) + (quantile(indexing, 0.5) ?? 0),
      unit: 'ms',
      budget: { atMost: 250 },
      note: `reading ${quantile(reading, 0.5)?.toFixed(1)}, the index ${quantile(indexing, 0.5)?.toFixed(1)}`,
    },
    {
      what: 'finding a field among the world’s, a letter typed, 95th percentile',
      measured: quantile([...first, ...again], 0.95),
      unit: 'ms',
      budget: { atMost: 8 },
      note: `median ${quantile(again, 0.5)?.toFixed(2)}, longest ${Math.max(...first, ...again).toFixed(1)}`,
    },
  ];
};
