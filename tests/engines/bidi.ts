/** Chromium and Firefox, both by WebDriver BiDi. */

import { basename } from 'node:path';
import puppeteer, { type Browser, type LaunchOptions } from 'puppeteer-core';
import { QUIET_FLAGS } from '../../tools/chromium.mjs';
import { controlOf, fingerOf, type Source, typingOf } from './actions';
import type { Engine, Running } from './engine';
import { ended, guard, killGroup } from './processes';

/** What takes commands of the protocol that puppeteer has no call for. */
interface Connection {
  send(command: string, params: object): Promise<unknown>;
}

const isConnection = (value: unknown): value is Connection =>
  typeof value === 'object' && value !== null && 'send' in value;

function connectionOf(browser: Browser): Connection {
  const connection: unknown = 'connection' in browser ? browser.connection : null;
  if (!isConnection(connection)) throw new Error('this puppeteer does not speak WebDriver BiDi');
  return connection;
}

interface Tree {
  readonly result: { readonly contexts: readonly { readonly context: string }[] };
}

const isTree = (value: unknown): value is Tree =>
  typeof value === 'object' && value !== null && 'result' in value;

/** Long enough for a browser that starts on a machine that has much else to do. */
const START_MS = 120_000;
const CLOSE_MS = 15_000;

async function start(
  launch: LaunchOptions,
  size: { width: number; height: number },
): Promise<Running> {
  const browser = await puppeteer.launch({
    headless: true,
    timeout: START_MS,
    protocolTimeout: START_MS,
    defaultViewport: null,
    ...launch,
  });
  const leader = browser.process();
  if (leader === null) throw new Error('the browser has no process');
  const group = guard(leader);
  const page = (await browser.pages())[0] ?? (await browser.newPage());
  const connection = connectionOf(browser);
  const tree = await connection.send('browsingContext.getTree', {});
  const context = isTree(tree) ? tree.result.contexts[0]?.context : undefined;
  if (context === undefined) throw new Error('the browser has no window');
  const act = async (source: Source) => {
    await connection.send('input.performActions', { context, actions: [source] });
  };
  const resize: Running['resize'] = async (viewport) => {
    await connection.send('browsingContext.setViewport', {
      context,
      viewport,
      devicePixelRatio: 1,
    });
  };
  await resize(size);
  return {
    resize,
    open: async (url) => {
      await page.goto(url, { timeout: START_MS });
    },
    run: async (what, ...args) =>
      (await page.evaluate(`(${what})(...${JSON.stringify(args)})`)) as never,
    touch: (at, how) => act(fingerOf(at, how, 'touch')),
    type: (text) => act(typingOf(text)),
    control: (letter) => act(controlOf(letter)),
    screenshot: async () => Buffer.from(await page.screenshot()),
    kill: () => killGroup(group),
    close: async () => {
      await Promise.race([
        browser.close().catch(() => undefined),
        new Promise((late) => setTimeout(late, CLOSE_MS).unref()),
      ]);
      await ended(group, CLOSE_MS);
    },
  };
}

/** The engine of Chromium at a path. */
export const chromiumAt = (executablePath: string): Engine => ({
  name: 'Chromium',
  start: (userDataDir, size) =>
    start(
      {
        executablePath,
        userDataDir,
        protocol: 'webDriverBiDi',
        headless: basename(executablePath).includes('headless-shell') ? 'shell' : true,
        args: QUIET_FLAGS,
      },
      size,
    ),
});

/**
 * A driven finger that stays longer than this makes no click in Firefox: 300 ms by itself, which a
 * busy machine makes of any tap. A real finger is not held to it, so the tests' is not either.
 */
const FIREFOX_TAPS = { 'apz.max_tap_time': 5000 };

/** The engine of Firefox at a path. */
export const firefoxAt = (executablePath: string): Engine => ({
  name: 'Firefox',
  start: (userDataDir, size) =>
    start(
      { browser: 'firefox', executablePath, userDataDir, extraPrefsFirefox: FIREFOX_TAPS },
      size,
    ),
});
