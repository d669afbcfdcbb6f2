/**
 * The build asks nothing of a browser that the oldest one it is built for does not have. From MDN's
 * compatibility data (@mdn/browser-compat-data).
 */

import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { OLDEST } from '../../tools/oldest';
import { DIST } from '../browser/server';
import { type Oldest, unsupportedScript, unsupportedStyle } from './unsupported';

/** Safari on iPad and iPhone is numbered as on a Mac. */
const BROWSERS: Oldest = { ...OLDEST, safari_ios: OLDEST.safari };

/** What is asked for before it is used, done without where it is missing, or only called the same. */
const DONE_WITHOUT: readonly RegExp[] = [
  // src/device and the sheets that share look whether the device has them.
  /^navigator\.(wakeLock|vibrate|share|canShare|userActivation):/,
  // @preact/signals, for those who write `using`, which nobody does here.
  /^Symbol\.dispose:/,
  // @noble/hashes looks for both, and has its own way.
  /^(\.toHex\(\)|Uint8Array\.fromHex):/,
  // The app's own.
  /^\.(take|use|intersection)\(\):/,
  // A rule that is solid in place of dotted or waved, with its words beside it.
  /^text-decoration: (dotted|wavy):/,
  // Drawn a little later, or a row that is not in line with its neighbours.
  /^(content-visibility|contain-intrinsic-block-size|grid-template-rows: subgrid)\b/,
  // Where the system forces colours, which Safari never does.
  /^forced-color-adjust\b/,
  // A hand, a corner or a bar that such devices do not draw.
  /^(cursor|resize|scrollbar-width)\b/,
  // Each engine's own name for the same thing, written beside the others.
  /^:-(moz-range|webkit-slider)-/,
  /^text-size-adjust:/,
  // A card is printed on the paper that is in the printer.
  /^(@page|size):/,
  // Long words break anywhere, without a hyphen.
  /^hyphens:/,
];

const files = (extension: string) =>
  readdirSync(DIST, { recursive: true, encoding: 'utf8' }).filter((file) =>
    file.endsWith(extension),
  );
const read = (file: string) => readFileSync(join(DIST, file), 'utf8');
const unexpected = (lines: readonly string[]) =>
  lines.filter((line) => !DONE_WITHOUT.some((known) => known.test(line)));

describe('the oldest browsers', () => {
  test('have all that the scripts use', () => {
    const scripts = files('.js');
    expect(scripts.length).toBeGreaterThan(10);
    const lines = scripts.flatMap((file) => unsupportedScript(read(file), BROWSERS));
    expect(unexpected([...new Set(lines)])).toEqual([]);
  });

  test('have all that the style sheets use', () => {
    const sheets = files('.css');
    expect(sheets.length).toBeGreaterThan(0);
    const lines = sheets.flatMap((file) => unsupportedStyle(read(file), BROWSERS));
    expect(unexpected([...new Set(lines)])).toEqual([]);
  });
});

describe('what a browser lacks', () => {
  test.each([
    ['Array.fromAsync(x)', 'Array.fromAsync'],
    ['Object.groupBy(x, (y) => y)', 'Object.groupBy'],
    ['Promise.withResolvers()', 'Promise.withResolvers'],
    ['URL.parse(x)', 'URL.parse'],
    ['first.union(second)', '.union()'],
    ['navigator.wakeLock.request("screen")', 'navigator.wakeLock'],
    ['requestIdleCallback(work)', 'requestIdleCallback'],
    ['new Intl.DurationFormat("en")', 'Intl.DurationFormat'],
  ])('is noticed in a script: %s', (code, what) => {
    expect(unsupportedScript(code, BROWSERS)).toEqual([expect.stringContaining(`${what}: not in`)]);
  });

  test.each([
    ['.a { color: light-dark(red, blue) }', 'light-dark()'],
    ['.a { anchor-name: --a }', 'anchor-name'],
    ['.a { field-sizing: content }', 'field-sizing'],
    ['.a { & .b { color: red } }', 'nested rules'],
    ['@starting-style { .a { opacity: 0 } }', '@starting-style'],
    ['.a { text-wrap: balance }', 'text-wrap'],
  ])('is noticed in a style sheet: %s', (code, what) => {
    expect(unsupportedStyle(code, BROWSERS)).toContainEqual(
      expect.stringContaining(`${what}: not in`),
    );
  });

  test('is not what they have', () => {
    const script = '[1].toSorted(); structuredClone({}); navigator.locks.request("a", work)';
    expect(unsupportedScript(script, BROWSERS)).toEqual([]);
    const style = '@container (min-width: 3rem) { .a { height: 100dvh; inset: 0; gap: 1px } }';
    expect(unsupportedStyle(style, BROWSERS)).toEqual([]);
  });
});
