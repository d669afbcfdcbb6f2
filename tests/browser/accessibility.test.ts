/** What axe-core finds in every place and sheet, in every theme: WCAG 2.2 AA and 7:1 contrast. */

import type { Page } from 'playwright-core';
import { objections } from './accessible';
import { expect, test } from './harness';
import {
  AIRCRAFT,
  clockKey,
  closeSheet,
  doneKey,
  EVENING,
  FIELD,
  key,
  openPlace,
  setWind,
  sortieKey,
  tick,
  toSteps,
  typeAnything,
} from './pilot';

/** The scenes, in order; each brings the page to it. */
const SCENES: readonly (readonly [string, (page: Page) => Promise<unknown>])[] = [
  ['the caution', (page) => key(page, 'Understood').waitFor()],
  ['the fields', (page) => key(page, 'Understood').click()],
  [
    'the keypad',
    async (page) => {
      await page.getByRole('button', { name: AIRCRAFT }).click();
      await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
      await typeAnything(page, '27012G20KT 240V300');
    },
  ],
  ['what cannot be read', (page) => typeAnything(page, '37012 quite a wind')],
  [
    'Wind',
    async (page) => {
      await setWind(page, '27012G20KT 240V300');
      await page.getByRole('img', { name: /^Dial/ }).waitFor();
    },
  ],
  ['Wind out of limits', (page) => setWind(page, '31036G48KT')],
  [
    'Steps',
    async (page) => {
      await setWind(page, '27012G20KT 240V300');
      await key(page, 'Use 28').first().click();
      await openPlace(page, 'Steps');
      await doneKey(page).waitFor();
      await tick(page);
    },
  ],
  ['why a step cannot be done', (page) => key(page, 'Cannot').click()],
  [
    'all steps',
    async (page) => {
      await closeSheet(page);
      await page.getByRole('button', { name: /^Ramp, \d/ }).click();
    },
  ],
  [
    'Taxi',
    async (page) => {
      await closeSheet(page);
      await openPlace(page, 'Taxi');
    },
  ],
  ['Numbers', (page) => openPlace(page, 'Numbers')],
  [
    'a number that is asked why',
    (page) => page.getByRole('button', { name: '138 kt' }).first().click(),
  ],
  [
    'Log',
    async (page) => {
      await closeSheet(page);
      await openPlace(page, 'Log');
    },
  ],
  ['Sortie', (page) => sortieKey(page).click()],
  ['Library', (page) => key(page, 'Library').click()],
  ['Device', (page) => key(page, 'Device').click()],
  ['About', (page) => key(page, 'About').click()],
  [
    'clock',
    async (page) => {
      await closeSheet(page);
      await clockKey(page).click();
    },
  ],
];

test('axe has nothing to say about any place, any sheet, the keypad or the caution', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  const found: string[] = [];
  for (const [scene, come] of SCENES) {
    await come(page);
    found.push(...(await objections(page)).map((objection) => `${scene}, ${objection}`));
  }
  expect(found).toEqual([]);
});

test('axe is asked: it objects to a pale text and to a key without a name', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await page.evaluate(() => {
    const pale = document.createElement('p');
    pale.textContent = 'pale';
    pale.style.color = '#999';
    pale.style.background = '#fff';
    document.querySelector('main')?.prepend(pale, document.createElement('button'));
  });
  const found = (await objections(page, ['day', 'dusk'])).join('\n');
  for (const rule of ['by day: color-contrast', 'by dusk: color-contrast', 'by day: button-name'])
    expect(found).toContain(rule);
});

test('axe has nothing to say about two places side by side', async ({ open }) => {
  const page = await open('large tablet on its side', { at: EVENING });
  for (const [, come] of SCENES.slice(0, 7)) await come(page);
  expect(await objections(page)).toEqual([]);
});

/** What shows colours of its own although the system forces its colours on the page. */
const ownColours = (page: Page) =>
  page.evaluate(() => {
    const probe = document.body.appendChild(document.createElement('i'));
    const forced = new Set(
      ['Canvas', 'CanvasText', 'Highlight', 'HighlightText', 'GrayText'].map((name) => {
        probe.style.color = name;
        return getComputedStyle(probe).color;
      }),
    );
    probe.remove();
    // A pattern is drawn in what it is made of.
    const isNone = (colour: string) => /^none|^url|, 0\)$/.test(colour);
    return [...document.querySelectorAll('svg :is(path, circle, rect, line, text)')]
      .filter((shape) => shape.checkVisibility())
      .flatMap((shape) => {
        const { fill, stroke } = getComputedStyle(shape);
        return [fill, stroke].filter((colour) => !isNone(colour) && !forced.has(colour));
      });
  });

test('with colours forced by the system all that is drawn is in them, and what is chosen has a heavier edge', async ({
  open,
}) => {
  const page = await open('tablet', {
    at: EVENING,
    context: { forcedColors: 'active', colorScheme: 'dark' },
  });
  const found: string[] = [];
  const look = async (where: string) => {
    found.push(...(await ownColours(page)).map((colour) => `${where}: ${colour}`));
  };
  await toSteps(page);
  await look('Steps');
  const done = doneKey(page);
  // What fills the key while it is held is seen on it.
  const [ground, fills] = await done.evaluate((element) => [
    getComputedStyle(element).backgroundColor,
    getComputedStyle(element, '::before').backgroundColor,
  ]);
  expect(fills).not.toBe(ground);
  const edge = (name: string) =>
    page
      .getByRole('navigation', { name: 'Places' })
      .getByRole('button', { name })
      .evaluate((element) => Number.parseFloat(getComputedStyle(element).borderTopWidth));
  expect(await edge('Steps')).toBeGreaterThan(await edge('Wind'));
  await openPlace(page, 'Wind');
  await page.getByRole('img', { name: /^Dial/ }).waitFor();
  await look('Wind');
  await openPlace(page, 'Taxi');
  await key(page, 'Route').click();
  await key(page, 'Stand 6').click();
  await closeSheet(page);
  await look('Taxi');
  await openPlace(page, 'Numbers');
  await page.getByText('Take-off run').first().waitFor();
  await look('Numbers');
  expect(found).toEqual([]);
  // Without them it is in the theme's own.
  await page.emulateMedia({ forcedColors: 'none' });
  expect(await ownColours(page)).not.toEqual([]);
});
