import { IDBFactory } from 'fake-indexeddb';
import { expect, test, vi } from 'vitest';
import type { KeptDocument } from '../../../../src/record/store';
import { openPage } from '../page';

// One device for the whole file: the tests go on from each other, as a pilot does.
const { hashOf, record } = await openPage({ fresh: true, hooks: false });
vi.stubGlobal('indexedDB', new IDBFactory());
const own = await import('../../../../src/board/documents/ownDocuments');
const documents = await import('../../../../src/board/documents/documents');
const { SortieRecord } = await import('../../../../src/record/record');

const harrow = documents.all.value.find(({ code }) => code === 'XHAR');
if (harrow?.kind !== 'field') throw new Error('there is no XHAR');
const content = await harrow.load();

/** The demo's field as the pilot mended it. */
const mended = (hash: string, name: string): KeptDocument => ({
  hash,
  kind: 'field',
  content: { ...content, name },
  own: true,
});

const fieldsOf = (code: string) =>
  documents.listedFields.value.filter((one) => one.code === code).map(({ name }) => name);

/** What another window, or this one after a restart, reads from the store. */
async function elsewhere(): Promise<readonly KeptDocument[]> {
  const again = new SortieRecord(() => undefined);
  await again.open();
  return again.documents();
}

test('a field of one’s own takes the place of the demo’s in the list, and a newer one its own', async () => {
  await record.open();
  expect(fieldsOf('XHAR')).toEqual([content.name]);
  await own.addOwnDocument(mended('f-first', 'Harrow, mended'));
  expect(fieldsOf('XHAR')).toEqual(['Harrow, mended']);
  await own.addOwnDocument(mended('a-second', 'Harrow, mended again'));
  expect(fieldsOf('XHAR')).toEqual(['Harrow, mended again']);
  expect(documents.listedBy('f-first')?.name).toBe('Harrow, mended');
  expect(documents.listedBy(hashOf('XHAR'))?.name).toBe(content.name);
  expect(documents.newer.value.get('f-first')).toBe('a-second');
  expect(documents.newer.value.get(hashOf('XHAR'))).toBe('a-second');
});

test('an older version kept again is the newest', async () => {
  await own.addOwnDocument(mended('f-first', 'Harrow, mended'));
  expect(fieldsOf('XHAR')).toEqual(['Harrow, mended']);
});

test('what is deleted is listed nowhere, is still stored, and comes back as it was', async () => {
  await own.nameVersion('f-first', ' for the fly-in ');
  await own.deleteOwn(['f-first', 'a-second']);
  expect(fieldsOf('XHAR')).toEqual([content.name]);
  expect(own.deletedDocuments.value.map(({ hash }) => hash)).toContain('f-first');
  const stored = (await elsewhere()).find(({ hash }) => hash === 'f-first');
  expect(stored).toMatchObject({ title: 'for the fly-in', content: { name: 'Harrow, mended' } });
  expect(stored?.deletedMs).toBeTypeOf('number');
  // A window that reads it now lists it no more than this one.
  await own.listOwnDocuments();
  expect(fieldsOf('XHAR')).toEqual([content.name]);
  await own.bringBack(['f-first', 'a-second']);
  expect(fieldsOf('XHAR')).toEqual(['Harrow, mended']);
  expect(own.keptBy('f-first')?.title).toBe('for the fly-in');
  expect((await elsewhere()).some(({ deletedMs }) => deletedMs !== undefined)).toBe(false);
});

test('what another window deleted goes here too', async () => {
  const there = await elsewhere();
  for (const one of there) await record.keepDocument({ ...one, deletedMs: 1 });
  await own.listOwnDocuments();
  expect(fieldsOf('XHAR')).toEqual([content.name]);
  await own.bringBack(there.map(({ hash }) => hash));
});

test('a field that came is listed beside one’s own, and stays there once it is chosen', async () => {
  await own.addOwnDocument({ ...mended('theirs', 'Harrow, theirs'), received: true });
  expect(fieldsOf('XHAR')).toEqual(expect.arrayContaining(['Harrow, mended', 'Harrow, theirs']));
  expect(documents.received.value.has('theirs')).toBe(true);
  await own.takeReceived('theirs');
  expect(documents.received.value.has('theirs')).toBe(false);
  expect(fieldsOf('XHAR')).toEqual(expect.arrayContaining(['Harrow, mended', 'Harrow, theirs']));
});

test('one put over one’s own takes its place; sent once more, it changes nothing', async () => {
  await own.addOwnDocument(mended('over', 'Harrow, over mine'));
  expect(fieldsOf('XHAR')).not.toContain('Harrow, mended');
  expect(fieldsOf('XHAR')).toContain('Harrow, over mine');
  await own.addOwnDocument({ ...mended('over', 'Harrow, over mine'), received: true });
  expect(documents.received.value.has('over')).toBe(false);
});
