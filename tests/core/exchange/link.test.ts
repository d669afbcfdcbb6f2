import jsQR from 'jsqr';
import { expect, test } from 'vitest';
import { linksTo, partInLink, textInDigits, textInLink } from '../../../src/exchange/link';
import { QUIET_ZONE, qrCodeOf } from '../../../src/views/share/qrCode';
import { readCatalogue } from '../../../tools/catalogue';

const APP = 'https://example.org/kneeboard/';
const DOCUMENTS = readCatalogue(new URL('../../../airfields-demo', import.meta.url).pathname);
const after = (link: string) => link.slice(link.indexOf('#'));

/** A code as a camera sees it: every module several pixels wide. */
function pictured(before: string, digits: string, pixels: number) {
  const code = qrCodeOf(before, digits);
  if (code === null) throw new Error('no code');
  const width = code.size * pixels;
  const picture = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x = '', y = '', run = ''] of code.path.matchAll(/M(\d+) (\d+)h(\d+)/g)) {
    for (let row = 0; row < pixels; row++) {
      const from = ((Number(y) * pixels + row) * width + Number(x) * pixels) * 4;
      for (let at = from; at < from + Number(run) * pixels * 4; at += 4) {
        picture.fill(0, at, at + 3);
      }
    }
  }
  return { picture, width };
}

/** What the decoder reads; as a camera does, it looks again from another distance where it found nothing. */
function seen(before: string, digits: string): string | null {
  for (const pixels of [4, 3, 5]) {
    const { picture, width } = pictured(before, digits, pixels);
    const found = jsQR(picture, width, width);
    if (found !== null) return found.data;
  }
  return null;
}

test.each(DOCUMENTS.map((one) => [`${one.kind} ${one.document.code}`, one] as const))(
  'the link of the %s holds the whole of it',
  async (_, { document, hash }) => {
    const { link } = await linksTo(APP, document, hash);
    expect(link).toMatch(/^https:\/\/example\.org\/kneeboard\/#\/add\?d=[\w-]+$/);
    expect(JSON.parse((await textInLink(after(link))) ?? '')).toEqual(document);
  },
);

test.each(DOCUMENTS.map((one) => [`${one.kind} ${one.document.code}`, one] as const))(
  'the codes of the %s, read by another library, hold the whole of it',
  async (_, { document, hash }) => {
    const { codes } = await linksTo(APP, document, hash);
    const read = codes.map(({ before, digits }) => seen(before, digits) ?? '');
    expect(read).toEqual(codes.map(({ before, digits }) => before + digits));
    const parts = read.map((link) => partInLink(after(link)));
    const text =
      codes.length === 1
        ? await textInLink(after(read[0] ?? ''))
        : await textInDigits(parts.map((part) => part?.digits).join(''));
    expect(JSON.parse(text ?? '')).toEqual(document);
  },
  20_000,
);

test('codes of one document bear one name, are numbered, and are small enough for a camera', async () => {
  const procedure = DOCUMENTS.find(({ document }) => document.code === 'sleet-usual');
  if (procedure === undefined) throw new Error('no procedure');
  const { codes } = await linksTo(APP, procedure.document, procedure.hash);
  const parts = codes.map(({ before, digits }) => partInLink(after(before + digits)));
  expect(codes.length).toBeGreaterThan(1);
  expect(parts.map((part) => [part?.set, part?.part, part?.of])).toEqual(
    codes.map((_, index) => [procedure.hash.slice(0, 8), index + 1, codes.length]),
  );
  for (const { before, digits } of codes) {
    // ISO/IEC 18004: version 22 is 105 modules wide.
    expect((qrCodeOf(before, digits)?.size ?? 999) - 2 * QUIET_ZONE).toBeLessThanOrEqual(105);
  }
});

// ISO/IEC 18004, table 7: version 40 at level L holds 7089 digits or 2953 bytes. Value from memory.
test('more than the largest code holds is no code', () => {
  expect(qrCodeOf('', '1'.repeat(7089))?.size).toBe(177 + 2 * QUIET_ZONE);
  expect(qrCodeOf('', '1'.repeat(7090))).toBeNull();
  expect(qrCodeOf('a'.repeat(2953), '')?.size).toBe(177 + 2 * QUIET_ZONE);
  expect(qrCodeOf('a'.repeat(2954), '')).toBeNull();
});

test('a link copied with the marks that end its sentence is whole, with one inside it is not', async () => {
  const procedure = DOCUMENTS.find((one) => one.document.code === 'sleet-usual');
  const { link, codes } = await linksTo(APP, procedure?.document ?? {}, procedure?.hash ?? '');
  const text = await textInLink(after(link));
  for (const mark of ['.', ',', ').', '”', '> \n'])
    expect(await textInLink(after(link) + mark)).toBe(text);
  const [code] = codes;
  const part = partInLink(after((code?.before ?? '') + (code?.digits ?? '')));
  expect(part?.part).toBe(1);
  expect(partInLink(`${after((code?.before ?? '') + (code?.digits ?? ''))}.`)).toEqual(part);
  expect(await textInLink(`${after(link).slice(0, 40)}.${after(link).slice(40)}`)).toBeNull();
});

test('a link cut at any letter says nothing', async () => {
  const field = DOCUMENTS[0];
  const { link } = await linksTo(APP, field?.document ?? {}, field?.hash ?? '');
  const hash = after(link);
  for (let length = 0; length < hash.length; length += 7) {
    expect(await textInLink(hash.slice(0, length))).toBeNull();
  }
});

test.each([
  '#/add?',
  '#/add?x=1',
  '#/add?d=%00',
  '#/add?n=12x',
  '#/wind',
  '',
  '#/add?s=00000000.2.1&n=1',
  '#/add?s=00000000.0.3&n=1',
  '#/add?s=00000000.1.99&n=1',
  `#/add?s=00000000.1.2&n=${'1'.repeat(5000)}`,
])('%.40s is no document and no part of one', async (hash) => {
  expect(await textInLink(hash)).toBeNull();
  expect(partInLink(hash)).toBeNull();
});
