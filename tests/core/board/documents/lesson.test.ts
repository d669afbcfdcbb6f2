/** A lesson goes from one pilot's device to another's. */

import { IDBFactory } from 'fake-indexeddb';
import { expect, test, vi } from 'vitest';
import { boundedJson } from '../../../../src/exchange/boundedJson';
import { jsonFault, linesOf } from '../../../../src/exchange/jsonFault';
import { closeWindows, useFreshDevice } from '../../record/device';
import { openPage } from '../page';

useFreshDevice();

/** Parses as the worker does, without one. */
class Parsing {
  onmessage: (event: { data: unknown }) => void = () => undefined;
  async postMessage({ from, paths }: { from: Blob | string; paths?: readonly string[] }) {
    const text = typeof from === 'string' ? from : await from.text();
    const parsed = boundedJson(text);
    const fault = parsed.problem === 'not-json' ? jsonFault(text) : null;
    const data =
      paths === undefined ? { ...parsed, length: text.length, fault } : linesOf(text, paths);
    this.onmessage({ data });
  }
  terminate() {}
}

/** A device with nothing but the app on it; the one before is put away. */
async function device() {
  closeWindows();
  const page = await openPage({ fresh: true, hooks: false });
  vi.stubGlobal('Worker', Parsing);
  vi.stubGlobal('indexedDB', new IDBFactory());
  await page.record.open();
  const documents = await import('../../../../src/board/documents/documents');
  const own = await import('../../../../src/board/documents/ownDocuments');
  const sharing = await import('../../../../src/board/documents/sharing');
  const lesson = await import('../../../../src/board/documents/lesson');
  const { usualFor } = await import('../../../../src/board/documents/procedures');
  const listedAs = (code: string) => {
    const listed = documents.all.value.findLast((one) => one.code === code);
    if (listed === undefined) throw new Error(`there is no ${code}`);
    return listed;
  };
  /** Keeps a document of the demo, changed, as the pilot's own. */
  const write = async (code: string, change: object) => {
    const listed = listedAs(code);
    const content = { ...(await listed.load()), ...change };
    const hash = await own.keepOwn({ kind: listed.kind, content, from: 'written' });
    const kept = documents.listedBy(hash);
    if (kept === undefined) throw new Error('it is not kept');
    return kept;
  };
  return { ...page, ...documents, ...own, ...sharing, ...lesson, usualFor, listedAs, write };
}

const HEADER = { name: 'First solo', note: ['Circuits only.', ''] };

async function made() {
  const { write, sharedLesson, listedAs } = await device();
  const documents = [
    await write('XLIN', { name: 'Lindle, mended' }),
    listedAs('sleet'),
    await write('sleet-usual', { code: 'solo', name: 'Sleet, solo' }),
    await write('sleet-usual', { code: 'solo-wet', name: 'Sleet, solo in rain' }),
  ];
  const { shared } = await sharedLesson(HEADER, documents);
  if (shared === null) throw new Error('it cannot be sent');
  return shared;
}

async function received(from: File | string, student: Awaited<ReturnType<typeof device>>) {
  const incoming = await student.lookAt(from);
  if (incoming.kind !== 'lesson') throw new Error(JSON.stringify(incoming));
  return incoming;
}

test('it says of every document what it would change, and nothing is kept before it is chosen', async () => {
  const { file } = await made();
  expect(file.name).toBe('lapstrip-lesson-first-solo.json');
  const student = await device();
  await student.write('XLIN', { name: 'Lindle, my own' });
  const { name, note, documents } = await received(file, student);
  expect([name, note]).toEqual(['First solo', ['Circuits only.']]);
  expect(documents.map(({ against }) => against.kind)).toEqual(['other', 'same', 'new', 'new']);
  expect(documents.map((one) => student.putsOf(one))).toEqual([
    ['beside', 'over'],
    [],
    ['beside'],
    ['beside'],
  ]);
  expect(student.ownDocuments.value).toHaveLength(1);
});

test('all of it is kept in one go, and used only once it is chosen', async () => {
  const { file } = await made();
  const student = await device();
  const usual = student.usualFor('sleet');
  const write = vi.spyOn(student.record.store ?? { write: () => {} }, 'write');
  const { documents } = await received(file, student);
  const [field, , ...procedures] = documents;
  if (field === undefined) throw new Error('it has no field');
  await student.keepIncoming([field, 'over'], ...procedures.map((one) => [one, 'beside'] as const));
  expect(write).toHaveBeenCalledTimes(1);
  expect(student.listedAs('XLIN').name).toBe('Lindle, mended');
  expect(student.keptBy(field.document.hash)).toMatchObject({
    from: 'lesson',
    fromName: 'First solo',
  });
  expect(student.usualFor('sleet')).toBe(usual);
  const again = await received(file, student);
  expect(again.documents.map(({ against }) => against.kind)).toEqual([
    'same',
    'same',
    'same',
    'same',
  ]);
});

test('a part of it is kept, and it is flown with one tap where it leaves no choice', async () => {
  const { file } = await made();
  const student = await device();
  student.begin();
  const { documents } = await received(file, student);
  const hashes = documents.map(({ document }) => document.hash).slice(0, 3);
  expect(student.mayBeFlown(hashes)).toBe(false);
  const chosen = documents.slice(0, 3).filter(({ against }) => against.kind !== 'same');
  await student.keepIncoming(...chosen.map((one) => [one, 'beside'] as const));
  expect(student.ownDocuments.value).toHaveLength(2);
  student.flyLesson(hashes);
  const [field, aircraft, procedure] = hashes;
  expect(student.sortie.value.inputs).toMatchObject({ field, aircraft, procedure });
  expect(student.received.value.size).toBe(0);
});

test('its link brings all of it, and one cut short is refused with a reason', async () => {
  const { links } = await made();
  expect(links.fits).toBe(true);
  const student = await device();
  const hash = links.link.slice(links.link.indexOf('#'));
  expect((await received(hash, student)).documents).toHaveLength(4);
  for (const length of [hash.length - 1, hash.length >> 1, 40]) {
    const cut = await student.lookAt(hash.slice(0, length));
    expect(cut).toEqual({ kind: 'refused', problems: [{ at: '', what: 'link-cut' }] });
  }
});

test('a fault in one document is placed by its line, and nothing is kept', async () => {
  const { file } = await made();
  const lines = (await file.text()).split('\n');
  const at = lines.findIndex((line) => line.includes('"Sleet, solo"'));
  lines[at] = lines[at]?.replace('"Sleet, solo"', '""') ?? '';
  const student = await device();
  expect(await student.lookAt(new File([lines.join('\n')], 'lesson.json'))).toMatchObject({
    kind: 'refused',
    problems: [{ at: 'documents.2.name', what: 'shape-empty', line: at + 1 }],
  });
  expect(student.ownDocuments.value).toHaveLength(0);
});

test('a name or a note nobody may send makes no lesson', async () => {
  const { sharedLesson, listedAs } = await device();
  const documents = [listedAs('XLIN')];
  const problem = async (name: string, of = documents) =>
    (await sharedLesson({ name, note: [] }, of)).problems?.map(({ at, what }) => `${at}: ${what}`);
  expect(await problem(' ')).toEqual(['name: shape-empty']);
  expect(await problem('a\u202eb')).toEqual(['name: text-direction']);
  expect(await problem('a', [])).toEqual(['documents: shape-too-few']);
  expect(await problem('a')).toBeUndefined();
});
