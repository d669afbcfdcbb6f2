/**
 * The taxi route in the app: it follows the end, closures and the pilot; the stopwatch; the calls.
 */

import type { Page } from 'playwright-core';
import { words as noticeWords } from '../../src/shell/noticeWords.en';
import { words } from '../../src/views/taxi/words.en';
import { objections } from './accessible';
import { expect, test } from './harness';
import { beginSortie, closeSheet, EVENING, key, openPlace, read, setWind } from './pilot';

/** From the first start to Taxi at Harrow Sound, with an end in use, on Stand 6. */
async function toTaxi(page: Page, wind: string, end: string): Promise<void> {
  await beginSortie(page);
  await setWind(page, wind);
  await key(page, `Use ${end}`).first().click();
  await openPlace(page, 'Taxi');
  await key(page, 'Route').click();
  await key(page, 'Stand 6').click();
  await closeSheet(page);
}

const plan = (page: Page) => page.getByRole('region', { name: /^Plan of Harrow Sound/ });

/** Where a word of the plan stands: its middle, px. */
async function textAt(page: Page, text: string): Promise<{ x: number; y: number }> {
  const box = await plan(page)
    .locator('text', { hasText: new RegExp(`^${text}$`) })
    .boundingBox();
  if (box === null) throw new Error(`not on the plan: ${text}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test('the way follows the end in use, and says so in words', async ({ open }) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  await expect
    .poll(() => plan(page).getAttribute('aria-label'))
    .toContain(
      'Bravo, at Bravo one runway zero one one nine ahead, hold, look both ways, say that you cross, then Kilo, at Kilo two hold short runway two eight',
    );
  await openPlace(page, 'Wind');
  await setWind(page, '09012');
  await key(page, 'Use 10').first().click();
  await openPlace(page, 'Taxi');
  await expect
    .poll(() => plan(page).getAttribute('aria-label'))
    .toContain('Alfa, at Alfa one hold short runway one zero');
});

test('without a stand the plan asks for one, and the reminder numbers stand', async ({ open }) => {
  const page = await open('phone', { at: EVENING, path: '#/wind' });
  await beginSortie(page);
  await setWind(page, '27012');
  await key(page, 'Use 28').first().click();
  await openPlace(page, 'Taxi');
  await page.getByText('Where are you? Tap your stand, or any point.').waitFor();
  await expect.poll(() => read(page.locator('dl'))).toMatch(/Do not exceed ?18 ?kt/);
});

test('where a closed taxiway leaves only the runway, that is said plainly, and opened again the way is as before', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  // The sign K stands on the taxiway that leads to the holding point; a tap on it picks the stretch.
  const sign = await textAt(page, 'K');
  await page.mouse.click(sign.x, sign.y);
  await page.getByText('K, K1 to F').waitFor();
  await key(page, 'Close today').click();
  await page
    .getByText(/^Hold at \w+; then backtrack [\d\s]+\sm of runway 28\. Closed today: K\.$/)
    .waitFor();
  await expect
    .poll(() => plan(page).getAttribute('aria-label'))
    .toContain('backtrack runway two eight');
  await expect.poll(() => read(page.locator('dl'))).toMatch(/18 ?kt/);
  await key(page, 'Route').click();
  const stretch = key(page, 'K, K1 to F');
  await expect.poll(() => stretch.getAttribute('aria-pressed')).toBe('true');
  await stretch.click();
  await closeSheet(page);
  await expect.poll(() => plan(page).getAttribute('aria-label')).not.toContain('backtrack');
});

test('a tap on a junction puts the aircraft there, and draws it larger with one finger', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  const hold = await textAt(page, 'K1');
  // The word stands beside the point; above or below it.
  for (const dy of [0, 26, -26, 44]) {
    await page.mouse.click(hold.x, hold.y + dy);
    if (await key(page, 'I am here').isVisible()) break;
  }
  await key(page, 'Larger').click();
  await key(page, 'Fit').waitFor();
  const [drawn, word] = [await plan(page).boundingBox(), await textAt(page, 'K1')];
  if (drawn === null) throw new Error('no plan');
  const middle = { x: drawn.x + drawn.width / 2, y: drawn.y + drawn.height / 2 };
  // The selection is centred, its name as near beside it as names stand.
  expect(Math.hypot(word.x - middle.x, word.y - middle.y)).toBeLessThan(75);
  await key(page, 'I am here').click();
  await key(page, 'Leaving K1').waitFor();
  await expect.poll(() => plan(page).getAttribute('aria-label')).not.toContain('ahead');
});

test('a stretch is closed and the aircraft put on a junction without the plan, by the keyboard alone', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  const press = async (name: string) => {
    await key(page, name).focus();
    await page.keyboard.press('Enter');
  };
  await press('Route');
  await press('K, K1 to F');
  await expect.poll(() => key(page, 'K, K1 to F').getAttribute('aria-pressed')).toBe('true');
  // The focus stays where it is.
  await expect.poll(() => read(page.locator(':focus'))).toBe('K, K1 to F');
  expect(await objections(page)).toEqual([]);
  await closeSheet(page);
  await expect
    .poll(() => plan(page).getAttribute('aria-label'))
    .toContain('backtrack runway two eight');
  await press('Route');
  await page.keyboard.press('Tab');
  await press('K, K1 to F');
  await press('K/F');
  await closeSheet(page);
  await expect.poll(() => plan(page).getAttribute('aria-label')).not.toContain('ahead');
});

test('the route that was told is tapped as letters, mended where names don’t meet, drawn, and taken back', async ({
  open,
}) => {
  const page = await open('phone', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  await expect.poll(() => plan(page).getAttribute('aria-label')).toContain('then Kilo');
  await key(page, words.told.key).click();
  const sheet = page.getByRole('dialog');
  const tap = (name: string) => sheet.getByRole('button', { name, exact: true }).click();
  for (const name of ['B', 'F', words.told.atRunway['hold short'], '01/19']) await tap(name);
  await expect.poll(() => sheet.getByRole('textbox').inputValue()).toBe('B F, hold short 01/19');
  const use = sheet.getByRole('button', { name: words.told.use });
  await expect.poll(() => use.isDisabled()).toBe(true);
  await sheet.getByRole('textbox').fill('Bravo Kilo, hold short one niner');
  await sheet.getByText('hold short 01/19', { exact: false }).waitFor();
  expect(await objections(page)).toEqual([]);
  await tap(words.told.use);
  await key(page, words.told.using('B K')).waitFor();
  await page.getByText(noticeWords.undoable.route).waitFor();
  await key(page, noticeWords.undo).click();
  await key(page, words.told.key).waitFor();
});

test('the stopwatch gives ground speed with what a thumb allows, and takes a passing back', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  await page.clock.pauseAt(new Date(EVENING.getTime() + 3_600_000));
  await key(page, 'Leaving Stand 6').click();
  await page.clock.runFor(20_000);
  await key(page, 'Passing the apron and B').click();
  await page.clock.runFor(60_000);
  await key(page, 'Crossing 01/19 at B1').click();
  // B is 500 m from A's corner to the holding point, by the demo's generator (495 on its plan): 16 kt in a minute.
  await page.getByText('16 kt', { exact: true }).waitFor();
  await page.getByText('the apron and B to B1, 495 m in 1 min 00 s').waitFor();
  await page.getByText('timing error ±1 kt').waitFor();
  await page.getByText('crossing runway zero one one nine on Bravo').waitFor();
  await key(page, 'Not yet').click();
  await key(page, 'Crossing 01/19 at B1').waitFor();
});

test('a passing outlives a reload', async ({ device }) => {
  const page = await device.start('tablet', { path: '#/wind' });
  await toTaxi(page, '27012', '28');
  await key(page, 'Leaving Stand 6').click();
  await key(page, 'Passing the apron and B').waitFor();
  await page.reload();
  await key(page, 'Passing the apron and B').waitFor();
});

test('the pilot’s own words for a call are kept, with today’s runway in them', async ({ open }) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  await page.getByRole('button', { name: /^Say on 118.7/ }).click();
  await key(page, 'In my own words').first().click();
  await page.getByRole('textbox').fill('{station}, off to {runway} with you');
  await page.getByRole('textbox').blur();
  await closeSheet(page);
  await page.getByText('Harrow traffic, off to runway two eight with you').waitFor();
});

test('a device that refuses its position is said once, and nothing is asked before the pilot does', async ({
  open,
}) => {
  const page = await open('tablet', {
    at: EVENING,
    path: '#/wind',
    before: () => {
      const asked = { count: 0 };
      Object.assign(window, { asked });
      navigator.geolocation.watchPosition = (_found, failed) => {
        asked.count += 1;
        const PERMISSION_DENIED = 1;
        const code = PERMISSION_DENIED;
        const denied = {
          code,
          PERMISSION_DENIED,
          POSITION_UNAVAILABLE: 2,
          TIMEOUT: 3,
          message: '',
        };
        setTimeout(() => failed?.(denied as GeolocationPositionError));
        return 1;
      };
    },
  });
  const asked = () =>
    page.evaluate(() => (window as unknown as { asked: { count: number } }).asked.count);
  await toTaxi(page, '27012', '28');
  expect(await asked()).toBe(0);
  await key(page, 'Route').click();
  await key(page, 'Use the device’s position').click();
  await page.getByRole('dialog').getByText('The device’s position was refused').waitFor();
  expect(await asked()).toBe(1);
});

test('way-ahead up turns the plan, is kept on the device, and the plan moves by keyboard', async ({
  open,
}) => {
  const page = await open('tablet', { at: EVENING, path: '#/wind' });
  await toTaxi(page, '27012', '28');
  await key(page, 'North up').click();
  await key(page, 'Track up').waitFor();
  await plan(page).focus();
  await page.keyboard.press('+');
  await key(page, 'Fit').click();
  await page.reload();
  await key(page, 'Track up').waitFor();
});
