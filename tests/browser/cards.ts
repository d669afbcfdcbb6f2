/** The Big card, as a pilot uses it. */

import type { Locator, Page } from 'playwright-core';
import { key, read, SETTLED_MS, toSteps, type Wait } from './pilot';
import { touch } from './touch';

/** The key as large as the screen. */
export const cardKey = (page: Page): Locator => page.getByRole('main').getByRole('button').first();

/** Everything on the key, its edges included. */
export const onCardKey = (page: Page): Promise<string> => read(cardKey(page).locator('..'));

/** The text the card shows as large as it fits. */
export const cardText = (page: Page): Promise<string> =>
  read(page.locator('[data-fitted]').first());

/** Opens the card over the open place. */
export async function openCard(page: Page): Promise<void> {
  await page.getByRole('main').getByRole('button', { name: 'Big card' }).click();
  await key(page, 'Close').waitFor();
}

/** From the first start to the card over the first step. */
export async function toCard(page: Page): Promise<void> {
  await toSteps(page);
  await openCard(page);
}

/** Whether the due step wants a hold, according to the card. */
export const wantsHold = async (page: Page): Promise<boolean> =>
  (await onCardKey(page)).includes('Hold: ');

/** Does the due step by touch, with a tap or a hold as the card asks. */
export async function doOnCard(page: Page, wait: Wait): Promise<void> {
  await wait(SETTLED_MS);
  await touch(page, cardKey(page), { ms: (await wantsHold(page)) ? 750 : 120, wait });
}

/**
 * How the measured text fills its box, CSS px: how far it overflows, and whether it could be
 * larger.
 */
export const fitOf = (page: Page) =>
  page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('[data-fit]')].map((box) => {
      const text = box.firstElementChild as HTMLElement;
      const style = getComputedStyle(box);
      const room = {
        width:
          box.clientWidth -
          Number.parseFloat(style.paddingLeft) -
          Number.parseFloat(style.paddingRight),
        height: box.clientHeight,
      };
      const over = () => ({
        x: text.scrollWidth - Math.ceil(room.width),
        y: text.offsetHeight - room.height,
      });
      const now = over();
      const px = Number.parseFloat(text.style.fontSize);
      text.style.fontSize = `${px + 2}px`;
      const larger = over();
      text.style.fontSize = `${px}px`;
      return {
        px,
        over: Math.max(now.x, now.y),
        couldBeLarger: larger.x <= 0 && larger.y <= 0 && px < room.height,
      };
    }),
  );
