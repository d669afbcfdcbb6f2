/**
 * Writes the table of the world's fields into the README: `node tools/world.mjs`. The file itself is
 * made by the build (tools/world/plugin.ts).
 */

import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const at = (file) => fileURLToPath(new URL(file, import.meta.url));
const README = at('../README.md');

const { module } = await runnerImport(at('world/tableNow.ts'), { configFile: false });
const { table } = module;
const text = await readFile(README, 'utf8');
const between = /(<!-- world -->\n)[\s\S]*?(\n<!-- \/world -->)/;
await writeFile(
  README,
  text.replace(between, (_, before, after) => before + table + after),
);
console.log(table);
