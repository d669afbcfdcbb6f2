import { expect, test } from 'vitest';
import { textWritten } from '../../../src/parts/stepText';

test('what is put in for a live number stands in a text by its name', () => {
  expect(textWritten('{rotateKt} kt, runway {runway}')).toBe(
    '[Rotate] kt, runway [Selected runway]',
  );
});

test('a text without live numbers stands as it is, and an unknown name by itself', () => {
  expect(textWritten('three out, in the rack')).toBe('three out, in the rack');
  expect(textWritten('{someday} kt')).toBe('[someday] kt');
});
