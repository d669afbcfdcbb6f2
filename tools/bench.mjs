/**
 * Measures the built app against its budgets: `npm run bench`, or `npm run bench -- sizes` for the
 * rows of one file of tests/bench. Prints a table; exits with 1 if a row is over budget.
 */

import { cpus } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';

process.env.VITE_CONFIG_NATIVE_IGNORE_WARNING = 'true';
const { build } = await import('vite');

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const BUNDLE = `${ROOT}.cache/bench`;

await build({ root: `${ROOT}src`, configFile: `${ROOT}vite.config.ts`, logLevel: 'warn' });

// Bundled and run by plain Node, so that the code that ships is timed rather than a test runner's
// version of it; libraries stay outside, as they come.
await build({
  root: ROOT,
  configFile: false,
  logLevel: 'warn',
  publicDir: false,
  ssr: { external: true },
  build: {
    ssr: 'tests/bench/index.ts',
    outDir: BUNDLE,
    emptyOutDir: true,
    target: 'node20',
    rollupOptions: { output: { entryFileNames: 'index.mjs', chunkFileNames: '[name].mjs' } },
  },
});
const { measure, keeps } = await import(pathToFileURL(`${BUNDLE}/index.mjs`).href);

const rounded = (n) => (Math.abs(n) >= 100 ? n.toFixed(0) : n.toPrecision(3));
const shown = ({ measured, unit }) => (measured === null ? '—' : `${rounded(measured)} ${unit}`);
const allowed = ({ budget, unit }) =>
  'atMost' in budget ? `at most ${budget.atMost} ${unit}` : `at least ${budget.atLeast} ${unit}`;

console.log(`${cpus()[0]?.model ?? 'unknown processor'}, Node ${process.version}\n`);
console.log('| what | measured | budget | |');
console.log('| --- | --- | --- | --- |');
let over = 0;
for await (const row of measure(process.argv[2])) {
  const kept = keeps(row);
  if (!kept) over += 1;
  const note = [kept ? 'kept' : '**over**', row.note].filter(Boolean).join(': ');
  console.log(`| ${row.what} | ${shown(row)} | ${allowed(row)} | ${note} |`);
}
console.log(over === 0 ? '\nEvery budget is kept.' : `\n${over} over budget.`);
process.exitCode = over === 0 ? 0 : 1;
