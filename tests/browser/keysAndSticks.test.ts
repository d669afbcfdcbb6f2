/**
 * Keys that aren't on the screen do what the screen could do at that moment, with the same care. A
 * false tick is the worst failure: nothing a hand does by accident, or a stick by itself, ticks a
 * step.
 */

import type { Page } from 'playwright-core';
import { stepWords } from '../../src/parts/stepTextWords.en';
import { words as keysWords } from '../../src/views/keys/words.en';
import { objections } from './accessible';
import {
  type Bound,
  learned,
  moveButton,
  plugIn,
  press,
  pressButton,
  pullOut,
  STICK,
  syntheticPads,
} from './hands';
import { describe, expect, test } from './harness';
import {
  chooseRunway,
  clockOf,
  closeSheet,
  doneKey,
  due,
  EVENING,
  entry,
  goOnFrom,
  key,
  openDevice,
  openPlace,
  read,
  SETTLED_MS,
  standStill,
  toSteps,
} from './pilot';

const KEYS: readonly Bound[] = [
  ['key:PageDown', 'press', 'done'],
  ['key:PageUp', 'press', 'back'],
  ['key:KeyH', 'press', 'hold-back'],
  ['key:KeyN', 'press', 'next-place'],
  ['key:KeyR', 'press', 'brakes-released'],
  ['key:KeyS', 'press', 'stopping'],
  ['key:KeyA', 'press', 'airborne'],
];

const pad = (part: string) => `pad:${part}:0:${STICK}`;

const BUTTONS: readonly Bound[] = [
  [pad('b0'), 'press', 'done'],
  [pad('b1'), 'press', 'back'],
  [pad('b2'), 'press', 'hold-back'],
  [pad('b3'), 'press', 'brakes-released'],
  [pad('b3'), 'hold', 'stopping'],
  [pad('b4'), 'double', 'airborne'],
  [pad('a1-'), 'press', 'next-place'],
];

const FIRST = 'Seat pins three out, in the rack';
const SECOND = 'Brake lever parked, needle white';
const PLAIN = 'Gear lever down, three green';
const AFTER_PLAIN = 'Oxygen flowing, hose clipped';

/** Goes to the steps with some keys learned, and waits until they are heard. */
async function toStepsWith(page: Page, bound: readonly Bound[]): Promise<void> {
  await toSteps(page);
  await learned(page, ...bound);
  // What listens to keys and sticks is loaded after the first answer.
  await page.waitForLoadState('networkidle');
  await doneKey(page).or(key(page, 'Go on')).first().waitFor();
  await clockOf(page)(3000);
  if (await key(page, 'Go on').isVisible()) await key(page, 'Go on').tap();
}

async function toPlainStep(page: Page, bound: readonly Bound[]) {
  await toStepsWith(page, bound);
  await goOnFrom(page, 'Ramp', 'Gear lever');
  await expect.poll(() => due(page)).toBe(PLAIN);
  const wait = await standStill(page);
  await wait(SETTLED_MS);
  return wait;
}

const isCritical = async (page: Page) => (await read(doneKey(page))).includes('Press and hold');

/**
 * Walks step after step, pressing as long as each asks for, until something else is due. Pressing does
 * nothing where a runway must be chosen first.
 */
async function walkOn(page: Page, done: (ms: number) => Promise<void>): Promise<string[]> {
  const walked: string[] = [];
  const supply = key(page, stepWords.supply.wind);
  while (await doneKey(page).or(supply).isVisible()) {
    if (await supply.isVisible()) {
      await done(120);
      await page.getByText(keysWords.outcome['not-known'](keysWords.action.done)).waitFor();
      await chooseRunway(page);
      await clockOf(page)(SETTLED_MS);
    }
    const step = await due(page);
    await done((await isCritical(page)) ? 800 : 120);
    walked.push(step);
    if (walked.length > 90) throw new Error(`goes round at ${step}`);
  }
  return walked;
}

describe('a whole sortie without a touch', () => {
  test('is flown with keys of a keyboard', { timeout: 240_000 }, async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toStepsWith(page, KEYS);
    await standStill(page);
    const done = (ms: number) => press(page, 'PageDown', ms);
    const before = await walkOn(page, done);
    expect(before.slice(0, 2)).toEqual([FIRST, SECOND]);
    await key(page, 'Brakes released').waitFor();
    // Done is for steps: a roll is begun by its own key.
    await done(120);
    await expect.poll(() => key(page, 'Brakes released').isVisible()).toBe(true);
    await press(page, 'r');
    await key(page, 'Airborne').waitFor();
    await press(page, 'a');
    const after = await walkOn(page, done);
    await key(page, 'Landed').waitFor();
    await done(120);
    after.push(...(await walkOn(page, done)));
    expect(before.length + after.length).toBeGreaterThan(40);
    // Nothing was left out.
    for (const name of await page.getByRole('button', { name: /, \d+ of \d+ done/ }).all()) {
      const [, handled, total] =
        /(\d+) of (\d+) done/.exec((await name.getAttribute('aria-label')) ?? '') ?? [];
      expect(handled).toBe(total);
    }
    // Ending the sortie matters, so the key must be held.
    await key(page, 'End the sortie').waitFor();
    await done(120);
    await expect.poll(() => key(page, 'End the sortie').isVisible()).toBe(true);
    await done(800);
    await page.getByText('The sortie is ended and in the log.').waitFor();
  });

  test('is flown with a stick', { timeout: 240_000 }, async ({ open }) => {
    const page = await open('tablet', { at: EVENING, before: syntheticPads });
    await toStepsWith(page, BUTTONS);
    await plugIn(page);
    await standStill(page);
    const done = (ms: number) => pressButton(page, 0, ms);
    const before = await walkOn(page, done);
    expect(before.slice(0, 2)).toEqual([FIRST, SECOND]);
    await key(page, 'Brakes released').waitFor();
    await pressButton(page, 3);
    await key(page, 'Airborne').waitFor();
    // A single press of a button bound to a double press does nothing.
    await pressButton(page, 4);
    await clockOf(page)(500);
    expect(await key(page, 'Airborne').isVisible()).toBe(true);
    await pressTwice(page, 4);
    const after = await walkOn(page, done);
    await key(page, 'Landed').waitFor();
    await done(120);
    after.push(...(await walkOn(page, done)));
    expect(before.length + after.length).toBeGreaterThan(40);
    await key(page, 'End the sortie').waitFor();
  });
});

async function pressTwice(page: Page, button: number): Promise<void> {
  const wait = clockOf(page);
  await wait(SETTLED_MS);
  for (const value of [1, 0, 1, 0]) {
    await moveButton(page, button, value);
    await wait(100);
  }
  await wait(200);
}

describe('keys and sticks', () => {
  test('go back, hold back, and open the next place', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toPlainStep(page, KEYS);
    await press(page, 'PageDown');
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
    await press(page, 'PageUp');
    await expect.poll(() => due(page)).toBe(PLAIN);
    await press(page, 'h');
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
    const told = await page.getByRole('status').allTextContents();
    expect(told.join(' ')).toContain('Gear lever, later.');
    await press(page, 'n');
    await page.getByRole('heading', { name: 'Numbers', level: 1 }).waitFor({ state: 'attached' });
    // Out of sight nothing is ticked, and the app says where to look.
    await press(page, 'PageDown');
    await page.getByText('Done: not on the screen').waitFor();
    await openPlace(page, 'Steps');
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });

  test('stop a roll by a button that is held', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticPads });
    await toStepsWith(page, BUTTONS);
    await plugIn(page);
    await goOnFrom(page, 'Line-up', 'Nozzle light');
    await standStill(page);
    // What was passed over waits before the runway: each must be held for, critical or not.
    for (let i = 0; i < 80 && (await doneKey(page).isVisible()); i++) {
      await pressButton(page, 0, 800);
    }
    await pressButton(page, 3);
    await key(page, 'Stopping').waitFor();
    await pressButton(page, 3, 800);
    await expect.poll(() => page.getByText('Rejected take-off').isVisible()).toBe(true);
  });

  test('of a pad that is pulled out and put back go on', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticPads });
    const wait = await toPlainStep(page, BUTTONS);
    await plugIn(page);
    await wait(100);
    await moveButton(page, 0, 1);
    // Pulled out before it was let go, and put back held down: neither is a press.
    await pullOut(page);
    await wait(1000);
    expect(await due(page)).toBe(PLAIN);
    await plugIn(page, { held: 0 });
    await wait(1000);
    expect(await due(page)).toBe(PLAIN);
    await moveButton(page, 0, 0);
    await wait(200);
    await pressButton(page, 0);
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
  });
});

describe('by accident', () => {
  test('a key that is held down until it repeats ticks one step', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page, KEYS);
    for (let i = 0; i < 60; i++) {
      await page.keyboard.down('PageDown');
      await wait(33);
    }
    await page.keyboard.up('PageDown');
    await wait(1000);
    expect(await due(page)).toBe(AFTER_PLAIN);
  });

  test('two taps within 80 ms tick one step, and take one back', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page, KEYS);
    const twice = async (name: string) => {
      for (let i = 0; i < 2; i++) {
        await page.keyboard.down(name);
        await wait(25);
        await page.keyboard.up(name);
        await wait(25);
      }
      await wait(1000);
    };
    await twice('PageDown');
    await expect.poll(() => due(page)).toBe(AFTER_PLAIN);
    await twice('PageUp');
    await expect.poll(() => due(page)).toBe(PLAIN);
  });

  test('a second press within half a second of the change ticks nothing', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page, KEYS);
    await page.keyboard.press('PageDown', { delay: 0 });
    await wait(400);
    await page.keyboard.press('PageDown', { delay: 0 });
    await wait(100);
    expect(await due(page)).toBe(AFTER_PLAIN);
    await expect.poll(() => page.getByText('Done: too soon, press again').isVisible()).toBe(true);
  });

  test('a critical step is not ticked by a press, nor by two in a row', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toStepsWith(page, KEYS);
    const wait = await standStill(page);
    await press(page, 'PageDown');
    await expect.poll(() => due(page)).toBe(FIRST);
    await expect.poll(() => page.getByText('Done: critical, hold it').isVisible()).toBe(true);
    await press(page, 'PageDown');
    await expect.poll(() => due(page)).toBe(FIRST);
    await press(page, 'PageDown', 650);
    await wait(500);
    expect(await due(page)).toBe(FIRST);
    await press(page, 'PageDown', 720);
    await expect.poll(() => due(page)).toBe(SECOND);
  });

  test('a presenter, which cannot hold, ticks a critical step with a second press', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toStepsWith(page, KEYS);
    const wait = await standStill(page);
    await wait(SETTLED_MS);
    const send = async () => {
      await page.keyboard.down('PageDown');
      await wait(8);
      await page.keyboard.up('PageDown');
    };
    await send();
    await wait(300);
    await send();
    await wait(200);
    expect(await due(page)).toBe(FIRST);
    await wait(600);
    await send();
    await expect.poll(() => due(page)).toBe(SECOND);
  });

  test('what is typed into a text ticks nothing', async ({ open }) => {
    const page = await open('tablet on its side', { at: EVENING });
    await toStepsWith(page, [['key:KeyG', 'press', 'done'], ...KEYS]);
    await goOnFrom(page, 'Ramp', 'Gear lever');
    await expect.poll(() => due(page)).toBe(PLAIN);
    await clockOf(page)(SETTLED_MS);
    await page.getByRole('button', { name: /^Wind, / }).click();
    await entry(page).click();
    await page.keyboard.type('27012g20kt');
    await clockOf(page)(1000);
    await expect.poll(() => entry(page).inputValue()).toContain('27012g20kt');
    await expect.poll(() => due(page)).toBe(PLAIN);
  });

  test('nothing is ticked behind a sheet, nor by a key that closes it', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page, KEYS);
    await page.getByRole('button', { name: /^Ramp, / }).tap();
    await wait(1000);
    await page.getByRole('dialog').waitFor();
    await page.keyboard.press('PageDown', { delay: 0 });
    await wait(1000);
    await page.keyboard.press('Escape');
    await wait(1000);
    await page.getByRole('dialog').waitFor({ state: 'detached' });
    await expect.poll(() => due(page)).toBe(PLAIN);
  });

  test('a key that is let go while another window has the keyboard is not held', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toStepsWith(page, KEYS);
    const wait = await standStill(page);
    await wait(SETTLED_MS);
    await page.keyboard.down('PageDown');
    await wait(200);
    await page.evaluate(() => dispatchEvent(new Event('blur')));
    await wait(2000);
    expect(await due(page)).toBe(FIRST);
  });

  test('a stick that chatters, or trembles at rest, ticks nothing', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticPads });
    const wait = await toPlainStep(page, BUTTONS);
    await plugIn(page);
    await wait(100);
    for (let i = 0; i < 40; i++) {
      // Single frames at full deflection, and long trembling below where it counts.
      await moveButton(page, 0, i % 8 === 0 ? 1 : 0.35 + 0.2 * (i % 2));
      await wait(17);
    }
    await moveButton(page, 0, 0);
    await wait(1000);
    expect(await due(page)).toBe(PLAIN);
  });

  test('a key that two things claim does neither', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    const wait = await toPlainStep(page, [...KEYS, ['key:PageDown', 'press', 'hold-back']]);
    await press(page, 'PageDown');
    await wait(1000);
    expect(await due(page)).toBe(PLAIN);
  });
});

describe('the page of keys and sticks', () => {
  async function openKeys(page: Page): Promise<void> {
    await openDevice(page);
    await page.getByRole('button', { name: 'Keys and sticks' }).click();
    await page.getByRole('dialog', { name: 'Keys and sticks' }).waitFor();
  }
  const row = (page: Page, name: string) =>
    page
      .getByRole('dialog', { name: 'Keys and sticks' })
      .getByRole('listitem')
      .filter({ has: page.getByRole('button', { name: `Add a key for: ${name}` }) });

  test('learns a press, a hold and a double press, shows conflicts and keeps them', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING, before: syntheticPads });
    await toSteps(page);
    await clockOf(page)(2000);
    await openKeys(page);
    const learn = async (name: string, how: () => Promise<void>) => {
      await key(page, `Add a key for: ${name}`).click();
      await page.getByText('Press what you want to use').waitFor();
      await how();
      await clockOf(page)(900);
      await page.getByText('Press what you want to use').waitFor({ state: 'detached' });
    };
    await learn('Done', () => press(page, 'PageDown'));
    await expect.poll(() => read(row(page, 'Done'))).toContain('Page down, pressed');
    await learn('Back', () => press(page, 'PageDown', 800));
    await expect.poll(() => read(row(page, 'Back'))).toContain('Page down, held');
    // A critical step wants Done held, and this key cannot any more.
    await expect.poll(() => read(row(page, 'Done'))).toContain('Cannot tick a critical step');
    await plugIn(page);
    await clockOf(page)(200);
    await learn('Say again', () => pressTwice(page, 5));
    expect(await read(row(page, 'Say again'))).toContain(
      'Button 6, Tallow Works Long Stick, pressed twice',
    );
    await learn('Later', () => press(page, 'PageDown'));
    await expect
      .poll(() => read(row(page, 'Done')))
      .toContain('Does nothing: it is also for Later');
    await page.getByRole('button', { name: 'Take away: Page down, for Later' }).click();
    expect(await read(row(page, 'Done'))).not.toContain('Does nothing');
    expect(await objections(page)).toEqual([]);
    await page.reload();
    await page.waitForLoadState('networkidle');
    await openKeys(page);
    await expect.poll(() => read(row(page, 'Done'))).toContain('Page down, pressed');
  });

  test('shows what each device sends, as it sends it', async ({ open }) => {
    const page = await open('phone', { at: EVENING, before: syntheticPads });
    await toSteps(page);
    await clockOf(page)(2000);
    await openKeys(page);
    const sheet = page.getByRole('dialog', { name: 'Keys and sticks' });
    await expect.poll(() => sheet.getByText(/No controller is seen/).isVisible()).toBe(true);
    await press(page, 'b');
    await expect.poll(() => read(sheet)).toContain('B, sent');
    await plugIn(page);
    await clockOf(page)(100);
    await moveButton(page, 2, 1);
    await clockOf(page)(100);
    await expect.poll(() => read(sheet)).toContain('Buttons downButton 3');
    await pullOut(page);
    await clockOf(page)(100);
    await expect.poll(() => sheet.getByText(/No controller is seen/).isVisible()).toBe(true);
    // Nothing was ticked meanwhile.
    await closeSheet(page);
    await page.keyboard.press('Escape');
    await expect.poll(() => due(page)).toBe(FIRST);
  });

  test('leaves what it was to learn with Escape', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await clockOf(page)(2000);
    await openKeys(page);
    await key(page, 'Add a key for: Done').click();
    await page.keyboard.press('Escape');
    await page.getByText('Press what you want to use').waitFor({ state: 'detached' });
    await expect
      .poll(() => page.getByRole('dialog', { name: 'Keys and sticks' }).isVisible())
      .toBe(true);
  });

  test('says once, in its place, where there are no game controllers', async ({ open }) => {
    const page = await open('phone', {
      at: EVENING,
      before: () => {
        // As in browsers that have none, and in pages that are not allowed to ask.
        Object.defineProperty(navigator, 'getGamepads', {
          value: () => {
            throw new DOMException('refused', 'SecurityError');
          },
        });
      },
    });
    await toSteps(page);
    await clockOf(page)(2000);
    await openKeys(page);
    const told = page.getByText('This browser does not let the page see game controllers.');
    await expect.poll(() => told.count()).toBe(1);
  });
});
