/** What a key press costs while writing a step, on a processor slowed four times. */

import type { Page } from 'playwright-core';
import { beginSortie, typeWind } from '../browser/pilot';
import { openStep, openWriting, responseEntry } from '../browser/writing';
import { FIRST_WIND } from './firstAnswer';
import { keyRow } from './keys';
import type { Rows } from './row';

const TYPED = ['take-off, both lamps out', 'half', '{rotateKt} kt at {massKg} kg'];

/** Opens the response of a step in the middle of the longest demo procedure. */
async function beginWriting(page: Page): Promise<void> {
  await beginSortie(page);
  await typeWind(page, FIRST_WIND);
  await page.keyboard.press('Enter');
  await openWriting(page);
  await openStep(page, 'Taxi speed');
  await responseEntry(page).click();
}

export const rows: Rows = async () => [await keyRow('a step being written', beginWriting, TYPED)];
