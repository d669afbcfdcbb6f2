/**
 * Documents are named by what they hold.
 *
 * A field, an aircraft or a procedure never changes under the name it was flown with: its name is a
 * hash of its content, worked out here at run time and by tools/catalogue.ts when the app is built.
 */

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
 * The bytes that a document's hash is taken over. The document must be as its schema gave it out,
 * so that leaving a default out or writing it makes no difference; `$schema` only serves editors
 * and is no part of the content.
 */
export function hashedBytes(document: object): Uint8Array<ArrayBuffer> {
  return new TextEncoder().encode(canonicalJson({ ...document, $schema: undefined }));
}

/**
 * The hash of a document that has passed its schema. Rejects where the page was not served over
 * https or from this machine, because browsers keep SubtleCrypto from such pages.
 */
export async function documentHash(document: object): Promise<Hash> {
  const digest = await crypto.subtle.digest('SHA-256', hashedBytes(document));
  return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0'))
    .join('')
    .slice(0, HASH_LENGTH);
}
