import { expect, test } from 'vitest';
import { openPage } from '../page';

const { beginAt, draft, load } = await openPage();
await load('XCAI', 'tussock', 'tussock-usual');
const { answered, isOld: old } = await import('../../../../src/board/wind/answered');

const best = () => answered.value.ranked?.best?.designator ?? null;
// The runway lies 09/27, and the aircraft takes 8 kt of tailwind.
const WEST = { kind: 'wind', text: '27012KT', north: 'true' } as const;

test('while nothing is typed, the answer is for the wind in use', () => {
  beginAt('XCAI', 'tussock', WEST);
  expect([best(), old.value]).toEqual(['27', false]);
});

test('a wind being typed is answered before it is set', () => {
  beginAt('XCAI', 'tussock', WEST);
  draft.value = '09012';
  expect([best(), old.value]).toEqual(['09', false]);
});

test('what says nothing yet leaves the last good answer, which is then old', () => {
  beginAt('XCAI', 'tussock', WEST);
  for (const text of ['0', '090', '0901X']) {
    draft.value = text;
    expect([text, best(), old.value]).toEqual([text, '27', true]);
  }
  draft.value = '';
  expect([best(), old.value]).toEqual(['27', false]);
});

test('without a wind before it, there is no answer that could be old', () => {
  beginAt('XCAI', 'tussock');
  draft.value = '0901X';
  expect([answered.value.ranked, old.value]).toEqual([null, false]);
});
