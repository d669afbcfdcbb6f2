/**
 * Cuts the two typefaces down to what Lapstrip writes: `npm run fonts`.
 *
 * The result is kept in src/style/fonts, so that builds don't need this. Faces stay variable: one
 * file from regular to bold is smaller than two (18 KB against 21 KB for the text face).
 */

import { copyFile, mkdir, readFile, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import subsetFont from 'subset-font';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const MOST_BYTES = 45 * 1024;

const range = (first, last) =>
  Array.from({ length: last - first + 1 }, (_, i) => String.fromCodePoint(first + i)).join('');

/** ASCII, Latin-1 letters and signs, and the typographic marks that the faces have. */
const CHARACTERS = `${range(0x20, 0x7e)}${range(0xa0, 0xff)}ŒœŸ–—…’‘“”„•−\u2009`;

/** Kerning, tabular figures, and placed accents. Neither face has `zero`. */
const FEATURES = ['kern', 'tnum', 'ccmp', 'mark', 'mkmk'];

const FACES = [
  { cut: 'next', as: 'text', weights: { min: 400, max: 700 } },
  { cut: 'mono', as: 'mono', weights: { min: 400, max: 700 } },
];

const resolve = createRequire(import.meta.url).resolve;
let total = 0;

await mkdir(join(ROOT, 'public/licenses'), { recursive: true });
await mkdir(join(ROOT, 'src/style/fonts'), { recursive: true });

for (const { cut, as, weights } of FACES) {
  const name = `atkinson-hyperlegible-${cut}`;
  const folder = dirname(resolve(`@fontsource-variable/${name}/package.json`));
  const whole = await readFile(join(folder, `files/${name}-latin-wght-normal.woff2`));
  const cutDown = await subsetFont(whole, CHARACTERS, {
    targetFormat: 'woff2',
    keepFeatures: FEATURES,
    variationAxes: { wght: weights },
  });
  total += cutDown.length;
  await writeFile(join(ROOT, `src/style/fonts/${as}.woff2`), cutDown);
  await copyFile(join(folder, 'LICENSE'), join(ROOT, `public/licenses/${name}.txt`));
  console.log(`${as}.woff2  ${cutDown.length} of ${whole.length} bytes`);
}

console.log(`together     ${total} bytes, at most ${MOST_BYTES}`);
if (total > MOST_BYTES) process.exitCode = 1;
