/** The whole app in German: chosen or asked for by the device, complete, and fitting every screen. */

import type { Page } from 'playwright-core';
import harrow from '../../airfields-demo/fields/XHAR.json';
import { stepWords } from '../../src/parts/stepTextWords.de';
import { words as rooms } from '../../src/shell/roomWords.de';
import { words as caution } from '../../src/shell/words.de';
import { words as card } from '../../src/views/card/words.de';
import { words as device } from '../../src/views/device/words.de';
import { words as fieldEditor } from '../../src/views/fieldEditor/words.de';
import { words as documents } from '../../src/views/library/documentWords.de';
import { words as incoming } from '../../src/views/library/incomingWords.de';
import { words as library } from '../../src/views/library/words.de';
import { words as sortie } from '../../src/views/sortie/words.de';
import { words as steps } from '../../src/views/steps/words.de';
import { words as taxi } from '../../src/views/taxi/words.de';
import { words as wind } from '../../src/views/wind/words.de';
import { objections } from './accessible';
import { misfits, pageScroll, resize } from './fitting';
import { describe, expect, test } from './harness';
import {
  AIRCRAFT,
  clockKey,
  clockOf,
  closeSheet,
  comes,
  EVENING,
  FIELD,
  key,
  openDevice,
  openLibrary,
  pressDeliberately,
  read,
  sortieKey,
  standStill,
  toSteps,
} from './pilot';
import { EVERY_SCREEN, SCREENS } from './screens';
import { wear } from './themes';

const english = import.meta.glob<object>('../../src/**/*.en.ts', { eager: true });
const german = import.meta.glob<object>('../../src/**/*.de.ts', { eager: true });

function textsOf(value: unknown): string[] {
  if (typeof value === 'string') return [value];
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(textsOf);
}

interface Translated {
  readonly about: string;
  readonly stop?: readonly string[];
  readonly translations: { readonly de: Readonly<Record<string, string>> };
}

/**
 * Texts of the demo fields and aircraft that stand there in English, each also as lists and keys
 * show it.
 */
const ofDocuments = Object.values(
  import.meta.glob<Translated>('../../airfields-demo/{fields,aircraft}/*.json', {
    eager: true,
    import: 'default',
  }),
).flatMap(({ about, stop = [], translations }) => [
  ...Object.entries(translations.de).flatMap(([english, german]) =>
    english === german ? [] : [english, taxi.afterwards(english)],
  ),
  about.replace(/\. .*/, '.'),
  stop.join(', '),
  card.toStop(stop.join(', ')),
]);

/** Words that an English page has and a German one doesn't. */
const inGerman = new Set(Object.values(german).flatMap(textsOf));
const onlyEnglish = new Set(
  Object.values(english)
    .flatMap(textsOf)
    .concat(ofDocuments)
    .filter((text) => /\p{Ll}{3}/u.test(text) && !inGerman.has(text)),
);

/** The narrowest page that must do without sideways scrolling: WCAG 2.2, 1.4.10 Reflow. */
const NARROWEST = { width: 320, height: 640 };

const GERMAN = { at: EVENING, context: { locale: 'de-DE' } };

const place = (page: Page, name: keyof typeof caution.places) =>
  page
    .getByRole('navigation')
    .last()
    .getByRole('button', { name: caution.places[name], exact: true })
    .click();

/** Every piece of text on the page or read out there, except what is marked as another language. */
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
  ['way', (page) => key(page, taxi.route).click()],
  [
    'calls',
    async (page) => {
      await closeSheet(page);
      await page.getByRole('button').filter({ hasText: taxi.allCalls }).click();
    },
  ],
  [
    'Numbers',
    async (page) => {
      await closeSheet(page);
      await place(page, 'numbers');
    },
  ],
  ['Log', (page) => place(page, 'log')],
  ['Sortie', (page) => sortieKey(page).click()],
  ['load sheet', (page) => key(page, sortie.openLoad).click()],
  [
    'Library',
    async (page) => {
      await closeSheet(page);
      await key(page, rooms.tabs.library).click();
    },
  ],
  ['Device', (page) => key(page, rooms.tabs.device).click()],
  ['About', (page) => key(page, rooms.tabs.about).click()],
  [
    'clock',
    async (page) => {
      await closeSheet(page);
      await clockKey(page).click();
    },
  ],
  [
    'Big card',
    async (page) => {
      await closeSheet(page);
      await place(page, 'steps');
      await page.getByRole('main').getByRole('button', { name: steps.bigCard }).click();
      await key(page, card.close).waitFor();
    },
  ],
];

describe('on a device that speaks German', () => {
  test('nothing is left in English, and everything fits', { timeout: 240_000 }, async ({
    open,
  }) => {
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
      await resize(page, NARROWEST);
      // By night letters are larger.
      for (const theme of ['day', 'night'] as const) {
        await wear(page, theme);
        const wrong = [...(await misfits(page)), ...(await pageScroll(page))];
        found.push(...wrong.map((one) => `${scene}, 320 px, ${theme}: ${one}`));
      }
      await wear(page, 'day');
    }
    expect(found).toEqual([]);
    expect(await page.locator('html').getAttribute('lang')).toBe('de');
    await resize(page, SCREENS.phone.viewport);
    expect(await objections(page)).toEqual([]);
  });
});

describe('what stands on a German page in English', () => {
  /** From the start to Wind with a field chosen, and the Library open. */
  async function toLibrary(page: Page, field = FIELD): Promise<void> {
    await key(page, caution.caution.understood).click();
    await page.getByRole('button', { name: AIRCRAFT }).click();
    await page.getByRole('button', { name: new RegExp(`^${field}`) }).click();
    await openLibrary(page);
  }

  async function enter(page: Page, text: string): Promise<void> {
    await page.getByRole('textbox', { name: wind.entry }).click();
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }

  test('is marked where a field was brought without German texts', async ({ open }) => {
    const page = await open('phone', GERMAN);
    await toLibrary(page);
    const { translations: _, ...untranslated } = harrow;
    await page.getByLabel(documents.choose).setInputFiles({
      name: 'own.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify({ ...untranslated, code: 'XOWN', name: 'Teasel Flat' })),
    });
    const about = page.getByText(harrow.about);
    await about.waitFor();
    expect(await about.getAttribute('lang')).toBe('en');
    await key(page, incoming.add).click();
    await page.getByText(incoming.wasAdded('Teasel Flat')).waitFor();
    await closeSheet(page);
    await key(page, rooms.tabs.sortie).click();
    await page.getByRole('dialog').getByRole('button', { name: /^XOWN/ }).click();
    await closeSheet(page);
    await enter(page, '27012G20KT');
    await place(page, 'taxi');
    await key(page, taxi.route).click();
    const spot = page.getByRole('listitem').filter({ hasText: 'HS 1' });
    // The field's own words, and not the app's.
    expect(await spot.locator('q').getAttribute('lang')).toBe('en');
    await expect.poll(() => read(spot.locator('q'))).toBe(`„${harrow.taxi.hotSpots[0]?.about}“`);
  });

  test('is marked within a title, the name of a key and what is to be read back', async ({
    open,
  }) => {
    const page = await open('phone', GERMAN);
    // Where a controller answers, something is to be read back.
    await toLibrary(page, 'XMAR');
    await key(page, rooms.tabs.sortie).click();
    await page
      .getByRole('dialog')
      .getByRole('button', { name: /Sleet, usual/ })
      .click();
    await closeSheet(page);
    await enter(page, '23012KT');
    await key(page, wind.use('23R')).first().click();
    await place(page, 'steps');
    await pressDeliberately(page, key(page, steps.hold), clockOf(page));
    const held = key(page, `${steps.doneNow}: Seat pins`);
    await held.waitFor();
    expect(await held.locator('[lang="en"]').allTextContents()).toEqual(['Seat pins']);
    await key(page, steps.cannot).tap();
    const title = page
      .getByRole('dialog', { name: /: geht nicht$/ })
      .getByRole('heading')
      .first();
    await title.waitFor();
    expect(await title.locator('[lang="en"]').allTextContents()).toEqual(['Brake lever']);
    await closeSheet(page);
    await place(page, 'taxi');
    await page.getByRole('button').filter({ hasText: taxi.allCalls }).click();
    const readBack = page.locator('p').filter({ hasText: 'Wort für Wort' }).first();
    await readBack.waitFor();
    expect(await read(readBack)).toContain(
      'Start gesagt wird, Wort für Wort: runway two three right',
    );
    expect(await readBack.locator('[lang="en"]').allTextContents()).toContain(
      'runway two three right',
    );
  });
});

test('a field that is drawn says it is described in German, and what it begins with on the radio is English', async ({
  open,
}) => {
  const page = await open('tablet', GERMAN);
  await key(page, caution.caution.understood).click();
  await openLibrary(page);
  await key(page, library.drawField).click();
  const drawing = page.getByRole('dialog', { name: fieldEditor.draw });
  const language = drawing.getByRole('group', { name: fieldEditor.language });
  await language.waitFor();
  const german = language.getByRole('button', { name: 'Deutsch' });
  await expect.poll(() => german.getAttribute('aria-pressed')).toBe('true');
  const about = drawing.getByLabel(fieldEditor.about);
  expect(await about.getAttribute('lang')).toBeNull();
  await key(page, fieldEditor.addRadio).click();
  expect(await drawing.getByLabel(fieldEditor.radioName).inputValue()).toBe('Radio');
  await language.getByRole('button', { name: 'Englisch' }).click();
  await expect.poll(() => about.getAttribute('lang')).toBe('en');
});

test('the keys of every step and moment of a sortie hold their words, on the smallest phones', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('small phone', GERMAN);
  await key(page, caution.caution.understood).click();
  await page.getByRole('button', { name: 'Pask Tussock' }).click();
  await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
  await page.getByRole('textbox', { name: wind.entry }).click();
  await page.keyboard.type('27008G14KT');
  await page.keyboard.press('Enter');
  await key(page, wind.use('28')).first().click();
  await place(page, 'steps');
  const wait = await standStill(page);
  const ticks = [steps.done, steps.said, steps.seen, steps.released, steps.airborne, steps.landed];
  const next = page
    .getByRole('main')
    .getByRole('button', { name: new RegExp(`^(${ticks.join('|')})( ${steps.holdTheKey})?$`) });
  const end = key(page, steps.endKey);
  const supply = key(page, stepWords.supply.wind);
  await next.waitFor();
  const found = new Set<string>();
  const seen = new Set<string>();
  const LONGEST = 100;
  for (let step = 0; step < LONGEST; step++) {
    await comes(next.or(end).or(supply), wait);
    const keys = (await page.getByRole('main').getByRole('button').allTextContents()).join();
    if (!seen.has(keys)) {
      seen.add(keys);
      for (const screen of ['small phone', 'phone'] as const) {
        await resize(page, SCREENS[screen].viewport);
        for (const misfit of await misfits(page)) found.add(`${screen}: ${misfit}`);
      }
    }
    if (await end.isVisible()) break;
    const drawn = await read(page.getByRole('main'));
    if (await supply.isVisible()) {
      await place(page, 'wind');
      await key(page, wind.use('28')).first().click();
      await place(page, 'steps');
    } else await pressDeliberately(page, next, wait, steps.holdTheKey);
    await expect.poll(() => read(page.getByRole('main'))).not.toBe(drawn);
  }
  await expect.poll(() => end.isVisible()).toBe(true);
  expect([...found]).toEqual([]);
});

test('is chosen in Device, kept, and taken back; the sortie goes on', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await openDevice(page);
  await key(page, 'Deutsch').click();
  await page.getByRole('button', { name: caution.places.wind, exact: true }).first().waitFor();
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await page.reload();
  await openDevice(page);
  await page
    .getByRole('dialog', { name: rooms.titles.device })
    .getByText(device.language)
    .first()
    .waitFor();
  await key(page, 'English').click();
  await page.getByRole('button', { name: 'Steps', exact: true }).first().waitFor();
  await expect.poll(() => read(page.locator('header').first())).toContain('28');
});
