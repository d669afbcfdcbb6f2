/**
 * The steps: one is due, what can't be done now is held back, and a barrier lets nothing through.
 */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import {
  clockOf,
  closeSheet,
  due,
  EVENING,
  goOnFrom,
  key,
  openSortie,
  pressDeliberately,
  read,
  tick,
  toSteps,
} from './pilot';

const upcoming = (page: Page) =>
  page.getByRole('list', { name: 'Next' }).getByRole('listitem').allTextContents();

const press = (page: Page, name: string) => pressDeliberately(page, key(page, name), clockOf(page));

describe('the step that is due', () => {
  test('stands with the three that follow, and with what was done just before', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    expect(await upcoming(page)).toEqual([
      'Brake leverparked, needle white',
      'Stick and pedalsfull travel, free',
      'Canopyshut, two hooks, light out',
    ]);
    await tick(page);
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    const before = page.getByRole('list', { name: 'Just before' });
    await expect.poll(() => read(before)).toContain('Seat pins');
  });

  test('is said when it was ticked, held back, or could not be done', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    const said = async () =>
      (await page.getByRole('status').allTextContents()).join(' ').replace(/\s+/g, ' ');
    await tick(page);
    await expect.poll(said).toContain('Seat pins, done. Due: Brake lever, parked, needle white.');
    await press(page, 'Later');
    await expect.poll(said).toContain('Brake lever, later. Due: Stick and pedals');
    await key(page, 'Cannot').tap();
    await key(page, 'Not simulated').tap();
    await expect.poll(said).toContain('Stick and pedals, cannot. Due: Canopy');
  });

  test('is taken back with one key, more than once', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    const first = await tick(page);
    const second = await tick(page);
    await expect.poll(() => due(page)).not.toBe(second);
    await key(page, 'Back').tap();
    await expect.poll(() => due(page)).toBe(second);
    await key(page, 'Back').tap();
    await expect.poll(() => due(page)).toBe(first);
    expect(await key(page, 'Back').isDisabled()).toBe(true);
  });

  test('is left out when it does not apply, with the reason in the list of all', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await page.getByRole('button', { name: /^Ramp, / }).tap();
    const row = (item: string) =>
      page.getByRole('dialog').getByRole('listitem').filter({ hasText: item });
    // Sunset of 5 April 1987 at 62.95° N 10.55° W is 1937Z (NOAA solar equations, arithmetic): 1850Z
    // is day.
    await expect.poll(() => read(row('Cockpit lights'))).toMatch(/not needed: not night until/);
    await expect
      .poll(() => read(row('Position lights')))
      .toMatch(/not needed: sun up until 19\d\dZ/);
    await expect.poll(() => read(row('Windscreen air'))).toContain('not needed: surface dry');
  });
});

describe('the steps in another language than the page', () => {
  /** The language that each of these is marked with, itself or by what it stands in. */
  const marks = (page: Page, selector: string) =>
    page
      .locator(selector)
      .evaluateAll((all) =>
        all.map((one) => one.closest('[lang]')?.getAttribute('lang') ?? 'none'),
      );

  const chooseProcedure = async (page: Page, name: string) => {
    await openSortie(page);
    await page.getByRole('group', { name: 'Procedure' }).getByRole('button', { name }).click();
    await closeSheet(page);
  };

  test('are those of the procedure that was chosen, and marked as what they are', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    expect(await marks(page, 'main strong')).toEqual(['en']);
    await chooseProcedure(page, 'Sleet, üblicher Flug (German)');
    await expect.poll(() => due(page)).toBe('Sitzstifte drei gezogen, im Halter');
    expect(await marks(page, 'main strong')).toEqual(['de']);
    const following = page.getByRole('list', { name: 'Next' });
    expect(await upcoming(page)).toContain('Bremshebelauf Parken, Nadel weiß');
    expect(await following.locator('[lang="de"]').first().textContent()).toBe('Bremshebel');

    await tick(page);
    await expect.poll(() => due(page)).toBe('Bremshebel auf Parken, Nadel weiß');
    // The sentence is the page's, and what stands in it the procedure's.
    const said = page.getByRole('status').filter({ hasText: 'Sitzstifte, done. Due: Bremshebel' });
    expect(await said.locator('[lang]').allTextContents()).toEqual([
      'Sitzstifte',
      'Bremshebel',
      'auf Parken, Nadel weiß',
    ]);
    expect(await said.evaluate((one) => one.closest('[lang]') === document.documentElement)).toBe(
      true,
    );

    await page.getByRole('button', { name: /^Ramp, / }).tap();
    const row = page.getByRole('dialog').getByRole('listitem').filter({ hasText: 'Höhenmesser' });
    expect(await row.locator('b').getAttribute('lang')).toBe('de');
    await closeSheet(page);

    await key(page, 'Big card').click();
    await expect.poll(() => marks(page, 'main strong')).toEqual(['de']);
  });

  test('begin anew when the procedure is changed in between, and undo brings back where they were', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await tick(page);
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await chooseProcedure(page, 'Sleet, üblicher Flug (German)');
    await expect.poll(() => due(page)).toBe('Sitzstifte drei gezogen, im Halter');
    await key(page, 'Undo').tap();
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
  });

  test('are in the language of the page where an aircraft is chosen on it; only calls are marked English', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await page.evaluate(() => {
      document.documentElement.lang = 'de';
    });
    await toSteps(page);
    await openSortie(page);
    const offered = page.getByRole('group', { name: 'Aircraft' });
    await offered.getByRole('button', { name: /Tussock/ }).click();
    const procedures = page.getByRole('group', { name: 'Procedure' }).getByRole('button');
    await expect
      .poll(() => procedures.allTextContents())
      .toEqual(['Tussock, usual flight (Englisch)', 'Tussock, üblicher Flug']);
    await closeSheet(page);
    await expect.poll(() => due(page)).toBe('Steuerschloss ab, in der Türtasche');
    expect(await page.locator('main [lang]').count()).toBe(0);
    await goOnFrom(page, 'Taxi', 'an Verkehr');
    const call = page.getByText(/Harrow traffic/);
    expect(await call.getAttribute('lang')).toBe('en');
  });
});

describe('what is held back', () => {
  test('must be done before the runway, and the barrier says so', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await press(page, 'Later');
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await goOnFrom(page, 'Taxi', 'Take-off brief');
    await expect.poll(() => due(page)).toMatch(/^Take-off brief 28, stop up to \d+$/);
    await tick(page);
    await tick(page);
    // Instead of the barrier, what was held back first is due again.
    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    const flag = page.getByText('Outstanding, and runway check is next');
    await expect.poll(() => flag.isVisible()).toBe(true);
    expect(await key(page, 'Later').isDisabled()).toBe(true);
    await tick(page);
    // The next thing held back follows; one that cannot be done lets the pilot through too.
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await expect.poll(() => flag.isVisible()).toBe(true);
    await key(page, 'Cannot').tap();
    await page.getByRole('textbox', { name: 'Another reason' }).fill('lever is stuck');
    await key(page, 'Record').tap();
    await expect.poll(() => due(page)).toBe('Stick and pedals full travel, free');
    await page.getByRole('button', { name: /^Ramp, / }).tap();
    const row = page.getByRole('dialog').getByRole('listitem').filter({ hasText: 'Brake lever' });
    await expect.poll(() => read(row)).toContain('cannot: lever is stuck');
  });

  test('can be done at any time, where it stands', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await press(page, 'Later');
    await expect.poll(() => due(page)).toBe('Brake lever parked, needle white');
    await key(page, 'Done now: Seat pins').tap();
    await expect.poll(() => key(page, 'Done now: Seat pins').count()).toBe(0);
    await page.getByRole('button', { name: /^Ramp, 1 of/ }).waitFor();
  });

  test('is not let through with a jump over the barrier either', async ({ open }) => {
    const page = await open('phone', { at: EVENING });
    await toSteps(page);
    await goOnFrom(page, 'Line-up', 'Throttle');
    // The barrier stands between, and with it everything that was skipped.
    await expect
      .poll(() => page.getByText('Outstanding, and runway check is next').isVisible())
      .toBe(true);
    await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
    await key(page, 'Undo').tap();
    await expect.poll(() => key(page, 'Later').isDisabled()).toBe(false);
  });
});
