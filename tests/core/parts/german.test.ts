/** Every catalogue has a German twin that holds all of it; grammar and sense are for readers to judge. */

import { describe, expect, test } from 'vitest';

const english = import.meta.glob<object>('../../../src/**/*.en.ts', { eager: true });
const german = import.meta.glob<object>('../../../src/**/*.de.ts', { eager: true });

const twinOf = (file: string) => file.replace(/\.en\.ts$/, '.de.ts');

/** The same in both: titles of published works, and what aviation calls alike. */
const SAME = new Set([
  'Block, min',
  'ICAO Doc 7488, Manual of the ICAO Standard Atmosphere.',
  'IGRF-12, International Geomagnetic Reference Field, IAGA.',
]);

/** The names in a catalogue with the kind of what each holds, down to each text and each sentence of facts. */
function shapeOf(value: unknown): unknown {
  if (typeof value === 'function') return 'words of facts';
  if (Array.isArray(value)) return value.map(shapeOf);
  if (typeof value !== 'object' || value === null) return typeof value;
  return Object.fromEntries(
    Object.entries(value)
      .map(([name, held]) => [name, shapeOf(held)] as const)
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

/** The sentences and words of a catalogue, by the way to each. */
function textsOf(value: unknown, way = ''): [way: string, text: string][] {
  if (typeof value === 'string') return [[way, value]];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([name, held]) => textsOf(held, `${way}.${name}`));
}

test('there are catalogues', () => {
  expect(Object.keys(english).length).toBeGreaterThan(30);
});

describe.each(Object.keys(english))('%s', (file) => {
  test('has a twin with the same names', () => {
    expect(shapeOf(german[twinOf(file)])).toEqual(shapeOf(english[file]));
  });

  test('has no sentence left in English', () => {
    const inEnglish = new Map(textsOf(english[file]));
    const left = textsOf(german[twinOf(file)]).filter(
      ([way, text]) =>
        inEnglish.get(way) === text &&
        // The name of a live number is the same in every language.
        /\p{Ll}{3}/u.test(text.replace(/\{\w+\}/g, '')) &&
        / /.test(text) &&
        !SAME.has(text),
    );
    expect(left).toEqual([]);
  });
});

test('no twin stands alone', () => {
  const twins = new Set(Object.keys(english).map(twinOf));
  expect(Object.keys(german).filter((file) => !twins.has(file))).toEqual([]);
});

test('no module but its own takes the words of a catalogue without asking for the language', () => {
  const modules = import.meta.glob<string>(
    ['../../../src/**/*.{ts,tsx}', '!../../../src/**/*.{en,de}.ts'],
    { eager: true, query: '?raw', import: 'default' },
  );
  const taking = /^import (?!type )[^;]* from '([^']*\.(?:en|de))';/gm;
  const takes = (file: string, text: string) => {
    const own = `./${file.split('/').at(-1)?.replace(/\.ts$/, '.en')}`;
    return [...text.matchAll(taking)].some(([, from]) => from !== own);
  };
  expect(takes('../views/why/words.ts', "import * as english from './words.en';")).toBe(false);
  expect(takes('../views/why/words.ts', "import * as german from './words.de';")).toBe(true);
  expect(takes('../views/why/Why.tsx', "import { words } from './words.en';")).toBe(true);
  const found = Object.entries(modules).filter(([file, text]) => takes(file, text));
  expect(found.map(([file]) => file)).toEqual([]);
});

/** Imports of what may have words of its own, by the code before them: `later(() => ` or `withWords(() => `. */
test('what has words of its own and comes later is waited for with its words', () => {
  const modules = import.meta.glob<string>(
    ['../../../src/{shell,views,parts}/**/*.{ts,tsx}', '!../../../src/**/*.{en,de}.ts'],
    { eager: true, query: '?raw', import: 'default' },
  );
  const unwaited = Object.entries(modules).flatMap(([file, code]) =>
    [...code.matchAll(/(.{0,30})\bimport\('([^']*(?:views\/|\.\/[A-Z])[^']*)'\)/gs)]
      .filter(([, before = '']) => !/(?:later|laterSheet|withWords)\(\s*\(\) =>\s*$/.test(before))
      .filter(([, before = '']) => !/typeof $/.test(before))
      .map(([, , loaded]) => `${file}: ${loaded}`),
  );
  expect(unwaited).toEqual([]);
});
