/**
 * A page that only watches: it follows the browser's other windows at once, and changes nothing.
 */

import type { Page } from 'playwright-core';
import { objections } from './accessible';
import { misfits } from './fitting';
import { describe, expect, test } from './harness';
import {
  closeSheet,
  doneKey,
  due,
  EVENING,
  key,
  openDevice,
  openPlace,
  read,
  SETTLED_MS,
  setWind,
  tick,
  toSteps,
} from './pilot';
import { touch } from './touch';

const FIRST = 'Seat pins three out, in the rack';
const SECOND = 'Brake lever parked, needle white';

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

const shown = (page: Page): Promise<string> => read(page.getByRole('main'));

async function holdDone(page: Page): Promise<void> {
  await page.bringToFront();
  await sleep(SETTLED_MS);
  await touch(page, doneKey(page), { ms: 750 });
}

/** Counts anything that would change the store, or what other windows know. */
function countChanges(): void {
  const counts = { changes: 0 };
  Object.assign(window, { lapstripChanges: counts });
  const count = <T extends object>(of: T, name: keyof T) => {
    const was = of[name] as unknown as (...given: unknown[]) => unknown;
    Object.assign(of, {
      [name](this: unknown, ...given: unknown[]) {
        counts.changes += 1;
        return was.apply(this, given);
      },
    });
  };
  count(IDBObjectStore.prototype, 'put');
  count(IDBObjectStore.prototype, 'add');
  count(IDBObjectStore.prototype, 'delete');
  count(IDBObjectStore.prototype, 'clear');
  count(BroadcastChannel.prototype, 'postMessage');
}

const changesIn = (page: Page) =>
  page.evaluate(
    () => (window as unknown as { lapstripChanges: { changes: number } }).lapstripChanges.changes,
  );

describe('the page that watches', () => {
  test('follows the steps, the wind and the end in use at once, has no keys and writes nothing', async ({
    device,
  }) => {
    const pilot = await device.start('phone');
    await toSteps(pilot);
    const audience = await device.another({ path: '#/watch', before: countChanges });
    await expect.poll(() => shown(audience)).toContain(FIRST);
    expect(await audience.getByRole('button').count()).toBe(0);
    expect(await audience.getByRole('textbox').count()).toBe(0);
    await holdDone(pilot);
    await expect.poll(() => shown(audience)).toContain(SECOND);
    await openPlace(pilot, 'Wind');
    await setWind(pilot, '10015KT');
    await expect.poll(() => shown(audience)).toContain('28, best 10');
    await key(pilot, 'Use 10').first().tap();
    await expect.poll(() => shown(audience)).not.toContain('28, best 10');
    // Hidden, left and shown again, as a window is.
    await audience.evaluate(() => {
      for (const state of ['hidden', 'visible']) {
        Object.defineProperty(document, 'visibilityState', { value: state, configurable: true });
        document.dispatchEvent(new Event('visibilitychange'));
      }
      dispatchEvent(new PageTransitionEvent('pagehide'));
    });
    await audience.keyboard.press('Enter');
    await sleep(500);
    expect(await changesIn(audience)).toBe(0);
    expect(await misfits(audience)).toEqual([]);
  });

  test('opened before anything was begun it says so, writes nothing, and begins by itself', async ({
    device,
  }) => {
    const audience = await device.start('tablet on its side', {
      path: '#/watch',
      before: countChanges,
    });
    await expect.poll(() => shown(audience)).toContain('Nothing to watch yet');
    const pilot = await device.another();
    await toSteps(pilot);
    await expect.poll(() => shown(audience)).toContain(FIRST);
    expect(await changesIn(audience)).toBe(0);
  });

  test('does not count as another window of the pilot’s: a reload is an interruption', async ({
    device,
  }) => {
    const pilot = await device.start('phone');
    await toSteps(pilot);
    await holdDone(pilot);
    await expect.poll(() => due(pilot)).toBe(SECOND);
    await device.another({ path: '#/watch' });
    await pilot.bringToFront();
    await pilot.reload();
    await key(pilot, 'Go on').waitFor();
  });

  test('does not open by an address typed over the steps without being asked for anew', async ({
    device,
  }) => {
    const pilot = await device.start('phone');
    await toSteps(pilot);
    await pilot.evaluate(() => {
      location.hash = '#/watch';
    });
    await expect.poll(() => pilot.getByRole('button').count()).toBe(0);
    await expect.poll(() => shown(pilot)).toContain(FIRST);
  });
});

/** Hides the window, as a browser does when another comes in front, or shows it again. */
const turn = (page: Page, state: DocumentVisibilityState) =>
  page.evaluate((now) => {
    Object.defineProperty(document, 'visibilityState', { value: now, configurable: true });
    document.dispatchEvent(new Event('visibilitychange'));
  }, state);

describe('a pilot who opens it from Device', () => {
  async function openFromSortie(page: Page): Promise<void> {
    await toSteps(page);
    await tick(page);
    await expect.poll(() => due(page)).toBe(SECOND);
    await openDevice(page);
    const opened = page.context().waitForEvent('page');
    await page.getByRole('link', { name: 'Open it to watch' }).click();
    await (await opened).close();
    await closeSheet(page);
    await turn(page, 'hidden');
  }

  test('has not left the steps, however the browser shows it', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await openFromSortie(page);
    await page.clock.runFor(30_000);
    await turn(page, 'visible');
    await page.clock.runFor(1000);
    expect(await due(page)).toBe(SECOND);
    expect(await key(page, 'Go on').count()).toBe(0);
    // The next time is an ordinary one.
    await turn(page, 'hidden');
    await page.clock.runFor(30_000);
    await turn(page, 'visible');
    await key(page, 'Go on').waitFor();
  });

  test('and stays with it for longer than a minute has', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await openFromSortie(page);
    await page.clock.runFor(70_000);
    await turn(page, 'visible');
    await key(page, 'Go on').waitFor();
  });
});

test('the Big card and the place of one window are not forced on another', async ({ device }) => {
  const one = await device.start('phone');
  await toSteps(one);
  const two = await device.another({ path: '#/numbers' });
  await two.getByRole('navigation', { name: 'Places' }).waitFor();
  await one.bringToFront();
  await key(one, 'Big card').click();
  await key(one, 'Close').waitFor();
  await sleep(SETTLED_MS);
  await touch(one, one.getByRole('main').getByRole('button').first(), { ms: 750 });
  await expect.poll(() => read(one.getByRole('main'))).toContain('Brake lever');
  await expect.poll(() => two.getByRole('navigation', { name: 'Places' }).isVisible()).toBe(true);
  await expect.poll(() => read(two.getByRole('heading', { level: 1 }))).toBe('Numbers');
});

test('axe has nothing to say about it', async ({ device }) => {
  const pilot = await device.start('phone');
  await toSteps(pilot);
  const audience = await device.another({ path: '#/watch' });
  await expect.poll(() => shown(audience)).toContain(FIRST);
  expect(await objections(audience)).toEqual([]);
});
