/** A device that refuses storage: the app works, and says that it will forget. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import { clockOf, due, EVENING, key, openPlace, read, SETTLED_MS, tick, toSteps } from './pilot';

const FORGETS = /keeps nothing just now/;

/** Everything up to the first tick, then what the app says about keeping it. */
async function worksAndSaysSo(page: Page): Promise<void> {
  await toSteps(page);
  await tick(page, clockOf(page));
  await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
  await expect.poll(() => page.getByText(FORGETS).isVisible()).toBe(true);
  // It is said in every place.
  await openPlace(page, 'Numbers');
  await expect.poll(() => page.getByText(FORGETS).isVisible()).toBe(true);
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

  test('by never answering', async ({ open }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
      },
    });
    await worksAndSaysSo(page);
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
  });

  test('by never answering: the first frame is drawn all the same', async ({ open }) => {
    const page = await open('phone', {
      before: () => {
        const open = IDBFactory.prototype.open;
        // A request that nothing ever happens to.
        IDBFactory.prototype.open = function hang(this: IDBFactory) {
          const request = open.call(this, 'never-used');
          return new Proxy(request, {
            get: (target, name) =>
              name === 'addEventListener' ? () => undefined : Reflect.get(target, name),
          });
        };
      },
    });
    await expect.poll(() => key(page, 'Understood').isVisible(), { timeout: 5000 }).toBe(true);
    await key(page, 'Understood').tap();
    await expect.poll(() => read(page.getByRole('main'))).toContain('Harrow Sound');
    await page.waitForTimeout(SETTLED_MS);
    expect(await page.getByText(FORGETS).count()).toBeLessThanOrEqual(1);
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
