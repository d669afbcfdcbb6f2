/**
 * Writes the demo airfields: `node tools/demo/fields.mjs`.
 *
 * The documents in airfields-demo/fields are authoritative and may be edited by hand; this keeps
 * coordinates, headings and taxiways in step when a layout changes.
 */

import { writeFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import harrowSound from './fields/harrow-sound.mjs';
import kelderNess from './fields/kelder-ness.mjs';
import lastCairn from './fields/last-cairn.mjs';
import linnetHill from './fields/linnet-hill.mjs';
import marramHaven from './fields/marram-haven.mjs';
import tumbrel from './fields/tumbrel.mjs';
import { readableJson } from './json.mjs';

const FIELDS = [harrowSound, marramHaven, kelderNess, tumbrel, linnetHill, lastCairn];

const heading = {
  $schema: '../../public/schemas/field.schema.json',
  lapstrip: 'field',
  version: 1,
};

/** Each demo airfield's text by file name. */
export function fieldFiles() {
  return new Map(
    FIELDS.map((field) => [`${field.code}.json`, `${readableJson({ ...heading, ...field })}\n`]),
  );
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const folder = new URL('../../airfields-demo/fields/', import.meta.url);
  for (const [name, text] of fieldFiles()) await writeFile(new URL(name, folder), text);
}
