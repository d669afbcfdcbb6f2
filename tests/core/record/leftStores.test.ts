/** What every release left on a device is read by this version, and stays as it was written. */

import { describe, expect, test, vi } from 'vitest';
import { keptDocumentState } from '../../../src/core/keptDocument.schema';
import { readEntry } from '../../../src/core/sortie/entry.schema';
import { sortieFlown } from '../../../src/core/sortie/flying';
import { foldSortie, sortiesOf } from '../../../src/core/sortie/fold';
import { documentHash } from '../../../src/exchange/hash';
import { allSetAside } from '../../../src/record/aside';
import { draftsUnder, readDraft } from '../../../src/record/drafts';
import { besideRecord, wholeRecord } from '../../../src/record/past';
import { AT, openWindow, useFreshDevice, wind } from './device';
import { LATER, LEFT_STORES, laterThan, newestStore, putStore, standing, valuesIn } from './stores';

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

describe('after a release that is gone back from', () => {
  const left = laterThan(newestStore());
  const before = valuesIn(newestStore(), 'entries');

  test('the sortie that this version knows goes on, and the rest is told', async () => {
    await putStore(left);
    const { record } = await openWindow();
    expect(record.keeping).toBe('kept');
    expect(record.unread).toEqual({ damaged: 0, newer: LATER.entries.length });
    expect(record.entries.map(({ id }) => id).sort()).toEqual(before.map(({ id }) => id).sort());
    const flown = sortieFlown(sortiesOf(record.entries), record.newerSorties);
    expect(flown.id).toBe(record.entries.at(-1)?.sortie);
    const known = (await record.documents()).map(({ hash }) => hash);
    expect(known.sort()).toEqual(
      valuesIn(left, 'documents')
        .map(({ hash }) => String(hash))
        .filter((hash) => hash !== LATER.document)
        .sort(),
    );
    expect(record.unread).toEqual({ damaged: 0, newer: LATER.entries.length + 1 });
  });

  test('what is added comes after what the later one wrote, and that stays as it was written', async () => {
    await putStore(left);
    const stood = await standing(left);
    const { record } = await openWindow();
    await record.documents();
    const [added] = record.add(record.entries.at(-1)?.sortie ?? '', AT, wind('29016KT'));
    await record.settled();
    expect(added?.seq).toBe(
      Math.max(...valuesIn(left, 'entries').map(({ seq }) => Number(seq))) + 1,
    );
    const stands = await standing(left);
    expect([...stands.keys()]).toEqual([...stood.keys()]);
    expect(stands.get('entries')).toHaveLength((stood.get('entries')?.length ?? 0) + 1);
    for (const [part, values] of stood)
      for (const value of values) expect(stands.get(part)).toContainEqual(value);
    expect(await allSetAside()).toEqual([]);
  });

  test('goes out with what is saved, for the version that can read it', async () => {
    await putStore(left);
    const { record } = await openWindow();
    const ids = (await wholeRecord(record)).entries.map(({ id }) => id);
    expect(ids).toEqual(expect.arrayContaining(LATER.entries));
    const { setAside, drafts } = await besideRecord(record);
    expect(setAside.map(({ value }) => Object(value).hash)).toEqual([LATER.document]);
    expect(drafts).toContainEqual({ code: ' field/later', strokes: [] });
  });

  test('a store of which nothing is known here starts as an empty one, and keeps all of it', async () => {
    const all = (values: readonly object[]) => values.map((value) => ({ ...value, v: 3, by: 'x' }));
    const databases = left.databases.map(({ parts, ...database }) => ({
      ...database,
      parts: parts.map((part) =>
        part.name === 'entries' ? { ...part, values: all(part.values) } : part,
      ),
    }));
    await putStore({ ...left, databases });
    const { record } = await openWindow();
    expect(record.keeping).toBe('kept');
    expect(record.entries).toEqual([]);
    const added = record.add('sortie-one', AT, wind('27012KT'));
    await record.settled();
    const { record: again } = await openWindow();
    expect(again.entries).toEqual(added);
    const stands = (await standing(left)).get('entries');
    expect(stands).toHaveLength(valuesIn(left, 'entries').length + 1);
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
