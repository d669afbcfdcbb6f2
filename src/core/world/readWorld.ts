/** Reads the set of the world's fields, which tools/world packs when the app is built. */

import { oppositeOf } from '../airfield/designator';
import { Columns, type TextOf } from './columns';
import {
  PER_DEGREE,
  WORLD_DOUBTS,
  WORLD_KINDS,
  WORLD_SIZES,
  WORLD_SURFACES,
  type WorldEnd,
  type WorldField,
  type WorldRunway,
} from './worldField';

/** What stands at the head of the set, as a line of JSON. */
export interface WorldHeader {
  readonly lapstrip: 'world';
  readonly version: 1;
  /** The day its source was made, ISO 8601. */
  readonly date: string;
  readonly source: string;
  readonly licence: string;
  readonly fields: number;
  readonly runways: number;
}

/** Stands for an elevation that isn't known, among differences in feet. */
export const NO_ELEVATION = 32767;

/** No set has more of either. */
const MOST_ROWS = 100_000;

/** Within this the header ends, bytes. */
const LONGEST_HEADER = 2000;

const LETTERS = ['', 'L', 'C', 'R'];

/** The set: what is searched as columns, the rest as a field at a time. */
export interface World {
  readonly date: string;
  readonly codes: readonly string[];
  readonly otherCodes: readonly string[];
  readonly names: readonly string[];
  readonly towns: readonly string[];
  readonly countries: readonly string[];
  /** By index, degrees times {@link PER_DEGREE}. */
  readonly lats: Int32Array;
  readonly lons: Int32Array;
  /** The longest runway of each, feet. */
  readonly longestFt: Int32Array;
  /** Index in {@link WORLD_KINDS} + 4 × index in {@link WORLD_SIZES} + 16 if numbered to true north. */
  readonly sorts: Int32Array;
  /** A field, by its index; null beyond the last. */
  readonly fieldAt: (index: number) => WorldField | null;
}

const isHeader = (value: unknown): value is WorldHeader => {
  if (typeof value !== 'object' || value === null) return false;
  const { lapstrip, version, date, fields, runways } = value as Partial<
    Record<keyof WorldHeader, unknown>
  >;
  const isCount = (count: unknown) =>
    Number.isInteger(count) && Number(count) > 0 && Number(count) <= MOST_ROWS;
  return (
    lapstrip === 'world' &&
    version === 1 &&
    typeof date === 'string' &&
    /^\d{4}-\d{2}-\d{2}$/.test(date) &&
    isCount(fields) &&
    isCount(runways)
  );
};

function headerOf(
  bytes: Uint8Array,
  textOf: TextOf,
): { readonly header: WorldHeader; readonly end: number } | null {
  const end = bytes.subarray(0, LONGEST_HEADER).indexOf(10);
  if (end === -1) return null;
  try {
    const header: unknown = JSON.parse(textOf(bytes.subarray(0, end)));
    return isHeader(header) ? { header, end: end + 1 } : null;
  } catch {
    return null;
  }
}

/** Sums each row with those before it. */
function summed(differences: Int32Array): Int32Array {
  let sum = 0;
  return differences.map((difference) => {
    sum += difference;
    return sum;
  });
}

/** A frequency as written: kHz times 4, and how many decimals it has. */
function writtenMhz(stored: number): string | null {
  if (stored === 0) return null;
  const [digits, decimals] = [String(Math.floor(stored / 4)), stored % 4];
  return `${digits.slice(0, 3)}.${digits.slice(3, 3 + decimals)}`;
}

/**
 * Reads the unpacked bytes; null if they are no such set, cut short or damaged. Never throws if
 * `textOf` doesn't.
 */
export function readWorld(bytes: Uint8Array, textOf: TextOf): World | null {
  const read = headerOf(bytes, textOf);
  if (read === null) return null;
  const { date, fields, runways } = read.header;
  const columns = new Columns(bytes, read.end, textOf);
  const [codes, otherCodes, names, towns, countries] = [
    columns.texts(fields),
    columns.texts(fields),
    columns.texts(fields),
    columns.texts(fields),
    columns.texts(fields),
  ];
  const ofFields = Array.from({ length: 8 }, () => columns.numbers(fields));
  const [sorts, latSteps, lonSteps, elevations, towers, grounds, traffics, counts] = ofFields;
  const ofRunways = Array.from({ length: 13 }, () => columns.numbers(runways));
  const [numbers, lengths, widths, covers, doubts] = ofRunways;
  const [lats1, lons1, lats2, lons2, elevations1, elevations2, displaced1, displaced2] =
    ofRunways.slice(5);
  if (!(codes && otherCodes && names && towns && countries)) return null;
  if (!(sorts && latSteps && lonSteps && elevations && towers && grounds && traffics && counts))
    return null;
  if (!(numbers && lengths && widths && covers && doubts && lats1 && lons1 && lats2 && lons2))
    return null;
  if (!(elevations1 && elevations2 && displaced1 && displaced2 && columns.isAtEnd)) return null;
  const [lats, lons, ends] = [summed(latSteps), summed(lonSteps), summed(counts)];
  if (counts.some((count) => count < 1) || ends.at(-1) !== runways) return null;

  const longestFt = new Int32Array(fields);
  for (let index = 0; index < fields; index++) {
    const last = ends[index] ?? 0;
    longestFt[index] = Math.max(...lengths.subarray(last - (counts[index] ?? 0), last));
  }

  const runwayAt = (row: number, index: number): WorldRunway => {
    const at = (column: Int32Array) => column[row] ?? 0;
    const [fieldLat, fieldLon] = [lats[index] ?? 0, lons[index] ?? 0];
    const end = (
      designator: string,
      place: readonly [number, number],
      elevation: number,
      displacedFt: number,
    ): WorldEnd => ({
      designator,
      at: { latDeg: place[0] / PER_DEGREE, lonDeg: place[1] / PER_DEGREE },
      elevationFt: elevation === NO_ELEVATION ? null : (elevations[index] ?? 0) + elevation,
      displacedFt,
    });
    const number = String(at(numbers) % 64).padStart(2, '0');
    const designator = number + (LETTERS[Math.floor(at(numbers) / 64)] ?? '');
    const from = [fieldLat + at(lats1), fieldLon + at(lons1)] as const;
    const to = [from[0] + at(lats2), from[1] + at(lons2)] as const;
    return {
      ends: [
        end(designator, from, at(elevations1), at(displaced1)),
        end(oppositeOf(designator), to, at(elevations2), at(displaced2)),
      ],
      lengthFt: at(lengths),
      widthFt: at(widths) || null,
      surface: WORLD_SURFACES[at(covers) % 8] ?? 'unknown',
      isLit: at(covers) >= 8,
      doubts: WORLD_DOUBTS.filter((_, bit) => Math.floor(at(doubts) / 2 ** bit) % 2 === 1),
    };
  };

  return {
    date,
    codes,
    otherCodes,
    names,
    towns,
    countries,
    lats,
    lons,
    longestFt,
    sorts,
    fieldAt: (index) => {
      const code = codes[index];
      if (code === undefined) return null;
      const [sort, count, last] = [sorts[index] ?? 0, counts[index] ?? 0, ends[index] ?? 0];
      return {
        code,
        otherCodes: otherCodes[index] ?? '',
        name: names[index] ?? '',
        town: towns[index] ?? '',
        country: countries[index] ?? '',
        kind: WORLD_KINDS[sort % 4] ?? 'aerodrome',
        size: WORLD_SIZES[Math.floor(sort / 4) % 4] ?? 'small',
        place: {
          latDeg: (lats[index] ?? 0) / PER_DEGREE,
          lonDeg: (lons[index] ?? 0) / PER_DEGREE,
          elevationFt: elevations[index] ?? 0,
        },
        isNumberedTrue: sort >= 16,
        radio: {
          tower: writtenMhz(towers[index] ?? 0),
          ground: writtenMhz(grounds[index] ?? 0),
          traffic: writtenMhz(traffics[index] ?? 0),
        },
        runways: Array.from({ length: count }, (_, i) => runwayAt(last - count + i, index)),
      };
    },
  };
}
