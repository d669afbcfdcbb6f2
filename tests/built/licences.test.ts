/**
 * Everything in the build that others made has its licence's text there. What was bundled is checked
 * as it is built (tools/licences.ts stops the build); here what it cannot see, and that it would.
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { LICENCES, withoutTerms } from '../../tools/licences';
import { DIST } from '../browser/server';

const text = readFileSync(join(DIST, LICENCES), 'utf8');

/** What package.json says is needed at run time, and so ships. */
const { dependencies } = JSON.parse(
  readFileSync(new URL('../../package.json', import.meta.url), 'utf8'),
);

describe('the licences in the build', () => {
  test('cover every package that the app needs at run time', () => {
    expect(withoutTerms(text, Object.keys(dependencies))).toEqual([]);
  });

  test('are missed where a package has none, or its name alone', () => {
    const named = `${text}\n\n## left-out - 1.0.0 (MIT)\n\nLicensed under MIT.\n`;
    expect(withoutTerms(named, ['left-out', 'not-listed', 'preact'])).toEqual([
      'left-out',
      'not-listed',
    ]);
  });

  test('cover what the worker is made of', () => {
    // Each of its packages leaves its name and version in the code.
    const code = readFileSync(join(DIST, 'sw.js'), 'utf8');
    const parts = [...code.matchAll(/workbox:([a-z-]+):\d/g)].map(([, part]) => `workbox-${part}`);
    expect(parts).toContain('workbox-precaching');
    expect(withoutTerms(text, parts)).toEqual([]);
  });

  test('cover the typefaces, and there are no others', () => {
    const fonts = readdirSync(join(DIST, 'assets')).filter((file) => file.endsWith('.woff2'));
    expect(fonts.map((file) => file.replace(/-.*/, '')).sort()).toEqual(['mono', 'text']);
    const faces = ['next', 'mono'].map(
      (cut) => `@fontsource-variable/atkinson-hyperlegible-${cut}`,
    );
    expect(withoutTerms(text, faces)).toEqual([]);
  });
});
