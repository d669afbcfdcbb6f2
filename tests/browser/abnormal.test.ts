/** When something goes wrong, or differently from plan: lists, a go-around, another take-off. */

import type { Page } from 'playwright-core';
import { misfits, resize, SIZES } from './fitting';
import { describe, expect, test } from './harness';
import {
  chooseRunway,
  clockOf,
  closeSheet,
  due,
  EVENING,
  goOnFrom,
  key,
  openPlace,
  pressDeliberately,
  read,
  SETTLED_MS,
  tick,
  tickAll,
  toSteps,
} from './pilot';
import { wear } from './themes';

const MINUTE_MS = 60_000;

const press = (page: Page, name: string) => pressDeliberately(page, key(page, name), clockOf(page));

const lists = (page: Page) =>
  page.getByRole('dialog', { name: 'Emergencies' }).getByRole('listitem');

/** Opens a list by its title, from wherever the pilot is. */
async function open(page: Page, title: string): Promise<void> {
  await key(page, /^Emergencies/).tap();
  await lists(page).filter({ hasText: title }).getByRole('button').tap();
}

const title = (page: Page) => page.getByRole('heading', { level: 2 });

/** Past the ramp and the taxi by the quick way, and off the ground. */
async function toAirborne(page: Page): Promise<void> {
  await toSteps(page);
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  await tickAll(page);
  await press(page, 'Brakes released');
  await press(page, 'Airborne');
  await expect.poll(() => due(page)).toContain('Gear up');
}

/** On the approach, with nothing left to do but land. */
async function toLanding(page: Page): Promise<void> {
  await toAirborne(page);
  await tickAll(page);
  await key(page, 'Touch and go').waitFor();
}

describe('something wrong', () => {
  test('is one tap from any place, with what each list begins with', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toSteps(page);
    for (const place of ['Wind', 'Taxi', 'Steps', 'Numbers', 'Log']) {
      await openPlace(page, place);
      await key(page, /^Emergencies/).tap();
      await expect.poll(() => lists(page).count()).toBe(13);
      await key(page, 'Close').tap();
    }
    await key(page, /^Emergencies/).tap();
    // Those looked for on the ramp come first.
    expect(await read(lists(page).first())).toMatch(
      /^Engine fire on the ground\s?Throttle past idle · Fuel cock shut/,
    );
  });

  test('leads back to the place that was left, and says which that was and how long ago', async ({
    open: window,
  }) => {
    const page = await window('phone', { at: EVENING });
    await toAirborne(page);
    await tick(page);
    const left = await due(page);
    await openPlace(page, 'Wind');
    await open(page, 'Gear not locked');
    await expect.poll(() => read(title(page))).toBe('Gear not locked');
    await page.clock.runFor(3 * MINUTE_MS);
    await tickAll(page);
    await press(page, 'Back to where you were');
    await expect.poll(() => read(page.getByRole('alert'))).toMatch(/Interrupted [34] min ago\./);
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page)).toBe(left);
  });

  test('within something wrong comes back to that', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toSteps(page);
    await tick(page);
    await open(page, 'Gear not locked');
    await tick(page);
    await open(page, 'Limit light');
    await expect.poll(() => page.getByText('over: Gear not locked').isVisible()).toBe(true);
    await key(page, 'Leave').tap();
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page)).toBe('Gear lever up, count five, down');
    // A reload in the middle of it returns to it as well.
    await page.reload();
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page)).toBe('Gear lever up, count five, down');
  });

  test('opened by mistake is closed with one key', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toSteps(page);
    await tick(page);
    const left = await due(page);
    await open(page, 'Engine fire on the ground');
    await key(page, 'Back').tap();
    await expect.poll(() => due(page)).toBe(left);
    expect(await page.getByRole('alert').count()).toBe(0);
  });

  test('leads on to the approach: what is left of the climb is held back, and seen', async ({
    open: window,
  }) => {
    const page = await window('phone', { at: EVENING });
    await toAirborne(page);
    await tick(page);
    await open(page, 'Limit light');
    await tickAll(page);
    await press(page, 'On to Recovery');
    await expect.poll(() => due(page)).toBe('Fuel above bingo');
    expect(await page.getByText('outstanding', { exact: true }).count()).toBeGreaterThan(0);
    expect(
      await page.getByRole('button', { name: /^Climb, \d/ }).getAttribute('aria-label'),
    ).toContain('1 of 4');
  });

  test('leads to the end of the sortie, which one key takes back', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toSteps(page);
    await tick(page);
    await open(page, 'Engine fire on the ground');
    await tickAll(page);
    await press(page, 'End the sortie');
    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    await key(page, 'Undo').tap();
    await expect.poll(() => key(page, 'End the sortie').count()).toBe(1);
  });

  test('on the roll there is only to stop or to fly', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toSteps(page);
    await goOnFrom(page, 'Line-up', 'Nozzle light');
    await tickAll(page);
    await press(page, 'Brakes released');
    await key(page, 'Stopping').waitFor();
    await expect.poll(() => key(page, /^Emergencies/).count()).toBe(0);
  });

  test('what could not be done on the ramp is not there to stop with', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toSteps(page);
    await goOnFrom(page, 'Ramp', 'Chute');
    await key(page, 'Cannot').tap();
    await key(page, 'Does not work').tap();
    await goOnFrom(page, 'Line-up', 'Nozzle light');
    await tickAll(page);
    await press(page, 'Brakes released');
    await expect.poll(() => page.getByText('(no chute)').count()).toBe(1);
    expect(await page.getByText('throttle idle, brakes full', { exact: true }).count()).toBe(1);
    await press(page, 'Stopping');
    const missing = page.getByText('Not there: Chute, cannot: does not work');
    await expect.poll(() => missing.count()).toBe(1);
    const stopped = await tickAll(page);
    expect(stopped.slice(0, 3)).toEqual([
      'Throttle idle',
      'Brakes full, held',
      'Fire lights both out',
    ]);
    // No cable lies at Marram Haven: there is nothing for the hook to take.
    expect(stopped).toHaveLength(5);
  });
});

describe('flying again', () => {
  test('a go-around leads to the next approach', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toLanding(page);
    await key(page, 'Go around').tap();
    await expect.poll(() => due(page)).toBe('Throttle through to reheat');
    expect(await tickAll(page)).toHaveLength(8);
    await press(page, 'Back to Recovery');
    await expect.poll(() => due(page)).toBe('Fuel above bingo');
    // The ends are judged for landing still.
    await expect.poll(() => key(page, /^Landing/).count()).toBe(1);
  });

  test('a touch-and-go asks for the climb, and one key takes it back', async ({ open: window }) => {
    const page = await window('phone', { at: EVENING });
    await toLanding(page);
    await press(page, 'Touch and go');
    await expect.poll(() => due(page)).toContain('Gear up');
    await key(page, 'Back').tap();
    await key(page, 'Touch and go').waitFor();
    await press(page, 'Touch and go');
    await expect.poll(() => due(page)).toContain('Gear up');
    await tickAll(page);
    await press(page, 'Landed');
    await expect.poll(() => due(page)).toBe('Seat pins three in');
  });

  test('another take-off is walked from the taxi, and an end is chosen for it', async ({
    open: window,
  }) => {
    const page = await window('phone', { at: EVENING });
    await toLanding(page);
    const toStand = async () => {
      await key(page, 'Route').tap();
      await key(page, 'Stand 6').tap();
      await closeSheet(page);
    };
    await openPlace(page, 'Taxi');
    await toStand();
    await openPlace(page, 'Steps');
    await press(page, 'Landed');
    await key(page, 'Another take-off').tap();
    // The runway in use was one to land on: the briefing asks which one it is now.
    await expect.poll(() => due(page)).toMatch(/^Brief/);
    await page.clock.runFor(SETTLED_MS);
    await chooseRunway(page);
    await expect.poll(() => due(page)).toContain('Taxi call');
    // Only the pilot knows where it stands after a landing. A second tap on the previous key opens
    // nothing.
    await page.clock.runFor(SETTLED_MS);
    await openPlace(page, 'Taxi');
    await page.getByText('Where are you? Tap your stand, or any point.').waitFor();
    await toStand();
    await key(page, /^Leaving/).waitFor();
    await openPlace(page, 'Steps');
    await expect.poll(() => read(key(page, /^Runway/))).toBe('Runway28');
    await page.reload();
    await key(page, 'Go on').tap();
    await expect.poll(() => due(page)).toContain('Taxi call');
  });
});

test('lists and landings fit every screen', async ({ open: window }) => {
  const page = await window('tablet', { at: EVENING });
  await toAirborne(page);
  const found: string[] = [];
  const look = async (scene: string) => {
    for (const [width, height] of SIZES) {
      await resize(page, { width, height });
      const where = `${scene} at ${width} x ${height}`;
      for (const theme of ['day', 'night'] as const) {
        await wear(page, theme);
        found.push(...(await misfits(page)).map((misfit) => `${where} by ${theme}: ${misfit}`));
      }
    }
    await resize(page, { width: 820, height: 1180 });
    await wear(page, 'day');
  };
  await look('climb');
  await key(page, /^Emergencies/).tap();
  await look('lists');
  await lists(page).filter({ hasText: 'Limit light' }).getByRole('button').tap();
  await key(page, 'Leave').waitFor();
  await look('a list');
  await open(page, 'Gear not locked');
  await page.getByText('over: Limit light').waitFor();
  await look('a list over a list');
  await key(page, 'Leave').tap();
  await look('back');
  await key(page, 'Go on').tap();
  await tickAll(page);
  await look('the end of a list');
  await press(page, 'On to Recovery');
  await look('recovery');
  await tickAll(page);
  // Until the notice of the runway just chosen is gone.
  await page.clock.runFor(13_000);
  await expect.poll(() => key(page, 'Undo').count()).toBe(0);
  await look('landing');
  await press(page, 'Landed');
  await key(page, 'Another take-off').waitFor();
  await look('after');
  expect(found).toEqual([]);
});
