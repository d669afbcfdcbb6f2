/** What is new is said in a line or two, from a changelog kept by hand. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { newsIn } from '../../../src/device/whatsNew';
import { readChangelog } from '../../../tools/changelog';

const file = (name: string) => readFileSync(new URL(`../../../${name}`, import.meta.url), 'utf8');
const release = (version: string, line: string) => ({ version, en: [line], de: [`${line}, de`] });

describe('the changelog', () => {
  test('of the app begins with the version of its package', () => {
    expect(readChangelog(file('CHANGELOG.md'))[0]?.version).toBe(
      JSON.parse(file('package.json')).version,
    );
  });

  test('is read by version and language', () => {
    const text = '# Changelog\n\nFor pilots.\n\n## 0.2.0\n\n- Ink.\n  - de: Tinte.\n';
    expect(readChangelog(text)).toEqual([{ version: '0.2.0', en: ['Ink.'], de: ['Tinte.'] }]);
  });

  test.each([
    ['a line without a German twin', '## 0.2.0\n\n- Ink.\n'],
    ['nothing under a version', '## 0.2.0\n'],
    ['three lines', `## 0.2.0\n${'\n- Ink.\n  - de: Tinte.'.repeat(3)}\n`],
    ['a line of another kind', '## 0.2.0\n\n- Ink.\n  - de: Tinte.\n\nAnd more.\n'],
    ['a title that is no version', '## Soon\n\n- Ink.\n  - de: Tinte.\n'],
  ])('is refused with %s', (_, text) => {
    expect(() => readChangelog(text)).toThrow('CHANGELOG.md');
  });
});

describe('what is new', () => {
  const read = [release('0.3.0', 'Three'), release('0.2.0', 'Two'), release('0.1.0', 'One')];

  test('is what came since the own version, in two lines at most', () => {
    expect(newsIn(read, '0.2.0', 'en')).toEqual(['Three']);
    expect(newsIn(read, '0.1.0', 'de')).toEqual(['Three, de', 'Two, de']);
    expect(newsIn([release('0.4.0', 'Four'), ...read], '0.1.0', 'en')).toEqual(['Four', 'Three']);
  });

  test('is nothing where the version is the same, and the newest alone where the own is not listed', () => {
    expect(newsIn(read, '0.3.0', 'en')).toEqual([]);
    expect(newsIn(read, '0.0.9', 'en')).toEqual(['Three']);
  });

  test('is nothing where something else than a list of releases comes', () => {
    for (const other of [
      null,
      '<!doctype html>',
      {},
      [{ version: 1 }],
      [{ version: '1', en: 'x' }],
    ]) {
      expect(newsIn(other, '0.1.0', 'en')).toEqual([]);
    }
  });
});
