import { afterAll, expect, test, vi } from 'vitest';
import type { Procedure } from '../../../../src/core';
import { openPage } from '../page';

const { add, beginAt, day, hashOf, load } = await openPage({ fresh: true });
await load('XLIN', 'sleet', 'sleet-usual');
const writing = await import('../../../../src/board/writing/procedure');
const { all } = await import('../../../../src/board/documents/documents');
const { procedure } = await import('../../../../src/board/documents/inUse');
const { proceduresFor } = await import('../../../../src/board/documents/procedures');
const { addOwnDocument, takeReceived } = await import(
  '../../../../src/board/documents/ownDocuments'
);

// Another file must not find what is left here.
afterAll(() => void vi.resetModules());

const USUAL = hashOf('sleet-usual');
const ownName = (name: string) => `${name}, mine`;
const { edit, written } = writing;
const shown = () => written.value?.phases.find(({ phase }) => phase === 'ramp')?.steps ?? [];
const items = () => shown().map(({ item }) => item);

/** Opens the demo's procedure for writing. */
async function open(): Promise<Procedure> {
  beginAt('XLIN', 'sleet');
  await writing.openWriting(USUAL, ownName);
  const { value } = written;
  if (value === null) throw new Error('it did not open');
  return value;
}

test('a new version begins as the original, under a name of its own, with nothing to save', async () => {
  const began = await open();
  expect(began.name).toBe('Sleet, usual sortie, mine');
  expect(began.basedOn).toEqual({ code: 'sleet-usual', hash: USUAL });
  expect(shown()[0]?.id).toBe('seat-pins-out');
  expect([writing.isUnkept.value, writing.stage.value]).toEqual([false, 'open']);
});

test('a change is undone and made again; undone, there is nothing to save', async () => {
  await open();
  const before = items();
  edit({ kind: 'remove', id: 'oxygen' });
  expect(shown().some(({ id }) => id === 'oxygen')).toBe(false);
  expect(writing.isUnkept.value).toBe(true);
  writing.undo();
  expect(items()).toEqual(before);
  expect([writing.isUnkept.value, writing.canUndo.value]).toEqual([false, false]);
  writing.redo();
  expect(shown().some(({ id }) => id === 'oxygen')).toBe(false);
  writing.undo();
});

test('letters of one text are one change', async () => {
  await open();
  const before = items();
  for (const item of ['Pin', 'Pins', 'Pins, all']) {
    edit({ kind: 'change', id: 'seat-pins-out', to: { item } }, true);
  }
  expect(items()[0]).toBe('Pins, all');
  writing.undo();
  expect(items()).toEqual(before);
});

test('saved, it is flown next, is numbered on, and earlier versions stay', async () => {
  await open();
  edit({ kind: 'change', id: 'seat-pins-out', to: { item: 'Pins, one' } });
  expect(await writing.keepOwn()).toEqual({ kind: 'kept', number: 1, flown: 'now' });
  expect(procedure.value?.phases[0]?.steps[0]?.item).toBe('Pins, one');
  expect(writing.isUnkept.value).toBe(false);
  const first = day.inputs().procedure;
  edit({ kind: 'change', id: 'seat-pins-out', to: { item: 'Pins, two' } });
  expect(await writing.keepOwn()).toMatchObject({ kind: 'kept', number: 2 });
  expect(writing.versions.value.map(({ edition }) => edition.number)).toEqual([2, 1]);
  expect(writing.versions.value[1]?.hash).toBe(first);
  // Only the newest is offered.
  const listed = all.value.filter(({ code, hash }) => code === 'sleet-usual' && hash !== USUAL);
  expect(listed.map(({ hash }) => hash)).toEqual([day.inputs().procedure]);
});

test('a sortie under way keeps its steps, and the version is for the next', async () => {
  await open();
  add({ kind: 'open', run: 'run-one', procedure: USUAL, list: null });
  add({ kind: 'set', inputs: { procedure: USUAL } });
  edit({ kind: 'change', id: 'seat-pins-out', to: { item: 'Pins, three' } });
  expect(await writing.keepOwn()).toMatchObject({ kind: 'kept', flown: 'next' });
  expect(procedure.value?.phases[0]?.steps[0]?.item).not.toBe('Pins, three');
  add({ kind: 'close', run: 'run-one', leadsTo: 'return' });
  expect(procedure.value?.phases[0]?.steps[0]?.item).toBe('Pins, three');
});

test('an earlier version is gone back to as one change', async () => {
  await open();
  const [newest, , first] = writing.versions.value;
  expect(items()[0]).toBe(newest?.content.phases[0]?.steps[0]?.item);
  writing.takeUpWriting(first?.content as Procedure);
  expect(items()[0]).toBe('Pins, one');
  writing.undo();
  expect(items()[0]).toBe('Pins, three');
});

test('what would be no procedure is refused, with what is wrong', async () => {
  await open();
  edit({ kind: 'change', id: 'seat-pins-out', to: { item: '' } });
  const kept = await writing.keepOwn();
  expect(kept.kind).toBe('refused');
  writing.undo();
});

test('a version saved elsewhere is shown at once where nothing was written', async () => {
  await open();
  const [newest] = writing.versions.value;
  if (newest === undefined) throw new Error('there is no version');
  const edition = { number: newest.edition.number + 1, keptAt: '2026-11-20T10:00:00.000Z' };
  const content = { ...newest.content, name: 'From the other window', edition };
  await addOwnDocument({ hash: 'saved-elsewhere', kind: 'procedure', content, own: true });
  expect(written.value?.name).toBe('From the other window');
  expect([writing.takenIn.value, writing.overtaken.value]).toEqual([edition.number, null]);
});

test('where something was written, that stays, and is not saved over the other’s unasked', async () => {
  await open();
  edit({ kind: 'rename', name: 'Mine' });
  const [newest] = writing.versions.value;
  if (newest === undefined) throw new Error('there is no version');
  const edition = { number: newest.edition.number + 1, keptAt: '2026-11-20T11:00:00.000Z' };
  const content = { ...newest.content, name: 'Theirs', edition };
  await addOwnDocument({ hash: 'elsewhere-again', kind: 'procedure', content, own: true });
  expect(written.value?.name).toBe('Mine');
  expect(writing.overtaken.value?.content.name).toBe('Theirs');
  expect(await writing.keepOwn()).toEqual({ kind: 'overtaken' });
  writing.goOnFromOther();
  expect([written.value?.name, writing.overtaken.value]).toEqual(['Theirs', null]);
  writing.undo();
  expect(written.value?.name).toBe('Mine');
  expect(await writing.keepOwn()).toMatchObject({ kind: 'kept', number: edition.number + 1 });
});

test('what is not there cannot be written', async () => {
  await writing.openWriting('no-such-hash', ownName);
  expect(writing.stage.value).toBe('failed');
});

test('made for another aircraft it is listed with that one, and this one keeps its own', async () => {
  await open();
  const before = proceduresFor('sleet').map(({ hash }) => hash);
  const flown = day.inputs().procedure;
  const others = proceduresFor('tussock').length;
  edit({ kind: 'for', aircraft: 'tussock' });
  expect(await writing.keepOwn()).toMatchObject({ kind: 'kept', flown: 'not' });
  expect(proceduresFor('tussock')).toHaveLength(others + 1);
  expect(proceduresFor('sleet').map(({ hash }) => hash)).toEqual(before);
  expect(day.inputs().procedure).toBe(flown);
  edit({ kind: 'for', aircraft: 'sleet' });
  expect(await writing.keepOwn()).toMatchObject({ kind: 'kept' });
});

test('another pilot’s version, chosen and kept beside mine, is written on by itself', async () => {
  const began = await open();
  edit({ kind: 'change', id: 'seat-pins-out', to: { item: 'Pins, mine' } });
  await writing.keepOwn();
  const mine = day.inputs().procedure ?? '';
  const theirs: Procedure = {
    ...began,
    name: 'As they fly it',
    edition: { number: 40, keptAt: '2026-01-01T00:00:00.000Z' },
  };
  await addOwnDocument({
    hash: 'theirs',
    kind: 'procedure',
    content: theirs,
    own: true,
    received: true,
  });
  await takeReceived('theirs');
  const listed = () => proceduresFor('sleet').map(({ hash }) => hash);
  expect(listed()).toEqual(expect.arrayContaining([mine, 'theirs']));
  await writing.openWriting(mine, ownName);
  expect(items()[0]).toBe('Pins, mine');
  await writing.openWriting('theirs', ownName);
  expect(written.value?.name).toBe('As they fly it');
  edit({ kind: 'change', id: 'seat-pins-out', to: { item: 'Pins, theirs' } });
  expect(await writing.keepOwn()).toMatchObject({ kind: 'kept', number: 41, flown: 'not' });
  // Mine is still the newest of mine; theirs gave way to what was written on from it.
  expect(listed()).toContain(mine);
  expect(listed()).not.toContain('theirs');
  expect(day.inputs().procedure).toBe(mine);
});
