import { expect, test } from 'vitest';
import { fileName } from '../../../src/exchange/fileName';

test.each([
  ['field', ['XHAR', 'Harrow Bank'], 'lapstrip-field-xhar-harrow-bank.json'],
  ['procedure', ['Sleet, my own way', 'v3'], 'lapstrip-procedure-sleet-my-own-way-v3.json'],
  ['lesson', ['Übung: Böen & Seitenwind'], 'lapstrip-lesson-übung-böen-seitenwind.json'],
  ['lesson', ['../../etc/passwd'], 'lapstrip-lesson-etc-passwd.json'],
  ['lesson', ['a\u202egpj.exe'], 'lapstrip-lesson-a-gpj-exe.json'],
  ['lesson', ['???'], 'lapstrip-lesson.json'],
])('a %s called %j is saved under its own name', (kind, called, name) => {
  expect(fileName(kind, ...called)).toBe(name);
});

// ext4 and NTFS take 255 (bytes, and UTF-16 units).
test('the longest name fits every file system', () => {
  const name = fileName('procedure', '\u{20000}'.repeat(80));
  expect(new TextEncoder().encode(name).length).toBeLessThanOrEqual(255);
  expect(name.isWellFormed()).toBe(true);
});
