/** What every release left on a device is read by this version, and stays as it was written. */

import { describe, expect, test, vi } from 'vitest';
import { keptDocumentState } from '../../../src/core/keptDocument.schema';
import { readEntry } from '../../../src/core/sortie/entry.schema';
import { foldSortie, sortiesOf } from '../../../src/core/sortie/fold';
import { documentHash } from '../../../src/exchange/hash';
import { draftsUnder, readDraft } from '../../../src/record/drafts';
import { wholeRecord } from '../../../src/record/past';
import { AT, openWindow, useFreshDevice, wind } from './device';
import { LEFT_STORES, putStore, valuesIn } from './stores';

useFreshDevice();

test('the first release is among them', () => {
  expect(LEFT_STORES.map(({ version }) => version)).toContain('0.1.0');
});

describe.each(LEFT_STORES)('a store of $version', (left) => {
  test('is read whole: every entry and every document', () => {
    const entries = [...valuesIn(left, 'entries'), ...valuesIn(left, 'brought')];
    expect(entries.length).toBeGreaterThan(20);
    expect(entries.filter((value) => readEntry(value).problem !== null)).toEqual([]);
    expect(valuesIn(left, 'documents').map(keptDocumentState)).not.toContain('damaged');
    expect(valuesIn(left, 'documents').map(keptDocumentState)).not.toContain('newer');
  });

  test('goes on as the sortie that was left, and nothing in it is written anew', async () => {
    await putStore(left);
    const { record } = await openWindow();
    expect(record.keeping).toBe('kept');
    expect(record.unread).toEqual({ damaged: 0, newer: 0 });
    expect(record.entries).toHaveLength(valuesIn(left, 'entries').length);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put');
    const [added] = record.add(record.entries.at(-1)?.sortie ?? '', AT, wind('27012KT'));
    await record.settled();
    expect(put.mock.calls.map(([value]) => value)).toEqual([added]);
    vi.restoreAllMocks();
    const { entries } = await wholeRecord(record);
    for (const written of valuesIn(left, 'entries')) expect(entries).toContainEqual(written);
  });

  test('keeps its documents under the names they were kept under', async () => {
    await putStore(left);
    const { record } = await openWindow();
    const documents = await record.documents();
    expect(documents).toEqual(expect.arrayContaining(valuesIn(left, 'documents')));
    for (const { hash, content } of documents) {
      expect(await documentHash(content as object)).toBe(hash);
    }
  });
});

describe('of the first release', () => {
  const [first] = LEFT_STORES;
  const left = () => {
    if (first === undefined) throw new Error('there is none');
    return first;
  };

  test('two sorties are there: one that was ended, and one amid its steps', async () => {
    await putStore(left());
    const { record } = await openWindow();
    const sorties = [...sortiesOf(record.entries).values()].map((entries) => foldSortie(entries));
    expect(sorties).toHaveLength(2);
    const [ended, flown] = sorties;
    expect(ended?.endedAt).not.toBeNull();
    expect([...(ended?.run?.ticks.values() ?? [])].map(({ outcome }) => outcome).sort()).toEqual([
      'cannot',
      'done',
      'done',
      'done',
      'held',
    ]);
    expect(flown?.winds.at(-1)?.text).toBe('28014KT');
    expect(flown?.run?.ticks.size).toBe(2);
    expect(flown?.endedAt).toBeNull();
  });

  test('the wind that was half typed is there, and is no longer an entry', async () => {
    await putStore(left());
    const { record } = await openWindow();
    expect(record.draftOfVersion1).toBe('0101');
    const inputs = record.entries.flatMap((entry) => (entry.kind === 'set' ? [entry.inputs] : []));
    expect(inputs.filter((set) => 'draft' in set)).toEqual([]);
  });

  test('the procedure that was being written is there', async () => {
    await putStore(left());
    const codes = valuesIn(left(), 'edits').map(({ code }) => String(code));
    expect(codes).toHaveLength(1);
    expect(await readDraft(codes[0] ?? '')).toEqual(valuesIn(left(), 'edits')[0]);
    expect(await draftsUnder(' ')).toEqual([]);
  });

  test('the field that was being drawn is where it was kept', () => {
    expect(left().local['lapstrip.draft.new']).toContain('Teasel Flat');
  });

  test('no entry says which device made it, and every new one does', async () => {
    await putStore(left());
    const { record } = await openWindow();
    expect(record.entries.filter(({ by }) => by !== undefined)).toEqual([]);
    const [added] = record.add('sortie-one', AT, wind('27012KT'));
    expect(added).toMatchObject({ v: 2, by: expect.stringMatching(/^[0-9a-f]{32}$/) });
  });
});
