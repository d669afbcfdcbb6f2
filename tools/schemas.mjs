/**
 * Writes the JSON Schemas that editors read: `node tools/schemas.mjs`.
 *
 * Generated from the schemas in src/core, so that a document is described once. What JSON Schema
 * can't say, such as that a taxiway leads to a point of the plan, the app checks when a document
 * enters.
 */

import { mkdir, writeFile } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { toJsonSchema } from '@valibot/to-json-schema';
import { readableJson } from './demo/json.mjs';

const MODULES = {
  field: 'airfield/field.schema.ts',
  aircraft: 'aircraft/aircraft.schema.ts',
  procedure: 'procedure/procedure.schema.ts',
};

/** One kind's JSON Schema as text; `definitions` names the schemas that refer to themselves. */
export function schemaText(kind, schema, definitions = {}) {
  const { $schema, ...rest } = toJsonSchema(schema, {
    typeMode: 'input',
    definitions,
    // Trimming refuses no text; the last check looks at the whole document.
    ignoreActions: ['trim', 'raw_check'],
  });
  return `${readableJson({ $schema, title: `Lapstrip ${kind}`, ...rest })}\n`;
}

async function writeSchemas() {
  const { runnerImport } = await import('vite');
  const folder = new URL('../public/schemas/', import.meta.url);
  await mkdir(folder, { recursive: true });
  for (const [kind, file] of Object.entries(MODULES)) {
    const path = fileURLToPath(new URL(`../src/core/${file}`, import.meta.url));
    const { module } = await runnerImport(path, { configFile: false });
    const definitions = module.conditionSchema ? { condition: module.conditionSchema } : {};
    const text = schemaText(kind, module[`${kind}Schema`], definitions);
    await writeFile(new URL(`${kind}.schema.json`, folder), text);
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) await writeSchemas();
