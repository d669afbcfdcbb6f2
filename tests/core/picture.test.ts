/**
 * The size of pictures by their headers. The headers are laid out here byte by byte as the standard
 * named beside each prints them.
 */

import { describe, expect, test } from 'vitest';
import { MOST_PICTURE_BYTES, readPictureHead } from '../../src/core/picture';

const bytes = (...parts: readonly (string | number | readonly number[])[]): Uint8Array =>
  Uint8Array.from(
    parts.flatMap((part) =>
      typeof part === 'string' ? [...part].map((letter) => letter.charCodeAt(0)) : part,
    ),
  );

const png = (width: readonly number[], height: readonly number[]) =>
  bytes([0x89], 'PNG\r\n\x1a\n', [0, 0, 0, 13], 'IHDR', width, height, [8, 2, 0, 0, 0]);

describe('read', () => {
  test('PNG: W3C PNG, 5.2 and 11.2.1', () => {
    expect(readPictureHead(png([0, 0, 4, 0], [0, 0, 3, 0]))).toEqual({
      kind: 'png',
      width: 1024,
      height: 768,
    });
  });

  test('JPEG: ITU-T T.81, B.2.2, after an APP0 and a quantisation table', () => {
    const app0 = bytes([0xff, 0xe0, 0, 16], 'JFIF\0', [1, 1, 0, 0, 1, 0, 1, 0, 0]);
    const table = [0xff, 0xdb, 0, 4, 0, 0];
    const frame = [0xff, 0xff, 0xc2, 0, 17, 8, 0x02, 0x58, 0x03, 0x20, 3, 1, 0x22, 0, 2, 0x11];
    const whole = bytes([0xff, 0xd8], [...app0], table, frame);
    expect(readPictureHead(whole)).toEqual({ kind: 'jpeg', width: 800, height: 600 });
  });

  test('WebP: RFC 9649, 2.7 (extended), 3.4 (lossless) and RFC 6386, 9.1 (lossy)', () => {
    const head = (chunk: string, ...rest: readonly (readonly number[])[]) =>
      bytes('RIFF', [99, 0, 0, 0], 'WEBP', chunk, [10, 0, 0, 0], ...rest);
    const size = (width: number, height: number) => ({ kind: 'webp', width, height });
    expect(readPictureHead(head('VP8X', [0, 0, 0, 0], [0xff, 3, 0], [0xff, 2, 0]))).toEqual(
      size(1024, 768),
    );
    expect(
      readPictureHead(head('VP8 ', [0, 0, 0], [0x9d, 0x01, 0x2a], [0x00, 0x04], [0x00, 0x43])),
    ).toEqual(size(1024, 768));
    // 14 bits of width − 1 and 14 of height − 1, the lowest first: 1023 | 767 << 14 is 0x00bfc3ff.
    expect(readPictureHead(head('VP8L', [0x2f], [0xff, 0xc3, 0xbf, 0x00], [0]))).toEqual(
      size(1024, 768),
    );
  });

  test('AVIF: ISO/IEC 23008-12, 6.5.3, of several items the largest', () => {
    const ispe = (width: number, height: number) =>
      bytes([0, 0, 0, 20], 'ispe', [0, 0, 0, 0, 0, 0, width, 0, 0, 0, height, 0]);
    const whole = bytes(
      [0, 0, 0, 28],
      'ftypavif',
      [0, 0, 0, 0],
      'mif1',
      [...ispe(1, 1)],
      [...ispe(8, 6)],
    );
    expect(readPictureHead(whole)).toEqual({ kind: 'avif', width: 2048, height: 1536 });
  });
});

describe('refused', () => {
  test.each([
    ['nothing', bytes(), 'empty'],
    ['a PDF', bytes('%PDF-1.7\n'), 'pdf'],
    ['a drawing of another kind', bytes('<svg xmlns="http://www.w3.org/2000/svg"/>'), 'unknown'],
    ['a text', bytes('EHAM'), 'unknown'],
    ['a PNG cut off', bytes([0x89], 'PNG\r\n\x1a\n'), 'broken'],
    ['a PNG without a width', png([0, 0, 0, 0], [0, 0, 3, 0]), 'broken'],
    ['a JPEG cut off', bytes([0xff, 0xd8, 0xff, 0xe0]), 'broken'],
    [
      'a JPEG whose segments lead nowhere',
      bytes([0xff, 0xd8, 0xff, 0xe0, 0, 0], new Array(40).fill(1)),
      'broken',
    ],
    ['a bomb of 60 000 px squared', png([0, 0, 0xea, 0x60], [0, 0, 0xea, 0x60]), 'too-many-pixels'],
    ['a file too long', new Uint8Array(MOST_PICTURE_BYTES + 1), 'too-many-bytes'],
  ])('%s', (_, file, problem) => {
    expect(readPictureHead(file)).toBe(problem);
  });
});
