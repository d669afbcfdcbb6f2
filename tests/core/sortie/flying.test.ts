import { expect, test } from 'vitest';
import type { Entry } from '../../../src/core/sortie/entry';
import { sortieFlown } from '../../../src/core/sortie/flying';
import { sortiesOf } from '../../../src/core/sortie/fold';
import { entry, OPEN, RUN } from './recorder';

const of = (sortie: string, ...entries: readonly Entry[]): Entry[] =>
  entries.map((one) => ({ ...one, sortie }));
const first = of('first', entry(OPEN, 1), entry({ kind: 'close', run: RUN, leadsTo: 'end' }, 2));
const second = of('second', entry({ kind: 'wind', text: '27012KT', north: 'true' }, 3));
const takenUp = of('first', entry({ kind: 'taken up' }, 4));
const flown = (...entries: readonly Entry[]) => sortieFlown(sortiesOf(entries));

test('the sortie begun last is flown', () => {
  expect(flown(...first, ...second).id).toBe('second');
});

test('one that is taken up again is flown, and goes on where it had ended', () => {
  const again = flown(...first, ...second, ...takenUp);
  expect(again.id).toBe('first');
  expect(again.endedAt).toBeNull();
  expect(again.run?.id).toBe(RUN);
});

test('one that is begun after that is flown again', () => {
  const third = of('third', entry({ kind: 'wind', text: '28014KT', north: 'true' }, 5));
  expect(flown(...first, ...second, ...takenUp, ...third).id).toBe('third');
});

test('taking up is taken back like anything else', () => {
  const undo = of('first', entry({ kind: 'undo', target: 'id-4' }, 5));
  expect(flown(...first, ...second, ...takenUp, ...undo).id).toBe('second');
});

test('one that is passed over is not flown', () => {
  expect(sortieFlown(sortiesOf([...first, ...second]), new Set(['second'])).id).toBe('first');
});
