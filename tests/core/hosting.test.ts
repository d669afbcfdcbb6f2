/** What the README tells hosts to send is what the app is tested with. */

import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { cachingOf, HEADERS, IMMUTABLE, NO_CACHE } from '../../tools/headers';

const README = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
const section = /^## Host it$(.*?)^## /ms.exec(README)?.[1] ?? '';
const block = (language: string): string =>
  new RegExp(`^\`\`\`${language}$(.*?)^\`\`\`$`, 'ms').exec(section)?.[1] ?? '';

/** `NAME VALUE` pairs that a pattern finds, by name. */
const pairs = (text: string, pattern: RegExp): Record<string, string> =>
  Object.fromEntries([...text.matchAll(pattern)].map(([, name, value]) => [name, value]));

describe('the headers that the README gives', () => {
  const table = pairs(section, /^\| ([\w-]+)(?:, for [^|]+)? \| `([^`]+)` \|$/gm);

  test('in its table are those that are sent, and no others', () => {
    const { 'Cache-Control': _, ...headers } = table;
    expect(headers).toEqual(HEADERS);
    expect(
      [...section.matchAll(/^\| Cache-Control, for .* \| `([^`]+)` \|$/gm)].map(([, v]) => v),
    ).toEqual([IMMUTABLE, NO_CACHE]);
  });

  test('for nginx are the same', () => {
    const nginx = block('nginx');
    expect(pairs(nginx, /^ +add_header ([\w-]+) "([^"]+)" always;$/gm)).toEqual(HEADERS);
    expect(nginx).toContain(`"${IMMUTABLE}"`);
    expect(nginx).toContain(`default "${NO_CACHE}"`);
  });

  test('for Caddy are the same', () => {
    const caddy = block('caddy');
    expect(pairs(caddy, /^ {4}([\w-]+) "([^"]+)"$/gm)).toEqual(HEADERS);
    expect(caddy).toContain(`header ?Cache-Control "${NO_CACHE}"`);
    expect(caddy).toContain(`header @hashed Cache-Control "${IMMUTABLE}"`);
  });
});

describe('what is kept for good', () => {
  test.each([
    ['/some/where/assets/index-C5qWTY7I.js', IMMUTABLE],
    ['/assets/text-DX0y6gqF.woff2', IMMUTABLE],
    ['/', NO_CACHE],
    ['/index.html', NO_CACHE],
    ['/sw.js', NO_CACHE],
    ['/manifest.webmanifest', NO_CACHE],
    ['/icons/192.png', NO_CACHE],
  ])('%s: %s', (path, caching) => {
    expect(cachingOf(path)).toBe(caching);
  });
});
