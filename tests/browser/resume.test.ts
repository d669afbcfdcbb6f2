/** Nothing typed or ticked is lost: a reload, a crash or a dark screen returns to the same step. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import {
  AIRCRAFT,
  clockOf,
  darken,
  doneKey,
  due,
  EVENING,
  entry,
  key,
  openPlace,
  pressDeliberately,
  read,
  SETTLED_MS,
  sortieKey,
  tick,
  toSteps,
  typeAnything,
} from './pilot';

const MINUTE_MS = 60_000;
const later = (minutes: number) => new Date(EVENING.getTime() + minutes * MINUTE_MS);

/** What stands on the way back into the steps. */
const wayBack = (page: Page) => read(page.getByRole('alert'));

/** Ticks the first two steps; the third, {@link LEFT_AT}, is then due. */
async function leaveAtThird(page: Page): Promise<void> {
  await toSteps(page);
  await tick(page);
  await tick(page);
  await expect.poll(() => due(page)).toBe(LEFT_AT);
}
const LEFT_AT = 'Stick and pedals full travel, free';

async function expectWayBack(page: Page, left: string, done: string): Promise<void> {
  await expect.poll(() => wayBack(page)).toContain(`Interrupted ${left}.`);
  await expect
    .poll(() => wayBack(page))
    .toContain(`Done last, ${done}: Brake lever, parked, needle white.`);
  await expect.poll(() => wayBack(page)).toContain('Due: Stick and pedals, full travel, free.');
  // Nothing can be ticked before the pilot has read that.
  expect(await doneKey(page).count()).toBe(0);
}

describe('left in the middle of the steps', () => {
  test('a reload comes back to the step, says how long ago, and goes on', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await leaveAtThird(page);
    await page.clock.runFor(6.5 * MINUTE_MS);
    await page.reload();
    await expectWayBack(page, 'just now', '6 min ago');
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page)).toBe(LEFT_AT);
    await tick(page);
    await expect.poll(() => due(page)).not.toBe(LEFT_AT);
  });

  test('a browser that was killed comes back to it after a cold start', async ({ device }) => {
    const before = await device.start('phone', { at: EVENING });
    await leaveAtThird(before);
    await device.shut();
    const page = await device.start('phone', { at: later(181), path: '#/steps' });
    await expectWayBack(page, '3 h ago', '3 h ago');
    await key(page, 'One back').tap();
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await expect.poll(() => read(key(page, /^Runway/))).toBe('Runway28');
  });

  test('a dark screen, a key, and a look elsewhere for more than a minute are marked too', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await leaveAtThird(page);
    await key(page, 'Interrupted').tap();
    await page.clock.runFor(2 * MINUTE_MS);
    await expectWayBack(page, '2 min ago', '2 min ago');
    await key(page, 'Go on').tap();

    await darken(page, 3 * MINUTE_MS);
    await expectWayBack(page, '3 min ago', '5 min ago');
    await key(page, 'Go on').tap();

    await openPlace(page, 'Numbers');
    await page.clock.runFor(4 * MINUTE_MS);
    await openPlace(page, 'Steps');
    await expectWayBack(page, '4 min ago', '9 min ago');
    await key(page, 'Go on').tap();

    // A glance doesn't count.
    await darken(page, 3000);
    await openPlace(page, 'Numbers');
    await page.clock.runFor(30_000);
    await openPlace(page, 'Steps');
    await expect.poll(() => due(page)).toBe(LEFT_AT);
  });

  test('an hour asleep is no glance, also where the time since the start stood still meanwhile', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await leaveAtThird(page);
    await page.evaluate(() => {
      const at = performance.now();
      performance.now = () => at;
    });
    await darken(page, 60 * MINUTE_MS);
    await expectWayBack(page, '60 min ago', '60 min ago');
  });

  test('what was typed and not set is there again', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Wind');
    await typeAnything(page, '0101');
    await page.clock.runFor(1000);
    await page.reload();
    await expect.poll(() => entry(page).inputValue()).toBe('0101');
  });

  test('what was held back last, or could not be done, is not said to be done', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await pressDeliberately(page, key(page, 'Later'), clockOf(page));
    await key(page, 'Interrupted').click();
    await expect.poll(() => wayBack(page)).toContain('Put off last, just now: Seat pins');
    await key(page, 'Go on').click();
    await page.clock.runFor(SETTLED_MS);
    await key(page, 'Cannot').click();
    await key(page, 'Does not work').click();
    await key(page, 'Interrupted').click();
    await expect.poll(() => wayBack(page)).toMatch(/Could not be done, just now: (?!Seat pins)/);
  });

  test('a last key press is kept also when the page goes at once', async ({ open }) => {
    const page = await open('tablet');
    await toSteps(page);
    await openPlace(page, 'Wind');
    await typeAnything(page, '0101');
    await page.reload();
    await expect.poll(() => entry(page).inputValue()).toBe('0101');
  });

  test('a tick is kept also when the browser is killed at once', async ({ device }) => {
    const before = await device.start('phone', { at: EVENING });
    await toSteps(before);
    const ticked = await tick(before, clockOf(before));
    await expect.poll(() => due(before)).not.toBe(ticked);
    await device.shut();
    const page = await device.start('phone', { at: later(2), path: '#/steps' });
    await expect.poll(() => wayBack(page)).toContain('Done last, 1 min ago: Seat pins');
  });
});

/** Pseudo-random numbers from 0 to 1, the same in every run: Numerical Recipes' quick generator. */
function* chance(seed: number): Generator<number, never> {
  for (let state = seed; ; ) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    yield state / 2 ** 32;
  }
}

/** Kills the renderer process at once, as a crash does, whatever it is doing. */
async function crash(page: Page): Promise<void> {
  const gone = page.waitForEvent('crash');
  const session = await page.context().newCDPSession(page);
  session.send('Page.crash').catch(() => undefined);
  await gone;
  await page.close();
}

test('twenty times killed at random steps, nothing that was ticked is lost', {
  timeout: 240_000,
}, async ({ device }) => {
  const random = chance(28);
  let page = await device.start('phone', { at: EVENING });
  await toSteps(page);
  let steps = 0;
  for (let kill = 0; kill < 20; kill++) {
    const more = random.next().value < 0.3 ? 2 : 1;
    for (let i = 0; i < more && (await doneKey(page).isVisible()); i++, steps++) {
      const ticked = await tick(page);
      await expect.poll(() => due(page)).not.toBe(ticked);
    }
    const left = await due(page);
    await crash(page);
    page = await device.another({ at: later(kill + 1), path: '#/steps' });
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page), { message: `after kill ${kill + 1}` }).toBe(left);
  }
  expect(steps).toBeGreaterThan(15);
});

test('before anything was done there is nothing to come back to', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await page.reload();
  await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
  expect(await page.getByRole('alert').count()).toBe(0);
  await sortieKey(page).tap();
  const aircraft = page.getByRole('dialog').getByRole('button', { name: AIRCRAFT });
  await expect.poll(() => aircraft.getAttribute('aria-pressed')).toBe('true');
});
