/** The way back into what is under way, and what the steps do not let through. */

import type { Page } from 'playwright-core';
import { stepWords } from '../../src/parts/stepTextWords.en';
import { words as under } from '../../src/parts/underWayWords.en';
import { words as shell } from '../../src/shell/noticeWords.en';
import { words as frame } from '../../src/shell/words.en';
import { words as log } from '../../src/views/log/words.en';
import { words } from '../../src/views/steps/words.en';
import { expect, test } from './harness';
import {
  chooseRunway,
  clockOf,
  darken,
  doneKey,
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

const MINUTE_MS = 60_000;
const FIRE = 'Engine fire on the ground';

const press = (page: Page, name: string) => pressDeliberately(page, key(page, name), clockOf(page));

/** Opens the list for an engine fire, from wherever the pilot is. */
async function openFire(page: Page): Promise<void> {
  await page.locator('header').getByRole('button').last().tap();
  await page.getByRole('dialog').getByRole('button', { name: FIRE }).tap();
  await expect.poll(() => read(page.getByRole('heading', { level: 2 }))).toBe(FIRE);
}

/** Starts the app anew at its own address, as an installed one is. */
async function startAnew(page: Page): Promise<void> {
  const address = new URL(page.url());
  address.hash = '';
  await page.goto('about:blank');
  await page.goto(address.href);
}

/** Makes a phase the one the sortie begins at. */
async function beginAt(page: Page, phase: string): Promise<void> {
  await page.getByRole('button', { name: new RegExp(`^${phase}, \\d`) }).tap();
  await page.getByRole('dialog').getByRole('button', { name: words.beginHere }).tap();
  await expect.poll(() => page.getByRole('dialog').count()).toBe(0);
}

test('a list under way is seen from every place, and a start of the app comes back to it', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await tick(page);
  await openFire(page);
  await tick(page);
  const left = await due(page);
  const way = page.getByRole('button', { name: new RegExp(`^${FIRE}, 1 of 8`) });
  expect(await way.count()).toBe(0);
  for (const place of [frame.places.wind, frame.places.taxi, frame.places.numbers]) {
    await openPlace(page, place);
    await expect.poll(() => way.isVisible()).toBe(true);
  }
  await way.tap();
  await expect.poll(() => due(page)).toBe(left);
  await startAnew(page);
  await key(page, words.goOn).tap();
  await expect.poll(() => due(page)).toBe(left);
});

test('the roll is come back to, and led to from another place', async ({ open }) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await goOnFrom(page, 'Line-up', 'Nozzle light');
  await tickAll(page);
  await press(page, words.released);
  await key(page, words.stopping).waitFor();
  await startAnew(page);
  await key(page, words.stopping).waitFor();
  await page.evaluate(() => {
    location.hash = '#/numbers';
  });
  await key(page, new RegExp(under.opens.roll)).tap();
  await key(page, words.airborne).waitFor();
});

test('away for long, the first thing seen is what was done last and what has grown old', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  const done = await tick(page);
  await openPlace(page, frame.places.wind);
  await darken(page, 40 * MINUTE_MS);
  const back = () => read(page.getByRole('alert'));
  await expect.poll(back).toContain(done.split(' ')[0] ?? '');
  await expect.poll(back).toMatch(/40 min ago/);
  await expect.poll(back).toContain(words.aged.wind('40 min old'));
  await key(page, words.oneBack).tap();
  await expect.poll(() => due(page)).toBe(done);
});

test('a landing runway that nobody chose is not ticked: the key leads to where it is chosen', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await beginAt(page, 'Recovery');
  await tick(page);
  await expect.poll(() => due(page)).toMatch(/^Landing runway/);
  const why = stepWords.notKnown(stepWords.live.runway);
  await page.getByText(why, { exact: true }).waitFor();
  expect(await doneKey(page).count()).toBe(0);
  await press(page, stepWords.supply.wind);
  await page
    .getByRole('heading', { level: 1, name: frame.places.wind })
    .waitFor({ state: 'attached' });
  await chooseRunway(page);
  expect(await tick(page)).toMatch(/^Landing runway 28/);
});

test('after a list one back is the step before; where Done stood nothing ends the sortie; the log tells of the fire', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await tick(page);
  const before = await tick(page);
  await openFire(page);
  await key(page, words.leaveList).tap();
  await key(page, words.oneBack).tap();
  await expect.poll(() => due(page)).toBe(before);

  await openFire(page);
  await doneKey(page).waitFor();
  const at = await doneKey(page).boundingBox();
  if (at === null) throw new Error('no key');
  await tickAll(page);
  await key(page, words.endKey).waitFor();
  await page.clock.runFor(SETTLED_MS);
  const underTap = await page.evaluate(
    ([x, y]) => document.elementFromPoint(x, y)?.closest('button')?.textContent ?? null,
    [at.x + at.width / 2, at.y + at.height / 2] as const,
  );
  expect(underTap).toBeNull();
  await press(page, words.endKey);
  await page.getByText(shell.undoable.sortie).waitFor();
  await openPlace(page, frame.places.log);
  await page
    .getByRole('main')
    .getByRole('button', { name: /Harrow Sound/ })
    .first()
    .tap();
  const sheet = page.getByRole('dialog');
  await sheet.getByRole('heading', { name: log.sheet.lists }).waitFor();
  expect(await read(sheet)).toMatch(new RegExp(`${FIRE}\\d{4}Z to \\d{4}Z`));
});

test('begun in the air, what lies before is not flown, not held back and told apart in the log', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING });
  await toSteps(page);
  await beginAt(page, 'Recovery');
  await expect.poll(() => due(page)).toMatch(/^Fuel/);
  await key(page, words.phaseNotFlown(words.phase.ramp)).waitFor();
  expect(await page.getByText(words.heldBack, { exact: true }).count()).toBe(0);
  await tick(page);
  await openPlace(page, frame.places.log);
  await page
    .getByRole('main')
    .getByRole('button', { name: /Harrow Sound/ })
    .first()
    .tap();
  const said = log.sheet.begunAt(words.phase.recovery, '').split(',')[0] ?? '';
  await page.getByRole('dialog').getByText(said).waitFor();
});
