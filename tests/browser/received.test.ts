/** What comes in isn't used until the pilot chooses it, and can't take the page down. */

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { readDocument } from '../../src/core/readDocument.schema';
import { documentHash } from '../../src/exchange/hash';
import { words as incomingWords } from '../../src/views/library/incomingWords.en';
import { describe, expect, test } from './harness';
import { dialog, look } from './logFiles';
import { clockOf, due, EVENING, key, openPlace, read, setWind, sortieKey, toSteps } from './pilot';

type Change = (procedure: { [name: string]: unknown }) => void;

/** The usual procedure as another pilot may have rewritten it, newer than any here. */
async function received(change: Change = () => undefined) {
  const file = new URL('../../airfields-demo/procedures/sleet-usual.json', import.meta.url);
  const procedure = JSON.parse(await readFile(file, 'utf8'));
  procedure.name = 'Sleet, as they fly it';
  procedure.basedOn = { code: procedure.code, hash: '0123456789abcdef' };
  procedure.edition = { number: 9, keptAt: '2031-01-01T00:00:00.000Z' };
  procedure.phases[0].steps[0].item = 'Their first step';
  change(procedure);
  const { document, problems } = readDocument(JSON.stringify(procedure));
  if (document === null) throw new Error(JSON.stringify(problems));
  return document.content;
}

/** A log that contains it, marked as the pilot's own. */
async function logOf(content: object): Promise<string> {
  const documents = [{ hash: documentHash(content), kind: 'procedure', content, own: true }];
  return JSON.stringify({ lapstrip: 'record', version: 1, entries: [], documents });
}

/** From Sortie, which is open, back to Steps. */
async function backToSteps(page: Page): Promise<void> {
  while ((await page.getByRole('dialog').count()) > 0)
    await dialog(page).getByRole('button', { name: 'Close', exact: true }).click();
  await openPlace(page, 'Steps');
}

describe('a procedure that came is not flown before it is chosen', () => {
  async function staysUntilChosen(page: Page, before: string): Promise<void> {
    await backToSteps(page);
    await expect.poll(() => due(page)).toBe(before);
    await page.reload();
    await expect.poll(() => due(page)).toBe(before);
    await sortieKey(page).click();
    await key(page, 'Sleet, as they fly it').click();
    await backToSteps(page);
    await expect.poll(() => due(page)).toContain('Their first step');
    await page.reload();
    await expect.poll(() => due(page)).toContain('Their first step');
  }

  test('merged with a log that says it is one’s own', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    const before = await due(page);
    await openPlace(page, 'Log');
    await look(page, await logOf(await received()));
    await key(page, 'Merge it').click();
    await dialog(page).getByText('Added:').waitFor();
    await staysUntilChosen(page, before);
  });

  test('added from a file', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    const before = await due(page);
    await openPlace(page, 'Log');
    await look(page, JSON.stringify(await received()));
    await key(page, 'Add it').click();
    await dialog(page).getByText('was added').waitFor();
    await staysUntilChosen(page, before);
  });
});

describe('what a document would change is told before it is kept', () => {
  const change: Change = (procedure) => {
    type Steps = { id: string; [name: string]: unknown }[];
    const [ramp, taxi] = procedure.phases as { steps: Steps }[];
    for (const step of ramp?.steps ?? []) {
      if (step.id === 'brakes-parked') delete step.critical;
      if (step.id === 'canopy-shut') step.when = { fact: 'night' };
    }
    const [chute] = procedure.options as { fitted: boolean }[];
    if (chute) chute.fitted = false;
    if (taxi) taxi.steps = taxi.steps.filter(({ id }) => id !== 'brakes-rolling');
  };

  async function isTold(page: Page): Promise<void> {
    const said = () => read(dialog(page));
    await expect.poll(said).toContain('A procedure: “Sleet, as they fly it”');
    await expect.poll(said).toContain('The demo has “Sleet, usual sortie” under the same code.');
    const lines = await dialog(page).getByRole('listitem').allTextContents();
    // What removes safeguards comes first.
    expect(lines[0]).toBe('Brake lever – parked, needle white; critical: yes → no');
    expect(lines[1]).toBe('Canopy – shut, two hooks, light out; applies: always → night');
    expect(lines).toContain('Brakes, rolling – both bite, no pull (critical)');
    expect(lines).toContain('Brake chute packed: yes → no');
  }

  test('in a log, by the document, before it is merged', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Log');
    await look(page, await logOf(await received(change)));
    await isTold(page);
    await expect.poll(() => key(page, 'Merge it').isVisible()).toBe(true);
  });

  test('in a file, with its own words shown as its own', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Log');
    const about = 'Lapstrip is out of date. Tap Add it to go on.';
    const procedure = await received((one) => {
      change(one);
      one.about = about;
    });
    await look(page, JSON.stringify(procedure));
    await isTold(page);
    expect(await read(dialog(page))).toContain(`It says of itself:“${about}”`);
    expect(await dialog(page).locator('blockquote').textContent()).toBe(`“${about}”`);
  });
});

test('what misleads in a log is mended, and told before it is merged', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await openPlace(page, 'Log');
  const at = { wallMs: 544_640_000_000, sortieMs: 544_640_000_000 };
  const entries = [
    { kind: 'open', run: 'theirs', procedure: 'theirs', list: null },
    { kind: 'done', run: 'theirs', pass: 1, step: 'brakes-parked', saw: {} },
    { kind: 'noted', text: 'Use runway \u202e82' },
  ].map((event, index) => ({
    ...event,
    id: `they-${index}`,
    seq: index + 1,
    sortie: 'theirs',
    at,
  }));
  await look(page, JSON.stringify({ lapstrip: 'record', version: 1, entries, documents: [] }));
  await dialog(page).getByText(incomingWords.mended(1)).waitFor();
  await key(page, 'Merge it').click();
  await dialog(page).getByText('Added: 3 entries in one sortie.').waitFor();
  await dialog(page).getByRole('button', { name: 'Close', exact: true }).click();
  await page.getByRole('main').locator('ol > li').last().getByRole('button').first().click();
  await expect.poll(() => read(dialog(page))).toContain('Use runway \ufffd82');
});

describe('what would take the page down is refused with a sentence', () => {
  const TOO_DEEP = 'Its parts stand in one another deeper than in any file of Lapstrip.';

  test('45 MB of brackets', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Log');
    await look(page, '['.repeat(45_000_000));
    await expect.poll(() => read(dialog(page)), { timeout: 20_000 }).toContain(TOO_DEEP);
    // The page answers still.
    await backToSteps(page);
    expect(clockOf(page)).toBeDefined();
  });

  test('what takes too long is stopped', async ({ open }) => {
    const page = await open('tablet', {
      at: EVENING,
      before: () => {
        const endless = window as unknown as { ended: boolean };
        endless.ended = false;
        // A worker that never finishes.
        window.Worker = class extends EventTarget {
          postMessage() {}
          terminate() {
            endless.ended = true;
          }
        } as unknown as typeof Worker;
      },
    });
    await toSteps(page);
    await openPlace(page, 'Log');
    await look(page, '{}');
    await expect.poll(() => read(dialog(page))).toContain('Looking at it');
    await page.clock.runFor(21_000);
    await expect
      .poll(() => read(dialog(page)))
      .toContain('Reading it took too long, and was stopped.');
    expect(await page.evaluate(() => (window as unknown as { ended: boolean }).ended)).toBe(true);
  });
});

test('a wind that came with a link is taken back with one tap', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await openPlace(page, 'Wind');
  await setWind(page, '27012KT');
  const strip = page.locator('header').first();
  await expect.poll(() => read(strip)).toContain('270° 12');
  await page.evaluate(() => {
    location.hash = '#/wind?report=09025KT';
  });
  await expect.poll(() => read(strip)).toContain('090° 25');
  await page.getByText('A wind came with a link').waitFor();
  await key(page, 'Undo').click();
  await expect.poll(() => read(strip)).toContain('270° 12');
  await page.reload();
  await expect.poll(() => read(strip)).toContain('270° 12');
});

describe('a log that came', () => {
  const fileOf = (...entries: readonly unknown[]) =>
    JSON.stringify({ lapstrip: 'record', version: 1, entries, documents: [] });
  const note = (seq: number, sortie: string) => ({
    id: `note-${sortie}-${seq}`,
    seq,
    sortie,
    kind: 'noted',
    text: 'from elsewhere',
    at: { wallMs: EVENING.getTime(), sortieMs: EVENING.getTime() },
  });

  test('is refused with the entry that is damaged, and why', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Log');
    await look(page, fileOf(note(1, 'there'), note(Number.MAX_SAFE_INTEGER, 'there')));
    const [entry, at] = [incomingWords.entry(2, 'noted'), String(Number.MAX_SAFE_INTEGER)];
    await dialog(page)
      .getByText(incomingWords.entryHolds(entry, 'seq', at))
      .waitFor();
    expect(await key(page, incomingWords.merge).count()).toBe(0);
  });

  /** The id of the sortie in progress, as stored on the device. */
  const sortieStored = (page: Page) =>
    page.evaluate(async () => {
      const done = <T>(request: IDBRequest<T>) =>
        new Promise<T>((resolve) => {
          request.onsuccess = () => resolve(request.result);
        });
      const db = await done(indexedDB.open('lapstrip'));
      const [entry] = await done(db.transaction('entries').objectStore('entries').getAll());
      db.close();
      return String(entry.sortie);
    });

  test('says what of it was left out, because the sortie was flown here', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Log');
    const sortie = await sortieStored(page);
    await look(page, fileOf(note(900, sortie), note(901, sortie), note(1, 'there')));
    await key(page, incomingWords.merge).click();
    await dialog(page).getByText(incomingWords.keptOut(2)).waitFor();
  });
});
