/**
 * What the device grants and refuses: a lit screen, full screen, large text, high contrast, either
 * hand.
 */

import type { Page } from 'playwright-core';
import { fitOf, openCard } from './cards';
import { misfits } from './fitting';
import { describe, expect, test } from './harness';
import {
  clockOf,
  closeSheet,
  doneKey,
  EVENING,
  goOnFrom,
  key,
  openDevice,
  openPlace,
  openSortie,
  pressDeliberately,
  read,
  tick,
  tickAll,
  toSteps,
} from './pilot';
import { EVERY_SCREEN } from './screens';

interface Lit {
  asked: number;
  held: number;
  refuse: boolean;
  /** The browser withdraws the lock. */
  takeAway: () => void;
}

/** A fake wake lock in place of the browser's. */
function fakeWakeLock(): void {
  const lit: Lit = { asked: 0, held: 0, refuse: false, takeAway: () => undefined };
  Object.assign(window, { lapstripLit: lit });
  const request = async () => {
    lit.asked += 1;
    if (lit.refuse) throw new DOMException('battery saver', 'NotAllowedError');
    const sentinel = new EventTarget() as EventTarget & { released: boolean; release(): void };
    sentinel.released = false;
    sentinel.release = async () => {
      if (sentinel.released) return;
      sentinel.released = true;
      lit.held -= 1;
      sentinel.dispatchEvent(new Event('release'));
    };
    lit.held += 1;
    lit.takeAway = () => void sentinel.release();
    return sentinel;
  };
  Object.defineProperty(navigator, 'wakeLock', { value: { request }, configurable: true });
}

const lit = (page: Page) =>
  page.evaluate(() => {
    const { asked, held } = (window as unknown as { lapstripLit: Lit }).lapstripLit;
    return { asked, held };
  });

const change = (page: Page, how: 'refuse' | 'takeAway') =>
  page.evaluate((what) => {
    const of = (window as unknown as { lapstripLit: Lit }).lapstripLit;
    if (what === 'refuse') of.refuse = true;
    else of.takeAway();
  }, how);

/** The screen goes dark and lights up again. */
const hideAndShow = (page: Page) =>
  page.evaluate(() => {
    for (const hidden of [true, false]) {
      Object.defineProperty(document, 'hidden', { value: hidden, configurable: true });
      Object.defineProperty(document, 'visibilityState', {
        value: hidden ? 'hidden' : 'visible',
        configurable: true,
      });
      document.dispatchEvent(new Event('visibilitychange'));
    }
  });

describe('the screen', () => {
  test('is kept lit from the first step to the end of the sortie, also after it was dark', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING, before: fakeWakeLock });
    await toSteps(page);
    await page.clock.runFor(1000);
    expect((await lit(page)).held).toBe(0);
    await tick(page);
    await expect.poll(async () => (await lit(page)).held).toBe(1);
    await change(page, 'takeAway');
    expect((await lit(page)).held).toBe(0);
    await hideAndShow(page);
    await expect.poll(async () => (await lit(page)).held).toBe(1);
    await openDevice(page);
    await expect.poll(() => page.getByText('kept lit until the sortie ends').count()).toBe(1);
    await closeSheet(page);
    await openSortie(page);
    await key(page, 'End the sortie').click();
    await expect.poll(async () => (await lit(page)).held).toBe(0);
  });

  test('may be refused, and taken back in mid-sortie: it is said once, in its place', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING, before: fakeWakeLock });
    await toSteps(page);
    await tick(page);
    await expect.poll(async () => (await lit(page)).held).toBe(1);
    await change(page, 'refuse');
    await change(page, 'takeAway');
    const said = page.getByText('refuses to keep the screen lit');
    expect(await said.count()).toBe(0);
    await openDevice(page);
    await expect.poll(() => said.count()).toBe(1);
    await closeSheet(page);
    // The next tick asks again, with no other effect.
    const { asked } = await lit(page);
    await tick(page);
    await expect.poll(async () => (await lit(page)).asked).toBeGreaterThan(asked);
    expect(await said.count()).toBe(0);
  });

  test('cannot be kept lit everywhere, which is said there too', async ({ open }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        Reflect.deleteProperty(Navigator.prototype, 'wakeLock');
      },
    });
    await toSteps(page);
    await tick(page);
    await openDevice(page);
    await expect
      .poll(() => page.getByText('This browser cannot keep the screen lit').count())
      .toBe(1);
  });

  test('by night the sheet advises how dark to make it; full screen that is refused says so', async ({
    open,
  }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        Element.prototype.requestFullscreen = async () => {
          throw new TypeError('not now');
        };
      },
    });
    await toSteps(page);
    await openDevice(page);
    const advice = page.getByText('Turn the device’s brightness down');
    expect(await advice.count()).toBe(0);
    await key(page, 'Night').click();
    await expect.poll(() => advice.count()).toBe(1);
    await key(page, 'Full screen').click();
    await expect.poll(() => page.getByText('The browser refused full screen.').count()).toBe(1);
  });
});

test('full screen closes the sheet first, so that the page below takes touches', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await openDevice(page);
  await key(page, 'Full screen').click();
  await expect.poll(() => page.evaluate(() => document.fullscreenElement !== null)).toBe(true);
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
  await openPlace(page, 'Numbers');
  await expect.poll(() => page.url()).toContain('#/numbers');
});

test('for the left hand the rows of keys are mirrored, and read in the same order', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  const left = async (name: string) => (await key(page, name).boundingBox())?.x ?? Number.NaN;
  const done = async () => (await doneKey(page).boundingBox())?.x ?? Number.NaN;
  expect(await done()).toBeGreaterThan(await left('Later'));
  await openDevice(page);
  await key(page, 'Left hand').click();
  await closeSheet(page);
  expect(await done()).toBeLessThan(await left('Later'));
  expect(await left('Later')).toBeLessThan(await left('Back'));
  await page.reload();
  await doneKey(page).waitFor();
  await expect.poll(async () => (await done()) < (await left('Later'))).toBe(true);
});

test('beside the steps stands what the pilot chose', async ({ open }) => {
  const page = await open('tablet on its side', { at: EVENING });
  await toSteps(page);
  // The dial comes after the first answer.
  await expect
    .poll(() => page.locator('aside').getByRole('img', { name: /^Dial/ }).count())
    .toBe(1);
  await openDevice(page);
  await page
    .getByRole('group', { name: 'Beside Steps' })
    .getByRole('button', { name: 'Taxi' })
    .click();
  await closeSheet(page);
  await expect.poll(() => read(page.locator('aside'))).toContain('Do not exceed');
});

test.for(EVERY_SCREEN)(
  'on a %s text of twice the size is nowhere cut on the card, which takes what room there is',
  async (screen, { open }) => {
    const page = await open(screen, { at: EVENING });
    await toSteps(page);
    const found: string[] = [];
    for (const place of ['Steps', 'Wind']) {
      await openPlace(page, place);
      await openCard(page);
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '200%';
      });
      await page.waitForTimeout(100);
      found.push(...(await misfits(page)).map((misfit) => `${place}: ${misfit}`));
      for (const { over, px } of await fitOf(page)) {
        if (over > 0) found.push(`${place}: over by ${over} px at ${px} px`);
      }
      await page.evaluate(() => {
        document.documentElement.style.fontSize = '';
      });
      await page.keyboard.press('Escape');
    }
    expect(found).toEqual([]);
  },
);

test('in high contrast what is due, what is chosen and what stops keep edges that can be seen', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING, context: { forcedColors: 'active' } });
  await toSteps(page);
  const edge = (target: ReturnType<Page['locator']>) =>
    target.evaluate((of) => {
      const { borderTopWidth, borderTopStyle, borderTopColor } = getComputedStyle(of);
      const paper = getComputedStyle(document.documentElement).backgroundColor;
      const isSeen = borderTopStyle !== 'none' && borderTopColor !== paper;
      return isSeen ? Number.parseFloat(borderTopWidth) : 0;
    });
  expect(await edge(page.locator('strong').locator('../..'))).toBeGreaterThanOrEqual(3);
  expect(await edge(key(page, 'Steps'))).toBeGreaterThanOrEqual(3);
  expect(await edge(doneKey(page))).toBeGreaterThan(await edge(key(page, 'Later')));
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  await tickAll(page);
  await pressDeliberately(page, key(page, 'Brakes released'), clockOf(page));
  expect(await edge(key(page, 'Stopping'))).toBeGreaterThanOrEqual(6);
});
