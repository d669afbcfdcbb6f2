/** What a file is, by how it begins: its name may say anything. */

/** What a file that can be looked at holds; or what it is, if it can't be. */
export type FileKind =
  /** An extract of a map: OSM XML, Overpass JSON or GeoJSON. */
  | 'map'
  /** Anything else that is text: a document, a log, or nothing of ours. */
  | 'text'
  | 'empty'
  | 'picture'
  | 'pdf'
  /** Compressed, as archives and OSM's own binary form are. */
  | 'packed'
  | 'web-page'
  | 'not-text';

/** How much of a file tells what it is, bytes. */
export const HEAD_BYTES = 4096;

/** The first bytes of kinds of files, by their specifications. */
const BEGINNINGS: readonly (readonly [FileKind, ...number[]])[] = [
  // PNG, 5.2; JPEG, ITU-T T.81 B.1.1.3; GIF89a, 17; TIFF 6.0, section 2.
  ['picture', 0x89, 0x50, 0x4e, 0x47],
  ['picture', 0xff, 0xd8, 0xff],
  ['picture', 0x47, 0x49, 0x46, 0x38],
  ['picture', 0x49, 0x49, 0x2a, 0x00],
  ['picture', 0x4d, 0x4d, 0x00, 0x2a],
  // ISO 32000-1, 7.5.2.
  ['pdf', 0x25, 0x50, 0x44, 0x46],
  // RFC 1952, 2.3.1; ZIP, APPNOTE 4.3.7; bzip2; xz; 7z.
  ['packed', 0x1f, 0x8b],
  ['packed', 0x50, 0x4b, 0x03, 0x04],
  ['packed', 0x42, 0x5a, 0x68],
  ['packed', 0xfd, 0x37, 0x7a, 0x58],
  ['packed', 0x37, 0x7a, 0xbc, 0xaf],
];

/** Marks further on: WebP (RFC 9649, 2.4), HEIF and AVIF (ISO 14496-12, 4.3), OSM's PBF. */
const INSIDE: readonly (readonly [FileKind, from: number, mark: string])[] = [
  ['picture', 8, 'WEBP'],
  ['picture', 4, 'ftyp'],
  ['packed', 6, 'OSMHeader'],
];

/** What a file is, by its first {@link HEAD_BYTES}. */
export function kindOfFile(head: Uint8Array): FileKind {
  if (head.length === 0) return 'empty';
  const begins = BEGINNINGS.find(([, ...bytes]) => bytes.every((byte, at) => head[at] === byte));
  if (begins !== undefined) return begins[0];
  const text = new TextDecoder().decode(head);
  const latin = String.fromCharCode(...head.subarray(0, 64));
  const inside = INSIDE.find(([, from, mark]) => latin.startsWith(mark, from));
  if (inside !== undefined) return inside[0];
  return head.includes(0) ? 'not-text' : kindOfText(text);
}

/** What a text is, by its beginning. */
export function kindOfText(text: string): FileKind {
  const head = text.slice(0, HEAD_BYTES).trimStart();
  if (head === '') return 'empty';
  if (head.startsWith('<')) {
    if (/<svg[\s>]/i.test(head)) return 'picture';
    return /^<(!doctype html|html)/i.test(head) ? 'web-page' : 'map';
  }
  if (!/^[[{]/.test(head) || /"lapstrip"\s*:/.test(head)) return 'text';
  return MAP_JSON.test(head) ? 'map' : 'text';
}

/** What Overpass JSON and GeoJSON (RFC 7946, 3) begin with. */
const MAP_JSON =
  /"(elements|osm3s|features)"\s*:|"type"\s*:\s*"(FeatureCollection|Feature|node|way|relation)"/;

/** Whether parsed JSON is an extract of a map, whatever it began with. */
export const isMapJson = (value: unknown): boolean =>
  typeof value === 'object' &&
  value !== null &&
  (('elements' in value && Array.isArray(value.elements)) ||
    ('features' in value && Array.isArray(value.features)));
