/**
 * What is half done outlives a page that is killed: no pagehide comes then, and nothing that the page
 * put off is done. Here the page is left alone, and what stands on the device at that moment is looked
 * at from the next one, which was loaded before.
 */

import { beforeEach, describe, expect, test, vi } from 'vitest';
import { useFreshDevice } from './device';

useFreshDevice();

/** What is older than this is there again, ms. */
const SAFE_AFTER_MS = 200;

const passed = (ms: number) => new Promise((done) => setTimeout(done, ms));

beforeEach(() => {
  // What a page hears when it is left; one that is killed hears nothing.
  vi.stubGlobal('addEventListener', () => undefined);
  vi.stubGlobal('document', { documentElement: { lang: 'en' } });
});

/** A page on the device, with nothing of any other in memory. */
async function page() {
  vi.resetModules();
  return {
    drafts: await import('../../../src/record/drafts'),
    drawing: await import('../../../src/board/writing/field'),
    windEntry: await import('../../../src/board/wind/windEntry'),
  };
}

describe('a page that is killed', () => {
  test('leaves the field that was drawn 200 ms ago', async () => {
    const { drawing: next } = await page();
    const { drawing } = await page();
    await drawing.openDraft(null);
    drawing.changeField({ kind: 'head', set: { code: 'XTSL' } });
    drawing.changeField({ kind: 'head', set: { name: 'Teasel Flat' } });
    await passed(SAFE_AFTER_MS);
    await next.openDraft(null);
    expect(next.drawnField.value).toMatchObject({ code: 'XTSL', name: 'Teasel Flat' });
  });

  test('amid typing leaves every letter older than that', async () => {
    const { drafts: next } = await page();
    const { drawing } = await page();
    await drawing.openDraft(null);
    const name = 'Teasel Flat on the moor';
    const typedAt: number[] = [];
    for (let length = 1; length <= name.length; length++) {
      drawing.changeField({ kind: 'head', set: { name: name.slice(0, length) } });
      typedAt.push(performance.now());
      await passed(30);
    }
    const killedAt = performance.now();
    const kept = JSON.stringify(await next.readDraft(' field/new'));
    const safe = typedAt.filter((at) => killedAt - at >= SAFE_AFTER_MS).length;
    expect(safe).toBeGreaterThan(10);
    expect(kept).toContain(name.slice(0, safe));
  });

  test('leaves the wind that was typed 200 ms ago', async () => {
    const { drafts: next } = await page();
    const { windEntry } = await page();
    windEntry.typeWind('2701');
    await passed(SAFE_AFTER_MS);
    expect(await next.readDraft(windEntry.WIND_DRAFT)).toMatchObject({ text: '2701' });
  });
});

test('a draft is on its way to the disk with the very call, and not when the browser likes', async () => {
  const { drafts } = await page();
  await drafts.writeDraft({ code: 'before' });
  const begun = vi.spyOn(IDBDatabase.prototype, 'transaction');
  const committed = vi.spyOn(IDBTransaction.prototype, 'commit');
  const writing = drafts.writeDraft({ code: ' field/new' });
  // The database is open: no more than the turns of a promise that was kept lie between.
  for (let turn = 0; turn < 5; turn++) await Promise.resolve();
  expect(begun.mock.calls.map(([, mode, options]) => [mode, options])).toEqual([
    ['readwrite', { durability: 'strict' }],
  ]);
  expect(committed).toHaveBeenCalledTimes(1);
  expect(await writing).toBe(true);
});
