import { deflateRawSync, inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  bytesOfDigits,
  bytesOfLetters,
  deflated,
  digitsOf,
  inflated,
  lettersOf,
} from '../../../src/exchange/packed';

const bytesOf = (text: string) => new TextEncoder().encode(text);

// RFC 4648, section 10, test vectors, without the padding that section 5 lets a link leave out.
test.each([
  ['', ''],
  ['f', 'Zg'],
  ['fo', 'Zm8'],
  ['foo', 'Zm9v'],
  ['foob', 'Zm9vYg'],
  ['fooba', 'Zm9vYmE'],
  ['foobar', 'Zm9vYmFy'],
])('the letters of %j', (text, letters) => {
  expect(lettersOf(bytesOf(text))).toBe(letters);
  expect(bytesOfLetters(letters)).toEqual(Uint8Array.from(bytesOf(text)));
});

const bytes = fc.uint8Array({ maxLength: 200 });

test('letters are those of Node, and give the bytes back', () => {
  fc.assert(
    fc.property(bytes, (some) => {
      expect(lettersOf(some)).toBe(Buffer.from(some).toString('base64url'));
      expect(bytesOfLetters(lettersOf(some))).toEqual(Uint8Array.from(some));
    }),
  );
});

test('digits are digits, give the bytes back, and waste less than one in a hundred', () => {
  fc.assert(
    fc.property(bytes, (some) => {
      expect(digitsOf(some)).toMatch(/^\d*$/);
      expect(bytesOfDigits(digitsOf(some))).toEqual(Uint8Array.from(some));
    }),
  );
  // A byte is 8 bits, a digit log2(10) = 3.3219 of them.
  expect(digitsOf(new Uint8Array(2400)).length).toBeLessThan((2400 * 8 * 1.01) / 3.3219);
});

test.each(['12a', '9', '999', '-1', '1'.repeat(400_001), `${'9'.repeat(29)}`])(
  'what no bytes were written as, %.12s, is no bytes',
  (digits) => {
    expect(bytesOfDigits(digits)).toBeNull();
  },
);

test.each(['a b', 'a=', 'ä', 'A', 'a'.repeat(400_001)])('%.12j is no letters', (letters) => {
  expect(bytesOfLetters(letters)).toBeNull();
});

test('a text is deflated as Node inflates it, and the other way round', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'grapheme', maxLength: 400 }), async (text) => {
      expect(inflateRawSync(await deflated(text)).toString()).toBe(text);
      expect(await inflated(Uint8Array.from(deflateRawSync(text)))).toBe(text);
    }),
    { numRuns: 40 },
  );
});

test('cut at any byte, nothing is read', async () => {
  const whole = await deflated('Brake lever parked, needle white. '.repeat(3));
  for (let length = 0; length < whole.length; length++) {
    expect(await inflated(whole.slice(0, length) as Uint8Array<ArrayBuffer>)).toBeNull();
  }
});

test('a few bytes that would unfold to a hundred megabytes are given up after one', async () => {
  const bomb = Uint8Array.from(deflateRawSync(Buffer.alloc(100_000_000)));
  expect(bomb.length).toBeLessThan(100_000);
  const before = process.memoryUsage().arrayBuffers;
  expect(await inflated(bomb)).toBeNull();
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(20_000_000);
});

test('bytes that are no text are none', async () => {
  expect(
    await inflated(Uint8Array.from(deflateRawSync(Buffer.from([0xff, 0xfe, 0x80])))),
  ).toBeNull();
});
