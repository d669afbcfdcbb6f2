/** What a test of the core set stands on: a host, and a tablet with one of the engines and a profile. */

import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Host } from '../browser/server';
import type { Engine, Running, Size } from './engine';
import { Pilot, TABLET } from './pilot';

/** Notes what nobody sees and should never happen, from here on. */
function watch(): void {
  const noted: string[] = [];
  Object.assign(window, { lapstripTestProblems: noted });
  addEventListener('error', ({ message }) => noted.push(`not caught: ${message}`));
  addEventListener('unhandledrejection', ({ reason }) => noted.push(`not caught: ${reason}`));
  document.addEventListener('securitypolicyviolation', ({ effectiveDirective, blockedURI }) =>
    noted.push(`refused by the content policy: ${effectiveDirective} ${blockedURI}`),
  );
}

const noted = () =>
  (window as unknown as { lapstripTestProblems?: string[] }).lapstripTestProblems ?? [];

/** A tablet with one engine, whose profile outlives its browser, and the host of the app. */
export class Tablet {
  /** Where the app comes from; in the tablet's profile each address has a store of its own. */
  host = new Host();
  readonly #engine: Engine;
  readonly #problems: string[] = [];
  readonly #addresses = new Set<string>();
  #isServed = false;
  #profile: string | null = null;
  #running: Running | null = null;

  constructor(engine: Engine) {
    this.#engine = engine;
  }

  /** Opens the app, in the browser that runs or in one that is started on the profile it had before. */
  async start(size: Size = TABLET, path = ''): Promise<Pilot> {
    this.#profile ??= await mkdtemp(join(tmpdir(), 'lapstrip-engine-'));
    if (!this.#isServed) await this.#serve();
    if (this.#running === null) this.#running = await this.#engine.start(this.#profile, size);
    else await this.#running.resize(size);
    await this.open(path);
    return new Pilot(this.#running);
  }

  /** Opens the app anew in the window. */
  async open(path = ''): Promise<void> {
    await this.#note();
    // What follows # alone would load nothing anew.
    await this.#running?.open('about:blank');
    await this.#running?.open(this.host.url + path);
    await this.#running?.run(watch);
  }

  /** Ends the browser's processes at once. */
  async kill(): Promise<void> {
    await this.#running?.kill();
    this.#running = null;
  }

  /** Closes the browser as a user does. */
  async close(): Promise<void> {
    await this.#note();
    await this.#running?.close();
    this.#running = null;
  }

  /**
   * Makes a new tablet of it, in the browser that runs: the app comes from an address for which
   * nothing is stored. Says what went wrong unseen.
   */
  async renew(): Promise<readonly string[]> {
    await this.#note();
    const left = await this.#running?.open('about:blank').then(
      () => true,
      () => false,
    );
    if (left === false) await this.kill();
    await this.host.stop();
    this.#isServed = false;
    return this.#problems.splice(0);
  }

  /** Ends everything, forgets what was stored, and says what went wrong unseen. */
  async discard(): Promise<readonly string[]> {
    await this.#note();
    await this.kill();
    await this.host.stop();
    if (this.#profile) await rm(this.#profile, { recursive: true, force: true, maxRetries: 5 });
    return this.#problems;
  }

  async #serve(): Promise<void> {
    do {
      await this.host.stop();
      this.host = new Host();
      await this.host.start();
    } while (this.#addresses.has(this.host.url));
    this.#addresses.add(this.host.url);
    this.#isServed = true;
  }

  async #note(): Promise<void> {
    this.#problems.push(...((await this.#running?.run(noted).catch(() => [])) ?? []));
  }
}
