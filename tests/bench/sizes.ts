/** Sizes of the built app: what loads before the first answer, the fonts, what is stored. */

import { readFileSync } from 'node:fs';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DIST } from '../browser/server';
import { arrivedBeforeFirstAnswer } from './firstAnswer';
import { firstLineOf, type Row, type Rows } from './row';

const KB = 1024;

/** Already compressed, so sent as they are. */
const COMPRESSED = new Set(['.woff2', '.png']);

/** A file's transfer size, bytes: gzipped where that helps, as most hosts do. */
function weight(file: string): number {
  const content = readFileSync(join(DIST, file));
  return COMPRESSED.has(extname(file)) ? content.length : gzipSync(content, { level: 9 }).length;
}

const together = (files: readonly string[]): number =>
  files.reduce((sum, file) => sum + weight(file), 0) / KB;

/** Everything the worker stores, by its own list, and the worker itself. */
function storedFiles(): string[] {
  const worker = readFileSync(join(DIST, 'sw.js'), 'utf8');
  const listed = [...worker.matchAll(/"url":\s*"([^"]+)"/g)].map((match) => match[1] ?? '');
  return [...new Set(listed), 'sw.js'];
}

const largest = (files: readonly string[]): string =>
  files
    .map((file) => ({ file, kb: weight(file) / KB }))
    .sort((a, b) => b.kb - a.kb)
    .slice(0, 4)
    .map(({ file, kb }) => `${file.replace(/^assets\//, '')} ${kb.toFixed(1)}`)
    .join(', ');

async function firstRow(): Promise<Row> {
  const row = {
    what: 'HTML, CSS and JS before Wind has answered its first wind',
    unit: 'KB',
    budget: { atMost: 80 },
  };
  try {
    const first = (await arrivedBeforeFirstAnswer()).filter((file) =>
      ['.html', '.css', '.js'].includes(extname(file)),
    );
    const note = `${first.length} files; ${largest(first)}`;
    return { ...row, measured: together(first), note };
  } catch (error) {
    return { ...row, measured: null, note: firstLineOf(error) };
  }
}

export const rows: Rows = async () => {
  const stored = storedFiles();
  const fonts = stored.filter((file) => file.endsWith('.woff2'));
  return [
    await firstRow(),
    { what: 'fonts', measured: together(fonts), unit: 'KB', budget: { atMost: 45 } },
    {
      what: 'all that is stored for offline use',
      measured: together(stored),
      unit: 'KB',
      budget: { atMost: 500 },
      note: `${stored.length} files; ${largest(stored)}`,
    },
  ];
};
