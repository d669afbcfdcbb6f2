/** A whole sortie, from the chocks to the log: rejected once, flown, landed, ended. */

import type { Page } from 'playwright-core';
import { describe, expect, test } from './harness';
import {
  clockOf,
  due,
  EVENING,
  goOnFrom,
  key,
  openPlace,
  pressDeliberately,
  read,
  setWind,
  sortieKey,
  tick,
  tickAll,
  toSteps,
} from './pilot';

const press = (page: Page, name: string) => pressDeliberately(page, key(page, name), clockOf(page));

/** Past the ramp and the taxi by the quick way, and everything held back done before the runway. */
async function toRelease(page: Page): Promise<void> {
  await toSteps(page);
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  await tickAll(page);
  await key(page, 'Brakes released').waitFor();
}

const phases = async (page: Page) =>
  (
    await page
      .getByRole('button', { name: /\d+ of \d+ done/ })
      .evaluateAll((all) => all.map((tab) => tab.getAttribute('aria-label') ?? ''))
  ).map((label) => label.replace(/ done.*/, ''));

describe('on the roll', () => {
  test('the ladder stands from the bottom up, with what to do to stop, and no places to go to', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toRelease(page);
    // What goes with the brakes is shown beside the key, and done with it.
    await expect.poll(() => page.getByText(/^Brake lever, /).isVisible()).toBe(true);
    await press(page, 'Brakes released');
    await key(page, 'Stopping').waitFor();
    const rungs = await page
      .locator('ol')
      .getByRole('listitem')
      .evaluateAll((all) =>
        all.map((rung) => [rung.textContent ?? '', rung.getBoundingClientRect().top] as const),
      );
    // Figures of the aircraft's document, airfields-demo/aircraft/sleet.json.
    const of = (name: string) => rungs.find(([text]) => text.includes(name)) ?? ['', Number.NaN];
    expect(of('Rotate')[0]).toMatch(/138/);
    expect(of('Lift-off')[0]).toMatch(/165/);
    expect(of('Rotate')[1]).toBeGreaterThan(of('Lift-off')[1]);
    // No cable lies here, and the hook isn't named.
    const stop = page.getByText('throttle idle, chute, brakes full', { exact: true });
    await expect.poll(() => stop.isVisible()).toBe(true);
    await expect.poll(() => page.getByRole('navigation', { name: 'Places' }).count()).toBe(0);
    await page.clock.runFor(11_000);
    await expect.poll(() => page.getByText('0:11').isVisible()).toBe(true);
    // Pressed too early, it is taken back.
    await key(page, 'Back').tap();
    await key(page, 'Brakes released').waitFor();
    await expect.poll(() => page.getByText(/^Brake lever, /).isVisible()).toBe(true);
  });

  test('a reload comes back to the ladder, and nothing stands in the way of the climb', async ({
    open,
  }) => {
    const page = await open('phone', { at: EVENING });
    await toRelease(page);
    await press(page, 'Brakes released');
    await key(page, 'Airborne').waitFor();
    await page.reload();
    await press(page, 'Airborne');
    await expect.poll(() => due(page)).toBe('Gear up, three lights out');
  });
});

test('from the first wind to the log, with a take-off rejected and another flown', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING });
  await toRelease(page);
  await press(page, 'Brakes released');
  await press(page, 'Stopping');

  // Stopping opens the list for it; its end says where it leads.
  await expect.poll(() => page.getByText('Rejected take-off').isVisible()).toBe(true);
  const stopped = await tickAll(page);
  // No cable lies across its runways: the list asks for no hook.
  expect(stopped).toHaveLength(7);
  expect(stopped.slice(0, 3)).toEqual(['Throttle idle', 'Chute pulled', 'Brakes full, held']);
  expect(stopped.join()).not.toContain('Hook');
  await press(page, 'On to After');

  // The stand comes next, and nothing of a flight that wasn't flown.
  await expect.poll(() => due(page)).toBe('Seat pins three in');
  // Another try asks for its own list first, and then begins at the ramp.
  await key(page, 'Emergencies').tap();
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Another try/ })
    .tap();
  await tickAll(page);
  await press(page, 'Back to Ramp');
  await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
  const [ramp, taxi, lineUp] = await phases(page);
  expect(ramp).toMatch(/^Ramp, 0 of/);
  expect(taxi).toMatch(/^Taxi, 0 of/);
  expect(lineUp).toMatch(/^Line-up, 0 of/);
  const again = await tickAll(page);
  expect(again).toContain('Runway check nothing outstanding');
  await press(page, 'Brakes released');
  await press(page, 'Airborne');

  expect(await tickUntil(page, 'Fuel above bingo')).toEqual([
    'Gear up, three lights out',
    'Flaps up, no bars',
    'Reheat out, nozzle light out',
    // Today's, from its physics: between 345 and 375 kt, as its document has it.
    expect.stringMatching(/^Climb (34[5-9]|3[56]\d|37[0-5]) kt, nose \d+°$/),
  ]);
  // From now on ends are judged for landing; none is chosen yet.
  await expect.poll(() => read(key(page, /^Landing on/))).toContain('none');
  await openPlace(page, 'Wind');
  await setWind(page, '28014KT');
  await key(page, 'Use 28').first().tap();
  await expect.poll(() => read(key(page, /^Landing on/))).toContain('28');
  await openPlace(page, 'Steps');
  await tick(page);
  // Variation 14° W: 266° true is 280° magnetic.
  await expect.poll(() => due(page)).toBe('Landing runway 28, heading 280°');
  await tickAll(page);
  await press(page, 'Landed');
  const home = await tickAll(page);
  expect(home[0]).toBe('Seat pins three in');
  await press(page, 'End the sortie');

  // The next begins with the same field and aircraft, at its first step.
  await expect.poll(() => due(page)).toBe('Seat pins three out, in the rack');
  await expect.poll(() => read(key(page, /^Field/))).toContain('XHAR Harrow Sound');
  await expect.poll(() => read(key(page, /^Runway/))).toContain('none');

  await openPlace(page, 'Log');
  const flown = page.getByRole('main').getByRole('listitem').filter({ hasText: 'Landed' }).first();
  await expect.poll(() => read(flown)).toContain('XHAR Harrow Sound, 5 Apr 1987');
  await expect.poll(() => read(flown)).toMatch(/\d{4}Z Off chocks.*\d{4}Z Airborne.*\d{4}Z Landed/);
  await flown.getByRole('button').click();
  const logged = page.getByRole('dialog');
  const stamped = logged.locator('section').filter({ hasText: /^Stamped/ });
  const log = await read(stamped);
  const moments = ['Brakes released', 'Stopping', 'Brakes released', 'Airborne', 'Landed'];
  const found = [...log.matchAll(/Brakes released|Stopping|Airborne|Landed/g)].map(
    ([what]) => what,
  );
  expect(found).toEqual(moments);

  // What was sealed stays as it was, whatever the wind does now.
  const figures = (moment: RegExp) => logged.locator('details').filter({ hasText: moment });
  await expect.poll(() => logged.locator('details').count()).toBe(4);
  await expect
    .poll(() => read(figures(/Brakes released, \d+Z/).last()))
    .toContain('Wind27012G20KT');
  await expect
    .poll(() => read(figures(/Brakes released, \d+Z/).last()))
    .toContain('Rotate138.0 kt');
  await expect.poll(() => read(figures(/Landed, \d+Z/))).toContain('Wind28014KT');
  // 150 kt, 1.3 times the stall at its usual mass, and half of the wind along the runway: under 14 kt.
  await expect.poll(() => read(figures(/Landed, \d+Z/))).toMatch(/Approach15[4-7]\.\d kt/);
  await expect.poll(() => read(figures(/Sortie ended, \d+Z/))).toContain('Runway28');
});

/** Ticks until a step is due, and says which were ticked. */
async function tickUntil(page: Page, last: string): Promise<string[]> {
  const ticked: string[] = [];
  while ((await due(page)) !== last) ticked.push(await tick(page));
  return ticked;
}

test('an ended sortie is taken up again with one key', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  const first = await tick(page);
  await expect.poll(() => due(page)).not.toBe(first);
  const second = await due(page);
  await sortieKey(page).tap();
  await key(page, 'End the sortie').tap();
  await expect.poll(() => due(page)).toBe(first);
  await key(page, 'Undo').tap();
  await expect.poll(() => due(page)).toBe(second);
});
