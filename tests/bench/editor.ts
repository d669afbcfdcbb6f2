/** How long a key press in a step that is being written takes, on a processor slowed down four times. */

import type { Page } from 'playwright-core';
import { beginSortie, typeWind } from '../browser/pilot';
import { openStep, openWriting, responseEntry } from '../browser/writing';
import { FIRST_WIND } from './firstAnswer';
import { keyRow } from './keys';
import type { Rows } from './row';

/** What a step may be made to say. */
const TYPED = ['take-off, both lamps out', 'half', '{rotateKt} kt at {massKg} kg'];

/** Comes to the response of a step in the middle of the demo's longest procedure. */
async function beginWriting(page: Page): Promise<void> {
  await beginSortie(page);
  await typeWind(page, FIRST_WIND);
  await page.keyboard.press('Enter');
  await openWriting(page);
  await openStep(page, 'Taxi speed');
  await responseEntry(page).click();
}

/** The row of the table that is the editor's. */
export const rows: Rows = async () => [await keyRow('a step being written', beginWriting, TYPED)];
