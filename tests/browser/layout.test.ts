/** Everything fits on every screen, and a finger finds every key. */

import type { Page } from 'playwright-core';
import {
  type Control,
  controls,
  ENLARGED_SIZES,
  enlargeText,
  misfits,
  resize,
  scrolls,
  spilt,
  unseen,
} from './fitting';
import { expect, test } from './harness';
import {
  AIRCRAFT,
  beginSortie,
  clockKey,
  clockOf,
  closeSheet,
  doneKey,
  EVENING,
  FIELD,
  goOnFrom,
  key,
  openPlace,
  openSortie,
  pressDeliberately,
  setWind,
  sortieKey,
  tickAll,
  typeAnything,
} from './pilot';
import { wear } from './themes';
import { beginAt } from './weather';
import { openWriting } from './writing';

const SIZES = [
  [360, 640],
  [390, 844],
  [640, 360],
  [820, 1180],
  [1180, 820],
  [1366, 1024],
] as const;

/** From this size on two places stand side by side, CSS px: 60 by 36 rem. */
const WIDE = { width: 960, height: 576 };

/** A key used while moving, and every other control: at least this on the shorter side, CSS px. */
const MOVING_PX = 64;
const OTHER_PX = 44;

/** What is used while the aircraft moves: the places, the keypad, what ticks, and the end to use. */
const MOVING =
  /^(Wind|Taxi|Steps|Numbers|Log|Back|Later|(Done|Said)( ?Press and hold)?|Brakes released|Stopping|Airborne|Use \d\d|Go on|One back|\d|Set wind|Close)$/;

/** A scene by its name, with what brings the page to it. */
type Scene = readonly [string, (page: Page) => Promise<unknown>];

/** From brake release on. */
const ROLL: Scene = [
  'roll',
  async (page) => {
    await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
    await key(page, 'Airborne').waitFor();
  },
];

/** What a pilot sees on the way, in this order; each brings the page to it. */
const SCENES: readonly Scene[] = [
  ['caution', (page) => key(page, 'Understood').waitFor()],
  ['fields', (page) => key(page, 'Understood').click()],
  [
    'keypad',
    async (page) => {
      await page.getByRole('button', { name: AIRCRAFT }).click();
      await page.getByRole('button', { name: new RegExp(`^${FIELD}`) }).click();
      await typeAnything(page, '27012G20KT 240V300');
      await page.getByText('(284° magnetic)').waitFor();
    },
  ],
  ['Wind', (page) => setWind(page, '27012G20KT 240V300')],
  ['all ends out of limits', (page) => setWind(page, '31036G48KT')],
  ['no wind', (page) => setWind(page, 'VRB03KT')],
  [
    'Steps',
    async (page) => {
      await setWind(page, '27012G20KT 240V300');
      await key(page, 'Use 28').first().click();
      await openPlace(page, 'Steps');
      await doneKey(page).waitFor();
    },
  ],
  ['why not', (page) => key(page, 'Cannot').click()],
  [
    'all steps',
    async (page) => {
      await closeSheet(page);
      await page.getByRole('button', { name: /^Taxi, \d/ }).click();
    },
  ],
  [
    'something held back',
    async (page) => {
      await closeSheet(page);
      await goOnFrom(page, 'Ramp', 'Brief');
    },
  ],
  [
    'a held step before the runway',
    async (page) => {
      await key(page, 'Undo').click();
      await goOnFrom(page, 'Line-up', 'Nozzle light');
      await page.getByText('Outstanding, and runway check is next').waitFor();
    },
  ],
  [
    'Taxi',
    async (page) => {
      // What can be undone is offered for a while only.
      await page.clock.runFor(15_000);
      await openPlace(page, 'Taxi');
    },
  ],
  ['Numbers', (page) => openPlace(page, 'Numbers')],
  ['why', (page) => page.getByRole('button', { name: '138 kt' }).first().click()],
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
  [
    'interrupted',
    async (page) => {
      await closeSheet(page);
      await openPlace(page, 'Steps');
      await key(page, 'Interrupted').click();
    },
  ],
  [
    'brakes released',
    async (page) => {
      await key(page, 'Go on').click();
      await tickAll(page);
      await key(page, 'Brakes released').waitFor();
    },
  ],
  ROLL,
];

/** What is looked at while taxiing or rolling stands on one screen, and where the keypad opens too. */
const WHILE_MOVING: ReadonlyMap<string, string> = new Map([
  ['keypad', 'main, aside'],
  ['Steps', 'main'],
  ['something held back', 'main'],
  ['a held step before the runway', 'main'],
  ['Taxi', 'main'],
  ['interrupted', 'main'],
  ['brakes released', 'main'],
  ['roll', 'main'],
]);

/** Controls that are deliberately smaller; the reason stands beside each. */
const EXCEPTIONS: readonly ((control: Control, height: number) => boolean)[] = [
  // A phone on its side has 360 px for everything: the keypad and the places' keys are 44 px there.
  ({ name, height }, screen) =>
    screen === 360 &&
    height >= OTHER_PX &&
    /^(\d|Close|Set wind|Wind|Taxi|Steps|Numbers|Log)$/.test(name),
  // Numbers that open their reasons lie closer together there; nothing is lost by the wrong one.
  ({ name, height }, screen) =>
    screen === 360 && height >= 24 && /\d ?(kt|°|mag|spare|m)/.test(name),
  // On the roll nothing but the two keys at the bottom is to be found by feel.
  ({ name, height, width }) => name === 'Back' && Math.min(width, height) >= OTHER_PX,
];

const isMoving = ({ name, on }: Control) => on !== 'dialog' && MOVING.test(name);

/** Half a pixel on either edge may belong to no one. */
const ROUNDING_PX = 1;

const tooSmall = (control: Control, height: number) =>
  Math.min(control.width, control.height) + ROUNDING_PX <
    (isMoving(control) ? MOVING_PX : OTHER_PX) &&
  !EXCEPTIONS.some((allowed) => allowed(control, height));

/** What doesn't fit, or must be scrolled to. */
async function wrongAt(page: Page, scene: string): Promise<string[]> {
  const part = WHILE_MOVING.get(scene);
  return [
    ...(await misfits(page)),
    ...(part !== undefined && (await scrolls(page, part)) ? ['scrolls'] : []),
  ];
}

/** What is too small to hit. */
async function smallAt(page: Page, height: number): Promise<string[]> {
  const small = (await controls(page)).filter((control) => tooSmall(control, height));
  return small.map(({ name, width, height: high }) => `${name} ${width} x ${high}`);
}

test('every text fits and every key is large enough, from 360 x 640 to 1366 x 1024', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('large tablet on its side', { at: EVENING, path: '#/wind' });
  const found: string[] = [];
  // By night letters are widest, and some are left out. Each size begins as the one before it ended.
  const themes: ('day' | 'night')[] = ['day', 'night'];
  for (const [scene, come] of SCENES) {
    await resize(page, { width: 820, height: 1180 });
    await come(page);
    for (const [width, height] of SIZES) {
      await resize(page, { width, height });
      const places = width >= WIDE.width && height >= WIDE.height ? 1 : 0;
      await expect.poll(() => page.locator('aside').count()).toBe(places);
      const where = `${scene} at ${width} x ${height}`;
      for (const theme of themes) {
        await wear(page, theme);
        const wrong = await wrongAt(page, scene);
        // A finger is as large in any theme: each size is tried in one, and the next in the other.
        if (theme === themes[0]) wrong.push(...(await smallAt(page, height)));
        found.push(...wrong.map((one) => `${where}, ${theme}: ${one}`));
      }
      themes.reverse();
    }
    await wear(page, 'day');
  }
  expect(found).toEqual([]);
});

/** Phones upright and on their side, the smallest and a usual one, CSS px. */
const PHONES = [
  [360, 640],
  [390, 844],
  [640, 360],
  [844, 390],
] as const;

test('on a phone, upright and on its side, what decides is whole: a long designator, its lengths, each reason, the wind, the call', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING, path: '#/wind' });
  await beginAt(page, 'XMAR');
  await key(page, /^True north/).click();
  await setWind(page, '24016G28KT');
  await key(page, 'Use 23R').first().click();
  await page.getByText('Largest margin', { exact: true }).waitFor();
  const found: string[] = [];
  const look = async (place: string, texts: readonly (string | RegExp)[], scrollsAt: number) => {
    for (const [width, height] of PHONES) {
      await resize(page, { width, height });
      for (const theme of ['day', 'night'] as const) {
        await wear(page, theme);
        const wrong = [...(await misfits(page)), ...(await spilt(page))];
        if (height > scrollsAt) wrong.push(...(await unseen(page, texts)));
        found.push(...wrong.map((one) => `${place} at ${width} x ${height}, ${theme}: ${one}`));
      }
    }
    await wear(page, 'day');
  };
  // 23R: 5° off the wind of 229° true; 2 400 m of TORA (airfields-demo/fields/XMAR.json).
  const answer = ['23R', '231° mag', /^2.400.m$/, /^Margin/, /^Crosswind/, /^Largest margin$/];
  await look('Wind', answer, 360);
  await openPlace(page, 'Taxi');
  await page.getByText('request taxi').waitFor({ state: 'attached' });
  await look('Taxi', ['request taxi', 'Do not exceed', 'Where I am'], 0);
  expect(found).toEqual([]);
});

/** A target is at least so large, CSS px: WCAG 2.2, 2.5.8. What lies under something else is smaller. */
const LEAST_PX = 24;

/** What is looked at with letters twice as large: every place, the Big card, both editors, the roll. */
const ENLARGED_SCENES: readonly Scene[] = [
  [
    'keypad',
    async (page) => {
      await beginSortie(page);
      await typeAnything(page, '27012G20KT 240V300');
      await page.getByText('(284° magnetic)').waitFor();
    },
  ],
  ['Wind', (page) => setWind(page, '27012G20KT 240V300')],
  [
    'Big card',
    async (page) => {
      await key(page, 'Use 28').first().click();
      await openPlace(page, 'Steps');
      await key(page, 'Big card').click();
      await page.locator('[data-fitted]').waitFor();
    },
  ],
  [
    'Steps',
    async (page) => {
      await key(page, 'Close').click();
      await goOnFrom(page, 'Line-up', 'Nozzle light');
    },
  ],
  ['Taxi', (page) => openPlace(page, 'Taxi')],
  ['Numbers', (page) => openPlace(page, 'Numbers')],
  ['Log', (page) => openPlace(page, 'Log')],
  [
    'Sortie',
    async (page) => {
      await openSortie(page);
      await page.getByRole('heading', { name: 'Your own limits' }).waitFor();
    },
  ],
  ['Device', (page) => key(page, 'Device').click()],
  ['Library', (page) => key(page, 'Library').click()],
  [
    'drawing a field',
    async (page) => {
      await key(page, 'Draw a field').click();
      await key(page, 'Plan').click();
    },
  ],
  [
    'writing',
    async (page) => {
      await page.reload();
      await openWriting(page);
    },
  ],
  [
    'brakes released',
    async (page) => {
      await page.reload();
      await openPlace(page, 'Steps');
      // Whoever comes back is asked to resume.
      await key(page, 'Go on').or(doneKey(page)).first().waitFor();
      if (await key(page, 'Go on').isVisible()) await key(page, 'Go on').click();
      await tickAll(page);
      await key(page, 'Brakes released').waitFor();
    },
  ],
  ROLL,
];

test('every text fits and every key is found with letters twice as large', {
  timeout: 240_000,
}, async ({ open }) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await enlargeText(page, 2);
  // As on a device whose letters are large before the app is opened.
  await page.reload();
  const found: string[] = [];
  for (const [scene, come] of ENLARGED_SCENES) {
    await resize(page, { width: 820, height: 1180 });
    await come(page);
    for (const [width, height] of ENLARGED_SIZES) {
      await resize(page, { width, height });
      const small = (await controls(page)).filter(
        (control) => Math.min(control.width, control.height) < LEAST_PX,
      );
      const where = `${scene} at ${width} x ${height}`;
      found.push(...(await misfits(page)).map((one) => `${where}: ${one}`));
      found.push(...small.map(({ name }) => `${where}: hidden or small: ${name}`));
    }
  }
  // The small letters of a tablet are 16 px as they come.
  await resize(page, { width: 820, height: 1180 });
  expect(await page.evaluate(() => getComputedStyle(document.body).fontSize)).toBe('32px');
  expect(found).toEqual([]);
});
