/** Best is advice; the pilot chooses, and the choice stays until it is changed. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import {
  closeSheet,
  due,
  EVENING,
  entry,
  goOnFrom,
  key,
  openPlace,
  read,
  setWind,
  sortieKey,
  tick,
  toSteps,
} from './pilot';

/** The strip's cell for the end in use. */
const using = (page: Page) => read(key(page, /^(Runway|Landing on)/).first());

const PLACES = ['Taxi', 'Steps', 'Numbers', 'Log'];

describe('when the wind turns and another end becomes best', () => {
  test('the end in use stays, and every place says so with one key to change', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Wind');
    await setWind(page, '01018KT');
    expect(await using(page)).toBe('Runway28');
    await expect.poll(() => page.getByText('Selected 28, best 01').isVisible()).toBe(true);
    await expect.poll(() => key(page, 'Use 01').first().isVisible()).toBe(true);
    for (const place of PLACES) {
      await openPlace(page, place);
      await expect
        .poll(() => page.getByText('Selected 28, best 01').isVisible(), { message: place })
        .toBe(true);
      expect(await key(page, 'Use 01').count(), place).toBe(1);
    }
    expect(await using(page)).toBe('Runway28');
    await key(page, 'Use 01').tap();
    await expect.poll(() => using(page)).toBe('Runway01');
    expect(await page.getByText('best 01').count()).toBe(0);
  });

  test('a new wind that changes no end is told over the place it was set from, for a while', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    const told = page.getByText('New wind, 28 best');
    await key(page, /^Wind/).first().tap();
    await entry(page).fill('29015G27KT');
    await key(page, 'Set wind').tap();
    // 28 lies 266° true: 15 cos 24° ahead, 27 sin 24° across.
    await expect
      .poll(() => read(told))
      .toBe('New wind, 28 best: headwind 14 kt, crosswind 11 of 24 kt');
    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    await page.clock.runFor(13_000);
    await expect.poll(() => told.count()).toBe(0);
    // Looked at, it isn't said once more.
    await key(page, /^Wind/).first().tap();
    await entry(page).fill('28016G25KT');
    await key(page, 'Set wind').tap();
    await key(page, 'Look').tap();
    await openPlace(page, 'Steps');
    expect(await told.count()).toBe(0);
    await openPlace(page, 'Wind');
    await setWind(page, '28014KT');
    await openPlace(page, 'Steps');
    expect(await told.count()).toBe(0);
  });

  test('a change can be taken back with one key', async ({ open }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    await openPlace(page, 'Wind');
    await setWind(page, '01018KT');
    await key(page, 'Use 01').first().tap();
    await expect.poll(() => using(page)).toBe('Runway01');
    await key(page, 'Undo').tap();
    await expect.poll(() => using(page)).toBe('Runway28');
    await openPlace(page, 'Steps');
    await expect.poll(() => page.getByText('Selected 28, best 01').isVisible()).toBe(true);
  });

  test('it is said while a wind is typed over the steps of a wide screen', async ({ open }) => {
    const page = await open('tablet on its side', { at: EVENING });
    await toSteps(page);
    await key(page, /^Wind, /).tap();
    // The entry takes what the device's own keys type, as soon as it is shown.
    await expect
      .poll(() => entry(page).evaluate((area) => area === document.activeElement))
      .toBe(true);
    await page.keyboard.type('01018KT');
    await expect.poll(() => page.getByText('Selected 28, best 01').count()).toBeGreaterThan(0);
    expect(await using(page)).toBe('Runway28');
  });

  test('a change opens the steps it touches again, and taking it back closes them', async ({
    open,
  }) => {
    const page = await open('tablet', { at: EVENING });
    await toSteps(page);
    // On a dry runway the Sleet can stop up to rotation, in either wind.
    await sortieKey(page).click();
    await key(page, 'Wet').click();
    await closeSheet(page);
    await goOnFrom(page, 'Ramp', 'Brief');
    await expect.poll(() => due(page)).toBe('Brief 28, how to stop, how far');
    await tick(page);
    await expect.poll(() => due(page)).toBe('Taxi call tell traffic, runway 28');
    await openPlace(page, 'Wind');
    await setWind(page, '01018KT');
    await key(page, 'Use 01').first().tap();
    await openPlace(page, 'Steps');
    await expect.poll(() => due(page)).toBe('Brief 01, how to stop, how far');
    await expect.poll(() => page.getByText('Again: the runway changed').isVisible()).toBe(true);
    // What was done then was done for 28.
    const before = page.getByRole('list', { name: 'Just before' });
    expect(await read(before)).toContain('28, how to stop');
    // The end is 28 again, but in a wind across it there is less to stop by than was briefed.
    await key(page, 'Undo').tap();
    await expect.poll(() => due(page)).toBe('Brief 28, how to stop, how far');
    expect(await page.getByText('Again: the max abort speed changed').isVisible()).toBe(true);
    await openPlace(page, 'Wind');
    await setWind(page, '27012G20KT');
    await openPlace(page, 'Steps');
    await expect.poll(() => due(page)).toBe('Taxi call tell traffic, runway 28');
  });
});

test('an end that is not best is used when the pilot says so', async ({ open }) => {
  const page = await open('tablet', { at: EVENING });
  await toSteps(page);
  await openPlace(page, 'Wind');
  await key(page, 'Use 10').tap();
  await expect.poll(() => using(page)).toBe('Runway10');
  await expect.poll(() => page.getByText('Selected 10, best 28').isVisible()).toBe(true);
});
