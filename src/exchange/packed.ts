/** A text made small enough for a link: deflated, then encoded in letters or in digits alone. */

/** Upper bound of what is unpacked, bytes: a few can be crafted to inflate to gigabytes. */
export const LONGEST_UNPACKED = 1_000_000;

/** Upper bound of what is packed, characters. */
const LONGEST_PACKED = 400_000;

/** A text, deflated. RFC 1951. */
export async function deflated(text: string): Promise<Uint8Array> {
  const packing = new Blob([text]).stream().pipeThrough(new CompressionStream('deflate-raw'));
  return new Uint8Array(await new Response(packing).arrayBuffer());
}

/** The text that was deflated; null if cut short, damaged, or longer than any of ours. */
export async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<string | null> {
  const unpacked = await unpackedBytes(bytes, 'deflate-raw', LONGEST_UNPACKED);
  try {
    return unpacked && new TextDecoder('utf-8', { fatal: true }).decode(unpacked);
  } catch {
    return null;
  }
}

/** What was packed; null if cut short, damaged, or longer than so many bytes. */
export async function unpackedBytes(
  bytes: Uint8Array<ArrayBuffer>,
  how: CompressionFormat,
  most: number,
): Promise<Uint8Array | null> {
  const unpacking = new Blob([bytes]).stream().pipeThrough(new DecompressionStream(how));
  const reader = unpacking.getReader();
  const parts: Uint8Array<ArrayBuffer>[] = [];
  let length = 0;
  try {
    for (let read = await reader.read(); !read.done; read = await reader.read()) {
      length += read.value.length;
      if (length > most) {
        await reader.cancel();
        return null;
      }
      parts.push(read.value);
    }
    return new Uint8Array(await new Blob(parts).arrayBuffer());
  } catch {
    return null;
  }
}

/** Bytes as URL-safe letters. RFC 4648, section 5, without padding. */
export function lettersOf(bytes: Uint8Array): string {
  let binary = '';
  for (const byte of bytes) binary += String.fromCharCode(byte);
  return btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

/** The bytes such letters encode; null if they encode none. */
export function bytesOfLetters(letters: string): Uint8Array<ArrayBuffer> | null {
  if (letters.length > LONGEST_PACKED || !/^[\w-]*$/.test(letters)) return null;
  try {
    const binary = atob(letters.replaceAll('-', '+').replaceAll('_', '/'));
    return Uint8Array.from(binary, (character) => character.charCodeAt(0));
  } catch {
    return null;
  }
}

/** Bytes per group of digits: 96 bits in 29 digits use 99.7 per cent of what digits can hold. */
const GROUP_BYTES = 12;
const digitsFor = (bytes: number): number => Math.ceil(bytes * 8 * Math.log10(2));
const bytesIn = (digits: number): number => Math.floor(digits / (8 * Math.log10(2)));
const GROUP_DIGITS = digitsFor(GROUP_BYTES);

/**
 * Bytes as digits, which a QR code stores in ten bits per three: a third more than in letters.
 * ISO/IEC 18004, numeric mode.
 */
export function digitsOf(bytes: Uint8Array): string {
  let digits = '';
  for (let from = 0; from < bytes.length; from += GROUP_BYTES) {
    const group = bytes.subarray(from, from + GROUP_BYTES);
    const value = group.reduce((sum, byte) => sum * 256n + BigInt(byte), 0n);
    digits += String(value).padStart(digitsFor(group.length), '0');
  }
  return digits;
}

/** The bytes such digits encode; null if they encode none. */
export function bytesOfDigits(digits: string): Uint8Array<ArrayBuffer> | null {
  if (digits.length > LONGEST_PACKED || !/^\d*$/.test(digits)) return null;
  const bytes: number[] = [];
  for (let from = 0; from < digits.length; from += GROUP_DIGITS) {
    const group = digits.slice(from, from + GROUP_DIGITS);
    const length = bytesIn(group.length);
    let value = BigInt(group);
    if (digitsFor(length) !== group.length || value >= 256n ** BigInt(length)) return null;
    const unpacked: number[] = [];
    for (let left = length; left > 0; left--, value /= 256n) unpacked.unshift(Number(value % 256n));
    bytes.push(...unpacked);
  }
  return Uint8Array.from(bytes);
}
