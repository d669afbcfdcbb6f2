/**
 * Documents are named by their content.
 *
 * A field, aircraft or procedure never changes under the name it was flown with: the name is a hash
 * of its content, computed the same way here and, at build time, by tools/catalogue.ts. Not by
 * WebCrypto, which browsers withhold from pages served over plain http, as on a local network.
 */

import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Hash } from '../core';

/**
 * Hex digits of SHA-256 in a {@link Hash}: 64 bits, enough for everything one pilot will ever keep.
 */
export const HASH_LENGTH = 16;

/**
 * JSON in canonical form: no whitespace, keys sorted by UTF-16 code unit, undefined left out,
 * numbers and strings as `JSON.stringify` writes them. RFC 8785.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((part) => canonicalJson(part)).join(',')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  // Written by hand: an object built in this order would still list keys like "1" first.
  const members = Object.entries(value)
    .filter(([, part]) => part !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, part]) => `${JSON.stringify(key)}:${canonicalJson(part)}`);
  return `{${members.join(',')}}`;
}

/**
 * The hash of a document. Pass it as its schema returned it, so that leaving out a default or
 * writing it makes no difference; `$schema` only serves editors and doesn't count.
 */
export function documentHash(document: object): Hash {
  const content = new TextEncoder().encode(canonicalJson({ ...document, $schema: undefined }));
  return bytesToHex(sha256(content)).slice(0, HASH_LENGTH);
}
