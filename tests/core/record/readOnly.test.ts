/** A window that only watches follows the record, and never adds to it. */

import { expect, test } from 'vitest';
import { SortieRecord } from '../../../src/record/record';
import { AT, openWindow, useFreshDevice, wind, windsOf } from './device';

useFreshDevice();

test('what is kept and what others add is seen', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  const watching = new SortieRecord(() => undefined, 'device', true);
  await watching.open();
  expect(windsOf(watching)).toEqual(['27012KT']);
  record.add('sortie-one', AT, wind('28014KT'));
  await expect.poll(() => windsOf(watching)).toEqual(['27012KT', '28014KT']);
});

test('nothing that it is asked to add is added, told or kept', async () => {
  const { record } = await openWindow();
  record.add('sortie-one', AT, wind('27012KT'));
  await record.settled();
  const watching = new SortieRecord(() => undefined, 'device', true);
  expect(watching.add('sortie-one', AT, wind('01015KT'))).toEqual([]);
  await watching.open();
  expect(watching.add('sortie-one', AT, wind('02016KT'))).toEqual([]);
  await watching.keepDocument({ hash: 'x', kind: 'field', content: {}, own: true });
  await watching.store?.write({ summaries: [{ sortie: 'sortie-one' }] });
  await watching.settled();
  expect(windsOf(watching)).toEqual(['27012KT']);
  const { record: again } = await openWindow();
  expect(windsOf(again)).toEqual(['27012KT']);
  expect(await again.documents()).toEqual([]);
  expect(await again.store?.read('summaries')).toEqual([]);
  expect(windsOf(record)).toEqual(['27012KT']);
});
