/** WebKitGTK, by plain W3C WebDriver, on a screen that only stands in memory. */

import { controlOf, fingerOf, type Source, typingOf } from './actions';
import type { Engine, Running, Size } from './engine';
import { ended, killGroup, startGroup, within } from './processes';
import script from './webkitWindow.py?raw';

/** The programs it takes. */
export interface WebKitPrograms {
  readonly driver: string;
  readonly screen: string;
  readonly python: string;
}

/** Long enough for a browser that starts on a machine that has much else to do. */
const START_MS = 120_000;
const CLOSE_MS = 15_000;

/** Larger than any size that a page is looked at in. */
const SCREEN = '1600x1600x24';

/** Starts a screen, which ends with its last window; its display is named on a pipe as soon as it can be drawn on. */
async function startScreen(program: string): Promise<string> {
  const args = ['-displayfd', '3', '-terminate', '-screen', '0', SCREEN, '-nolisten', 'tcp'];
  const { leader } = startGroup(program, args, { stdio: ['ignore', 'ignore', 'ignore', 'pipe'] });
  leader.unref();
  const told = leader.stdio[3];
  return new Promise((resolve, reject) => {
    leader.once('exit', () => reject(new Error('the screen ended')));
    told?.once('data', (number) => resolve(`:${String(number).trim()}`));
  });
}

async function call(
  url: string,
  method: 'GET' | 'POST' | 'DELETE',
  body?: object,
): Promise<unknown> {
  const response = await fetch(url, {
    method,
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const answer: { value: unknown } = await response.json();
  if (!response.ok) throw new Error(`${method} ${url}: ${JSON.stringify(answer.value)}`);
  return answer.value;
}

/** Starts a driver at a port that was free, which another may have taken in the meantime. */
async function startDriver(programs: WebKitPrograms): Promise<{ base: string; group: number }> {
  const env = { ...process.env, DISPLAY: await startScreen(programs.screen) };
  for (let attempt = 0; attempt < 5; attempt++) {
    const port = 20_000 + Math.floor(Math.random() * 12_000);
    const { leader, group } = startGroup(programs.driver, [`--port=${port}`], { env });
    const base = `http://127.0.0.1:${port}`;
    const ready = await within(START_MS, async () => {
      if (leader.exitCode !== null) return false;
      return call(`${base}/status`, 'GET').then(
        () => true,
        () => null,
      );
    });
    if (ready) return { base, group };
    await killGroup(group);
  }
  throw new Error('the driver of WebKit does not answer');
}

/** A window's title and borders take less than this, px. */
const MOST_EDGE_PX = 200;

/** The size in what the driver says of a window. */
function rectOf(answer: unknown): Size {
  const { width, height } = Object(answer);
  return { width: Number(width), height: Number(height) };
}

async function start(programs: WebKitPrograms, profile: string, size: Size): Promise<Running> {
  const { base, group } = await startDriver(programs);
  const args = ['-c', script, profile, String(size.width), String(size.height)];
  const options = { binary: programs.python, args };
  const begun = await call(`${base}/session`, 'POST', {
    capabilities: { alwaysMatch: { 'webkitgtk:browserOptions': options } },
  });
  const { sessionId } = begun as { sessionId: string };
  const send = (method: 'GET' | 'POST' | 'DELETE', path: string, body?: object) =>
    call(`${base}/session/${sessionId}${path}`, method, body);
  await send('POST', '/timeouts', { script: START_MS, pageLoad: START_MS });
  const act = async (source: Source) => {
    await send('POST', '/actions', { actions: [source] });
  };
  const run: Running['run'] = async (what, ...given) => {
    const answer = await send('POST', '/execute/async', {
      script: `const done = arguments[arguments.length - 1];
        const args = [...arguments].slice(0, -1);
        Promise.resolve()
          .then(() => (${what})(...args))
          .then((value) => done({ value }), (error) => done({ failed: String(error) }));`,
      args: given,
    });
    const { value, failed } = answer as { value?: unknown; failed?: string };
    if (failed !== undefined) throw new Error(failed);
    return value as never;
  };
  const resize = async ({ width, height }: Size) => {
    const fits = await within(START_MS, async () => {
      const { width: outerWidth, height: outerHeight } = rectOf(await send('GET', '/window/rect'));
      const [innerWide, innerHigh] = await run(() => [innerWidth, innerHeight] as const);
      if (innerWide === width && innerHigh === height) return true;
      // The window may have an edge. It follows late: until then the edge is nonsense, and bounded.
      const edge = (outer: number, inner: number) =>
        Math.min(Math.max(0, outer - inner), MOST_EDGE_PX);
      await send('POST', '/window/rect', {
        width: width + edge(outerWidth, innerWide),
        height: height + edge(outerHeight, innerHigh),
      });
      return null;
    });
    if (fits === null) throw new Error(`the window cannot be ${width} by ${height}`);
  };
  return {
    resize,
    run,
    open: async (url) => {
      await send('POST', '/url', { url });
    },
    touch: (at, how) => act(fingerOf(at, how, 'mouse')),
    type: (text) => act(typingOf(text)),
    control: (letter) => act(controlOf(letter)),
    screenshot: async () => Buffer.from(String(await send('GET', '/screenshot')), 'base64'),
    kill: () => killGroup(group),
    close: async () => {
      // Ending the session would kill the browser, which then forgets what it had yet to write.
      await send('DELETE', '/window').catch(() => undefined);
      await ended(group, CLOSE_MS, 1);
      await killGroup(group);
    },
  };
}

/** The engine of WebKitGTK with the programs it takes. */
export const webkitWith = (programs: WebKitPrograms): Engine => ({
  name: 'WebKit',
  start: (profile, size) => start(programs, profile, size),
});
