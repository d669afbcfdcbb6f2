/** Packs the world's fields into the bytes that src/core/world/readWorld.ts reads. */

import { signLast } from '../../src/core/world/columns';
import { NO_ELEVATION, type WorldHeader } from '../../src/core/world/readWorld';
import {
  PER_DEGREE,
  WORLD_DOUBTS,
  WORLD_KINDS,
  WORLD_SIZES,
  WORLD_SURFACES,
  type WorldField,
} from '../../src/core/world/worldField';

const sized = (column: Uint8Array): Uint8Array => {
  const bytes = new Uint8Array(4 + column.length);
  new DataView(bytes.buffer).setUint32(0, column.length, true);
  bytes.set(column, 4);
  return bytes;
};

const texts = (lines: readonly string[]): Uint8Array =>
  sized(new TextEncoder().encode(lines.join('\n')));

function numbers(values: readonly number[]): Uint8Array {
  const stored = values.map(signLast);
  const most = Math.max(0, ...stored.map((value) => Math.ceil(Math.log2(value + 1) / 8)));
  const bytes = new Uint8Array(1 + most * stored.length);
  bytes[0] = most;
  for (let byte = 0; byte < most; byte++)
    stored.forEach((value, row) => {
      bytes[1 + byte * stored.length + row] = Math.floor(value / 256 ** byte) % 256;
    });
  return sized(bytes);
}

const micro = (deg: number): number => Math.round(deg * PER_DEGREE);

/** kHz of a frequency as written, with how many decimals it has; 0 where there is none. */
const written = (mhz: string | null): number => {
  if (mhz === null) return 0;
  const [whole = '', decimals = ''] = mhz.split('.');
  return 4 * Number(whole + decimals.padEnd(3, '0')) + decimals.length;
};

const LETTERS = ['', 'L', 'C', 'R'];

/** The bytes, before they are packed. */
export function encodedWorld(header: WorldHeader, fields: readonly WorldField[]): Uint8Array {
  const runways = fields.flatMap((field) => field.runways.map((runway) => ({ field, runway })));
  const first = runways.map(({ runway }) => runway.ends[0]);
  const second = runways.map(({ runway }) => runway.ends[1]);
  const before = (index: number) => fields[index - 1]?.place ?? { latDeg: 0, lonDeg: 0 };
  const elevation = (end: { elevationFt: number | null }, above: number) =>
    end.elevationFt === null ? NO_ELEVATION : end.elevationFt - above;
  const parts = [
    new TextEncoder().encode(`${JSON.stringify(header)}\n`),
    texts(fields.map(({ code }) => code)),
    texts(fields.map((field) => field.otherCodes)),
    texts(fields.map(({ name }) => name)),
    texts(fields.map(({ town }) => town)),
    texts(fields.map(({ country }) => country)),
    numbers(
      fields.map(
        ({ kind, size, isNumberedTrue }) =>
          WORLD_KINDS.indexOf(kind) + 4 * WORLD_SIZES.indexOf(size) + (isNumberedTrue ? 16 : 0),
      ),
    ),
    numbers(fields.map(({ place }, i) => micro(place.latDeg) - micro(before(i).latDeg))),
    numbers(fields.map(({ place }, i) => micro(place.lonDeg) - micro(before(i).lonDeg))),
    numbers(fields.map(({ place }) => place.elevationFt)),
    numbers(fields.map(({ radio }) => written(radio.tower))),
    numbers(fields.map(({ radio }) => written(radio.ground))),
    numbers(fields.map(({ radio }) => written(radio.traffic))),
    numbers(fields.map((field) => field.runways.length)),
    numbers(
      first.map(
        ({ designator }) =>
          Number.parseInt(designator, 10) + 64 * LETTERS.indexOf(designator.slice(2)),
      ),
    ),
    numbers(runways.map(({ runway }) => runway.lengthFt)),
    numbers(runways.map(({ runway }) => runway.widthFt ?? 0)),
    numbers(
      runways.map(({ runway }) => WORLD_SURFACES.indexOf(runway.surface) + (runway.isLit ? 8 : 0)),
    ),
    numbers(
      runways.map(({ runway }) =>
        runway.doubts.reduce((sum, doubt) => sum + 2 ** WORLD_DOUBTS.indexOf(doubt), 0),
      ),
    ),
    numbers(
      runways.map(({ field }, i) => micro(first[i]?.at.latDeg ?? 0) - micro(field.place.latDeg)),
    ),
    numbers(
      runways.map(({ field }, i) => micro(first[i]?.at.lonDeg ?? 0) - micro(field.place.lonDeg)),
    ),
    numbers(second.map(({ at }, i) => micro(at.latDeg) - micro(first[i]?.at.latDeg ?? 0))),
    numbers(second.map(({ at }, i) => micro(at.lonDeg) - micro(first[i]?.at.lonDeg ?? 0))),
    numbers(runways.map(({ field, runway }) => elevation(runway.ends[0], field.place.elevationFt))),
    numbers(runways.map(({ field, runway }) => elevation(runway.ends[1], field.place.elevationFt))),
    numbers(first.map(({ displacedFt }) => displacedFt)),
    numbers(second.map(({ displacedFt }) => displacedFt)),
  ];
  const bytes = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  return bytes;
}
