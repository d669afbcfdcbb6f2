/** Bound keys, pads and speech, faked at the browser's edge, and presses of each. */

import type { Page } from 'playwright-core';
import { SETTLED_MS } from './pilot';

/** A binding as the app stores it. */
export type Bound = readonly [control: string, manner: string, action: string];

/** Stores bindings on the device as if they had been learned, and reloads. */
export async function learned(page: Page, ...bound: readonly Bound[]): Promise<void> {
  await page.evaluate((all) => {
    const kept = all.map(([control, manner, action]) => ({ control, manner, action }));
    localStorage.setItem('lapstrip.keys', JSON.stringify(kept));
  }, bound as Bound[]);
  await page.reload();
}

/** Advances a window's own clock. */
const wait = (page: Page, ms: number) => page.clock.runFor(ms);

/** Presses a key for a while, once the due step has settled. */
export async function press(page: Page, key: string, ms = 120): Promise<void> {
  await wait(page, SETTLED_MS);
  await page.keyboard.down(key);
  await wait(page, ms);
  await page.keyboard.up(key);
  await wait(page, 100);
}

/** A stick with two axes and eight buttons, invented. */
export const STICK = 'Tallow Works Long Stick (Vendor: 9e9e Product: 0007)';

declare global {
  interface Window {
    pads: { id: string; buttons: number[]; axes: number[] }[];
    said: { text: string; rate: number; voice: string | null; atMs: number }[];
    silenced: number;
  }
}

/** Runs before the app: fakes pads that a test plugs in and moves. */
export function syntheticPads(): void {
  window.pads = [];
  Object.defineProperty(navigator, 'getGamepads', {
    configurable: true,
    value: () =>
      window.pads.map(({ id, buttons, axes }, index) => ({
        id,
        index,
        connected: true,
        buttons: buttons.map((value) => ({ pressed: value > 0.1, value })),
        axes,
      })),
  });
}

/** Plugs a stick in, optionally with a button held down. */
export const plugIn = (page: Page, { id = STICK, held }: { id?: string; held?: number } = {}) =>
  page.evaluate(
    ([name, down]) => {
      const buttons = Array.from({ length: 8 }, (_, index) => (index === down ? 1 : 0));
      window.pads.push({ id: name, buttons, axes: [0.02, -0.03] });
      dispatchEvent(new Event('gamepadconnected'));
    },
    [id, held] as const,
  );

/** Unplugs every pad. */
export const pullOut = (page: Page) =>
  page.evaluate(() => {
    window.pads = [];
    dispatchEvent(new Event('gamepaddisconnected'));
  });

/** Moves a button of a pad to a value. */
export const moveButton = (page: Page, button: number, value: number, pad = 0) =>
  page.evaluate(
    ([which, to, of]) => {
      const moved = window.pads[of as number];
      if (moved) moved.buttons[which as number] = to as number;
    },
    [button, value, pad],
  );

/** Presses a button of the first pad for a while, once the due step has settled. */
export async function pressButton(page: Page, button: number, ms = 120): Promise<void> {
  await wait(page, SETTLED_MS);
  await moveButton(page, button, 1);
  await wait(page, ms);
  await moveButton(page, button, 0);
  await wait(page, 150);
}

/** Runs before the app: fakes speech that only records what it is asked to say. */
export function syntheticSpeech(): void {
  window.said = [];
  window.silenced = 0;
  const voice = (voiceURI: string, lang: string, localService: boolean) => ({
    voiceURI,
    name: voiceURI,
    lang,
    localService,
    default: false,
  });
  const all = [
    voice('Far away', 'en-GB', false),
    voice('Close by', 'en-GB', true),
    voice('Ailleurs', 'fr-FR', true),
  ];
  class Utterance {
    voice: { voiceURI: string } | null = null;
    rate = 1;
    lang = '';
    onstart: (() => void) | null = null;
    constructor(readonly text: string) {}
  }
  Object.defineProperty(window, 'SpeechSynthesisUtterance', { value: Utterance });
  Object.defineProperty(window, 'speechSynthesis', {
    value: {
      getVoices: () => all,
      // Whatever it says takes five seconds.
      get speaking() {
        return Date.now() - (window.said.at(-1)?.atMs ?? 0) < 5000;
      },
      addEventListener: () => undefined,
      cancel: () => {
        window.silenced += 1;
      },
      speak: ({ text, rate, voice: by }: Utterance) => {
        window.said.push({ text, rate, voice: by?.voiceURI ?? null, atMs: Date.now() });
      },
    },
  });
}

/** What was said so far. */
export const said = (page: Page): Promise<string[]> =>
  page.evaluate(() => window.said.map(({ text }) => text));
