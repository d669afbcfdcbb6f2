/** The files of the built app, each by itself. */

import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from './harness';
import { DIST } from './server';

test('every part can be evaluated before it has words: none reads one while it is loaded', async ({
  host,
  open,
}) => {
  const page = await open('tablet');
  const scripts = readdirSync(join(DIST, 'assets')).filter(
    (file) => file.endsWith('.js') && !file.includes('worker'),
  );
  expect(scripts.length).toBeGreaterThan(50);
  const addresses = scripts.map((file) => `${host.url}assets/${file}`);
  // As text, or the test runner would replace the browser's import with its own.
  const refused: unknown = await page.evaluate(
    `Promise.all(${JSON.stringify(addresses)}.map((address) =>
      import(address).then(() => [], (error) => [address + ': ' + error])))`,
  );
  expect([refused].flat(2)).toEqual([]);
});
