/** Codes in an order a pilot may scan them in. What they spell is checked through the link's own reader. */

import { expect, test } from 'vitest';
import { openPage } from '../page';

await openPage();
const { gatherCodes: gather } = await import('../../../../src/board/documents/codes');

const code = (part: number, digits: string, set = '0a1b2c3d', of = 3) => ({
  set,
  part,
  of,
  digits,
});

test('codes in any order make the document, and each says which are still missing', () => {
  expect(gather(code(3, '789')).missing).toEqual([1, 2]);
  expect(gather(code(1, '123')).missing).toEqual([2]);
  expect(gather(code(2, '456'))).toEqual({ digits: '123456789', missing: null });
});

test('the same code read twice counts once', () => {
  gather(code(2, '456'));
  expect(gather(code(2, '456')).missing).toEqual([1, 3]);
  gather(code(1, '123'));
  expect(gather(code(3, '789')).digits).toBe('123456789');
});

test('a code of another document begins that one, and nothing of the first gets into it', () => {
  gather(code(1, '123'));
  gather(code(2, '456'));
  expect(gather(code(3, '999', 'ffffffff')).missing).toEqual([1, 2]);
  expect(gather(code(3, '789')).missing).toEqual([1, 2]);
});

test('the same document spread over another number of codes is begun anew', () => {
  gather(code(1, '123'));
  expect(gather(code(2, '456', '0a1b2c3d', 2)).missing).toEqual([1]);
});

test('once it is whole, it is forgotten: the same codes read again are counted from the start', () => {
  for (const part of [1, 2, 3]) gather(code(part, String(part)));
  expect(gather(code(1, '1')).missing).toEqual([2, 3]);
});

test.each([
  ['cut short', '{"set":"0a1b2c3d","of":3,'],
  ['of another shape', '{"set":"0a1b2c3d","of":3,"digits":"123"}'],
  ['not digits', '{"set":"0a1b2c3d","of":3,"digits":["<b>",null,null]}'],
])('what the device kept is left out where it is %s', (_, kept) => {
  localStorage.setItem('lapstrip.codes', kept);
  expect(gather(code(2, '456')).missing).toEqual([1, 3]);
});

test('where the device keeps nothing, a code alone still says what is missing', () => {
  Object.assign(localStorage, {
    setItem: () => {
      throw new DOMException('refused', 'SecurityError');
    },
  });
  expect(gather(code(2, '456')).missing).toEqual([1, 3]);
});
