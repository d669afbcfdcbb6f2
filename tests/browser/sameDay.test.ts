/**
 * What core answers when the whole day is asked at once is what the app shows, at every demo field.
 */

import type { Page } from 'playwright-core';
import { askDay } from '../../src/core';
import { demoAircraft, demoFields } from '../core/documents/demo';
import { expect, test } from './harness';
import { EVENING, key, openPlace, read, setWind } from './pilot';
import { answer, beginAt } from './weather';

const SLEET = demoAircraft.find(({ code }) => code === 'sleet') ?? null;

/** The metres that stand behind a name: planned and expected, or one of them. */
async function metres(page: Page, name: RegExp): Promise<number[]> {
  const keys = page.locator('dl > div').filter({ hasText: name }).first().getByRole('button');
  return (await keys.allTextContents()).map((text) => Number(text.replace(/[^\d−-]/g, '')));
}

test.for(demoFields.map((field) => ({ field, code: field.code })))(
  'at $code the app shows the best end, the air and the take-off that askDay gives',
  async ({ field, code }, { open }) => {
    const text = `METAR ${code} 051850Z 27012G20KT 9999 FEW030 14/06 Q1009`;
    const asked = await askDay({
      field,
      aircraft: SLEET,
      at: EVENING,
      wind: { text, north: 'true' },
    });
    const page = await open('tablet', { at: EVENING });
    await beginAt(page, code);
    await setWind(page, text);
    const best = asked.wind.ranked?.best?.designator;
    if (best === undefined) {
      await expect.poll(() => read(answer(page))).toMatch(/^Best runway\s*None/);
      return;
    }
    await expect.poll(() => read(answer(page))).toMatch(new RegExp(`^Best runway\\s*${best}`));
    await key(page, new RegExp(`^Use ${best}`))
      .first()
      .click();
    await openPlace(page, 'Numbers');
    await page.getByRole('heading', { name: `Take-off on ${best}` }).waitFor();
    const { planned, expected } = asked.numbers.today?.takeoff ?? {};
    if (planned?.because !== null || expected?.because !== null) throw new Error('no take-off');
    const runs = [planned, expected].map(({ figures }) => figures.runM.value ?? 0);
    // Needed lengths stand to ten metres, rounded up.
    await expect
      .poll(() => metres(page, /^Take-off run/))
      .toEqual(runs.map((runM) => Math.ceil(runM / 10) * 10));
    const { pressureAltitude } = asked.conditions.air ?? {};
    const [shown = Number.NaN] = await metres(page, /^Pressure altitude/);
    expect(Math.abs(shown - (pressureAltitude?.value ?? 0))).toBeLessThanOrEqual(0.5);
  },
);
