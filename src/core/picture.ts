/**
 * What kind of picture some bytes are, and how large, before anything decodes them: a file of a few
 * kilobytes may unpack to more pixels than a tablet has memory for.
 */

/** Pictures that browsers decode. */
export type PictureKind = 'png' | 'jpeg' | 'webp' | 'avif';

/** A picture's kind and size, px, as its header says. */
export interface PictureHead {
  readonly kind: PictureKind;
  readonly width: number;
  readonly height: number;
}

/** Why a file is no picture that can be shown. */
export type PictureProblem =
  | 'empty'
  | 'pdf'
  | 'unknown'
  | 'broken'
  | 'too-many-bytes'
  | 'too-many-pixels';

/** A scanned page of A2 at 300 dpi has 35 million pixels, and is far below 30 MB. */
export const MOST_PICTURE_BYTES = 30_000_000;
const MOST_PIXELS = 50_000_000;

/** The head of a picture that may be decoded, or why none may. */
export function readPictureHead(bytes: Uint8Array): PictureHead | PictureProblem {
  if (bytes.length === 0) return 'empty';
  if (bytes.length > MOST_PICTURE_BYTES) return 'too-many-bytes';
  if (says(bytes, 0, '%PDF')) return 'pdf';
  const kind = kindOf(bytes);
  if (kind === null) return 'unknown';
  const size = SIZES[kind](bytes);
  if (size === null || size[0] === 0 || size[1] === 0) return 'broken';
  const [width, height] = size;
  return width * height > MOST_PIXELS ? 'too-many-pixels' : { kind, width, height };
}

type Size = readonly [width: number, height: number];

const says = (bytes: Uint8Array, at: number, text: string): boolean =>
  [...text].every((letter, index) => bytes[at + index] === letter.charCodeAt(0));

function kindOf(bytes: Uint8Array): PictureKind | null {
  if (bytes[0] === 0x89 && says(bytes, 1, 'PNG\r\n\x1a\n')) return 'png';
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return 'jpeg';
  if (says(bytes, 0, 'RIFF') && says(bytes, 8, 'WEBP')) return 'webp';
  const isAvif = says(bytes, 4, 'ftyp') && ['avif', 'avis'].some((brand) => says(bytes, 8, brand));
  return isAvif ? 'avif' : null;
}

/** A number of so many bytes, the highest first; `littleEndian`, the lowest first. 0 beyond the end. */
function number(bytes: Uint8Array, at: number, length: number, littleEndian = false): number {
  const digits = Array.from({ length }, (_, index) => bytes[at + index] ?? 0);
  return (littleEndian ? digits.reverse() : digits).reduce((sum, byte) => sum * 256 + byte, 0);
}

const SIZES: Readonly<Record<PictureKind, (bytes: Uint8Array) => Size | null>> = {
  png: pngSize,
  jpeg: jpegSize,
  webp: webpSize,
  avif: avifSize,
};

/** W3C, Portable Network Graphics, third edition, 11.2.1: the IHDR chunk comes first. */
function pngSize(bytes: Uint8Array): Size | null {
  return says(bytes, 12, 'IHDR') ? [number(bytes, 16, 4), number(bytes, 20, 4)] : null;
}

/** ITU-T T.81, B.1.1.3 and B.2.2: segments up to the frame header, SOF0 to SOF15. */
function jpegSize(bytes: Uint8Array): Size | null {
  let at = 2;
  while (at + 9 < bytes.length) {
    const marker = bytes[at + 1] ?? 0;
    if (bytes[at] !== 0xff) return null;
    // Fill bytes may come before a marker.
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    const isFrame = marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
    if (isFrame) return [number(bytes, at + 7, 2), number(bytes, at + 5, 2)];
    at += 2 + Math.max(2, number(bytes, at + 2, 2));
  }
  return null;
}

/** RFC 9649, 2.5 to 2.7, and RFC 6386, 9.1, for the lossy bitstream. */
function webpSize(bytes: Uint8Array): Size | null {
  if (says(bytes, 12, 'VP8X'))
    return [number(bytes, 24, 3, true) + 1, number(bytes, 27, 3, true) + 1];
  if (says(bytes, 12, 'VP8L')) {
    const [low, high] = [number(bytes, 21, 2, true), number(bytes, 22, 3, true)];
    return [(low & 0x3fff) + 1, ((high >> 6) & 0x3fff) + 1];
  }
  return says(bytes, 12, 'VP8 ')
    ? [number(bytes, 26, 2, true) & 0x3fff, number(bytes, 28, 2, true) & 0x3fff]
    : null;
}

/** Where the boxes that describe a picture end at the latest, bytes. */
const AVIF_HEAD = 65_536;

/** ISO/IEC 23008-12, 6.5.3: each `ispe` box has the size of an item; the largest is the picture. */
function avifSize(bytes: Uint8Array): Size | null {
  let largest: Size | null = null;
  for (let at = 4; at + 16 <= Math.min(bytes.length, AVIF_HEAD); at++) {
    if (bytes[at] !== 0x69 || !says(bytes, at, 'ispe')) continue;
    const size: Size = [number(bytes, at + 8, 4), number(bytes, at + 12, 4)];
    if (largest === null || size[0] * size[1] > largest[0] * largest[1]) largest = size;
  }
  return largest;
}
