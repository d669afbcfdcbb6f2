/**
 * Documents are named by what they hold.
 *
 * A field, an aircraft or a procedure never changes under the name it was flown with: its name is a
 * hash of its content, worked out alike here and by tools/catalogue.ts when the app is built.
 * Browsers keep their own SHA-256 from pages that came over plain http, as on a local network.
 */

import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex } from '@noble/hashes/utils.js';
import type { Hash } from '../core';

/** Hex digits of SHA-256 that make a {@link Hash}: 64 bits, enough to tell apart all that one pilot will ever keep. */
export const HASH_LENGTH = 16;

/**
 * JSON in one form only: no blanks, the keys of every object in the order of their UTF-16 code
 * units, what is undefined left out, numbers and text as `JSON.stringify` writes them. RFC 8785.
 */
export function canonicalJson(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map((part) => canonicalJson(part)).join(',')}]`;
  if (value === null || typeof value !== 'object') return JSON.stringify(value);
  // Written by hand, because an object made in this order would still give keys like "1" first.
  const members = Object.entries(value)
    .filter(([, part]) => part !== undefined)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([key, part]) => `${JSON.stringify(key)}:${canonicalJson(part)}`);
  return `{${members.join(',')}}`;
}

/**
 * The hash of a document. The document must be as its schema gave it out, so that leaving a default
 * out or writing it makes no difference; `$schema` only serves editors and is no part of the content.
 */
export function documentHash(document: object): Hash {
  const content = new TextEncoder().encode(canonicalJson({ ...document, $schema: undefined }));
  return bytesToHex(sha256(content)).slice(0, HASH_LENGTH);
}
