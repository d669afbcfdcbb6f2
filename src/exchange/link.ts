/**
 * A document as a link: all of it stands after the `#`, which no browser sends to a server. `d`
 * holds it as letters, for links; `n` as digits, for the codes that cameras read.
 */

import type { Hash } from '../core';
import {
  bytesOfDigits,
  bytesOfLetters,
  deflated,
  digitsOf,
  inflated,
  LONGEST_UNPACKED,
  lettersOf,
} from './packed';

/** The place in the address that takes shared documents. */
export const ADD = '#/add?';

/** The text of a code: an address that ends in digits alone. */
export interface CodeText {
  readonly before: string;
  readonly digits: string;
}

/** A document's addresses: one link, and as many codes as it takes. */
export interface Links {
  readonly link: string;
  /** Whether the link is short enough to arrive whole. */
  readonly fits: boolean;
  /** None if it takes more than anyone would read. */
  readonly codes: readonly CodeText[];
}

/**
 * Digits per code. The largest code, version 40, would hold more, but its modules are too small on
 * a phone for a camera. This makes it version 22 at most, 105 modules wide; jsQR, a widely used
 * reader, can't read version 23.
 */
const MOST_DIGITS = 2100;

const SET_LENGTH = 8;
const MOST_CODES = 60;

/**
 * A longer link isn't offered, characters: what passes messages on cuts longer ones. Common
 * practice, no published source.
 */
export const LONGEST_LINK = 32_000;

/** The addresses of a document or a lesson, as its schema returned it; `hash` is its own. */
export async function linksTo(app: string, document: object, hash: Hash): Promise<Links> {
  const text = JSON.stringify(document);
  const bytes = await deflated(text);
  const digits = digitsOf(bytes);
  // No device unpacks a longer text.
  const isShort = new TextEncoder().encode(text).length <= LONGEST_UNPACKED;
  const wanted = Math.ceil(digits.length / MOST_DIGITS);
  const of = isShort && wanted <= MOST_CODES ? wanted : 0;
  const length = Math.ceil(digits.length / of);
  const set = hash.slice(0, SET_LENGTH);
  const link = `${app}${ADD}d=${lettersOf(bytes)}`;
  return {
    link,
    fits: isShort && link.length <= LONGEST_LINK,
    codes: Array.from({ length: of }, (_, index) => ({
      before: `${app}${ADD}${of === 1 ? '' : `s=${set}.${index + 1}.${of}&`}n=`,
      digits: digits.slice(index * length, (index + 1) * length),
    })),
  };
}

/** One of the codes a document is spread over. */
export interface CodePart {
  /** The same for all codes of a document. */
  readonly set: string;
  /** Counts from 1. */
  readonly part: number;
  readonly of: number;
  readonly digits: string;
}

/**
 * A link copied out of a sentence often drags the punctuation after it along; none of ours ends in
 * any.
 */
const alone = (hash: string): string => hash.replace(/[\s.,;:!?)\]>"'”’]{1,4}$/, '');

/**
 * The part of a document in an address after `#`; null if it holds a whole one, or nothing of ours.
 */
export function partInLink(hash: string): CodePart | null {
  const found = /^#\/add\?s=([0-9a-f]{8})\.(\d{1,2})\.(\d{1,2})&n=(\d+)$/.exec(alone(hash));
  const [, set = '', part, of, digits = ''] = found ?? [];
  const read = { set, part: Number(part), of: Number(of), digits };
  const isOne = read.part >= 1 && read.part <= read.of && read.of >= 2 && read.of <= MOST_CODES;
  return isOne && digits.length <= 2 * MOST_DIGITS ? read : null;
}

/** The text of the document in an address after `#`; null if cut short or damaged. */
export async function textInLink(hash: string): Promise<string | null> {
  const [, name, packed = ''] = /^#\/add\?([dn])=(.*)$/s.exec(alone(hash)) ?? [];
  if (name === undefined) return null;
  return name === 'n' ? textInDigits(packed) : unpacked(bytesOfLetters(packed));
}

/** The text of the document that digits encode; null if cut short or damaged. */
export const textInDigits = (digits: string): Promise<string | null> =>
  unpacked(bytesOfDigits(digits));

const unpacked = async (bytes: Uint8Array<ArrayBuffer> | null): Promise<string | null> =>
  bytes === null ? null : inflated(bytes);
