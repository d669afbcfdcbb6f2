/** Two windows of one browser, as on a tablet and a screen beside it, are one kneeboard. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { doneKey, due, key, openPlace, read, SETTLED_MS, setWind, toSteps } from './pilot';
import { touch } from './touch';

const SECOND = 'Brake lever parked, needle white';

const sleep = (ms: number) => new Promise<void>((resolve) => setTimeout(resolve, ms));

async function holdDone(page: Page): Promise<void> {
  await page.bringToFront();
  await sleep(SETTLED_MS);
  await touch(page, doneKey(page), { ms: 750 });
}

/** What a window tells the others waits until the page is told to let them hear, and no longer. */
function keepToItself(): void {
  const post = BroadcastChannel.prototype.postMessage;
  const waiting: (() => void)[] = [];
  BroadcastChannel.prototype.postMessage = function wait(message) {
    waiting.push(() => post.call(this, message));
  };
  addEventListener('hear', () => {
    BroadcastChannel.prototype.postMessage = post;
    for (const send of waiting) send();
  });
}

async function hearEachOther(...pages: readonly Page[]): Promise<void> {
  for (const page of pages) await page.evaluate(() => dispatchEvent(new Event('hear')));
}

describe('two windows', () => {
  test('follow each other: the wind, the end in use, what was ticked and taken back', async ({
    device,
  }) => {
    const one = await device.start('phone');
    await toSteps(one);
    const two = await device.another({ path: '#/steps' });
    await doneKey(two).waitFor();
    await holdDone(one);
    await expect.poll(() => due(two)).toBe(SECOND);
    await openPlace(two, 'Wind');
    await setWind(two, '10008KT');
    await expect.poll(() => one.getByText('Selected 28, best 10').isVisible()).toBe(true);
    await key(one, 'Use 10').tap();
    await expect.poll(() => read(key(two, /^Runway/).first())).toContain('10');
    await key(one, 'Back').tap();
    await openPlace(two, 'Steps');
    await expect.poll(() => due(two)).toBe('Seat pins three out, in the rack');
  });

  test('count a step that was ticked in both once, and one key takes it back in both', async ({
    device,
  }) => {
    const one = await device.start('phone', { before: keepToItself });
    await toSteps(one);
    const two = await device.another({ before: keepToItself, path: '#/steps' });
    await doneKey(two).waitFor();
    // Neither hears of the other until both have ticked.
    await holdDone(one);
    await holdDone(two);
    await hearEachOther(one, two);
    for (const page of [one, two]) {
      await expect.poll(() => due(page)).toBe(SECOND);
      await page.getByRole('button', { name: /^Ramp, 1 of \d+ done/ }).waitFor();
    }
    await key(two, 'Back').tap();
    for (const page of [one, two]) {
      await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    }
  });

  test('one that is opened later stands where the other is', async ({ device }) => {
    const one = await device.start('phone');
    await toSteps(one);
    await holdDone(one);
    const two = await device.another({ path: '#/steps' });
    // Opening a window doesn't interrupt what is being done in another.
    await expect.poll(() => due(two)).toBe(SECOND);
    await expect.poll(() => due(one)).toBe(SECOND);
  });
});
