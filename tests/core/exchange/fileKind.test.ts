/** What a file is, by how it begins. */

import { readFileSync } from 'node:fs';
import { deflateSync, gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { kindOfFile, kindOfText } from '../../../src/exchange/fileKind';

const bytes = (text: string) => new TextEncoder().encode(text);
const file = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url));

test.each([
  ['OSM XML', '<?xml version="1.0" encoding="UTF-8"?>\n<osm version="0.6">', 'map'],
  ['OSM XML in single quotes, after a byte order mark', "\ufeff<?xml version='1.0'?><osm>", 'map'],
  ['Overpass JSON', '{\n  "version": 0.6,\n  "osm3s": {', 'map'],
  ['Overpass JSON cut down to its elements', '{"elements":[{"type":"node"', 'map'],
  ['GeoJSON', '{"type":"FeatureCollection","features":[', 'map'],
  ['GeoJSON spread over lines', '{ "type" : "FeatureCollection",', 'map'],
  ['a document of ours', '{"lapstrip":"field","version":1', 'text'],
  ['a document of ours with points', '{"version":1,"lapstrip":"field","elements":1', 'text'],
  ['other JSON', '{"a":1}', 'text'],
  ['a report', 'METAR EGPF 051850Z 27012KT', 'text'],
  ['a web page', '<!DOCTYPE html><html>', 'web-page'],
  ['a drawing', '<?xml version="1.0"?><svg xmlns="http://www.w3.org/2000/svg">', 'picture'],
  ['nothing', '  \n ', 'empty'],
])('%s is known by its text', (_what, text, kind) => {
  expect(kindOfText(text)).toBe(kind);
  expect(kindOfFile(bytes(text))).toBe(kind);
});

const ascii = (text: string) => Uint8Array.from(text, (sign) => sign.charCodeAt(0));

test.each([
  ['a real PNG', file('public/icons/192.png'), 'picture'],
  ['a JPEG', Uint8Array.of(0xff, 0xd8, 0xff, 0xe0, 0, 16), 'picture'],
  ['a WebP', ascii('RIFF\x24\0\0\0WEBPVP8 '), 'picture'],
  ['a photo from a phone', ascii('\0\0\0\x18ftypheic'), 'picture'],
  ['a PDF', ascii('%PDF-1.7'), 'pdf'],
  ['gzip', gzipSync('<osm>'), 'packed'],
  ['a ZIP archive', ascii('PK\x03\x04\x14\0'), 'packed'],
  ["OSM's binary form", ascii('\0\0\0\x0d\x0a\x09OSMHeader\x18'), 'packed'],
  ['other bytes', deflateSync(Buffer.alloc(300, 7)).subarray(2), 'not-text'],
  ['nothing', new Uint8Array(), 'empty'],
])('%s is known by its first bytes', (_what, head, kind) => {
  expect(kindOfFile(Uint8Array.from(head).subarray(0, 4096))).toBe(kind);
});
