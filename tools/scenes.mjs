/**
 * The scenes that tools/pictures.mjs takes: a fighter leaving Harrow Sound on an April evening.
 *
 * `play` brings the page to the scene as a pilot would; the clock stands at `at` when it begins.
 */

const EVENING = new Date('1987-04-05T18:50:00Z');
const WIND = '27012G20KT 240V300';

/** From the first start to a sortie: an aircraft, a field. */
async function begin(page) {
  await page.getByRole('button', { name: 'Ondrell Sleet 3' }).click();
  await page.getByRole('button', { name: /^XHAR/ }).click();
}

async function typeWind(page) {
  await begin(page);
  await page.getByRole('textbox', { name: 'Wind or report' }).click();
  await page.keyboard.type(WIND);
  await page.keyboard.press('Enter');
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .waitFor();
}

/** Takes the best end and goes to the steps. */
async function useBest(page) {
  await typeWind(page);
  await page
    .getByRole('button', { name: /^Use \d\d/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Steps', exact: true }).click();
}

/** Longer than a critical step's key must be held, and than a tap after it is ignored, ms. */
const HELD_MS = 780;
const SETTLED_MS = 560;

/** Ticks step after step, holding one back, until `there` can be seen. */
async function tickUntil(page, there, heldBack) {
  for (let steps = 0; steps < 60; steps += 1) {
    if (await there().count()) return;
    const held = heldBack && (await page.getByText(heldBack, { exact: true }).first().count());
    const isDue = held && (await page.locator('strong', { hasText: heldBack }).count());
    const critical = await page.getByText('Hold the key').count();
    const key = page.getByRole('button', { name: isDue ? 'Hold back' : /^(Done|Said)/ }).first();
    await key.click({ delay: critical ? HELD_MS : 120 });
    await page.waitForTimeout(SETTLED_MS);
  }
}

/** Taxiing, with one thing held back and the barrier ahead. */
async function midTaxi(page) {
  await useBest(page);
  await tickUntil(page, () => page.locator('strong', { hasText: 'Flaps' }), 'Oxygen');
}

/** Eleven seconds down the runway. */
async function rolling(page) {
  await useBest(page);
  await tickUntil(page, () => page.getByRole('button', { name: 'Brakes released' }));
  await page.getByRole('button', { name: 'Brakes released' }).click({ delay: 120 });
  await page.clock.runFor(11_000);
}

const wind = { scene: 'wind', at: EVENING, place: '#/wind', play: typeWind };
const steps = { scene: 'steps', at: EVENING, place: '#/wind', play: midTaxi };
const roll = { scene: 'roll', at: EVENING, place: '#/wind', play: rolling };

/** Every picture that is taken: `wind-phone-day`, and so on. */
export const SCENES = [
  { ...wind, screen: 'phone', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'day' },
  { ...wind, screen: 'tablet', theme: 'night' },
  { ...wind, screen: 'wide', theme: 'dusk' },
  { ...steps, screen: 'phone', theme: 'day' },
  { ...steps, screen: 'tablet', theme: 'day' },
  { ...roll, screen: 'tablet', theme: 'day' },
];
