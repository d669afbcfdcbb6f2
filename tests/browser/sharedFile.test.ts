/** Files that come from outside the Library's key: shared by another app, dropped on the window. */

import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { words as incomingWords } from '../../src/views/library/incomingWords.en';
import { expect, test } from './harness';
import { beginSortie, EVENING, read, setWind, waitUntilStored } from './pilot';

const FIELD = JSON.parse(
  await readFile(new URL('../../airfields-demo/fields/XHAR.json', import.meta.url), 'utf8'),
);
const OWN = JSON.stringify({ ...FIELD, code: 'XOWN', name: 'Own Strip' });

/** What the sheet on top says. */
const said = (page: Page) => read(page.getByRole('dialog').last());

test('a file shared by another app is shown before it is kept, once, and a text goes to the entry', async ({
  device,
}) => {
  const page = await device.start('tablet', { at: EVENING });
  await beginSortie(page);
  await setWind(page, '27012KT');
  await waitUntilStored(page);
  // As the browser posts the form of a share target (W3C Web Share Target, 4.2).
  const share = (fields: Record<string, string>, file?: string) =>
    page.evaluate(
      async ([texts, content]) => {
        const form = new FormData();
        for (const [name, text] of Object.entries(texts)) form.append(name, text);
        if (content !== undefined) {
          form.append('file', new File([content], 'own.json', { type: 'application/json' }));
        }
        return (await fetch('./', { method: 'POST', body: form })).url;
      },
      [fields, file] as const,
    );
  const address = await share({ title: 'Own Strip' }, OWN);
  await page.goto(address);
  await expect.poll(() => said(page)).toContain('Own Strip');
  await expect.poll(() => said(page)).toContain(incomingWords.add);
  expect(new URL(page.url()).search).toBe('');
  expect(await page.evaluate(() => caches.has('lapstrip-shared'))).toBe(false);

  const text = await share({ title: 'Wind', text: '31008KT' });
  expect(new URL(text).searchParams.get('text')).toBe('31008KT');
});

test('a file dropped anywhere on the window is shown before it is kept', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await beginSortie(page);
  await setWind(page, '27012KT');
  const drop = (content: string) =>
    page.evaluate((text) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([text], 'own.json', { type: 'application/json' }));
      const event = new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true });
      document.body.dispatchEvent(event);
      return event.defaultPrevented;
    }, content);
  // Listening begins once the first answer is on screen.
  await expect.poll(() => drop(OWN)).toBe(true);
  await expect.poll(() => said(page)).toContain('Own Strip');
});
