/** A document being written, of any kind: its draft is on the device until it is done, and is gone on with. */

import { beforeEach, describe, expect, test, vi } from 'vitest';
import { draftOf, faultsOf, loadCheck } from '../../../../src/board/writing/draft';
import { fieldChanges } from '../../../../src/core/airfield/edit';
import { procedureChanges } from '../../../../src/core/procedure/edit';
import { withAllPhases } from '../../../../src/core/procedure/parts';
import { readDraft, writeDraft } from '../../../../src/record/drafts';
import { STRIP } from '../../airfield/drawing';
import { WRITTEN } from '../../procedure/edits';
import { useFreshDevice } from '../../record/device';
import { LEFT_STORES, valuesIn } from '../../record/stores';

useFreshDevice();
beforeEach(() => vi.stubGlobal('addEventListener', vi.fn()));

const START = withAllPhases(WRITTEN);
const rename = (name: string) => ({ kind: 'rename', name }) as const;

/** The draft of a procedure as one window has it. */
const opened = (isDone = () => false) =>
  draftOf({ changes: procedureChanges, name: () => 'invented', isDone });

/** What another window finds of it. */
const found = async (name = 'invented') => {
  const left = await opened().left(name);
  return left === null ? null : { ...left, name: left.history.steps.at(-1)?.document.name };
};

test('what was written is gone on with, taken back and made again as before', async () => {
  const draft = opened();
  draft.open(START);
  draft.edit(rename('One'));
  draft.edit(rename('Two'));
  draft.undo();
  await expect.poll(() => found()).not.toBeNull();
  const again = opened();
  const left = await again.left('invented');
  if (left === null) throw new Error('nothing was left');
  again.open(left.history);
  expect(again.document.value?.name).toBe('One');
  expect([again.canUndo.value, again.canRedo.value]).toEqual([true, true]);
  again.redo();
  expect(again.document.value?.name).toBe('Two');
  expect(again.canRedo.value).toBe(false);
  again.undo();
  again.undo();
  expect(again.document.value).toEqual(START);
  expect(again.canUndo.value).toBe(false);
});

test('what undo or redo did last is told, until something else is done', () => {
  const draft = opened();
  draft.open(START);
  draft.edit(rename('One'));
  const named = draft.document.value;
  expect(draft.stepped.value).toBeNull();
  draft.undo();
  const step = { edit: rename('One'), without: START, made: named };
  expect(draft.stepped.value).toEqual({ way: 'undone', ...step });
  // Nothing is left to take back: it stays what was taken back last.
  draft.undo();
  draft.settle();
  expect(draft.stepped.value).toEqual({ way: 'undone', ...step });
  draft.redo();
  expect(draft.stepped.value).toEqual({ way: 'redone', ...step });
  draft.edit(rename('Two'));
  expect(draft.stepped.value).toBeNull();
});

test('a field is kept in the same way', async () => {
  const field = () =>
    draftOf({ changes: fieldChanges, name: () => ' field/new', isDone: () => false });
  const draft = field();
  draft.open(STRIP);
  draft.edit({ kind: 'elevation', elevationFt: 77 }, true);
  await draft.keeper.now();
  const left = await field().left(' field/new');
  expect(left?.history.steps.at(-1)?.document.place.elevationFt).toBe(77);
});

test('what is stored beside the changes comes back with them', async () => {
  const more = () => ({ known: ['abc'] });
  const draft = draftOf({ changes: procedureChanges, name: () => 'a', isDone: () => false, more });
  draft.open(START);
  await draft.keeper.now();
  expect((await draft.left('a'))?.known).toEqual(['abc']);
});

test('what waits to be kept is kept under its own name when another is opened', async () => {
  let name = 'first';
  const draft = draftOf({ changes: procedureChanges, name: () => name, isDone: () => false });
  draft.open(START);
  draft.edit(rename('One'));
  draft.close();
  name = 'second';
  draft.open(START);
  await expect.poll(async () => (await found('first'))?.name).toBe('One');
  expect(await readDraft('second')).toBeUndefined();
});

test('what is done is forgotten', async () => {
  const draft = opened();
  draft.open(START);
  draft.edit(rename('One'));
  await draft.keeper.now();
  const done = opened(() => true);
  done.open(START);
  await done.keeper.now();
  expect(await readDraft('invented')).toBeUndefined();
});

test('where the device keeps nothing, that is known', async () => {
  vi.stubGlobal('indexedDB', { open: () => expect.fail('refused') });
  const draft = opened();
  draft.open(START);
  draft.edit(rename('One'));
  await expect.poll(() => draft.stays.value).toBe(false);
});

test('a change that means nothing is no change', () => {
  const draft = opened();
  draft.open(START);
  const before = draft.history.value;
  draft.edit(rename(START.name));
  expect(draft.history.value).toBe(before);
});

describe('what another version left', () => {
  beforeEach(loadCheck);

  test('the first release left a procedure, which is gone on with', async () => {
    const [first] = LEFT_STORES;
    if (first === undefined) throw new Error('there is none');
    const [kept] = valuesIn(first, 'edits');
    const code = String(kept?.code);
    await writeDraft({ ...kept, code });
    const left = await opened().left(code);
    const made: unknown = kept?.made;
    expect(left?.history.at).toBe(made);
    expect(left?.history.at).toBeGreaterThan(0);
    expect(faultsOf(left?.history.start ?? null)).toEqual([]);
  });

  test('and a field, in the place where that was kept', async () => {
    const [first] = LEFT_STORES;
    const kept: unknown = JSON.parse(first?.local['lapstrip.draft.new'] ?? 'null');
    const draft = draftOf({ changes: fieldChanges, name: () => 'new', isDone: () => false });
    const left = await draft.left(' field/new', kept);
    expect(left?.history.steps.at(-1)?.document).toMatchObject({
      code: 'XTSL',
      name: 'Teasel Flat',
    });
  });

  test.each([
    ['no draft at all', 7],
    ['without changes', { start: START }],
    ['a change that is not known here', { start: START, edits: [{ kind: 'fold' }], at: 1 }],
    ['another shape', { start: { ...START, lists: [{}] }, edits: [], at: 0 }],
    ['another kind', { start: { lapstrip: 'glider' }, edits: [], at: 0 }],
  ])('%s is begun anew', async (_, kept) => {
    expect(await opened().left('not-there', kept)).toBeNull();
  });
});
