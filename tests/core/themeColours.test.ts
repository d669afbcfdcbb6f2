/** The bar of the browser, the icon's ground and the page are the same paper. */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { manifest } from '../../tools/manifest';

const source = (name: string) =>
  readFileSync(new URL(`../../src/${name}`, import.meta.url), 'utf8');

test('manifest, page and tokens name one paper', () => {
  const day = /\[data-theme="day"\] \{[^}]*--paper: (#[0-9a-f]{6});/.exec(
    source('style/tokens.css'),
  )?.[1];
  const page = /<meta name="theme-color" content="(#[0-9a-f]{6})"/.exec(source('index.html'))?.[1];
  expect(day).toMatch(/^#/);
  expect([page, manifest.theme_color, manifest.background_color]).toEqual([day, day, day]);
});
