/** The whole app in German: chosen or asked for by the device, complete, and fitting every screen. */

import type { Page } from 'playwright-core';
import { words as caution } from '../../src/shell/words.de';
import { words as card } from '../../src/views/card/words.de';
import { words as device } from '../../src/views/sortie/deviceWords.de';
import { words as sortie } from '../../src/views/sortie/words.de';
import { words as steps } from '../../src/views/steps/words.de';
import { words as wind } from '../../src/views/wind/words.de';
import { objections } from './accessible';
import { misfits, resize } from './fitting';
import { describe, expect, test } from './harness';
import { AIRCRAFT, EVENING, FIELD, key, read, sortieKey, toSteps } from './pilot';
import { EVERY_SCREEN, SCREENS } from './screens';

const english = import.meta.glob<object>('../../src/**/*.en.ts', { eager: true });
const german = import.meta.glob<object>('../../src/**/*.de.ts', { eager: true });

function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsOf);
}

/** What a page says that speaks English, and none that speaks German does. */
const inGerman = new Set(Object.values(german).flatMap(textsOf));
const onlyEnglish = new Set(
  Object.values(english)
    .flatMap(textsOf)
    .filter((text) => /\p{Ll}{3}/u.test(text) && !inGerman.has(text)),
);

const GERMAN = { at: EVENING, context: { locale: 'de-DE' } };

const place = (page: Page, name: keyof typeof caution.places) =>
  page
    .getByRole('navigation')
    .last()
    .getByRole('button', { name: caution.places[name], exact: true })
    .click();

/** What stands on the page or is read out there, piece by piece, but for what is marked as another language. */
const said = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const found: string[] = [];
    const foreign = '[lang]:not(html, [lang|=de])';
    const texts = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = texts.nextNode(); node !== null; node = texts.nextNode()) {
      if (!node.parentElement?.closest(foreign)) found.push((node.textContent ?? '').trim());
    }
    for (const element of document.querySelectorAll('[aria-label], [title], [placeholder]')) {
      if (element.closest(foreign)) continue;
      for (const name of ['aria-label', 'title', 'placeholder'])
        found.push(element.getAttribute(name)?.trim() ?? '');
    }
    return found;
  });

/** Each brings the page on from where the one before left it. */
const SCENES: readonly (readonly [string, (page: Page) => Promise<unknown>])[] = [
  ['caution', (page) => key(page, caution.caution.understood).waitFor()],
  ['fields', (page) => key(page, caution.caution.understood).click()],
  [
    'Wind',
    async (page) => {
      await page.getByRole('button', { name: AIRCRAFT }).click();
      await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
      await page.getByRole('textbox', { name: wind.entry }).click();
      await page.keyboard.type('27012G20KT 240V300');
      await page.getByText('(284° missweisend)').waitFor();
    },
  ],
  [
    'Wind, set',
    async (page) => {
      await page.keyboard.press('Enter');
      await page
        .getByRole('img', { name: /Piste|Wind/ })
        .first()
        .waitFor();
    },
  ],
  [
    'Steps',
    async (page) => {
      await key(page, wind.use('28')).first().click();
      await place(page, 'steps');
      await key(page, steps.hold).waitFor();
    },
  ],
  ['Taxi', (page) => place(page, 'taxi')],
  ['Numbers', (page) => place(page, 'numbers')],
  ['Log', (page) => place(page, 'log')],
  ['Sortie', (page) => sortieKey(page).click()],
  [
    'Big card',
    async (page) => {
      await page.keyboard.press('Escape');
      await place(page, 'steps');
      await page.getByRole('main').getByRole('button', { name: steps.bigCard }).click();
      await key(page, card.close).waitFor();
    },
  ],
];

describe('on a device that speaks German', () => {
  test('nothing is left in English, and everything fits', { timeout: 90_000 }, async ({ open }) => {
    const page = await open('phone', GERMAN);
    const found: string[] = [];
    for (const [scene, come] of SCENES) {
      await resize(page, SCREENS.phone.viewport);
      await come(page);
      await page.waitForLoadState('networkidle');
      const left = (await said(page)).filter((text) => onlyEnglish.has(text));
      found.push(...left.map((text) => `${scene} says ${text}`));
      for (const screen of EVERY_SCREEN) {
        await resize(page, SCREENS[screen].viewport);
        found.push(...(await misfits(page)).map((misfit) => `${scene}, ${screen}: ${misfit}`));
      }
    }
    expect(found).toEqual([]);
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    await resize(page, SCREENS.phone.viewport);
    expect(await objections(page)).toEqual([]);
  });
});

test('is chosen in Sortie, kept, and taken back; the sortie goes on', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await sortieKey(page).click();
  await key(page, 'Deutsch').click();
  await page.getByRole('button', { name: caution.places.wind, exact: true }).first().waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await page.reload();
  await sortieKey(page).click();
  await page
    .getByRole('dialog', { name: sortie.title })
    .getByText(device.language)
    .first()
    .waitFor();
  await key(page, 'English').click();
  await page.getByRole('button', { name: 'Steps', exact: true }).first().waitFor();
  expect(await read(page.locator('header').first())).toContain('28');
});
