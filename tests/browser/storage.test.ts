/** A device that refuses storage: the app works, and says that it will forget. */

import type { Page } from 'playwright-core';
import { words } from '../../src/shell/noticeWords.en';
import { describe, expect, test } from './harness';
import { clockOf, due, EVENING, key, openPlace, sortieKey, tick, toSteps } from './pilot';

const FORGETS = /keeps nothing just now/;

/** Everything up to the first tick, then what the app says about keeping it. */
async function worksAndSaysSo(page: Page, said: string | RegExp = FORGETS): Promise<void> {
  await toSteps(page);
  await tick(page, clockOf(page));
  await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
  await expect.poll(() => page.getByText(said).isVisible()).toBe(true);
  // It is said in every place.
  await openPlace(page, 'Numbers');
  await expect.poll(() => page.getByText(said).isVisible()).toBe(true);
}

/** Storage requests are never answered. */
function neverAnswer(): void {
  const { open } = IDBFactory.prototype;
  IDBFactory.prototype.open = function hang(this: IDBFactory) {
    const request = open.call(this, 'never-used');
    request.addEventListener = () => undefined;
    return request;
  };
}

describe('where the device refuses storage', () => {
  test('outright, as a private window does, the job is done and the pilot is told', async ({
    open,
  }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        Object.defineProperty(globalThis, 'indexedDB', {
          get() {
            throw new DOMException('refused', 'SecurityError');
          },
        });
      },
    });
    await worksAndSaysSo(page);
  });

  test('when it is opened', async ({ open }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        IDBFactory.prototype.open = () => {
          throw new DOMException('refused', 'InvalidStateError');
        };
      },
    });
    await worksAndSaysSo(page);
  });

  test('by never answering, what is done waits for it, and the pilot is told', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: neverAnswer });
    await page.getByRole('button', { name: 'Understood' }).waitFor();
    await worksAndSaysSo(page, words.late);
  });

  test('because it is full, from the write that does not fit on', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    expect(await page.getByText(FORGETS).count()).toBe(0);
    await page.evaluate(() => {
      IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    });
    await tick(page);
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await expect.poll(() => page.getByText(FORGETS).isVisible()).toBe(true);
    // Understood, it leaves the screen to the steps; Device goes on saying it.
    await key(page, 'Understood').tap();
    await expect.poll(() => page.getByText(FORGETS).count()).toBe(0);
    await sortieKey(page).tap();
    await key(page, 'Device').tap();
    await expect.poll(() => page.getByText('Nothing is stored just now').isVisible()).toBe(true);
  });
});

test('storage that lasts is asked for at the first tick, once, and not at start', async ({
  open,
}) => {
  const page = await open('phone', {
    at: EVENING,
    before: () => {
      const asked = { times: 0 };
      Object.assign(window, { lapstripAsked: asked });
      StorageManager.prototype.persisted = async () => false;
      StorageManager.prototype.persist = async () => {
        asked.times += 1;
        return false;
      };
    },
  });
  const asked = () =>
    page.evaluate(
      () => (window as unknown as { lapstripAsked: { times: number } }).lapstripAsked.times,
    );
  await toSteps(page);
  await page.clock.runFor(10_000);
  expect(await asked()).toBe(0);
  await tick(page, clockOf(page));
  await expect.poll(asked).toBe(1);
  await tick(page, clockOf(page));
  await expect.poll(() => due(page)).not.toBe('Brake lever parked, needle white');
  expect(await asked()).toBe(1);
});
