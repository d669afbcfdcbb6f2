/**
 * The fixtures of a browser test: the built app on a host, a browser, and windows in it.
 *
 * ```ts
 * import { describe, expect, test } from './harness';
 *
 * test('a wind is answered', async ({ open }) => {
 *   const page = await open('phone');
 *   …
 * });
 * ```
 *
 * Whatever it checks itself, every test fails on a console error, an uncaught exception, something the
 * content policy refused, or a request to anywhere else.
 */

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import {
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { test as base, expect } from 'vitest';
import { findChromium, QUIET_FLAGS } from '../../tools/chromium.mjs';
import { SCREENS, type Screen } from './screens';
import { DIST, Host } from './server';
import { watch } from './watch';

export { describe, expect } from 'vitest';

/** How a window is opened, besides the screen it is on. */
export interface Opened {
  /** What follows the app's address, such as `#/wind`. */
  readonly path?: string;
  /** The time at which the window opens; the clock runs on from there and `page.clock` moves it. */
  readonly at?: Date;
  /** Runs in the page before any of the app: for devices that behave differently. */
  readonly before?: () => void;
  /** Any other playwright option, such as `colorScheme` or `reducedMotion`. */
  readonly context?: BrowserContextOptions;
}

const launching = () => ({ executablePath: findChromium(), args: QUIET_FLAGS, headless: true });

/**
 * Longer than anything takes on a slow machine, and shorter than a test's limit: a failure then
 * shows where it waits.
 */
const PATIENCE_MS = 10_000;

async function openPage(context: BrowserContext, url: string, opened: Opened): Promise<Page> {
  context.setDefaultTimeout(PATIENCE_MS);
  const page = context.pages()[0] ?? (await context.newPage());
  return openIn(page, url, opened);
}

async function openIn(page: Page, url: string, { at, before, path = '' }: Opened): Promise<Page> {
  if (at) await page.clock.install({ time: at });
  if (before) await page.addInitScript(before);
  await page.goto(url + path);
  return page;
}

/**
 * One tablet with one browser profile: what is stored outlives its windows. Closing and reopening
 * it is a cold start.
 */
export class Device {
  readonly #host: Host;
  readonly #problems: string[];
  #profile: string | null = null;
  #context: BrowserContext | null = null;

  constructor(host: Host, problems: string[]) {
    this.#host = host;
    this.#problems = problems;
  }

  /** Starts the browser and opens the app in a window. */
  async start(screen: Screen, opened: Opened = {}): Promise<Page> {
    this.#profile ??= await mkdtemp(join(tmpdir(), 'lapstrip-device-'));
    this.#context = await chromium.launchPersistentContext(this.#profile, {
      ...launching(),
      ...SCREENS[screen],
      ...opened.context,
    });
    await watch(this.#context, this.#host.url, this.#problems);
    return openPage(this.#context, this.#host.url, opened);
  }

  /** Opens another window of the running browser, on the same profile. */
  async another(opened: Opened = {}): Promise<Page> {
    if (!this.#context) throw new Error('start() comes first');
    return openIn(await this.#context.newPage(), this.#host.url, opened);
  }

  /** Closes every window and ends the browser. */
  async shut(): Promise<void> {
    await this.#context?.close();
    this.#context = null;
  }

  /** Closes it and deletes everything stored. */
  async discard(): Promise<void> {
    await this.shut();
    if (this.#profile) await rm(this.#profile, { recursive: true, force: true, maxRetries: 3 });
    this.#profile = null;
  }
}

/**
 * `test` with the fixtures of a browser test:
 *
 * - `host`: this test's own host; it can be stopped, restarted and given a new version. It answers
 *   at `hostName`.
 * - `open(screen, opened?)`: a window with nothing stored, closed when the test ends.
 * - `device`: a profile that outlives its windows, for cold starts and offline reloads.
 * - `problems`: everything that went wrong unnoticed. It must be empty at the end; a test that
 *   provokes something removes it itself, and says why.
 */
export const test = base
  .extend('browser', { scope: 'worker' }, async ({}, { onCleanup }) => {
    const browser = await chromium.launch(launching());
    onCleanup(() => browser.close());
    return browser;
  })
  .extend('problems', { auto: true }, ({}, { onCleanup }) => {
    const problems: string[] = [];
    onCleanup(() => expect(problems).toEqual([]));
    return problems;
  })
  .extend('hostName', 'localhost')
  .extend('host', async ({ hostName }, { onCleanup }) => {
    const host = new Host(DIST, hostName);
    await host.start();
    onCleanup(() => host.stop());
    return host;
  })
  .extend('open', async ({ browser, host, problems }, { onCleanup }) => {
    const contexts: BrowserContext[] = [];
    onCleanup(async () => {
      for (const context of contexts) await context.close();
    });
    return async (screen: Screen, opened: Opened = {}): Promise<Page> => {
      const context = await browser.newContext({
        // Storing the whole app takes longer than most tests; use a Device where it matters.
        serviceWorkers: 'block',
        ...SCREENS[screen],
        ...opened.context,
      });
      contexts.push(context);
      await watch(context, host.url, problems);
      return openPage(context, host.url, opened);
    };
  })
  .extend('device', async ({ host, problems }, { onCleanup }) => {
    const device = new Device(host, problems);
    onCleanup(() => device.discard());
    return device;
  });
