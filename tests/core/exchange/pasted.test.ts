import { expect, test } from 'vitest';
import { linksTo, partInLink, textInLink } from '../../../src/exchange/link';
import { LONGEST_PASTED, linksIn } from '../../../src/exchange/pasted';

const APP = 'https://example.org/some/where/';
const HASH = 'ab'.repeat(32);
const SMALL = { name: 'Harrow Sound', is: 'invented' };
/** Letters that do not deflate, so that it takes several codes. */
const LARGE = {
  name: Array.from({ length: 3000 }, (_, index) => ((index * 7919) % 9973).toString(36)).join(''),
};

test('a link is found alone, without its host, and within a sentence', async () => {
  const { link } = await linksTo(APP, SMALL, HASH);
  const hash = link.slice(link.indexOf('#'));
  for (const text of [
    link,
    hash,
    ` ${link}\n`,
    `Here: ${link}. Have fun!`,
    `(${link})`,
    `<${link}>`,
  ]) {
    expect(linksIn(text), text).toEqual([hash]);
  }
  expect(await textInLink(hash)).toBe(JSON.stringify(SMALL));
});

test('a link that a mail program broke into lines is put together again', async () => {
  const { link } = await linksTo(APP, LARGE, HASH);
  const broken = link.replace(/.{76}/g, '$&\r\n');
  const [found = ''] = linksIn(broken);
  expect(await textInLink(found)).toBe(JSON.stringify(LARGE));
});

test('the digits of a code are found, with spaces and lines among them, and the code’s address', async () => {
  const { codes } = await linksTo(APP, SMALL, HASH);
  const [code] = codes;
  if (code === undefined) throw new Error('no code');
  const grouped = code.digits.replace(/\d{5}/g, '$& ').replace(/.{40}/g, '$&\n');
  for (const text of [code.digits, grouped, code.before + code.digits]) {
    const [found = ''] = linksIn(text);
    expect(await textInLink(found), text).toBe(JSON.stringify(SMALL));
  }
});

test('all codes of one document in one text are found in their order', async () => {
  const { codes } = await linksTo(APP, LARGE, HASH);
  expect(codes.length).toBeGreaterThan(1);
  const text = codes.map(({ before, digits }) => before + digits).join('\n');
  const parts = linksIn(text).map((link) => partInLink(link)?.part);
  expect(parts).toEqual(codes.map((_, index) => index + 1));
});

test.each([
  '',
  'METAR XHAR 051850Z 27012G20KT',
  '27012',
  'https://example.org/#/steps',
  '#/add?',
  '#/add?x=AAAA',
  '{"kind":"field"}',
])('there is none in %j', (text) => {
  expect(linksIn(text)).toEqual([]);
});

test('a text longer than any that is sent is not looked through', () => {
  expect(linksIn(`${' '.repeat(LONGEST_PASTED)}#/add?d=AAAA`)).toEqual([]);
});
